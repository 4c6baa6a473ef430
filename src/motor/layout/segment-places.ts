import type { Measured, Motor } from '../document';
import type { Span } from './end-layout';

/** A segment of the grain along the axis. */
export interface SegmentPlace {
  /** Index in `grain.segments` of the document. */
  readonly index: number;
  /** Which of its `count` this is, from 1; flaws of the document are in the first. */
  readonly copy: number;
  readonly shape: Motor['grain']['segments'][number]['shape'];
  readonly span: Span;
  readonly outerDiameter: number;
  /** Diameter of a round bore at the head and the aft end; undefined for other shapes. */
  readonly bore: { readonly head: number; readonly aft: number } | undefined;
}

/** The segments of a grain column that begins at a position. */
export function segmentPlaces({ grain }: Motor, start: number): readonly SegmentPlace[] {
  const spacing = grain.spacing?.value.si ?? 0;
  let position = start;
  return grain.segments.flatMap((segment, index) =>
    Array.from({ length: segment.count ?? 1 }, (_, i): SegmentPlace => {
      const from = position;
      const to = from + segment.length.value.si;
      position = to + spacing;
      return {
        index,
        copy: i + 1,
        shape: segment.shape,
        span: { from, to },
        outerDiameter: segment.outerDiameter.value.si,
        bore: boreOf(segment),
      };
    }),
  );
}

interface Bores {
  readonly outerDiameter: Measured;
  readonly boreDiameter?: Measured | undefined;
  readonly headBoreDiameter?: Measured | undefined;
  readonly aftBoreDiameter?: Measured | undefined;
}

function boreOf({ boreDiameter, headBoreDiameter, aftBoreDiameter }: Bores): SegmentPlace['bore'] {
  const head = (headBoreDiameter ?? boreDiameter)?.value.si;
  const aft = (aftBoreDiameter ?? boreDiameter)?.value.si;
  return head === undefined || aft === undefined ? undefined : { head, aft };
}
