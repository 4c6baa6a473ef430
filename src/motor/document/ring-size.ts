import { type RetainingRingSize, retainingRingSize } from '../../structures';
import { sizesInBore } from '../../structures/closures/ring-sizes';
import { fromSiValue, unitFor } from '../../units';
import type { Closure, ClosureParts, MotorRing } from './closure-inputs';
import type { Measured } from './document-types';

type RingParts = NonNullable<ClosureParts['retainingRing']>;

/** The standard ring that a document names. */
export const namedRing = (ring: { readonly ring?: string | undefined }): RetainingRingSize | undefined =>
  ring.ring === undefined ? undefined : retainingRingSize(ring.ring);

/** A closure with the sizes of its standard ring. */
export function sizedClosure(
  closure: ClosureParts | undefined,
  bore: Measured<'length'>,
): Closure | undefined {
  if (closure?.retainingRing === undefined) return closure && { ...closure, retainingRing: undefined };
  return { ...closure, retainingRing: sizedRing(closure.retainingRing, bore) };
}

function sizedRing(ring: RingParts, bore: Measured<'length'>): MotorRing {
  const standard = namedRing(ring);
  const sizes = standard && sizesInBore(standard, bore.value.si);
  const size = (si: number | undefined, plusMinus = 0): Measured<'length'> | undefined =>
    si === undefined
      ? undefined
      : { value: fromSiValue<'length'>(si, 'length', unitFor('length', bore.value.unit)), plusMinus };
  const {
    // The groove is cut to its diameter, so that its depth has the tolerance of the bore.
    grooveDepth = size(sizes?.grooveDepth, bore.plusMinus / 2),
    edgeMargin = size(sizes?.edgeMargin),
    thickness = size(sizes?.thickness),
    grooveWidth = size(sizes?.grooveWidth),
  } = ring;
  if (grooveDepth === undefined || edgeMargin === undefined || thickness === undefined)
    throw new TypeError('a retaining ring without sizes or the name of a standard ring was accepted');
  return { ...ring, grooveDepth, edgeMargin, thickness, grooveWidth };
}
