// What must hold of every flow and every shock, whatever the numbers: no expected values but laws and limits.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as thermo from '../../src/thermo';

const gammas = fc.double({ min: 1.04, max: 1.67, noNaN: true });
const close = (a: number, b: number, rel: number): void =>
  expect(Math.abs(a - b)).toBeLessThanOrEqual(rel * Math.max(Math.abs(a), Math.abs(b)));

describe('isentropic flow', () => {
  test('ratios fall, and the area first falls then rises, as Mach rises', () => {
    fc.assert(
      fc.property(gammas, fc.double({ min: 0.01, max: 40, noNaN: true }), (gamma, mach) => {
        const next = mach * 1.001;
        expect(thermo.isentropicTemperatureRatio.si({ mach: next, gamma })).toBeLessThan(
          thermo.isentropicTemperatureRatio.si({ mach, gamma }),
        );
        expect(thermo.isentropicPressureRatio.si({ mach: next, gamma })).toBeLessThan(
          thermo.isentropicPressureRatio.si({ mach, gamma }),
        );
        expect(thermo.isentropicDensityRatio.si({ mach: next, gamma })).toBeLessThan(
          thermo.isentropicDensityRatio.si({ mach, gamma }),
        );
        if (next < 1)
          expect(thermo.areaRatio.si({ mach: next, gamma })).toBeLessThan(
            thermo.areaRatio.si({ mach, gamma }),
          );
        if (mach > 1)
          expect(thermo.areaRatio.si({ mach: next, gamma })).toBeGreaterThan(
            thermo.areaRatio.si({ mach, gamma }),
          );
      }),
    );
  });

  test('mass is conserved: the mass-flow parameter times the area ratio is its value at Mach 1', () => {
    fc.assert(
      fc.property(gammas, fc.double({ min: 0.01, max: 40, noNaN: true }), (gamma, mach) => {
        close(
          thermo.massFlowParameter.si({ mach, gamma }) * thermo.areaRatio.si({ mach, gamma }),
          thermo.vandenkerckhove.si({ gamma }),
          1e-14,
        );
      }),
    );
  });

  test('each branch is monotonic from 1 + 1e-12 to 1e6', () => {
    for (const gamma of [1.04, 1.2, 1.4, 1.67]) {
      let slow = 1;
      let fast = 1;
      for (let e = -12; e <= 6; e += 0.05) {
        const area = e < 0 ? 1 + 10 ** e : 10 ** e + (e === 0 ? 1 : 0);
        if (area <= 1.0001 && e > -0.1) continue;
        const below = thermo.machFromAreaRatio.si({ areaRatio: area, gamma, branch: 'subsonic' });
        const above = thermo.machFromAreaRatio.si({ areaRatio: area, gamma, branch: 'supersonic' });
        if (e < 0 || area > 2.1) {
          expect(below).toBeLessThan(slow);
          expect(above).toBeGreaterThan(fast);
          slow = below;
          fast = above;
        }
      }
    }
  });
});

describe('shocks', () => {
  const fast = fc.oneof(
    fc.double({ min: 1.0001, max: 30, noNaN: true }),
    fc.double({ min: -7, max: -1, noNaN: true }).map((e) => 1 + 10 ** e),
  );

  test('entropy never falls, and grows with the cube of a weak shock', () => {
    fc.assert(
      fc.property(gammas, fast, (gamma, mach) => {
        const shock = thermo.normalShock({ gamma, mach });
        expect(shock.entropyRise).toBeGreaterThan(0);
        expect(shock.stagnationPressureRatio).toBeLessThanOrEqual(1);
        expect(shock.machBehind).toBeLessThan(1);
        const x = (mach - 1) * (mach + 1);
        // Landau & Lifshitz, Fluid Mechanics, weak shocks: Δs/R → 2γ·(M²−1)³/(3·(γ+1)²).
        if (x < 1e-3) close(shock.entropyRise, (2 * gamma * x ** 3) / (3 * (gamma + 1) ** 2), 3 * x);
        if (x > 0.1) close(shock.entropyRise, -Math.log(shock.stagnationPressureRatio), 1e-9);
      }),
    );
  });

  test('mass, momentum and energy are conserved', () => {
    fc.assert(
      fc.property(gammas, fast, (gamma, mach) => {
        const s = thermo.normalShock({ gamma, mach });
        const behind = s.machBehind;
        const speed = (behind / mach) * Math.sqrt(s.temperatureRatio); // u₂/u₁
        close(s.densityRatio * speed, 1, 1e-13);
        close(1 + gamma * mach * mach, s.pressureRatio * (1 + gamma * behind * behind), 1e-13);
        const total = (m: number): number => 1 + ((gamma - 1) / 2) * m * m;
        close(total(mach), s.temperatureRatio * total(behind), 1e-13);
      }),
    );
  });

  test('a normal shock is found again from either of its pressures', () => {
    fc.assert(
      fc.property(gammas, fc.double({ min: 1.01, max: 20, noNaN: true }), (gamma, mach) => {
        const { pressureRatio, stagnationPressureRatio } = thermo.normalShock({ gamma, mach });
        close(thermo.normalShock({ gamma, pressureRatio }).mach, mach, 1e-13);
        close(thermo.normalShock({ gamma, stagnationPressureRatio }).mach, mach, 1e-9); // the loss is cubic near Mach 1
      }),
    );
  });

  test('Mach comes back from the temperature ratio of a shock and from the Pitot pressure', () => {
    fc.assert(
      fc.property(gammas, fc.double({ min: 1.01, max: 50, noNaN: true }), (gamma, mach) => {
        const { temperatureRatio, pitotPressureRatio } = thermo.normalShock({ gamma, mach });
        // d ln(T2/T1)/d ln M1 is at least 4(γ−1)/(γ+1) at Mach 1 and 2 beyond: γ near 1 costs digits.
        close(
          thermo.normalShockTemperatureRatio.solveFor('mach', { result: temperatureRatio, gamma }),
          mach,
          8 * 2 ** -52 * Math.max(1, 1 / (gamma - 1)),
        );
        close(thermo.pitotPressureRatio.solveFor('mach', { result: pitotPressureRatio, gamma }), mach, 1e-14);
      }),
    );
  });

  test('Mach comes back from the mass-flow parameter on both branches', () => {
    fc.assert(
      fc.property(gammas, fc.double({ min: 1e-3, max: 20, noNaN: true }), (gamma, mach) => {
        fc.pre(Math.abs(mach - 1) > 1e-3);
        const massFlowParameter = thermo.massFlowParameter({ mach, gamma });
        fc.pre(massFlowParameter > 0);
        const branch = mach < 1 ? 'subsonic' : 'supersonic';
        close(thermo.machFromMassFlowParameter({ massFlowParameter, gamma, branch }), mach, 1e-12);
      }),
    );
  });

  test('weak and strong oblique shocks turn the stream alike and meet at detachment', () => {
    fc.assert(
      fc.property(
        gammas,
        fc.double({ min: 1.2, max: 15, noNaN: true }),
        fc.double({ min: 0.01, max: 0.999, noNaN: true }),
        (gamma, mach, share) => {
          const detached = thermo.detachmentShockAngle({ mach, gamma });
          const greatest = thermo.obliqueShockDeflection({ mach, gamma, shockAngle: detached });
          const deflection = greatest.times(share);
          const [weak, strong] = (['weak', 'strong'] as const).map((branch) =>
            thermo.obliqueShock({ mach, gamma, deflection, branch }),
          );
          expect(weak.shockAngle.si).toBeLessThan(detached.si);
          expect(strong.shockAngle.si).toBeGreaterThan(detached.si);
          for (const { shockAngle } of [weak, strong])
            close(thermo.obliqueShockDeflection({ mach, gamma, shockAngle }).si, deflection.si, 1e-10);
          expect(weak.stagnationPressureRatio).toBeGreaterThan(strong.stagnationPressureRatio);
        },
      ),
    );
  });
});
