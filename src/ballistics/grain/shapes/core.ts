import type { QuantityInput } from '../../../units';
import type { FieldsOf } from '../../../units/known-fields';
import { readLength, requireFit } from '../measure';
import { clippedOutline, type Envelope, type Outline, type Source } from '../surface';

/** A cavity that a mandrel leaves, for {@link composedGrain}. */
export interface Core {
  readonly name: string;
  readonly place: (envelope: Envelope) => Source;
}

/** Axial extent of a core. */
export interface CoreExtent {
  /** [length from the head end]. Default the head end. */
  readonly from?: QuantityInput<'length'>;
  /** [length from the head end]. Default the aft end. */
  readonly to?: QuantityInput<'length'>;
}

export const extentFields: FieldsOf<CoreExtent> = { from: 'optional', to: 'optional' };

export function extentOf(name: string, options: CoreExtent, length: number): readonly [number, number] {
  const from = options.from === undefined ? 0 : readLength(name, 'from', options.from, 'zero');
  const to = options.to === undefined ? length : readLength(name, 'to', options.to);
  requireFit(from < length, name, 'from', options.from, 'less than the length of the grain');
  requireFit(to > from, name, 'to', options.to, 'more than from');
  return [from, Math.min(to, length)];
}

export const clipped = (name: string, field: string, o: Outline, radius: number): Outline => {
  const inside = clippedOutline(o, radius);
  requireFit(inside !== undefined, name, field, 'outside', 'a core inside the wall');
  return inside ?? o;
};
