import { MeopError } from './errors';
import { readInput } from './input';
import { fromSiValue, type Quantity, type QuantityInput } from './quantity';
import { unitOf } from './unit';

/**
 * Converts a gauge pressure to absolute pressure: adds the ambient pressure of the measurement.
 *
 * @example absolute('4 barg', '1.01 bar').in('bar') // => 5.01
 */
export function absolute(
  pressure: QuantityInput<'gauge pressure'>,
  ambient: QuantityInput<'absolute pressure'>,
): Quantity<'absolute pressure'> {
  return shifted('gauge', 'absolute', pressure, ambient);
}

/**
 * Converts an absolute pressure to gauge pressure: subtracts the ambient pressure.
 *
 * @example gauge('5.01 bara', '1.01 bar').in('bar') // => 4
 */
export function gauge(
  pressure: QuantityInput<'absolute pressure'>,
  ambient: QuantityInput<'absolute pressure'>,
): Quantity<'gauge pressure'> {
  return shifted('absolute', 'gauge', pressure, ambient);
}

type Reference = 'absolute' | 'gauge';

function shifted<To extends Reference>(
  from: Reference,
  to: To,
  pressure: unknown,
  ambient: unknown,
): Quantity<`${To} pressure`> {
  const given = readInput(`${from} pressure`, 'pressure', pressure, to);
  const around = readInput('absolute pressure', 'ambient', ambient, to).si;
  const { text, kind } = given.unit;
  const unit = unitOf(kind === 'pressure' ? text : text.slice(0, -1)); // psig and psia without the suffix letter
  const si = to === 'gauge' ? given.si - around : given.si + around;
  if (Math.min(around, to === 'gauge' ? given.si : si) < 0)
    throw new MeopError({
      code: 'out-of-domain',
      procedure: to,
      path: 'pressure',
      given: pressure,
      expected: 'above vacuum',
      remedy: 'Check pressure and ambient',
    });
  return fromSiValue(si, `${to} pressure`, unit);
}
