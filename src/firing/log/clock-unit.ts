import { MeopError, unitOf } from '../../units';
import { medianOfSteps } from './clock';
import { unitInHeading } from './header-cell';

export interface ClockUnit {
  readonly seconds: number;
  readonly caution?: string;
}

/**
 * Seconds in the unit of a clock. Where none is stated it is told by the stamps: fractions are seconds, whole numbers
 * milliseconds or, where they step by more than 2000, microseconds; without stamps it is undefined.
 */
export function clockUnit(stated: string | undefined, stamps: Float64Array): ClockUnit;
export function clockUnit(stated: string | undefined): ClockUnit | undefined;
export function clockUnit(stated: string | undefined, stamps?: Float64Array): ClockUnit | undefined {
  if (stated !== undefined) {
    const unit = unitOf(unitInHeading(stated) ?? stated);
    if (unit.kind === 'time') return { seconds: unit.factor / unit.divisor };
    throw new MeopError(
      'wrong-unit',
      `readLog: time.unit: '${stated}' is no unit of time: write 's', 'ms' or 'µs'`,
      'time.unit',
      {
        value: stated,
        expected: 'a unit of time',
      },
    );
  }
  if (stamps === undefined) return undefined;
  let whole = true;
  for (let i = 0; i < stamps.length && whole; i++)
    whole = Number.isInteger(stamps[i]) || Number.isNaN(stamps[i]);
  const step = medianOfSteps(stamps);
  const guess = !whole ? 's' : step > 2000 ? 'µs' : 'ms';
  const seconds = guess === 's' ? 1 : guess === 'ms' ? 1e-3 : 1e-6;
  return { seconds, caution: `the unit of time is not stated: taken as ${guess} by the look of the stamps` };
}
