import {
  endBurner,
  extrudedCore,
  finocyl,
  freeRod,
  type Grain,
  internalTube,
  offsetBore,
  rodAndTube,
  slottedTube,
  star,
  taperedCore,
  tubularSegment,
} from '../../ballistics';
import { nominal } from './nominal';
import type { SegmentPart } from './segment-inputs';

/** The grain of a segment, without its flaws. */
export function grainOf(part: SegmentPart): Grain {
  const segment = nominal(part);
  switch (segment.shape) {
    case 'tubular segment':
      return tubularSegment(sizesOf(segment));
    case 'internal-burning tube':
      return internalTube(sizesOf(segment));
    case 'end burner':
      return endBurner(sizesOf(segment));
    case 'free rod':
      return freeRod(sizesOf(segment));
    case 'offset bore':
      return offsetBore(sizesOf(segment));
    case 'rod and tube':
      return rodAndTube(sizesOf(segment));
    case 'tapered core':
      return taperedCore(sizesOf(segment));
    case 'star':
      return star(sizesOf(segment));
    case 'slotted tube':
      return slottedTube(sizesOf(segment));
    case 'finocyl':
      return finocyl(sizesOf(segment));
    case 'extruded core':
      return extrudedCore(sizesOf(segment));
  }
}

/** The dimensions of a segment, as required by its shape. */
const sizesOf = <S extends { shape: unknown; count?: unknown; flaws?: unknown; notes?: unknown }>({
  shape: _,
  count: __,
  flaws: ___,
  notes: ____,
  ...sizes
}: S) => sizes;
