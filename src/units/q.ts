import { MeopError } from './errors';
import { readInput } from './input';
import type { Kind, NamedKind } from './kinds';
import { finiteSi, noNumber, parse } from './parse';
import { fromSiValue, type Quantity } from './quantity';
import { isQuantity } from './quantity-mark';
import { unitOf } from './unit';
import type { KindOfUnit } from './unit-names';

type LastWord<S extends string> = S extends `${string} ${infer Rest}` ? LastWord<Rest> : S;
/** The kind of a string as determined by the compiler from its last word; any kind where it cannot. */
export type KindOfText<S extends string> = S extends `${string} ${infer Rest}`
  ? KindOfUnit<LastWord<Rest>>
  : Kind;
// Marked NoInfer in the return type: otherwise the compiler infers the kind backwards from the use of the result, at
// 10 ms per call.
type KindOfCall<V, U> = V extends string ? KindOfText<V> : U extends string ? KindOfUnit<U> : 'dimensionless';

/**
 * Makes a quantity from a string (`q('3/8 in')`) or from a number and a unit (`q(1000, 'psi')`). `psi` without a
 * suffix takes the reference that each parameter declares; `psig` is gauge and `psia` absolute.
 *
 * @throws MeopError `no-number`, `not-finite`, `out-of-domain` below absolute zero, `unknown-unit`, `ambiguous-unit`, `unit-syntax`, `two-units`
 * @example q('1 in').in('mm') // => 25.4
 */
export function q<const V extends string | number, const U extends string = never>(
  value: V,
  unit?: V extends string ? never : U,
): Quantity<NoInfer<KindOfCall<V, U>>> {
  if (typeof value === 'string') {
    if (unit !== undefined)
      throw new MeopError({
        code: 'two-units',
        given: value,
        expected: 'a number if a unit is given separately',
        remedy: `Convert with .to('${unit}')`,
      });
    const { si, unit: parsed } = parse(value, undefined);
    return fromSiValue(si, parsed.kind, parsed);
  }
  if (typeof value !== 'number') throw noNumber(value);
  const named = unit === undefined ? unitOf('1') : unitOf(unit);
  return fromSiValue(finiteSi(value, named, value), named.kind, named);
}

/**
 * Makes a quantity of a named kind from a string, a quantity or, if dimensionless, a number. Use it for strings
 * that the compiler cannot check, and where the kind gives a unit its meaning: seconds of specific impulse, a
 * difference in K.
 *
 * @throws MeopError `wrong-kind`, `bare-number`, `unknown-kind` and the errors of {@link q}
 * @example quantity('specific impulse', '230 s').in('m/s') // => 2255.5295
 */
export function quantity<const K extends NamedKind>(kind: K, value: string | number | Quantity): Quantity<K> {
  const { si, unit } =
    typeof value === 'string' ? parse(value, kind) : readInput(kind, 'value', value, 'quantity');
  return fromSiValue(si, kind, unit, isQuantity(value) ? value.cautions : undefined);
}
