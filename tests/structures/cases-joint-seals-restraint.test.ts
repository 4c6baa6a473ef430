import { describe, expect, test } from 'vitest';
import { closureForce } from '../../src/structures/closure-force';
import { boltClass } from '../../src/structures/fasteners';
import {
  bearingStress,
  boltShearStress,
  grossHoleStressConcentration,
  holePeakStress,
  holeStressConcentration,
  netSectionStress,
  reviewJoint,
  shankArea,
  tearOutStress,
} from '../../src/structures/joint';
import { material } from '../../src/structures/materials';
import {
  impactFactor,
  requiredBreakingForce,
  ropeRestraint,
  ropeStiffness,
  snatchLoad,
  terminationEfficiency,
  wireRope,
} from '../../src/structures/restraint';
import {
  extrusionGapLimit,
  faceSeal,
  glandFill,
  glandSqueeze,
  oRing,
  oRingGland,
  oRingStretch,
  stretchedCrossSection,
} from '../../src/structures/seals';
import { threadGeometry } from '../../src/structures/threads';
import { recordCheck } from '../cases/record-check';
import { casesOf, expected, structuresCase } from './structures-case';

// Every case of the topics o-ring, restraint, radial-bolts, bolt-shear, bearing and stress-concentration in
// tests/cases/structures.json. Source and provenance of each stand there, beside its numbers.

const checked = new Set<string>();

/** Runs a case: the numbers named, against what the library gives; every one, but those left out for a reason. */
function check(id: string, results: Readonly<Record<string, number>>, leftOut: readonly string[] = []): void {
  const one = structuresCase(id);
  checked.add(id);
  test(`${id}: ${one.what} (${one.source})`, () => {
    for (const [name, value] of Object.entries(results)) {
      const wanted = expected(one, name);
      recordCheck(id, name, value);
      const error = Math.abs(value - wanted);
      expect(error, `${name}: ${value} against ${wanted}`).toBeLessThanOrEqual(one.relTol * Math.abs(wanted));
    }
    expect([...Object.keys(results), ...leftOut].sort()).toEqual(Object.keys(one.expected).sort());
  });
}

describe('bolt shear', () => {
  check('bolt-single-shear-75ksi', {
    shearStrength_lbf: boltShearStress
      .solveFor('load', {
        area: shankArea({ diameter: '0.250 in' }),
        result: '75000 psi',
      })
      .in('lbf'),
  });
  const screw = (diameter: '0.112 in' | '0.125 in' | '0.138 in' | '0.164 in'): number =>
    boltShearStress.solveFor('load', { area: shankArea({ diameter }), result: '96 ksi' }).in('lbf');
  // Body diameters are those of the screw sizes, 0.060 + 0.013 n in (ASME B1.1).
  check('flat-head-socket-screw-shear', {
    no4_lbf: screw('0.112 in'),
    no5_lbf: screw('0.125 in'),
    no6_lbf: screw('0.138 in'),
    no8_lbf: screw('0.164 in'),
  });
  const grade5 = boltClass('grade 5');
  check('shear-ratio-conventions', {
    vonMisesProof_psi: 0.577 * (grade5.proofStress?.value.in('psi') ?? Number.NaN),
    sixTenthsUltimate_psi: grade5.shearUltimateShank.value.in('psi'),
  });
  const thread = threadGeometry('3/4-16 UNF');
  const factor = 1.5;
  const shared = { count: 4 } as const;
  check('shigley-8-6-bolts', {
    bearingBolts_kip:
      bearingStress
        .solveFor('load', {
          count: 2,
          diameter: thread.majorDiameter,
          thickness: '1 in',
          result: '85 ksi',
        })
        .in('kip') / factor,
    bearingMembers_kip:
      bearingStress
        .solveFor('load', {
          count: 2,
          diameter: thread.majorDiameter,
          thickness: '1 in',
          result: '54 ksi',
        })
        .in('kip') / factor,
    shearShank_kip:
      (boltShearStress
        .solveFor('load', {
          ...shared,
          area: shankArea({ diameter: thread.majorDiameter }),
          result: '85 ksi',
        })
        .in('kip') *
        0.577) /
      factor,
    shearThreads_kip:
      (boltShearStress.solveFor('load', { ...shared, area: thread.rootArea, result: '85 ksi' }).in('kip') *
        0.577) /
      factor,
  });
  const area = boltShearStress.solveFor('area', { load: '480 kN', count: 8, result: '168.75 MPa' });
  check('double-shear-required-area', {
    boltArea_mm2: area.in('mm^2'),
    boltDiameter_mm: shankArea.solveFor('diameter', { result: area }).in('mm'),
  });
});

describe('bearing', () => {
  const load = (result: '100 ksi' | '88 ksi' | '56 ksi', thickness: '0.10 in' | '0.125 in'): number =>
    bearingStress.solveFor('load', { diameter: '0.25 in', thickness, result }).in('lbf');
  check('bearing-100ksi', { bearingLoad_lbf: load('100 ksi', '0.10 in') });
  check('bearing-6061-e2d', {
    ultimateLoad_lbf: load('88 ksi', '0.125 in'),
    yieldLoad_lbf: load('56 ksi', '0.125 in'),
  });
});

describe('radial bolts', () => {
  const load = closureForce({ pressure: '1000 psi', sealDiameter: '3.0 in' });
  const thread = threadGeometry('1/4-20');
  const tear = {
    load,
    count: 12,
    edgeDistance: '0.5 in',
    holeDiameter: '0.25 in',
    thickness: '0.25 in',
  } as const;
  const given = {
    pressure: '1000 psi',
    tube: { outsideDiameter: '3.5 in', wall: '0.25 in', material: '6061-T6 drawn tube' },
    closureMaterial: '6061-T6 bar',
    thread: '1/4-20',
    boltClass: 'grade 8',
    count: 12,
    edgeDistance: '0.5 in',
  } as const;
  const review = reviewJoint(given);
  const psi = (mode: string, from = review): number => {
    const found = from.modes.find((one) => one.mode === mode);
    if (!found) throw new Error(`no mode ${mode}`);
    return found.applied.to('psi').in('psi');
  };
  check('radial-bolt-joint-inch', {
    endForce_lbf: load.in('lbf'),
    perBolt_lbf: load.in('lbf') / 12,
    shearShank_psi: boltShearStress({ load, count: 12, area: shankArea({ diameter: '1/4 in' }) }).in('psi'),
    shearStressArea_psi: boltShearStress({ load, count: 12, area: thread.tensileStressArea }).in('psi'),
    bearing_psi: bearingStress({ load, count: 12, diameter: '0.25 in', thickness: '0.25 in' }).in('psi'),
    tearOutHoleEdge_psi: tearOutStress(tear).in('psi'),
    tearOut40deg_psi: tearOutStress({ ...tear, planeAngle: '40 deg' }).in('psi'),
    netSection_psi: netSectionStress({
      load,
      outsideDiameter: '3.5 in',
      wall: '0.25 in',
      count: 12,
      holeDiameter: '0.25 in',
    }).in('psi'),
  });
  // The review of the whole joint must come to the same stresses as its formulas.
  check('radial-bolt-joint-inch', {
    endForce_lbf: review.endForce.in('lbf'),
    perBolt_lbf: review.boltLoad.in('lbf'),
    shearShank_psi: psi('bolt shear', reviewJoint({ ...given, shearPlane: 'shank' })),
    shearStressArea_psi: psi('bolt shear'),
    bearing_psi: psi('bearing, case wall'),
    tearOutHoleEdge_psi: psi('tear-out of the case end, planes from the hole edge'),
    tearOut40deg_psi: psi('tear-out of the case end, planes at 40°'),
    netSection_psi: psi('net section of the case'),
  });
});

describe('stress concentration', () => {
  check('kt-hole-strip', {
    ktNet: holeStressConcentration({ holeDiameter: '2 mm', width: '10 mm' }),
    ktGross: grossHoleStressConcentration({ holeDiameter: '2 mm', width: '10 mm' }),
  });
  const peak = (greater: '100 MPa', lesser: '50 MPa' | '0 MPa' | '100 MPa' | '-100 MPa'): number =>
    holePeakStress({ greater, lesser }).in('MPa');
  check('kt-small-hole-pressurised-cylinder', {
    peak_MPa: peak('100 MPa', '50 MPa'),
    ktOnHoop: peak('100 MPa', '50 MPa') / 100,
    ktUniaxial: peak('100 MPa', '0 MPa') / 100,
    ktEqualBiaxial: peak('100 MPa', '100 MPa') / 100,
    ktPureShear: peak('100 MPa', '-100 MPa') / 100,
  });
});

describe('O-rings', () => {
  const ofSeries = ['010', '110', '210', '325', '425'].map((size) => oRing(size));
  check(
    'as568-cross-sections',
    Object.fromEntries(
      ofSeries.flatMap(({ crossSection, crossSectionTolerance }, i) => [
        [`${i}xx_in`, crossSection.in('in')],
        [`${i}xx_tol_in`, crossSectionTolerance.in('in')],
        [`${i}xx_mm`, crossSection.in('mm')],
      ]),
    ),
  );
  const squeeze = (section: number, depth: number): number =>
    glandSqueeze.si({ crossSection: section, glandDepth: depth }) * 100;
  const section = (size: string, sign: 1 | -1): number => {
    const { crossSection, crossSectionTolerance } = oRing(size);
    return crossSection.in('in') + sign * crossSectionTolerance.in('in');
  };
  // The table is rounded to whole per cent; 2 % of the value is the case's own tolerance.
  check('static-squeeze-070-139', {
    '070_min_pct': squeeze(section('010', -1), 0.055),
    '070_max_pct': squeeze(section('010', 1), 0.05),
    '139_min_in': section('210', -1) - 0.116,
    '139_max_in': section('210', 1) - 0.11,
    '139_min_pct': squeeze(section('210', -1), 0.116),
    '139_max_pct': squeeze(section('210', 1), 0.11),
  });
  check('static-gland-fill-2xx', {
    fill_pct: glandFill({ crossSection: '0.139 in', glandDepth: '0.112 in', grooveWidth: '0.190 in' }) * 100,
  });
  check(
    'face-seal-squeeze',
    Object.fromEntries(
      [
        ['070', '030', 0.05, 0.054],
        ['103', '130', 0.074, 0.08],
        ['139', '230', 0.101, 0.107],
        ['210', '330', 0.152, 0.162],
        ['275', '430', 0.201, 0.211],
      ].flatMap(([name, size, shallow, deep]) => {
        const ring = oRing(String(size));
        const { crossSection, crossSectionTolerance } = ring;
        const outside = ring.insideDiameter.plus(crossSection.times(2));
        const { squeeze } = faceSeal({
          ring,
          grooveOutsideDiameter: outside,
          grooveInsideDiameter: outside.minus(crossSection.times(2.8)),
          grooveDepth: { nominal: `${Number(shallow)} in`, plus: `${Number(deep) - Number(shallow)} in` },
        });
        return [
          [`${name}_min_in`, squeeze.min * crossSection.minus(crossSectionTolerance).in('in')],
          [`${name}_max_in`, squeeze.max * crossSection.plus(crossSectionTolerance).in('in')],
        ];
      }),
    ),
  );
  const stretched = {
    insideDiameter: oRing('228').insideDiameter,
    grooveDiameter: '2.278 in',
  } as const;
  check('stretch-228', {
    stretch_pct: oRingStretch(stretched) * 100,
    thinnedSection_in: stretchedCrossSection({ ...stretched, crossSection: '0.139 in' }).in('in'),
  });
  test('the gland of the -228 stretches and thins it alike', () => {
    const gland = oRingGland({
      ring: '228',
      bore: '2.5 in',
      grooveDiameter: '2.278 in',
      grooveWidth: '0.19 in',
      closureDiameter: '2.496 in',
    });
    const one = structuresCase('stretch-228');
    expect(gland.stretch.nominal * 100).toBeCloseTo(expected(one, 'stretch_pct'), 3);
    expect(gland.crossSection.nominal.in('in')).toBeCloseTo(expected(one, 'thinnedSection_in'), 5);
  });
  const gap = (psi: number, hardness: number): number =>
    extrusionGapLimit({ pressure: `${psi} psi`, hardness }).clearance.in('in');
  check('extrusion-limit-table', {
    '70_0-500_in': gap(500, 70),
    '70_1000-1500_in': gap(1200, 70),
    '70_2000-3000_in': gap(2500, 70),
    '90_0-500_in': gap(100, 90),
    '90_1000-1500_in': gap(1500, 90),
    '90_2000-3000_in': gap(3000, 90),
  });
  check('extrusion-limit-table-2', {
    '70_500-1000_in': gap(501, 70),
    '70_1500-2000_in': gap(1501, 70),
    '90_500-1000_in': gap(1000, 90),
    '90_1500-2000_in': gap(2000, 90),
  });
  test('extrusion-limit-table-2: 70 A at 1000 psi with 0.016 in fails, 80 A passes (Apple Rubber extrusion example)', () => {
    expect(gap(1000, 70)).toBeLessThan(0.016);
    expect(gap(1000, 80)).toBeGreaterThan(0.016);
  });
  const inside = structuresCase('as568-inside-diameters');
  check(
    'as568-inside-diameters',
    Object.fromEntries(
      Object.keys(inside.expected).map((name) => {
        const { insideDiameter } = oRing(name.slice(0, 3));
        return [name, name.endsWith('mm') ? insideDiameter.in('mm') : insideDiameter.in('in')];
      }),
    ),
  );
  const fkm = material('FKM');
  check('fkm-limits', {
    maxContinuous_C: fkm.serviceTemperature?.max.value.in('degC') ?? Number.NaN,
    minStandard_C: fkm.serviceTemperature?.min.value.in('degC') ?? Number.NaN,
    'linearExpansion_1e-5_per_C': (fkm.thermalExpansion?.value.si ?? Number.NaN) * 1e5,
  });
});

describe('restraint', () => {
  const plow = (diameter: '1/4 in' | '5/16 in' | '3/8 in' | '1/2 in') =>
    wireRope({ diameter, construction: '6x19 FC', grade: 'improved plow' });
  check('wire-rope-6x19-ips', {
    '1/4_lbf': plow('1/4 in').breakingForce.in('lbf'),
    '5/16_lbf': plow('5/16 in').breakingForce.in('lbf'),
    '3/8_lbf': plow('3/8 in').breakingForce.in('lbf'),
    '1/2_lbf': plow('1/2 in').breakingForce.in('lbf'),
    '3/8_kN': plow('3/8 in').breakingForce.in('kN'),
    '3/8_safe_lbf': plow('3/8 in').breakingForce.in('lbf') / 5,
  });
  const clips = terminationEfficiency({ termination: 'clips', fibreCore: true }).efficiency;
  check(
    'clip-efficiency',
    {
      efficiency_small: clips,
      terminated_lbf: plow('1/4 in').breakingForce.in('lbf') * clips,
    },
    ['efficiency_large'],
  ); // ropes of an inch and more are not in this library
  const stiffness = ropeStiffness({ metallicArea: '0.0295 in^2', modulus: '15 Msi', length: '120 in' });
  const drop = { load: '200 lbf', stiffness, slack: '12 in' } as const;
  check('drop-load-wire-rope', {
    shockLoad_lbf: snatchLoad(drop).in('lbf'),
    impactFactor: impactFactor(drop),
  });
  const tether = (diameter: '1/4 in' | '5/16 in') =>
    ropeRestraint({
      thrust: '2 kN',
      slack: '0 mm',
      ropeLength: '1 m',
      rope: { diameter, construction: '6x19 FC', grade: 'improved plow' },
      termination: 'clips',
    });
  const quarter = tether('1/4 in');
  // The case takes the strengths rounded to a tenth of a kilonewton, 24.4 and 37.9 kN.
  const margin = (kilonewton: number): number => kilonewton / quarter.requiredBreakingForce.in('kN') - 1;
  check('restraint-rope-selection', {
    requiredBreaking_kN: requiredBreakingForce({ load: '4 kN', designFactor: 5, efficiency: 0.8 }).in('kN'),
    quarterInchMarginToRequired: margin(24.4),
    fiveSixteenthsMarginToRequired: margin(37.9),
  });
  test('the procedure comes to the same margins, to the rounding of the strengths', () => {
    expect(quarter.governing.marginOfSafety).toBeCloseTo(-0.024, 2);
    expect(tether('5/16 in').governing.marginOfSafety).toBeCloseTo(0.516, 3);
  });
});

test('no case of these topics is left out', () => {
  const topics = ['o-ring', 'restraint', 'radial-bolts', 'bolt-shear', 'bearing', 'stress-concentration'];
  const all = casesOf(...topics).map(({ id }) => id);
  expect(all.length).toBeGreaterThan(20);
  expect(all.filter((id) => !checked.has(id))).toEqual([]);
});
