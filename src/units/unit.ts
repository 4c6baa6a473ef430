import type { Dimension } from './dimension';
import { MeopError } from './errors';
import { doubles, exactProduct } from './exact-factor';
import { kindOfProduct } from './kind-rules';
import type { Kind } from './kinds';
import { parseUnitText } from './unit-grammar';
import { icePointKelvin, icePoints } from './unit-table';

/** A unit: the conversion of a number to an SI double, and the kind of quantity that it measures by itself. */
export interface Unit {
  readonly text: string;
  /** String with the same meaning wherever it is parsed; differs for the second as a specific impulse. */
  readonly machineText: string;
  readonly kind: Kind;
  readonly dimension: Dimension;
  /** SI = (value − origin) · factor / divisor + originSi; both origins are zero except for °C and °F. */
  readonly factor: number;
  readonly divisor: number;
  readonly origin: number;
  readonly originSi: number;
  readonly us: boolean;
}

const parsed = new Map<string, Unit>();
const mostParsed = 4096; // cached strings; a program with an endless supply of new ones must not grow

/**
 * The unit of a string by itself.
 *
 * @throws MeopError `unknown-unit`, `ambiguous-unit` or `unit-syntax`, with the position of the character.
 */
export function unitOf(text: string): Unit {
  return parsed.get(text) ?? remember(text, makeUnit(`${text}`, 0)); // as a string: plain JavaScript may pass anything
}

/**
 * As {@link unitOf}, for a unit that begins at character `at` of a longer string, so that errors show the
 * position.
 */
export function unitAt(whole: string, at: number): Unit {
  const text = whole.slice(at);
  return parsed.get(text) ?? remember(text, makeUnit(whole, at));
}

function remember(text: string, unit: Unit): Unit {
  if (parsed.size >= mostParsed) parsed.clear();
  parsed.set(text, unit);
  return unit;
}

function makeUnit(whole: string, at: number): Unit {
  const factors = parseUnitText(whole, at);
  const [one] = factors;
  const single = factors.length === 1 && one.power === 1 ? one : undefined; // an atom by itself keeps its kind
  const exact = single?.unit ?? exactProduct(factors);
  const turns = factors.some(({ unit }) => unit.kind === 'angle');
  const text = whole.slice(at).trim() || '1';
  const origin = icePoints[single?.atom ?? ''];
  const { factor, divisor } = doubles(exact);
  if (!(factor > 0 && factor < Infinity))
    throw new MeopError({
      code: 'not-finite',
      path: 'unit',
      given: text,
      expected: 'within the range of a double',
    });
  return {
    text,
    machineText: text,
    kind: exact.kind ?? kindOfProduct(exact.dimension, turns),
    dimension: exact.dimension,
    factor,
    divisor,
    origin: origin ?? 0,
    originSi: origin === undefined ? 0 : icePointKelvin,
    us: exact.us,
  };
}

/** Seconds of specific impulse: standard gravity times a second. */
const impulseSecond = (): Unit => {
  const made = unitOf('lbf*s/lb');
  return { ...made, text: 's', kind: 'specific impulse' };
};

/** The unit of a string for a known kind: a second of specific impulse is not a second. */
export function unitFor(kind: Kind, text: string): Unit {
  if (kind === 'specific impulse' && /^s(ec(onds?)?)?$/.test(text))
    return parsed.get(' Isp') ?? remember(' Isp', impulseSecond());
  if (kind === 'temperature difference' && text === 'K') return unitOf('delta_K');
  return unitOf(text);
}

/** A number in a unit, as an SI double. */
export function toSi(value: number, unit: Unit): number {
  return ((value - unit.origin) * unit.factor) / unit.divisor + unit.originSi;
}

/**
 * An SI double as a number in a unit: of the numbers with the same SI bits, one with at most six decimals where
 * there is one, so that 25.4 mm convert back to 25.4.
 */
export function fromSi(si: number, unit: Unit): number {
  const value = ((si - unit.originSi) * unit.divisor) / unit.factor + unit.origin;
  const short = Math.round(value * 1e6) / 1e6;
  return toSi(short, unit) === si ? short : value;
}
