// Where a nozzle's cases end: limits between regimes, profiles without a cone, values that leave no nozzle. Laws and errors, no
// expected values but those with their origin beside them.
import { describe, expect, test } from 'vitest';
import * as nozzle from '../../src/nozzle';
import * as thermo from '../../src/thermo';
import { series, seriesOf } from '../../src/units';
import { errorOf } from '../error-code';

const near = (found: number, wanted: number, rel: number): void =>
  expect(Math.abs(found - wanted)).toBeLessThanOrEqual(rel * Math.abs(wanted));

describe('separation rules', () => {
  // Computed with Python 3.11 from 0.541·r^(−0.136) and π/(3·M) (formulas from memory).
  test('Schilling for cones: 0.3599624 at p_c/p_a 20', () =>
    near(nozzle.schillingSeparationRatio({ chamberOverAmbient: 20 }), 0.3599624, 1e-6));
  test('Stark: 0.418879 at Mach 2.5', () => near(nozzle.starkSeparationRatio({ mach: 2.5 }), 0.418879, 1e-6));

  test.each(nozzle.separationCriteria)('%s: the Mach number found satisfies the rule itself', (criterion) => {
    const rule = (mach: number, ratio: number): number => {
      switch (criterion) {
        case 'summerfield':
          return nozzle.summerfieldSeparationRatio({});
        case 'schmucker':
          return nozzle.schmuckerSeparationRatio({ mach });
        case 'kalt-badal':
          return nozzle.kaltBadalSeparationRatio({ chamberOverAmbient: ratio });
        case 'schilling':
          return nozzle.schillingSeparationRatio({ chamberOverAmbient: ratio });
        case 'stark':
          return nozzle.starkSeparationRatio({ mach });
      }
    };
    for (const gamma of [1.04, 1.2, 1.4, 1.67])
      for (const ratio of [3, 10, 50, 1000]) {
        const mach = nozzle.separationMachSi(gamma, 1 / ratio, criterion);
        near(thermo.isentropicPressureRatioSi(mach, gamma) * ratio, rule(mach, ratio), 1e-11);
      }
  });

  test('the caution says how far apart they are', () => {
    const { lowest, highest, cautions } = nozzle.separationPressure({
      gamma: 1.2,
      chamberPressure: '30 bar',
      ambientPressure: '1 bar',
    });
    // Summerfield 0.4 against Stark 0.310: computed with Python 3.11 by bisection of p(M)·30 = π/(3·M).
    near(highest.si / lowest.si, 1.2914, 1e-4);
    expect(cautions.join()).toMatch(/differ by 29 % here/);
  });

  test('a rule outside its tests is said', () => {
    const { cautions } = nozzle.separationPressure({
      gamma: 1.2,
      chamberPressure: '2.05 bar',
      ambientPressure: '1 bar',
    });
    expect(cautions.join()).toMatch(/below Mach 1\.5/);
  });
});

describe('full-flowing thrust coefficient', () => {
  // ε = 1.05, γ = 1.4: choked, exit pressure above 0.4 of ambient, and yet a shock stands inside.
  const low = {
    gamma: 1.4,
    expansionRatio: 1.05,
    chamberPressure: '1.52 bar',
    ambientPressure: '1 bar',
  } as const;
  test('says where a shock stands inside though the exit pressure is above 0.4 of ambient', () => {
    expect(nozzle.nozzleRegime(low).regime).toBe('shock in the divergent part');
    expect(nozzle.thrustCoefficient.cautions(low).join()).toMatch(/shock stands in the divergent part/);
    const sized = nozzle.sizeNozzle({
      ...low,
      target: { thrust: '50 N' },
      characteristicVelocity: '900 m/s',
    });
    expect(sized.cautions.join()).toMatch(/shock stands in the divergent part/);
  });
  test('and is silent where the nozzle flows full', () => {
    const full = { ...low, chamberPressure: '20 bar' } as const;
    expect(nozzle.thrustCoefficient.cautions(full)).toEqual([]);
  });
});

describe('sizing', () => {
  const rest = {
    chamberPressure: '5 MPa',
    ambientPressure: '101325 Pa',
    gamma: 1.13,
    characteristicVelocity: '900 m/s',
  } as const;
  const burning = { burningArea: '150 cm^2', propellantDensity: '1750 kg/m^3' } as const;

  test('by a burn law is sizing by its rate at the chamber pressure', () => {
    const law = { referenceRate: '7 mm/s', referencePressure: '1 MPa', exponent: 0.32 } as const;
    const rate = 7 * 5 ** 0.32;
    near(
      nozzle.sizeNozzle({ ...rest, target: { ...burning, burnLaw: law } }).throatArea.si,
      nozzle.sizeNozzle({ ...rest, target: { ...burning, burnRate: `${rate} mm/s` } }).throatArea.si,
      1e-13,
    );
  });

  test('passes on what the burning surface makes: ṁ = ρ·A_b·r', () => {
    const sized = nozzle.sizeNozzle({ ...rest, target: { ...burning, burnRate: '10 mm/s' } });
    near(sized.massFlow.si, 1750 * 150e-4 * 10e-3, 1e-13);
  });

  test('refuses an expansion at which no thrust is left, and says the way out', () => {
    const error = errorOf(() =>
      nozzle.sizeNozzle({
        ...rest,
        chamberPressure: '1 MPa',
        target: { thrust: '1 kN' },
        expansionRatio: 100,
      }),
    );
    expect(error?.path).toBe('expansionRatio');
    expect(error?.message).toMatch(/near the optimum/);
  });

  test('refuses a burn law without a stable pressure', () => {
    const burnLaw = { referenceRate: '7 mm/s', referencePressure: '1 MPa', exponent: 1 } as const;
    expect(errorOf(() => nozzle.sizeNozzle({ ...rest, target: { ...burning, burnLaw } }))?.path).toBe(
      'target.burnLaw.exponent',
    );
  });
});

describe('profiles at the edge', () => {
  test('of one diameter without a throat length there is none', () => {
    const error = errorOf(() =>
      nozzle.nozzleContour({
        throatDiameter: '12 mm',
        exitDiameter: '12 mm',
        inletDiameter: '12 mm',
        divergent: { shape: 'cone', halfAngle: '12 deg' },
      }),
    );
    expect(error?.path).toBe('throatLength');
  });

  test('a radius that does not fit is named, the default as well', () => {
    const small = {
      throatDiameter: '12 mm',
      exitDiameter: '14 mm',
      inletDiameter: '16 mm',
      divergent: { shape: 'cone', halfAngle: '12 deg' },
    } as const;
    expect(errorOf(() => nozzle.nozzleContour(small))?.message).toMatch(
      /throatRadius must be at most 6\.8284 mm.*, got 'the default of 12 mm'/, // rise 2 mm over 1 − cos 45°
    );
    expect(errorOf(() => nozzle.nozzleContour({ ...small, throatRadius: '30 mm' }))?.path).toBe(
      'throatRadius',
    );
  });

  test('an arc that reaches the exit leaves no cone behind it', () => {
    const halfAngle = `${(Math.acos(1 - 1 / 10) * 180) / Math.PI} deg` as const;
    const { stations } = nozzle.nozzleContour({
      throatDiameter: '12 mm',
      exitDiameter: '14 mm',
      inletDiameter: '20 mm',
      throatRadius: '3 mm',
      downstreamRadius: '9.9999999999999 mm',
      tolerance: '0.01 mm',
      divergent: { shape: 'cone', halfAngle },
    });
    expect(stations[stations.length - 1].name).toBe('end of downstream throat radius');
    near(stations[stations.length - 1].diameter.in('mm'), 14, 1e-9);
  });
});

describe('throat laws', () => {
  const time = series([0, 1, 2], 's');
  const pressures = (first: number) => seriesOf('absolute pressure', [first, 5, 5], 'MPa');
  const law = {
    law: 'pressure power',
    referenceRate: '0.1 mm/s',
    referencePressure: '5 MPa',
    exponent: 0.8,
  } as const;

  test('a power of pressure after a heating time counts from there: 2·0.1 mm/s·1 s', () => {
    const { diameter } = nozzle.throatHistory({
      throatDiameter: '12 mm',
      law: { ...law, heatingTime: '1 s' },
      time,
      chamberPressure: pressures(0),
    });
    near(diameter.at(-1).in('mm'), 12.2, 1e-12);
  });

  test('a pressure that the law cannot raise to its power is named', () => {
    const error = errorOf(() =>
      nozzle.throatHistory({
        throatDiameter: '12 mm',
        law: { ...law, exponent: -0.5 },
        time,
        chamberPressure: pressures(0),
      }),
    );
    expect(error?.path).toBe('chamberPressure');
    expect(error?.message).toMatch(/power -0\.5/);
  });
});

describe('names that do not exist', () => {
  const run = { gamma: 1.2, expansionRatio: 6, chamberPressure: '5 MPa', ambientPressure: '1 atm' } as const;
  test.each([
    // @ts-expect-error: no such rule
    [() => nozzle.nozzleRegime({ ...run, criterion: 'nobody' }), 'criterion'],
    // @ts-expect-error: no such behaviour
    [() => nozzle.nozzleRegime({ ...run, divergent: 'nothing' }), 'divergent'],
    // @ts-expect-error: no such branch
    [() => thermo.obliqueShock({ gamma: 1.4, mach: 2, deflection: '10 deg', branch: 'middle' }), 'branch'],
    [
      // @ts-expect-error: no such branch
      () => thermo.machFromMassFlowParameter({ gamma: 1.4, massFlowParameter: 0.5, branch: 'middle' }),
      'branch',
    ],
  ])('are refused by %s', (call, field) => {
    expect(errorOf(call)?.path).toBe(field);
  });
});
