import { MeopError, type QuantityInput, readInput } from '../../units';
import { analysedRecord, type CleanedChannel } from '../analysis/analysed-record';
import { analysedTrace } from '../analysis/analysed-trace';
import type { Firing } from '../firing';
import { interpolated } from './resample';
import { baselineValue, step, traceOf } from './step';
import { lagBetween, meanStep } from './trace-lag';

/** Channel to move, and the maximum shift. */
export interface AlignOptions {
  /** Channel that is moved. Default `'thrust'`; the other one stays. */
  readonly move?: CleanedChannel;
  /** Maximum plausible offset. Default 1 s. */
  readonly maxLag?: QuantityInput<'time'>;
}

/**
 * Shifts one channel in time onto the other by cross-correlation, for channels of separate loggers. Where the start
 * lags and the end does not, the cause is slack, friction or a blocked port, not the clock: nothing is moved, and a
 * caution is added.
 *
 * @throws MeopError `missing-field`, `lag-too-large`
 * @example align(firing({ origin: 'measured', time: series([0, 1, 2, 3, 4, 5], 's'), pressure: series([0.1, 1, 5, 5, 1, 0.1], 'MPa'), thrust: series([0, 1, 5, 5, 1, 0], 'N'), ambientPressure: quantity('absolute pressure', '1 atm') })).history.length // => 1
 */
export function align(firing: Firing, options: AlignOptions = {}): Firing {
  const record = analysedRecord(firing);
  const { move = 'thrust', maxLag = '1 s' } = options;
  const stays: CleanedChannel = move === 'thrust' ? 'pressure' : 'thrust';
  const most = readInput('time', 'maxLag', maxLag, 'align').si;
  const time = record.time.si;
  const fixed = traceOf(record, stays, 'align');
  const moved = traceOf(record, move, 'align');
  const { lag, correlation, startLag, endLag } = lagBetween(
    { trace: fixed, rest: baselineValue(record, stays, 'align') },
    { trace: moved, rest: baselineValue(record, move, 'align') },
  );
  const text = `${move} lags ${stays} by ${ms(lag)} (correlation ${correlation.toFixed(3)}; start ${ms(startLag)}, end ${ms(endLag)})`;
  const step1 = meanStep(time);
  if (
    Math.abs(startLag - endLag) > Math.max(0.05, 5 * step1) &&
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
  if (Math.abs(lag) < 0.5 * step1)
    return step(record, {}, `align: ${text}; less than half a sample, not moved`);
  if (Math.abs(lag) > most)
    throw new MeopError(
      'lag-too-large',
      `align: the lag must be at most maxLag (${most} s): ${text}. Raise maxLag if the lag is real.`,
      'maxLag',
      {
        value: lag,
      },
    );
  const shifted = interpolated(
    time,
    moved.values,
    time.map((t) => t + lag),
  );
  return step(record, { channels: { [move]: analysedTrace(time, shifted) } }, `align: ${text}; moved`);
}

const ms = (seconds: number): string => `${(1000 * seconds).toFixed(1)} ms`;
