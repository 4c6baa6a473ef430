import { describe, expect, test } from 'vitest';
import { currentLoopCalibration, motorClass, readLog, traceLag } from '../../../src/firing';
import { burnEdges } from '../../../src/firing/analysis/burn-edges';
import { integralBetween, lowerBound } from '../../../src/firing/analysis/trace-values';
import { lowPassed } from '../../../src/firing/cleaning/low-pass';
import { movingMean } from '../../../src/firing/cleaning/moving-average';
import { findSpikes } from '../../../src/firing/cleaning/spikes';
import { q } from '../../../src/units';
import { checkValue } from '../../cases/check-value';
import { caseById, expectedNumbers } from '../../cases/every-case';
import { recordCheck, recordChecks } from '../../cases/record-check';
import { logsPresent, recordedLog } from '../recorded-logs';
import { hanaro, millivolts, record, reduce, type Trace, traces, zeroed } from './recorded-traces';

// Expected values: tests/cases/firing.json, computed with numpy 1.24.2 / scipy 1.10.1 from the recorded logs.
const plain = ({ time, values }: Pick<Trace, 'time' | 'values'>) => ({ time, values });

describe.skipIf(!logsPresent)('recorded firings', () => {
  test.each(Object.keys(traces))('%s', (id) => {
    const one = caseById(id);
    const got = reduce(id);
    for (const [name] of expectedNumbers(one)) if (name in got) checkValue(one, name, got[name]);
  });

  test('the choice of zero moves the impulse by 5 %, thrust starts 0.29 s after pressure, class L either way', () => {
    const constant = reduce('olemiss-burn1-thrust-constant-zero');
    const linear = reduce('olemiss-burn1-thrust-linear-zero');
    const pressure = reduce('olemiss-burn1-pressure');
    const one = caseById('olemiss-burn1-derived');
    const want = record(one.expected);
    checkValue(
      one,
      'spreadFraction',
      (constant.totalImpulseWindow - linear.totalImpulseWindow) / linear.totalImpulseWindow,
    );
    checkValue(one, 'cfAtM2Constant', constant.totalImpulseWindow / pressure.totalImpulseWindow);
    checkValue(one, 'cfAtM2Linear', linear.totalImpulseWindow / pressure.totalImpulseWindow);
    checkValue(one, 'thrustDelayS', linear.start10S - pressure.start10S);
    expect(motorClass(q(constant.totalImpulseWindow, 'N*s')).letter).toBe(want.letterConstant);
    expect(motorClass(q(linear.totalImpulseWindow, 'N*s')).letter).toBe(want.letterLinear);
  });

  test('zero-phase Butterworth at 7 Hz lowers the peak and keeps the impulse', () => {
    const { time, values } = zeroed('olemiss-burn1-thrust-constant-zero');
    const filtered = lowPassed(time, values, { cutoff: 7, order: 4, cutoffOf: 'each pass' });
    const one = caseById('olemiss-burn1-butterworth-7hz');
    const window = { from: lowerBound(time, 5), to: lowerBound(time, 11) + 1 };
    const edges = burnEdges({ time, values: filtered, threshold: 0.1, ...window });
    checkValue(one, 'peak', edges.peak);
    checkValue(one, 'burnTime10S', edges.end - edges.start);
    checkValue(one, 'totalImpulseWindow', integralBetween(time, filtered, 5, 11));
    const unfiltered = reduce('olemiss-burn1-thrust-constant-zero');
    checkValue(one, 'unfilteredPeak', unfiltered.peak);
    checkValue(one, 'unfilteredBurnTime10S', unfiltered.burnTime10S);
  });

  test('a mean of 50 neighbours lowers the peak as much', () => {
    const one = caseById('olemiss-burn1-moving-average-25ms');
    const { values } = zeroed('olemiss-burn1-thrust-constant-zero');
    checkValue(
      one,
      'peak',
      movingMean(values, Number(one.inputs.lengthSamples)).reduce((a, b) => Math.max(a, b)),
    );
  });

  test('one false sample is replaced, and no more', () => {
    const one = caseById('rocketbuds-161132-thrust');
    const { values } = traces[one.id]();
    checkValue(one, 'spikesReplaced', findSpikes(values, { halfWidth: 1, threshold: 0, limit: 10 }).length);
  });

  test('thinning the pressure to 10 Hz: worst and best errors over all phases', () => {
    const { time, values } = zeroed('olemiss-burn1-pressure');
    const from = lowerBound(time, 5);
    const to = lowerBound(time, 11) + 1;
    const whole = integralBetween(time, values, 5, 11);
    const top = values.slice(from, to).reduce((a, b) => Math.max(a, b));
    const errors = Array.from({ length: 200 }, (_, phase) => {
      const t: number[] = [];
      const v: number[] = [];
      for (let i = phase; i < time.length; i += 200)
        if (time[i] >= 5 - 1e-9 && time[i] <= 11 + 1e-9) {
          t.push(time[i]);
          v.push(values[i]);
        }
      let sum = 0;
      for (let i = 1; i < t.length; i++) sum += 0.5 * (v[i] + v[i - 1]) * (t[i] - t[i - 1]);
      return { integral: sum / whole - 1, peak: Math.max(...v) / top - 1 };
    });
    const one = caseById('decimate-10hz-pressure-error');
    const want = record(one.expected);
    // The case thins the window, this test the record: which samples the ends of the window keep differs by one.
    checkValue(one, 'peakErrorMin', Math.min(...errors.map((e) => e.peak)), 0.005);
    expect(Math.max(...errors.map((e) => e.peak))).toBe(0);
    recordCheck(one.id, 'peakErrorMax', Math.max(...errors.map((e) => e.peak)));
    recordChecks(one.id, {
      integralErrorMin: Math.min(...errors.map((e) => e.integral)),
      integralErrorMax: Math.max(...errors.map((e) => e.integral)),
    });
    expect(Math.min(...errors.map((e) => e.integral))).toBeGreaterThan(1.05 * Number(want.integralErrorMin));
    expect(Math.max(...errors.map((e) => e.integral))).toBeLessThan(1.05 * Number(want.integralErrorMax));
  });

  test('mean thrust coefficient and lag of the twin transducers', () => {
    const one = caseById('hanaro-2018-07-24-derived');
    const want = record(one.expected);
    const area = (Math.PI / 4) * 0.007 ** 2;
    const thrust = reduce('hanaro-2018-07-24-thrust-constant-zero').totalImpulseWindow;
    const left = reduce('hanaro-2018-07-24-pressure-left');
    const right = reduce('hanaro-2018-07-24-pressure-right');
    checkValue(one, 'cfLeftConstant', thrust / (area * left.totalImpulseWindow));
    checkValue(one, 'throatAreaM2', area);
    checkValue(
      one,
      'cfLeftLinear',
      reduce('hanaro-2018-07-24-thrust-linear-zero').totalImpulseWindow / (area * left.totalImpulseWindow),
    );
    checkValue(one, 'cfRightConstant', thrust / (area * right.totalImpulseWindow));
    checkValue(one, 'leftLagS', left.start10S - right.start10S);
    expect(motorClass(q(thrust, 'N*s')).letter).toBe(want.letterConstant);
    const lag = traceLag({
      first: plain(zeroed('hanaro-2018-07-24-pressure-right')),
      second: plain(zeroed('hanaro-2018-07-24-pressure-left')),
    });
    expect(Math.abs(lag.lag)).toBeLessThan(0.02);
  });

  test('saturated transmitters are counted, and their current told', () => {
    const one = caseById('hanaro-2018-07-22-saturation');
    const want = record(one.expected);
    const raw = (column: number): Trace => hanaro('hanaro-2018-07-22-ancp-5mm-window.csv', column, (c) => c);
    const left = raw(2);
    const right = raw(3);
    const full = (values: Float64Array): number => values.filter((c) => c >= 1023).length;
    recordChecks(one.id, {
      saturatedLeft: full(left.values),
      saturatedRight: full(right.values),
    });
    expect(full(left.values)).toBe(want.saturatedLeft);
    expect(full(right.values)).toBe(want.saturatedRight);
    checkValue(one, 'timeSaturatedS', left.time[left.values.indexOf(1023)]);
    checkValue(one, 'first300LeftS', left.time[left.values.findIndex((c) => c > 300)]);
    checkValue(one, 'currentLeftMA', millivolts(1023) / 219.9);
    // 0 to 100 bar on 16 mA, from the current that each transmitter gives at rest.
    const bar = (ohm: number, offset: number): number => {
      const span = { measures: 'gauge pressure', high: '100 bar' } as const;
      const { slope, intercept } = currentLoopCalibration({ span, zeroCurrent: offset });
      return (slope * (millivolts(1023) / ohm) + intercept) / 1e5;
    };
    checkValue(one, 'pressureLeftBarGauge', bar(219.9, 4.150279602));
    checkValue(one, 'pressureRightBarGauge', bar(220.7, 4.066208017));
  });

  test('host stamps that repeat: counted, and the rate told', () => {
    const log = readLog(recordedLog('cornell-2024-04-14.csv'), {
      time: { column: 1, unit: 'ms' },
      channels: { pressure: { column: 2, unit: 'V' } },
    });
    const one = caseById('cornell-timestamps');
    const want = record(one.expected);
    const { time } = log.channels.pressure;
    recordCheck(one.id, 'samples', time.length);
    expect(time.length).toBe(want.samples);
    const run = log.report.findings.filter(({ finding }) => finding === 'repeated stamp');
    recordCheck(
      one.id,
      'repeatedStamps',
      run.reduce((sum, { count }) => sum + count, 0),
    );
    expect(run.reduce((sum, { count }) => sum + count, 0)).toBe(want.repeatedStamps);
    // The stamps themselves, read as a channel of their own.
    const stamps = readLog(recordedLog('cornell-2024-04-14.csv'), {
      time: { rate: '100 Hz' },
      channels: { stamp: { column: 1, unit: 'counts' } },
    }).channels.stamp.values;
    const steps = stamps.map((stamp, i) => (i > 0 ? stamp - stamps[i - 1] : 0));
    checkValue(
      one,
      'largestGapMs',
      steps.reduce((a, b) => Math.max(a, b)),
    );
    const moved = stamps.map((stamp, i) => Math.abs(stamp - stamps[0] - 1000 * (time[i] - time[0])));
    checkValue(
      one,
      'maxStampErrorMs',
      moved.reduce((a, b) => Math.max(a, b)),
    );
    checkValue(one, 'meanRateHz', (time.length - 1) / (time[time.length - 1] - time[0]), 1e-6);
    expect(log.cautions.join()).toContain('0.0219 s');
  });
});
