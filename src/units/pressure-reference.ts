import { MeopError } from './errors';
import { readInput } from './input';
import { fromSiValue, type Quantity, type QuantityInput } from './quantity';
import { unitOf } from './unit';

/**
 * The pressure counted from vacuum: a gauge pressure plus the ambient pressure it was measured against.
 *
 * @example absolute('4 barg', '1.01 bar').in('bar') // => 5.01
 */
export function absolute(
  pressure: QuantityInput<'gauge pressure'>,
  ambient: QuantityInput<'absolute pressure'>,
): Quantity<'absolute pressure'> {
  return shifted('absolute', pressure, ambient, 1);
}

/**
 * The pressure above ambient: an absolute pressure minus the ambient pressure.
 *
 * @example gauge('5.01 bara', '1.01 bar').in('bar') // => 4
 */
export function gauge(
  pressure: QuantityInput<'absolute pressure'>,
  ambient: QuantityInput<'absolute pressure'>,
): Quantity<'gauge pressure'> {
  return shifted('gauge', pressure, ambient, -1);
}

function shifted<K extends 'absolute pressure' | 'gauge pressure'>(
  name: 'absolute' | 'gauge',
  pressure: unknown,
  ambient: unknown,
  sign: 1 | -1,
): Quantity<K> {
  const given = readInput(
    name === 'absolute' ? 'gauge pressure' : 'absolute pressure',
    'pressure',
    pressure,
    name,
  );
  const around = readInput('absolute pressure', 'ambient', ambient, name);
  const kind = name === 'absolute' ? 'absolute pressure' : 'gauge pressure';
  const { text, kind: own } = given.unit;
  const unit = unitOf(own === 'pressure' ? text : text.slice(0, -1)); // psig and psia without their last letter
  const si = given.si + sign * around.si;
  if (Math.min(around.si, name === 'absolute' ? si : given.si) < 0)
    throw new MeopError(
      'out-of-domain',
      `${name}: the absolute pressure would be below vacuum: check pressure and ambient`,
      'pressure',
      { value: pressure },
    );
  return fromSiValue(si, kind, unit);
}
