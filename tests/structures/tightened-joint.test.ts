import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demoMotor, motorProblems, parseMotor, review } from '../../src/index';
import {
  bendingOverShear,
  designJoint,
  type RadialBoltJoint,
  reviewJoint,
  tightenedBoltStress,
  tightenedShearLoad,
} from '../../src/structures';
import { codeAndPathOf } from '../error-code';

const near = (found: number, wanted: number, tolerance = 1e-6): void =>
  expect(Math.abs(found - wanted), `${found}, not ${wanted}`).toBeLessThanOrEqual(
    tolerance * Math.abs(wanted),
  );

describe('the shear load at which a tightened bolt yields', () => {
  test('is where tension, torsion, bending and shear together reach the yield strength', () =>
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 0.8, noNaN: true }),
        fc.double({ min: 0, max: 0.3, noNaN: true }),
        fc.double({ min: 0, max: 2, noNaN: true }),
        (tensionPart, torsionPart, bendingRatio) => {
          const [yieldStrength, area] = [640e6, 14e-6];
          const [tension, torsion] = [tensionPart * yieldStrength, torsionPart * yieldStrength];
          const load = tightenedShearLoad.si({ tension, torsion, yieldStrength, area, bendingRatio });
          const shear = load / area;
          near(
            tightenedBoltStress.si({ tension, torsion, shear, bending: bendingRatio * shear }),
            yieldStrength,
            1e-9,
          );
        },
      ),
    ));

  test('is zero where tightening alone yields, and falls with preload', () => {
    const bolt = { torsion: 0, yieldStrength: 600e6, area: 14e-6 };
    expect(tightenedShearLoad.si({ ...bolt, tension: 601e6 })).toBe(0);
    expect(tightenedShearLoad.si({ ...bolt, tension: 300e6 })).toBeLessThan(
      tightenedShearLoad.si({ ...bolt, tension: 200e6 }),
    );
    expect(bendingOverShear.si({ arm: 0, area: 14e-6, rootDiameter: 4e-3 })).toBe(0);
  });
});

const joint: RadialBoltJoint = {
  pressure: '6 MPa',
  tube: { outsideDiameter: '76 mm', wall: '3 mm', material: '6061-T6 drawn tube' },
  closureMaterial: '6061-T6 bar',
  thread: 'M5',
  boltClass: '12.9',
  count: 12,
  edgeDistance: '12 mm',
};
const idsOf = (one: RadialBoltJoint) => reviewJoint(one).modes.map(({ id }) => id);

describe('radial bolts with preload', () => {
  test('by hand: M5 of 12.9 at 4 kN ±25 %, the values of the worked case', () => {
    // F_max = 5 kN: σ = 352.546 MPa on 14.1825 mm² (case radial-screw-preload-and-shear). Torque in the thread by Shigley 8-26,
    // f 0.15: 5 kN·4.480385 mm/2·(0.0568363 + 0.1732051)/(1 − 0.0098443) = 2.60230 N·m, half of it kept: τ = 102.119 MPa.
    const { PI, sqrt } = Math;
    const area = (PI / 4) * (5 - ((13 * sqrt(3)) / 24) * 0.8) ** 2;
    const [d2, d3] = [5 - ((3 * sqrt(3)) / 8) * 0.8, 5 - ((17 * sqrt(3)) / 24) * 0.8];
    const [lead, flank] = [0.8 / (PI * d2), 0.15 / Math.cos(PI / 6)];
    const torque = (((5000 * d2) / 2) * (lead + flank)) / (1 - lead * flank);
    near(torque, 2602.3, 1e-4);
    const torsion = (8 * torque) / (PI * d3 ** 3);
    // √(σ² + 3·(τ_t + V/A)²) = 1100 MPa.
    const shear = sqrt((1100 ** 2 - (5000 / area) ** 2) / 3) - torsion;
    const load = (6 * PI * 70 ** 2) / 4 / 12;
    const found = reviewJoint({ ...joint, preload: '4 kN', tightening: 'torque wrench' });
    const mode = found.modes.find(({ id }) => id === 'bolt-combined-yield');
    near(1 + (mode?.marginOfSafety ?? Number.NaN), (shear * area) / (1.5 * load));
    near(mode?.applied.in('N') ?? Number.NaN, load);
    expect(String(mode?.explain())).toContain('distortion-energy');
  });

  test('without preload there is no such mode, and no caution', () => {
    expect(idsOf(joint)).not.toContain('bolt-combined-yield');
    expect(reviewJoint(joint).cautions.join(' ')).not.toContain('clamp');
    expect(reviewJoint({ ...joint, preload: '1 kN' }).cautions.join(' ')).toContain('almost no useful clamp');
    expect(reviewJoint({ ...joint, preload: '0 N' }).modes.length).toBe(reviewJoint(joint).modes.length);
  });

  test('a torque counts as the preload of its nut factor', () => {
    // T = K·F·d = 0.2·4 kN·5 mm (Shigley 8-27).
    const marginOf = (one: RadialBoltJoint) =>
      reviewJoint(one).modes.find(({ id }) => id === 'bolt-combined-yield')?.marginOfSafety ?? Number.NaN;
    near(
      marginOf({ ...joint, torque: '4 N*m', finish: 'zinc plated' }),
      marginOf({ ...joint, preload: '4 kN' }),
      1e-9,
    );
  });

  test('preload that yields the bolts leaves no margin; preload and torque exclude each other', () => {
    const over = reviewJoint({ ...joint, preload: '13 kN' });
    expect(over.modes.find(({ id }) => id === 'bolt-combined-yield')?.marginOfSafety).toBe(-1);
    expect(over.passes).toBe(false);
    expect(codeAndPathOf(() => reviewJoint({ ...joint, preload: '4 kN', torque: '4 N*m' }))).toBe(
      'contradiction torque',
    );
    expect(codeAndPathOf(() => reviewJoint({ ...joint, torque: '60 N*m' }))).toBe('out-of-domain torque');
  });

  test('a design with preload holds when it is reviewed with it', () => {
    const { pressure, tube, closureMaterial } = joint;
    const parts = { pressure, tube, closureMaterial, boltClass: '8.8', preload: '2.5 kN' } as const;
    const { feasible } = designJoint({ ...parts, threads: ['M5', 'M6'], counts: [8, 24] });
    expect(feasible.length).toBeGreaterThan(0);
    for (const { bolts, marginOfSafety } of feasible.slice(0, 5))
      near(reviewJoint({ ...parts, ...bolts }).governing.marginOfSafety + 1, marginOfSafety + 1, 1e-9);
  });
});

test('the motor document has the preload of its radial bolts', () => {
  const motor = demoMotor();
  const withTorque = (torque: string): unknown => {
    const json = JSON.parse(JSON.stringify(motor));
    json.closures.head.joint.torque = torque;
    json.closures.head.joint.tightening = 'torque, lubricated';
    json.closures.head.joint.finish = 'lubricated';
    return json;
  };
  expect(motorProblems(withTorque('1 N*m'))).toEqual([]);
  const both = JSON.parse(JSON.stringify(withTorque('1 N*m')));
  both.closures.head.joint.preload = '1 kN';
  expect(motorProblems(both).map(({ path, code }) => `${code} ${path}`)).toEqual([
    'contradiction closures.head.joint.torque',
  ]);
  const head = (torque: string) =>
    review(parseMotor(withTorque(torque))).margins.find(
      ({ id, part }) => id === 'bolt-combined-yield' && part === 'head-joint',
    )?.marginOfSafety ?? Number.NaN;
  expect(head('1 N*m')).toBeGreaterThan(head('2 N*m'));
});
