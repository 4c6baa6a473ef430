import { describe, expect, test } from 'vitest';
import { fitBurnLaw } from '../../../src/ballistics';
import { fitCalibration, motorClass } from '../../../src/firing';
import { burnEdges } from '../../../src/firing/analysis/burn-edges';
import { integralBetween } from '../../../src/firing/analysis/trace-values';
import { peakFromShoulders } from '../../../src/firing/saturation/shoulders';
import { q } from '../../../src/units';
import { checkValue } from '../../cases/check-value';
import { caseById } from '../../cases/every-case';
import { si } from '../../cases/read-case';

// Every expected value: tests/cases/firing.json, with its source and provenance there.
const list = (value: unknown): readonly number[] => (Array.isArray(value) ? value.map(Number) : []);
describe('definitions and regressions of the case file', () => {
  test('trapezoidal thrust: 10 % and 5 % times, impulses, averages', () => {
    const one = caseById('trapezoid-definitions');
    const { inputs } = one;
    const time = Float64Array.from(list(inputs.t));
    const thrust = Float64Array.from(list(inputs.thrust));
    const ten = burnEdges({ time, values: thrust, threshold: 0.1 });
    const five = burnEdges({ time, values: thrust, threshold: 0.05 });
    checkValue(one, 'burnTime10S', ten.end - ten.start);
    checkValue(one, 'burnTime5S', five.end - five.start);
    checkValue(one, 'totalImpulse', integralBetween(time, thrust, 0, 2.1));
    checkValue(one, 'impulse10', integralBetween(time, thrust, ten.start, ten.end));
    checkValue(one, 'average10', integralBetween(time, thrust, ten.start, ten.end) / (ten.end - ten.start));
    checkValue(
      one,
      'average5',
      integralBetween(time, thrust, five.start, five.end) / (five.end - five.start),
    );
  });

  test('parabola through the shoulders of a clipped top', () => {
    const one = caseById('clip-reconstruction-parabola');
    const { inputs } = one;
    const found = peakFromShoulders(list(inputs.t), list(inputs.y));
    checkValue(one, 'peak', found?.peak ?? 0);
    checkValue(one, 'peakTimeS', found?.time ?? 0);
  });

  test('load-cell line from dead weights', () => {
    const one = caseById('load-cell-calibration-line');
    const { inputs } = one;
    const masses = list(inputs.massKg);
    const line = fitCalibration({
      measures: 'force',
      points: list(inputs.volts).map((reading, i) => ({ reading, load: q(masses[i], 'kg') })),
    });
    checkValue(one, 'slopeNPerV', line.slope);
    checkValue(one, 'interceptN', line.intercept);
    checkValue(one, 'nonlinearity', line.nonlinearity ?? 0);
    checkValue(one, 'forceAt1p234V', line.slope * 1.234 + line.intercept);
  });

  test('a calibration of one and a quarter steps is warned of, with the reach it is used over', () => {
    const one = caseById('olemiss-calibration-leverage');
    const { inputs } = one;
    const line = fitCalibration({
      measures: 'force',
      points: [
        { reading: Number(inputs.voltsNoLoad), load: '0 kg' },
        { reading: Number(inputs.volts2kg), load: '2 kg' },
      ],
      readingStep: Number(inputs.stepV),
      usedUpTo: q(Number(inputs.peakN), 'N'),
    });
    checkValue(one, 'slopeNPerV', line.slope);
    const { low, high } = line.calibrated ?? { low: 0, high: 0 };
    checkValue(one, 'spanSteps', (high - low) / Number(inputs.stepV));
    checkValue(one, 'extrapolation', Number(inputs.peakN) / Math.abs(line.slope * (high - low)));
    // 0.225 lbf to the newton, as some write it, in place of the pound-force itself.
    checkValue(one, 'slopeLbfPerVWith0p225', 0.225 * line.slope);
    expect(line.cautions.join('\n')).toMatch(/spans 1\.25 steps/);
    expect(line.cautions.join('\n')).toMatch(/95\.14 times/);
  });

  test('burn law by regression: exponent, coefficient, standard error, scatter; and the coefficient in other units', () => {
    const one = caseById('burn-law-regression');
    const { inputs } = one;
    const rates = list(inputs.rateMmPerS);
    const fit = fitBurnLaw({
      points: list(inputs.pressureMPa).map((p, i) => ({ pressure: q(p, 'MPa'), rate: q(rates[i], 'mm/s') })),
    });
    checkValue(one, 'n', fit.exponent);
    checkValue(one, 'a', fit.law.coefficient('mm/s', 'MPa'));
    checkValue(one, 'stdErrN', fit.exponentError);
    checkValue(one, 'rmsResidualPercent', fit.residualPercent);
    expect(fit.outliers).toEqual([]);
    const other = caseById('burn-law-unit-change');
    checkValue(other, 'aInPerSPsi', fit.law.coefficient('in/s', 'psi'));
  });

  test('average thrust depends on which of the rounded times it is told over', () => {
    const one = caseById('nfpa-average-thrust-ambiguity');
    const impulse = q(Number(one.inputs.impulse), 'N*s');
    for (const [i, seconds] of list(one.inputs.times).entries())
      checkValue(one, `average[${i}]`, impulse.per(q(seconds, 's')).si);
  });

  test('grams taken for newtons, and g taken as 10', () => {
    const mixed = caseById('rocketbuds-160023-unit-mixup');
    const { totalImpulseNs, asIfNewtonSeconds } = mixed.inputs;
    const right = q(si(totalImpulseNs), 'N*s').as('impulse');
    expect(motorClass(right).letter).toBe(mixed.expected.letter);
    const grams = 1000 * right.per(q('1 kgf')).si;
    expect(grams / si(asIfNewtonSeconds)).toBeCloseTo(1, 9);
    expect(motorClass(q(grams, 'N*s').as('impulse')).letter).toBe(mixed.expected.letterWrong);

    const rounded = caseById('rocketbuds-a100-g10');
    const wrong = si(rounded.inputs.wrongG) * q(si(rounded.inputs.totalImpulse), 'N*s').per(q('1 kgf')).si;
    checkValue(rounded, 'totalImpulseWrong', wrong);
    checkValue(rounded, 'errorFraction', wrong / si(rounded.inputs.totalImpulse) - 1);
  });
});
