import type { QuantityInput } from '../../../units';
import type { FieldsOf } from '../../../units/known-fields';
import { inMillimetres, readLength, refused, requireFit } from '../measure';
import { clippedOutline, type Envelope, type Outline, type Source } from '../surface';

/** A cavity left by a mandrel, for {@link composedGrain}. */
export interface Core {
  readonly name: string;
  readonly place: (envelope: Envelope) => Source;
}

/** Axial extent of a core. */
export interface CoreExtent {
  /** Start of the core [length from the head end]. Default: the head end. */
  readonly from?: QuantityInput<'length'>;
  /** End of the core [length from the head end]. Default: the aft end. */
  readonly to?: QuantityInput<'length'>;
}

/** Fields of {@link CoreExtent}, for the check of arguments in each core. */
export const extentFields: FieldsOf<CoreExtent> = { from: 'optional', to: 'optional' };

/** Reads the axial extent of a core in a grain of this length [m]. */
export function extentOf(name: string, options: CoreExtent, length: number): readonly [number, number] {
  const from = options.from === undefined ? 0 : readLength(name, 'from', options.from, 'zero');
  const to = options.to === undefined ? length : readLength(name, 'to', options.to);
  requireFit(
    from < length,
    name,
    'from',
    options.from,
    `less than the length of the grain (${inMillimetres(length)})`,
  );
  requireFit(to > from, name, 'to', options.to, `greater than from (${inMillimetres(from)})`);
  return [from, Math.min(to, length)];
}

/** The part of the outline of a core inside the wall; an error where there is none. */
export function clipped(name: string, field: string, given: unknown, o: Outline, radius: number): Outline {
  const inside = clippedOutline(o, radius);
  if (inside !== undefined) return inside;
  throw refused(name, field, given, 'such that part of the core lies inside the wall');
}
