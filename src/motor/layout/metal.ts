import type { EndLayout, Span, Turned } from './end-layout';

/** True where two spans have a common length. */
export const overlap = (a: Span, b: Span): boolean => a.from < b.to - tiny && b.from < a.to - tiny;

/** Rounding of sums of dimensions; far below any dimension of a drawing. */
export const tiny = 1e-9;

/** The turned spaces inside a closure: cavity, recess, opening and pocket. */
const voidsOf = ({ cavity, recess, opening, pocket }: EndLayout) =>
  [cavity, recess, opening, pocket].filter((one) => one !== undefined);

/** Diameter of the widest space inside a closure over a span; 0 where it is solid. */
export const voidDiameter = (end: EndLayout, span: Span): number =>
  Math.max(
    0,
    ...voidsOf(end)
      .filter((one) => overlap(one.span, span))
      .map(({ diameter }) => diameter),
  );

/** The span of the tapped holes of a row in the closure. */
export const tapped = ({ position, boltDiameter }: EndLayout['holeRows'][number]): Span => ({
  from: position - boltDiameter / 2,
  to: position + boltDiameter / 2,
});

/** Radial metal of the closure at a row of bolts, to the axis where it is solid. */
export const metalAtRow = (end: EndLayout, row: EndLayout['holeRows'][number]): number =>
  (end.closure.diameter - voidDiameter(end, tapped(row))) / 2;

/**
 * The part of a closure along the axis in which metal reaches inwards to a radius: between the spaces, open to its faces,
 * that are wider. Of an end whose positions are distances from the end of the case.
 */
export function solidAt({ closure, cavity, recess, pocket }: EndLayout, radius: number): Span {
  const fromInside = pocket?.insertedFrom === 'inside';
  const wide = (...spaces: readonly (Turned | undefined)[]) =>
    spaces.filter((one) => one !== undefined).filter(({ diameter }) => diameter / 2 > radius);
  return {
    from: Math.max(
      closure.span.from,
      ...wide(recess, fromInside ? undefined : pocket).map(({ span }) => span.to),
    ),
    to: Math.min(
      closure.span.to,
      ...wide(cavity, fromInside ? pocket : undefined).map(({ span }) => span.from),
    ),
  };
}
