import type { Insert } from '../document/nozzle-inputs';
import type { Span, SpanOf } from './end-layout';

/** The pocket of the throat insert in the aft closure. */
export interface PocketPlace {
  readonly insertedFrom: 'inside' | 'outside';
  readonly span: Span;
  readonly diameter: number;
  /** The insert, which rests on the bottom of the pocket. */
  readonly insert: Span;
}

/** The pocket as placed, and the depths between which the opening runs. */
export function pocketPlace(
  insert: Insert,
  { insertedFrom, pocketDiameter, pocketDepth }: NonNullable<Insert['seat']>,
  cavityBottom: number,
  recessBottom: number,
  span: SpanOf,
): { readonly place: PocketPlace; readonly opening: readonly [outer: number, inner: number] } {
  const depth = pocketDepth.value.si;
  const length = insert.length.value.si;
  const diameter = pocketDiameter.value.si;
  if (insertedFrom === 'inside') {
    const seat = cavityBottom - depth;
    return {
      place: {
        insertedFrom,
        span: span(seat, cavityBottom),
        diameter,
        insert: span(seat, seat + length),
      },
      opening: [recessBottom, seat],
    };
  }
  const seat = recessBottom + depth;
  return {
    place: { insertedFrom, span: span(recessBottom, seat), diameter, insert: span(seat - length, seat) },
    opening: [seat, cavityBottom],
  };
}
