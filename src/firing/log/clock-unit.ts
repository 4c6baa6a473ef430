import { MeopError, unitOf } from '../../units';
import { unitInHeading } from './header-cell';

export interface ClockUnit {
  readonly seconds: number;
  readonly caution?: string;
}

/**
 * Seconds per unit of a clock. Where no unit is stated it is inferred from the stamps: the unit that gives a plausible
 * rate and duration of a static-firing log. Undefined without stamps.
 */
export function clockUnit(stated: string | undefined, stamps: Float64Array): ClockUnit;
export function clockUnit(stated: string | undefined): ClockUnit | undefined;
export function clockUnit(stated: string | undefined, stamps?: Float64Array): ClockUnit | undefined {
  if (stated !== undefined) {
    const unit = unitOf(unitInHeading(stated) ?? stated);
    if (unit.kind === 'time') return { seconds: unit.factor / unit.divisor };
    throw new MeopError({
      code: 'wrong-unit',
      procedure: 'readLog',
      path: 'time.unit',
      given: stated,
      expected: "a unit of time, such as 's', 'ms' or 'µs'",
    });
  }
  if (stamps === undefined) return undefined;
  return guessed(stamps);
}

const units = { s: 1, ms: 1e-3, µs: 1e-6 } as const;
type Unit = keyof typeof units;

function guessed(stamps: Float64Array): ClockUnit {
  let whole = true;
  let length = 0;
  let steps = 0;
  for (let i = 0; i < stamps.length; i++) {
    whole &&= Number.isInteger(stamps[i]) || Number.isNaN(stamps[i]);
    const step = i > 0 ? stamps[i] - stamps[i - 1] : 0;
    // A pause is not part of the rate, but two samples with one stamp are.
    if (step >= 0) steps++;
    if (step > 0) length += step;
  }
  const fits = (unit: Unit): boolean => {
    const seconds = length * units[unit];
    const rate = steps / seconds;
    return rate >= slowest && rate <= fastest && seconds >= shortest && seconds <= longest;
  };
  const likely: readonly Unit[] = whole ? ['ms', 'µs', 's'] : ['s', 'ms', 'µs'];
  const unit = likely.find(fits) ?? likely[0];
  const others = likely.filter((other) => other !== unit && fits(other));
  return {
    seconds: units[unit],
    caution: `time: unit not specified; assumed ${unit} (from the stamps)${others.length > 0 ? `. ${others.join(' or ')} is also possible. Specify time: { unit }` : ''}.`,
  };
}

// Usual ranges of loggers of test stands, with generous limits.
const slowest = 1.5; // Hz
const fastest = 5e4; // Hz
const shortest = 1; // s
const longest = 5400; // s
