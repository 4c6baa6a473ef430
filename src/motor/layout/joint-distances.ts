import type { EndLayout, GroovePlace } from './end-layout';
import { metalAtRow, solidAt, tapped, voidDiameter } from './metal';

/** What the evaluation of a bolted joint takes from a layout, in metres. */
export interface JointDistances {
  /** From the edge of the holes to the nearest groove of a radial O-ring; undefined without one. */
  readonly sealToHoles: number | undefined;
  /** From the hole centres in the closure to the end of the metal they push towards: the inner side, or a groove deeper than half of the thread. */
  readonly closureEdgeDistance: number;
  /** Radial metal of the closure at the bolts; undefined where it is solid to the axis. */
  readonly closureThickness: number | undefined;
  readonly gap: number;
}

/** The distances of a bolted joint; positions of the end are distances from the end of the case. */
export function jointDistances(end: EndLayout, bore: number): JointDistances | undefined {
  const { holeRows, grooves, closure } = end;
  const last = holeRows.at(-1);
  if (last === undefined) return undefined;
  const inside = grooves
    .filter((one) => one.kind === 'radial')
    .filter(({ span }) => span.from > last.position);
  const groove = nearest(inside);
  // The metal under a shallow groove carries most of a thread.
  const deep = nearest(inside.filter((one) => closure.diameter - one.bottomDiameter > last.engagement));
  const isSolid = holeRows.every((row) => voidDiameter(end, tapped(row)) === 0);
  const solid = solidAt(end, closure.diameter / 2 - last.engagement).to;
  return {
    sealToHoles: groove === undefined ? undefined : groove - last.position - last.holeDiameter / 2,
    closureEdgeDistance: Math.min(solid, deep ?? solid) - last.position,
    closureThickness: isSolid ? undefined : Math.min(...holeRows.map((row) => metalAtRow(end, row))),
    gap: (bore - closure.diameter) / 2,
  };
}

const nearest = (grooves: readonly GroovePlace[]): number | undefined =>
  grooves.length === 0 ? undefined : Math.min(...grooves.map(({ span }) => span.from));
