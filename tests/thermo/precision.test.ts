// Closed forms against a 60-digit evaluation of the textbook equations with decimal.js 10.6: the expected values are computed,
// the equations are those of NACA Report 1135 (1953) and Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), ch. 3.
import type { Decimal } from 'decimal.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as nozzle from '../../src/nozzle';
import { vacuumThrustCoefficientAtSi } from '../../src/nozzle/ideal-nozzle-kernels';
import * as thermo from '../../src/thermo';
import { exact, ulps } from './exact-decimal';

const limit = 8;
const runs = { numRuns: 400 };
const gammas = fc.double({ min: 1.01, max: 1.67, noNaN: true });
// Mach numbers from 0 to 50, with as many near 0 and near 1 as elsewhere.
const machs = fc.oneof(
  fc.double({ min: 1e-12, max: 50, noNaN: true }),
  fc.double({ min: -12, max: 0, noNaN: true }).map((e) => 10 ** e),
  fc.double({ min: -13, max: -1, noNaN: true }).map((e) => 1 + 10 ** e),
  fc.double({ min: -13, max: -1, noNaN: true }).map((e) => 1 - 10 ** e),
);
const supersonic = machs.filter((m) => m > 1);
const one = exact(1);

interface Point {
  readonly m: Decimal;
  readonly g: Decimal;
  /** T0/T. */
  readonly b: Decimal;
  /** 1/(γ − 1). */
  readonly n: Decimal;
  /** T0/T at Mach 1. */
  readonly b1: Decimal;
}
function at(mach: number, gamma: number): Point {
  const m = exact(mach);
  const g = exact(gamma);
  const t = g.minus(1).div(2);
  return { m, g, b: m.mul(m).mul(t).plus(1), n: one.div(g.minus(1)), b1: t.plus(1) };
}
const gammaFunction = ({ g, b1, n }: Point): Decimal => g.sqrt().div(b1.pow(n.plus(0.5)));

type Form = readonly [
  name: string,
  found: (mach: number, gamma: number) => number,
  wanted: (p: Point) => Decimal,
];

const everywhere: readonly Form[] = [
  ['T/T0', (mach, gamma) => thermo.isentropicTemperatureRatio.si({ mach, gamma }), ({ b }) => one.div(b)],
  [
    'p/p0',
    (mach, gamma) => thermo.isentropicPressureRatio.si({ mach, gamma }),
    ({ b, n }) => b.pow(n.plus(1).neg()),
  ],
  ['ρ/ρ0', (mach, gamma) => thermo.isentropicDensityRatio.si({ mach, gamma }), ({ b, n }) => b.pow(n.neg())],
  [
    'A/A*',
    (mach, gamma) => thermo.areaRatio.si({ mach, gamma }),
    ({ m, b, b1, n }) => b.div(b1).pow(n.plus(0.5)).div(m),
  ],
  [
    'mass-flow parameter',
    (mach, gamma) => thermo.massFlowParameter.si({ mach, gamma }),
    ({ m, g, b, n }) =>
      g
        .sqrt()
        .mul(m)
        .div(b.pow(n.plus(0.5))),
  ],
  [
    'characteristic Mach number',
    (mach, gamma) => thermo.characteristicMach.si({ mach, gamma }),
    ({ m, b, b1 }) => m.mul(b1.div(b).sqrt()),
  ],
  ['p*/p0', (_, gamma) => thermo.criticalPressureRatio.si({ gamma }), ({ b1, n }) => b1.pow(n.plus(1).neg())],
  ['ρ*/ρ0', (_, gamma) => thermo.criticalDensityRatio.si({ gamma }), ({ b1, n }) => b1.pow(n.neg())],
  ['Γ', (_, gamma) => thermo.vandenkerckhove.si({ gamma }), gammaFunction],
  [
    'c*',
    (_, gamma) => thermo.idealCharacteristicVelocity.si({ gamma, gasConstant: 200, temperature: 1800 }),
    (p) => exact(360000).sqrt().div(gammaFunction(p)),
  ],
  [
    'greatest C_F',
    (_, gamma) => nozzle.maximumThrustCoefficient.si({ gamma }),
    (p) => gammaFunction(p).mul(p.g.mul(2).mul(p.n).sqrt()),
  ],
];

const atan = (x: Decimal): Decimal => x.atan();
const beyondMach1: readonly Form[] = [
  [
    'p2/p1',
    (mach, gamma) => thermo.normalShockPressureRatio.si({ mach, gamma }),
    ({ m, g }) => m.mul(m).minus(1).mul(g.mul(2)).div(g.plus(1)).plus(1),
  ],
  [
    'ρ2/ρ1',
    (mach, gamma) => thermo.normalShockDensityRatio.si({ mach, gamma }),
    ({ m, b, b1 }) => m.mul(m).mul(b1).div(b),
  ],
  [
    'M2',
    (mach, gamma) => thermo.machBehindNormalShock.si({ mach, gamma }),
    ({ m, g, b }) => b.div(m.mul(m).mul(g).minus(g.minus(1).div(2))).sqrt(),
  ],
  [
    'p02/p01',
    (mach, gamma) => thermo.normalShockStagnationPressureRatio.si({ mach, gamma }),
    ({ m, g, b, b1, n }) => {
      const density = m.mul(m).mul(b1).div(b);
      const pressure = m.mul(m).minus(1).mul(g.mul(2)).div(g.plus(1)).plus(1);
      return density.pow(n.plus(1)).mul(pressure.pow(n.neg()));
    },
  ],
  [
    'T2/T1',
    (mach, gamma) => thermo.normalShockTemperatureRatio.si({ mach, gamma }),
    ({ m, g, b, b1 }) => m.mul(m).minus(1).mul(g.mul(2)).div(g.plus(1)).plus(1).mul(b).div(m.mul(m).mul(b1)),
  ],
  [
    'Pitot p02/p1',
    (mach, gamma) => thermo.pitotPressureRatio.si({ mach, gamma }),
    ({ m, g, b1, n }) => {
      const square = m.mul(m);
      const below = square.mul(g.mul(2)).minus(g.minus(1));
      return square.mul(b1).pow(n.plus(1)).mul(g.plus(1).div(below).pow(n));
    },
  ],
  ['Mach angle', (mach) => thermo.machAngle.si({ mach }), ({ m }) => atan(one.div(m.mul(m).minus(1).sqrt()))],
  [
    'Prandtl-Meyer angle',
    (mach, gamma) => thermo.prandtlMeyerAngle.si({ mach, gamma }),
    ({ m, g }) => {
      const s = m.mul(m).minus(1).sqrt();
      const root = g.plus(1).div(g.minus(1)).sqrt();
      return root.mul(atan(s.div(root))).minus(atan(s));
    },
  ],
  [
    'vacuum C_F of a nozzle that ends at M',
    (mach, gamma) => vacuumThrustCoefficientAtSi(mach, gamma, thermo.vandenkerckhove.si({ gamma })),
    (p) => {
      const momentum = gammaFunction(p).mul(p.m).mul(p.g.div(p.b).sqrt());
      const pressure = p.b.pow(p.n.plus(1).neg());
      const area = p.b.div(p.b1).pow(p.n.plus(0.5)).div(p.m);
      return momentum.plus(pressure.mul(area));
    },
  ],
];

function holds([, found, wanted]: Form, machNumbers: fc.Arbitrary<number>): void {
  fc.assert(
    fc.property(machNumbers, gammas, (mach, gamma) => {
      const error = ulps(found(mach, gamma), wanted(at(mach, gamma)));
      expect(error, `at Mach ${mach}, gamma ${gamma}`).toBeLessThanOrEqual(limit);
    }),
    runs,
  );
}

describe('closed forms within 8 units in the last place', () => {
  test.each(everywhere)('%s for Mach 0 to 50', (...form) => holds(form, machs));
  test.each(beyondMach1)('%s for Mach 1 to 50', (...form) => holds(form, supersonic));

  test('the corners of the range', () => {
    for (const form of everywhere)
      for (const gamma of [1.01, 1.04, 1.4, 1.67])
        for (const mach of [5e-324 ** 0.25, 1 - 2 ** -53, 1, 1 + 2 ** -52, 50])
          expect(ulps(form[1](mach, gamma), form[2](at(mach, gamma))), form[0]).toBeLessThanOrEqual(limit);
  });

  test('γ a few units above 1 still gives what the limit of an isothermal gas says', () => {
    // ρ/ρ0 → exp(−M²/2) as γ → 1; the difference is of the order γ − 1.
    for (const mach of [0.1, 1, 3])
      expect(thermo.isentropicDensityRatio.si({ mach, gamma: 1 + 2 ** -50 })).toBeCloseTo(
        Math.exp((-mach * mach) / 2),
        12,
      );
  });

  test('the optimum thrust coefficient and the exhaust velocity over pressure ratios', () => {
    fc.assert(
      fc.property(gammas, fc.double({ min: -8, max: -0.4, noNaN: true }), (gamma, exponent) => {
        const ratio = 10 ** exponent;
        const { g, b1, n } = at(1, gamma);
        const drop = one.minus(exact(ratio).pow(g.minus(1).div(g)));
        const cf = gammaFunction({ m: one, g, b: b1, b1, n }).mul(g.mul(2).mul(n).mul(drop).sqrt());
        const found = nozzle.optimumThrustCoefficient.si({
          gamma,
          chamberPressure: 1,
          ambientPressure: ratio,
        });
        expect(ulps(found, cf)).toBeLessThanOrEqual(limit);
      }),
      runs,
    );
  });
});

describe('inverses', () => {
  test('Mach from the area ratio: the root of the exact equation within 16 ulp, both branches', () => {
    // The exact root of the given area, by Newton's method in decimals from the double found.
    const areas = fc.oneof(
      fc.double({ min: 0, max: 6, noNaN: true }).map((e) => 10 ** e),
      fc.double({ min: -12, max: 0, noNaN: true }).map((e) => 1 + 10 ** e),
    );
    fc.assert(
      fc.property(areas, gammas, fc.boolean(), (area, gamma, fast) => {
        fc.pre(area > 1);
        const mach = thermo.machFromAreaRatio.si({
          areaRatio: area,
          gamma,
          branch: fast ? 'supersonic' : 'subsonic',
        });
        expect(mach > 1).toBe(fast);
        const { g } = at(mach, gamma);
        const t = g.minus(1).div(2);
        const power = t.plus(1).div(t.mul(2));
        let m = exact(mach);
        for (let i = 0; i < 2; i++) {
          const b = m.mul(m).mul(t).plus(1);
          const f = b.div(t.plus(1)).ln().mul(power).minus(m.ln()).minus(exact(area).ln());
          m = m.minus(f.mul(m).mul(b).div(m.mul(m).minus(1)));
        }
        // 16, not 8: at A/A* = 1e6 and γ = 1.67 the logarithm of the area, 16, is rounded before a slope of 3 divides it.
        expect(ulps(mach, m), `A/A* ${area}, gamma ${gamma}`).toBeLessThanOrEqual(16);
      }),
      { numRuns: 300 },
    );
  });

  test('Mach comes back within 1e-13 through every ratio, or within what the ratio rounded to a double still determines', () => {
    const eps = 2 ** -52;
    fc.assert(
      fc.property(machs, gammas, (mach, gamma) => {
        const back = (name: string, found: number, condition: number): void => {
          const allowed = Math.max(1e-13, 8 * eps * condition);
          expect(Math.abs(found / mach - 1), `${name} at Mach ${mach}, gamma ${gamma}`).toBeLessThanOrEqual(
            allowed,
          );
        };
        const square = mach * mach;
        const b = 1 + ((gamma - 1) / 2) * square;
        const ratios = { mach, gamma };
        // d ln p/d ln M = −γM²/B and so on: the ratio's own rounding is magnified by the reciprocal.
        back(
          'p/p0',
          thermo.machFromPressureRatio.si({
            pressureRatio: thermo.isentropicPressureRatio.si(ratios),
            gamma,
          }),
          b / (gamma * square),
        );
        back(
          'T/T0',
          thermo.machFromTemperatureRatio.si({
            temperatureRatio: thermo.isentropicTemperatureRatio.si(ratios),
            gamma,
          }),
          b / ((gamma - 1) * square),
        );
        back(
          'ρ/ρ0',
          thermo.machFromDensityRatio.si({ densityRatio: thermo.isentropicDensityRatio.si(ratios), gamma }),
          b / square,
        );
        const area = thermo.areaRatio.si({ mach, gamma });
        const slope = Math.abs(square - 1) / b;
        // Near Mach 1 the area is flat: below |M − 1| of about 1e-8 the double nearest to A/A* is 1 itself.
        const flat = slope < 1e-7 ? Math.sqrt(eps) * 8 : 0;
        const found =
          area === 1
            ? 1
            : thermo.machFromAreaRatio.si({
                areaRatio: Math.max(1, area),
                gamma,
                branch: mach > 1 ? 'supersonic' : 'subsonic',
              });
        expect(Math.abs(found / mach - 1)).toBeLessThanOrEqual(
          Math.max(1e-13, flat, (8 * eps) / Math.max(slope, 1e-9)),
        );
      }),
      runs,
    );
  });

  test('Mach comes back from the Prandtl-Meyer angle', () => {
    fc.assert(
      fc.property(supersonic, gammas, (mach, gamma) => {
        const found = thermo.machFromPrandtlMeyerAngle.si({
          angle: thermo.prandtlMeyerAngle.si({ mach, gamma }),
          gamma,
        });
        // At large Mach the angle saturates: dν = 2/(γ−1)·dM/M² there.
        const condition = (1 + mach) * 64 * 2 ** -52;
        expect(Math.abs(found / mach - 1)).toBeLessThanOrEqual(Math.max(1e-13, condition));
      }),
      runs,
    );
  });
});
