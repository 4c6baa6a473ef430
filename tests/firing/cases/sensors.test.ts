import { expect, test } from 'vitest';
import {
  bandwidthFromRiseTime,
  combinedUncertainty,
  converterStep,
  firstOrderPeakResponse,
  standNaturalFrequency,
} from '../../../src/firing';
import { MeopError, q } from '../../../src/units';
import { checkValue } from '../../cases/check-value';
import { caseById } from '../../cases/every-case';
import { si, siList } from '../../cases/read-case';

// Every expected value: tests/cases/firing.json, with its source and provenance there.
test('step of a converter, and what it is in force', () => {
  const one = caseById('olemiss-quantisation');
  const { rangeV, bits, slopeLbfPerV } = one.inputs;
  const step = converterStep({ span: si(rangeV), bits: si(bits) });
  const pounds = Math.abs(step * si(slopeLbfPerV));
  checkValue(one, 'stepV', step);
  checkValue(one, 'stepLbf', pounds);
  checkValue(one, 'stepN', q(pounds, 'lbf').si);
});

test('bandwidth of a load cell, and how many samples it gets', () => {
  const one = caseById('bandwidth-from-rise-time');
  const bandwidth = bandwidthFromRiseTime({ riseTime: q(si(one.inputs.riseTime), 's').as('time') });
  checkValue(one, 'bandwidthHz', bandwidth.in('Hz'));
  checkValue(one, 'ratio', si(one.inputs.rate) / bandwidth.si);
});

test('natural frequency of a stand', () => {
  const one = caseById('stand-natural-frequency');
  const { fullScale, deflection, mass } = one.inputs;
  const stiffness = q(si(fullScale), 'N')
    .per(q(si(deflection), 'm'))
    .as('stiffness');
  checkValue(one, 'stiffnessNPerM', stiffness.si);
  checkValue(
    one,
    'frequencyHz',
    standNaturalFrequency({ stiffness, mass: q(si(mass), 'kg').as('mass') }).in('Hz'),
  );
});

test('a half sine through a lag: peak and delay', () => {
  const one = caseById('first-order-lag-peak');
  const found = firstOrderPeakResponse({
    duration: '0.4 s',
    timeConstant: q(si(one.inputs.timeConstant), 's').as('time'),
  });
  checkValue(one, 'peakRatio', found.peakRatio);
  checkValue(one, 'peakDelayS', found.peakDelay.si);
});

test('a quick sensor tells the peak at once, a slow one little of it, and slower is always less and later', () => {
  const at = (lag: number) =>
    firstOrderPeakResponse({ duration: '1 s', timeConstant: q(lag, 's').as('time') });
  expect(at(1e-6).peakRatio).toBeCloseTo(1, 9);
  // Far slower than the pulse the sensor adds it up: 2/π of the peak, times duration over lag.
  expect(at(1000).peakRatio * 1000).toBeCloseTo(2 / Math.PI, 3);
  const lags = [0.001, 0.01, 0.1, 1, 10].map(at);
  for (let i = 1; i < lags.length; i++) {
    expect(lags[i].peakRatio).toBeLessThan(lags[i - 1].peakRatio);
    expect(lags[i].peakDelay.si).toBeGreaterThan(lags[i - 1].peakDelay.si);
  }
  expect(() => at(0)).toThrow(MeopError);
});

test('uncertainty of an impulse from its parts', () => {
  const one = caseById('impulse-uncertainty-rss');
  const relative = combinedUncertainty(siList(one.inputs.parts));
  checkValue(one, 'relative', relative);
  checkValue(one, 'absoluteNs', relative * si(one.inputs.impulse));
  expect(() => combinedUncertainty([])).toThrow(MeopError);
  expect(() => combinedUncertainty([0.01, -0.01])).toThrow(MeopError);
});
