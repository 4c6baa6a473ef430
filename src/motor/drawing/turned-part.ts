// A turned part in its half-section: one outer and one inner radius at every station along the axis.

/** A point of a half-section: position along the axis and radius [m]. */
export type Point = readonly [position: number, radius: number];

/** Metal that is taken off between two positions: down to a radius from outside, or up to it from inside. */
export interface Cut {
  readonly from: number;
  readonly to: number;
  readonly radius: number;
  readonly side: 'outside' | 'inside';
}

/** A blank with its cuts. */
export interface Blank {
  readonly from: number;
  readonly to: number;
  readonly outer: number;
  readonly inner: number;
  readonly cuts?: readonly Cut[];
}

/** The outline of a turned part, above the axis: closed, beginning at the lower position outside. */
export function outlineOf({ from, to, outer, inner, cuts = [] }: Blank): readonly Point[] {
  const inside = (position: number): boolean => position > from && position < to;
  const steps = [...new Set([from, to, ...cuts.flatMap((cut) => [cut.from, cut.to].filter(inside))])].sort(
    (a, b) => a - b,
  );
  const above: Point[] = [];
  const below: Point[] = [];
  for (let k = 1; k < steps.length; k++) {
    const [start, end] = [steps[k - 1], steps[k]];
    const middle = (start + end) / 2;
    const here = cuts.filter((cut) => cut.from <= middle && cut.to >= middle);
    const high = Math.min(
      outer,
      ...here.filter(({ side }) => side === 'outside').map(({ radius }) => radius),
    );
    const low = Math.max(inner, ...here.filter(({ side }) => side === 'inside').map(({ radius }) => radius));
    above.push([start, high], [end, high]);
    below.push([start, Math.min(low, high)], [end, Math.min(low, high)]);
  }
  return withoutRepeats([...above, ...below.reverse()]);
}

const withoutRepeats = (points: readonly Point[]): readonly Point[] =>
  points.filter(([z, r], i) => {
    const [before, after] = [
      points[(i + points.length - 1) % points.length],
      points[(i + 1) % points.length],
    ];
    if (before[0] === z && before[1] === r) return false;
    const straight = (before[0] === z && after[0] === z) || (before[1] === r && after[1] === r);
    return !straight || (before[0] !== z && before[1] !== r);
  });

/** The volume that an outline turns [m³], by the theorem of Pappus: what a drawing shows can be weighed. */
export function turnedVolume(outline: readonly Point[]): number {
  // Sum over the edges of the area swept, 2π ∫ r²/2 dz, exact for straight edges.
  const sum = outline.reduce((total, [z, r], i) => {
    const [nextZ, nextR] = outline[(i + 1) % outline.length];
    return total + ((nextZ - z) * (r * r + r * nextR + nextR * nextR)) / 3;
  }, 0);
  return Math.PI * Math.abs(sum);
}
