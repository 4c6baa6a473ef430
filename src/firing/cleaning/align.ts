import { choice, MeopError, optional, procedure, time as timeInput } from '../../units';
import { analysedRecord, type CleanedChannel } from '../analysis/analysed-record';
import { analysedTrace } from '../analysis/analysed-trace';
import { exampleFiring, type Firing, firingInput } from '../firing';
import { interpolated } from './resample';
import { baselineValue, step, traceOf } from './step';
import { lagBetween, meanStep } from './trace-lag';

/**
 * Shifts one channel in time onto the other by cross-correlation, for channels of separate loggers. Where the start
 * lags and the end does not, the cause is slack, friction or a blocked port, not the clock: nothing is moved, and a
 * caution is added.
 *
 * @example align(firing({ origin: 'measured', time: series([0, 1, 2, 3, 4, 5], 's'), pressure: series([0.1, 1, 5, 5, 1, 0.1], 'MPa'), thrust: series([0, 1, 5, 5, 1, 0], 'N'), ambientPressure: quantity('absolute pressure', '1 atm') })).history.length // => 1
 */
export const align = /* @__PURE__ */ procedure({
  name: 'align',
  title: 'Alignment of pressure and thrust in time',
  source: 'cross-correlation, engineering practice, no published source',
  subject: firingInput,
  inputs: {
    move: optional(choice('channel that is moved; the other one stays', ['thrust', 'pressure']), 'thrust'),
    maxLag: optional(timeInput('t_max', 'maximum plausible offset', { min: 0, example: '1 s' }), 1),
  },
  gives: 'the record with one channel moved, or with a caution',
  example: `align(${exampleFiring}, { move: 'thrust' })`,
  run: (given, { move, maxLag }): Firing => {
    const record = analysedRecord(given);
    const stays: CleanedChannel = move === 'thrust' ? 'pressure' : 'thrust';
    const time = record.time.si;
    const fixed = traceOf(record, stays, 'align');
    const moved = traceOf(record, move, 'align');
    const { lag, correlation, startLag, endLag } = lagBetween(
      { trace: fixed, rest: baselineValue(record, stays, 'align') },
      { trace: moved, rest: baselineValue(record, move, 'align') },
    );
    const text = `${move} lags ${stays} by ${ms(lag)} (correlation ${correlation.toFixed(3)}; start ${ms(startLag)}, end ${ms(endLag)})`;
    const period = meanStep(time);
    if (
      Math.abs(startLag - endLag) > Math.max(0.05, 5 * period) &&
      Math.abs(startLag - endLag) > Math.abs(endLag)
    )
      return step(
        record,
        {
          cautions: [
            `${text}. The start lags and the end does not, which indicates slack or friction in the stand, or a blocked port, not a clock offset. Nothing was moved.`,
          ],
        },
        `align: ${text}; not moved`,
      );
    if (Math.abs(lag) < 0.5 * period)
      return step(record, {}, `align: ${text}; less than half a sample, not moved`);
    if (Math.abs(lag) > maxLag.si)
      throw new MeopError({
        code: 'lag-too-large',
        procedure: 'align',
        path: 'maxLag',
        given: maxLag,
        expected: `at least the lag: ${text}`,
        remedy: 'Raise maxLag if the lag is real',
      });
    const shifted = interpolated(
      time,
      moved.values,
      time.map((t) => t + lag),
    );
    return step(record, { channels: { [move]: analysedTrace(time, shifted) } }, `align: ${text}; moved`);
  },
});

const ms = (seconds: number): string => `${(1000 * seconds).toFixed(1)} ms`;
