import type { Material } from '../../structures';
import { materials } from '../../structures/inputs';
import { isQuantity, type Quantity, type Result } from '../../units';
import type { Measured } from './document-types';

/** A part of a motor in the form of the calculations: nominal values, plain numbers if dimensionless. */
export type Nominal<T> =
  T extends Measured<infer K>
    ? Result<K>
    : T extends Quantity | Material | string | number | boolean
      ? T
      : T extends readonly (infer X)[]
        ? readonly Nominal<X>[]
        : { [F in keyof T]: Nominal<Exclude<T[F], undefined>> };

/** The nominal values of a part of a motor, without omitted fields. */
export function nominal<T>(part: T): Nominal<T> {
  return plain(part) as Nominal<T>; // true: value by value as the type says
}

function plain(part: unknown): unknown {
  if (Array.isArray(part)) return part.map(plain);
  if (typeof part !== 'object' || part === null || isQuantity(part) || materials.is(part)) return part;
  if (isMeasured(part)) return part.value.kind === 'dimensionless' ? part.value.si : part.value;
  const given = Object.entries(part).filter(([, value]) => value !== undefined);
  return Object.fromEntries(given.map(([field, value]) => [field, plain(value)]));
}

/** True if a part of a motor is a value with its tolerance. */
export const isMeasured = (part: unknown): part is Measured =>
  typeof part === 'object' &&
  part !== null &&
  'plusMinus' in part &&
  'value' in part &&
  isQuantity(part.value);
