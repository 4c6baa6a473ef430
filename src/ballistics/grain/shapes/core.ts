import { optional, type Quantity } from '../../../units';
import { endPosition, startPosition } from '../grain-inputs';
import { inMillimetres, refused, requireFit } from '../misfit';
import { clippedOutline, type Envelope, type Outline, type Source } from '../surface';

/** A cavity left by a mandrel, for {@link composedGrain}. */
export interface Core {
  readonly name: string;
  readonly place: (envelope: Envelope) => Source;
}

/** Whether a value is a core. */
export const isCore = (value: unknown): value is Core =>
  typeof value === 'object' && value !== null && 'name' in value && 'place' in value;

/** Axial extent of a core; the whole length where it is left out. */
export const extent = {
  from: optional(startPosition('start of the core'), 0),
  to: optional(endPosition('end of the core', '; the aft end if omitted')),
};

/** Axial extent in a grain of this length [m], from the two fields of these names. */
export function extentOf<F extends string, T extends string>(
  procedure: string,
  values: { readonly [_ in F]: Quantity<'length'> } & { readonly [_ in T]: Quantity<'length'> | undefined },
  [first, second]: readonly [F, T],
  length: number,
): readonly [number, number] {
  const from = values[first];
  const to: Quantity<'length'> | undefined = values[second];
  const end = to?.si ?? length;
  requireFit(
    procedure,
    from.si < length,
    first,
    from,
    `less than the length of the grain (${inMillimetres(length)})`,
  );
  requireFit(procedure, end > from.si, second, to, `greater than ${first} (${inMillimetres(from.si)})`);
  return [from.si, Math.min(end, length)];
}

/** What is expected of fins and slots that overlap. */
export const apart = 'small enough to leave propellant between the fins';

/** The part of the outline of a core inside the wall; an error where there is none. */
export function clipped(
  procedure: string,
  field: string,
  given: unknown,
  o: Outline,
  radius: number,
): Outline {
  const inside = clippedOutline(o, radius);
  if (inside !== undefined) return inside;
  throw refused(procedure, field, given, 'such that part of the core lies inside the wall');
}
