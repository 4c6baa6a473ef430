import { fromSiValue, unitOf } from '../../units';
import type { RetainingRingSize } from './retaining-ring-size';

/** Sizes of a ring and its groove [m]. */
export interface RingSizes {
  readonly grooveDepth: number;
  readonly grooveWidth: number;
  readonly edgeMargin: number;
  readonly thickness: number;
}

/** A size that is given, with half of its tolerance range [m]. */
export interface GivenSize {
  readonly si: number;
  readonly plusMinus: number;
}

type Given = { readonly [F in keyof RingSizes]?: GivenSize | undefined };

/** Sizes of a standard ring in a bore [m]: the groove has its standard diameter, so that a wider bore makes it shallower. */
export const sizesInBore = (ring: RetainingRingSize, bore: number): RingSizes => ({
  grooveDepth: (ring.grooveDiameter.si - bore) / 2,
  grooveWidth: ring.grooveWidth.si,
  edgeMargin: ring.edgeMargin.si,
  thickness: ring.thickness.si,
});

/** What does not agree between a standard ring, the bore and the sizes given. */
export interface RingConflict {
  readonly field: keyof RingSizes | 'ring';
  readonly expected: string;
}

// Tolerance zones of ring and groove are narrower: thickness h11, groove diameter H12 and width H13 (quoted from memory).
const allowed = { grooveDepth: 0.12, grooveWidth: 0.1, thickness: 0.05 } as const;
const boreStep = 0.01;

/** Where a standard ring does not fit the bore, or a size that is given is not that of the ring; the edge margin may be longer. */
export function ringConflicts(ring: RetainingRingSize, bore: number, given: Given): readonly RingConflict[] {
  if (Math.abs(bore - ring.bore.si) > boreStep * ring.bore.si)
    return [{ field: 'ring', expected: `a ring for the bore of the case (${mm(bore)})` }];
  const standard = sizesInBore(ring, bore);
  return (['grooveDepth', 'grooveWidth', 'thickness'] as const).flatMap((field) => {
    const one = given[field];
    const size = standard[field];
    if (one === undefined || Math.abs(one.si - size) <= one.plusMinus + allowed[field] * size) return [];
    return [{ field, expected: `${mm(size)}, that of ${ring.name}` }];
  });
}

const mm = (si: number): string =>
  String(fromSiValue<'length'>(Number((si * 1000).toFixed(4)) / 1000, 'length', unitOf('mm')));
