// What must hold for every nozzle, whatever the numbers: no expected values but laws and limits.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as nozzle from '../../src/nozzle';
import {
  idealNozzleSi,
  thrustCoefficientPartsSi,
  thrustCoefficientSi,
} from '../../src/nozzle/ideal-nozzle-kernels';
import { separationCriteria } from '../../src/nozzle/inputs';
import { nozzleFlowSi } from '../../src/nozzle/nozzle-flow';
import * as thermo from '../../src/thermo';

const gammas = fc.double({ min: 1.04, max: 1.67, noNaN: true });
const expansions = fc.double({ min: 1.001, max: 60, noNaN: true });
const chambers = fc.double({ min: 5e5, max: 2e7, noNaN: true });
const pa = 101325;
const close = (a: number, b: number, rel: number): void =>
  expect(Math.abs(a - b)).toBeLessThanOrEqual(rel * Math.max(Math.abs(a), Math.abs(b)));

describe('thrust coefficient', () => {
  test('has its maximum at ideal expansion', () => {
    fc.assert(
      fc.property(gammas, chambers, (gamma, pc) => {
        const best = nozzle.optimumExpansionRatio.si({ gamma, chamberPressure: pc, ambientPressure: pa });
        fc.pre(best > 1.05);
        const cf = thrustCoefficientSi(gamma, best, pa / pc);
        for (const share of [0.97, 0.999, 1.001, 1.03])
          expect(thrustCoefficientSi(gamma, Math.max(1, best * share), pa / pc)).toBeLessThan(cf);
        close(
          cf,
          nozzle.optimumThrustCoefficient.si({ gamma, chamberPressure: pc, ambientPressure: pa }),
          1e-13,
        );
      }),
    );
  });

  test('in a vacuum exceeds that at ambient by ε·p_a/p_c', () => {
    fc.assert(
      fc.property(gammas, expansions, chambers, (gamma, epsilon, pc) => {
        const difference =
          thrustCoefficientSi(gamma, epsilon, 0) - thrustCoefficientSi(gamma, epsilon, pa / pc);
        // Exact but for the rounding of one subtraction of numbers of the order of 2.
        expect(Math.abs(difference - (epsilon * pa) / pc)).toBeLessThanOrEqual(
          4 * 2 ** -52 * Math.max(2, (epsilon * pa) / pc),
        );
      }),
    );
  });

  test('times p_c·A_t equals the thrust from the momentum balance', () => {
    fc.assert(
      fc.property(gammas, expansions, chambers, (gamma, epsilon, pc) => {
        const gasConstant = 210;
        const hot = 1700;
        const mach = thermo.machFromAreaRatio.si({ areaRatio: epsilon, gamma, branch: 'supersonic' });
        const cold = hot * thermo.isentropicTemperatureRatio.si({ mach, gamma });
        const exitPressure = pc * thermo.isentropicPressureRatio.si({ mach, gamma });
        const throat = 1e-4;
        const flow = thermo.chokedMassFlow.si({
          stagnationPressure: pc,
          stagnationTemperature: hot,
          area: throat,
          gamma,
          gasConstant,
        });
        const force = nozzle.momentumThrust.si({
          massFlow: flow,
          exhaustVelocity: mach * Math.sqrt(gamma * gasConstant * cold),
          exitPressure,
          ambientPressure: pa,
          exitArea: epsilon * throat,
        });
        const cf = thrustCoefficientSi(gamma, epsilon, pa / pc);
        expect(Math.abs(cf * pc * throat - force)).toBeLessThanOrEqual(1e-12 * 2 * pc * throat);
        const { momentum, pressure } = thrustCoefficientPartsSi(gamma, epsilon, pa / pc);
        close(momentum * pc * throat, flow * mach * Math.sqrt(gamma * gasConstant * cold), 1e-12);
        expect(Math.abs(pressure * pc * throat - (exitPressure - pa) * epsilon * throat)).toBeLessThanOrEqual(
          1e-12 * 2 * pc * throat,
        );
      }),
    );
  });

  test('tends to the maximum as the expansion grows into a vacuum', () => {
    for (const gamma of [1.2, 1.3, 1.4])
      close(thrustCoefficientSi(gamma, 1e6, 0), nozzle.maximumThrustCoefficient.si({ gamma }), 0.05);
  });
});

describe('regimes', () => {
  const out = new Float64Array(5);

  test('run in order as the back pressure rises, with thrust and mass flow finite and mass flow never above choked', () => {
    const order = [
      'under-expanded',
      'ideally expanded',
      'over-expanded',
      'separated',
      'shock in the divergent section',
      'unchoked',
      'no flow',
    ];
    // A list of what is wrong, since a call of expect for each of a hundred thousand points takes seconds.
    const wrong: string[] = [];
    for (const gamma of [1.04, 1.13, 1.2, 1.4, 1.67])
      for (const epsilon of [1, 1.2, 2, 6, 20])
        for (const criterion of separationCriteria)
          for (const divergent of ['recovers', 'stalled'] as const) {
            const fixed = idealNozzleSi(gamma, epsilon);
            let stage = 0;
            for (let ratio = 0.002; ratio <= 1.01; ratio += 0.002) {
              const regime = nozzleFlowSi(fixed, ratio, criterion, out, divergent);
              const now = order.indexOf(regime);
              const lawful = out.every(Number.isFinite) && out[1] <= 1 && out[0] >= 0 && now >= stage;
              if (!lawful)
                wrong.push(
                  `${criterion} ${divergent}, gamma ${gamma}, epsilon ${epsilon}, ${ratio}: ${regime} after ${order[stage]}, ${out}`,
                );
              stage = now;
            }
          }
    expect(wrong).toEqual([]);
  });

  test('a stalled nozzle never gives more thrust as ambient rises, and unchokes at the critical ratio', () => {
    for (const gamma of [1.13, 1.4]) {
      const fixed = idealNozzleSi(gamma, 8);
      let last = Infinity;
      for (let ratio = 0; ratio < 1; ratio += 0.001) {
        const regime = nozzleFlowSi(fixed, ratio, 'summerfield', out, 'stalled');
        // At unchoking the jet's wall pressure steps from 0.4 of ambient to ambient itself, a rise that the rule leaves open.
        if (Math.abs(ratio - fixed.criticalPressureRatio) > 0.002)
          expect(out[0]).toBeLessThanOrEqual(last * (1 + 1e-9) + 0.1 * Number(regime === 'unchoked'));
        expect(regime === 'unchoked').toBe(ratio >= fixed.criticalPressureRatio);
        last = out[0];
      }
    }
  });

  test('thrust is continuous where the flow begins to separate', () => {
    fc.assert(
      fc.property(gammas, fc.double({ min: 3, max: 30, noNaN: true }), (gamma, epsilon) => {
        const fixed = idealNozzleSi(gamma, epsilon);
        const onset = fixed.exitPressureRatio / 0.4;
        fc.pre(onset < fixed.shockAtExit);
        nozzleFlowSi(fixed, onset * (1 - 1e-9), 'summerfield', out);
        const before = out[0];
        expect(nozzleFlowSi(fixed, onset * (1 + 1e-9), 'summerfield', out)).toBe('separated');
        expect(Math.abs(out[0] - before)).toBeLessThan(1e-6);
      }),
    );
  });

  test('a shock inside conserves mass and puts the exit at ambient pressure', () => {
    fc.assert(
      fc.property(
        gammas,
        fc.double({ min: 1.2, max: 3, noNaN: true }),
        fc.double({ min: 0.05, max: 0.95, noNaN: true }),
        (gamma, epsilon, share) => {
          const fixed = idealNozzleSi(gamma, epsilon);
          const ratio =
            fixed.maxChokedBackPressureRatio -
            share * Math.min(0.1, fixed.maxChokedBackPressureRatio - fixed.shockAtExit);
          fc.pre(nozzleFlowSi(fixed, ratio, 'summerfield', out) === 'shock in the divergent section');
          const stagnation = ratio / thermo.isentropicPressureRatio.si({ mach: out[2], gamma });
          // Choked flow through the exit at the lower stagnation pressure: Γ = p02/p01·parameter(M_e)·ε.
          close(
            stagnation * thermo.massFlowParameter.si({ mach: out[2], gamma }) * epsilon,
            fixed.vandenkerckhove,
            1e-9,
          );
          const mach = thermo.machFromAreaRatio.si({ areaRatio: out[4], gamma, branch: 'supersonic' });
          close(thermo.normalShockStagnationPressureRatio.si({ mach, gamma }), stagnation, 1e-9);
        },
      ),
    );
  });
});

describe('two-phase flow', () => {
  test('without droplets every limit is the gas alone; with them the bounds are in order', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 0.6, noNaN: true }),
        fc.double({ min: 0.005, max: 0.3, noNaN: true }),
        (x, ratio) => {
          const at = nozzle.twoPhaseLagBounds({
            condensedMassFraction: x,
            gasSpecificHeat: '1960 J/(kg*K)',
            condensedSpecificHeat: '1550 J/(kg*K)',
            gasConstant: '231 J/(kg*K)',
            temperature: '1700 K',
            pressureRatio: ratio,
          });
          expect(at.noLag.si).toBeGreaterThanOrEqual(at.thermalLag.si * (1 - 1e-12));
          expect(at.noLag.si).toBeGreaterThanOrEqual(at.velocityLag.si * (1 - 1e-12));
          expect(at.thermalLag.si).toBeGreaterThanOrEqual(at.fullLag.si * (1 - 1e-12));
          const mixture = thermo.twoPhaseMixture({
            condensedMassFraction: x,
            gasSpecificHeat: '1960 J/(kg*K)',
            condensedSpecificHeat: '1550 J/(kg*K)',
            gasMolarMass: '35.993 g/mol',
          });
          // The no-lag limit is the perfect gas of the mixture; R here is rounded to 231, hence the tolerance.
          const ideal = nozzle.exhaustVelocity.si({
            gamma: mixture.gamma,
            gasConstant: mixture.gasConstant.si,
            temperature: 1700,
            chamberPressure: 1,
            exitPressure: ratio,
          });
          close(at.noLag.si, ideal, 1e-4);
        },
      ),
    );
  });
});

describe('trace optimum', () => {
  test('no other expansion ratio gives more impulse over the trace', async () => {
    const { series, seriesOf } = await import('../../src/units');
    const t = [0, 0.2, 1, 1.5, 2];
    const p = [3, 5, 7, 6, 2];
    const best = nozzle.optimumExpansionOverTrace({
      gamma: 1.14,
      time: series(t, 's'),
      chamberPressure: seriesOf('absolute pressure', p, 'MPa'),
      ambientPressure: '101325 Pa',
    });
    const impulse = (epsilon: number): number => {
      let sum = 0;
      for (let i = 1; i < t.length; i++)
        for (const j of [i - 1, i])
          sum += 0.5 * (t[i] - t[i - 1]) * p[j] * 1e6 * thrustCoefficientSi(1.14, epsilon, pa / (p[j] * 1e6));
      return sum;
    };
    const most = impulse(best.expansionRatio);
    for (const share of [0.9, 0.99, 1.01, 1.1])
      expect(impulse(best.expansionRatio * share)).toBeLessThan(most);
  });
});
