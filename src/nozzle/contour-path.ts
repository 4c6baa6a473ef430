// Pieces of a nozzle's inner profile in plain SI numbers: x along the axis, r from it. A profile is a chain of pieces;
// each starts at the end of the previous one.

/** A straight line, a circular arc, or a parabola given by its two ends and the intersection of its tangents. */
export type ContourPiece =
  | { readonly kind: 'line'; readonly from: ContourPoint; readonly to: ContourPoint; readonly name: string }
  | {
      readonly kind: 'arc';
      readonly from: ContourPoint;
      readonly to: ContourPoint;
      readonly name: string;
      readonly centre: ContourPoint;
      readonly radius: number;
    }
  | {
      readonly kind: 'parabola';
      readonly from: ContourPoint;
      readonly to: ContourPoint;
      readonly name: string;
      readonly control: ContourPoint;
    };

/** A point of the profile. */
export interface ContourPoint {
  readonly x: number;
  readonly r: number;
}

/** The point at a fraction `u` of a piece, 0 at its start and 1 at its end. */
export function pointOn(piece: ContourPiece, u: number): ContourPoint {
  const { from, to } = piece;
  if (piece.kind === 'line') return { x: from.x + u * (to.x - from.x), r: from.r + u * (to.r - from.r) };
  if (piece.kind === 'parabola') {
    const { control } = piece;
    const a = (1 - u) * (1 - u);
    const b = 2 * u * (1 - u);
    const c = u * u;
    return { x: a * from.x + b * control.x + c * to.x, r: a * from.r + b * control.r + c * to.r };
  }
  const start = Math.atan2(from.r - piece.centre.r, from.x - piece.centre.x);
  const end = Math.atan2(to.r - piece.centre.r, to.x - piece.centre.x);
  const angle = start + u * (end - start);
  return {
    x: piece.centre.x + piece.radius * Math.cos(angle),
    r: piece.centre.r + piece.radius * Math.sin(angle),
  };
}

/** Points along a chain: as many on each curved piece as keep the chord within `tolerance` of the curve. */
export function sampleContour(pieces: readonly ContourPiece[], tolerance: number): readonly ContourPoint[] {
  const points: ContourPoint[] = [pieces[0].from];
  for (const piece of pieces) {
    const count = segments(piece, tolerance);
    for (let i = 1; i < count; i++) points.push(pointOn(piece, i / count));
    points.push(piece.to);
  }
  return points;
}

// The chord of an arc of angle θ is r·θ²/8 inside it; that of a parabola, a quarter of its control offset divided by n².
function segments(piece: ContourPiece, tolerance: number): number {
  if (piece.kind === 'line') return 1;
  if (piece.kind === 'arc') {
    const chord = Math.hypot(piece.to.x - piece.from.x, piece.to.r - piece.from.r);
    const angle = 2 * Math.asin(Math.min(1, chord / (2 * piece.radius)));
    return Math.max(1, Math.ceil(angle * Math.sqrt(piece.radius / (8 * tolerance))));
  }
  const offset = Math.hypot(
    piece.from.x - 2 * piece.control.x + piece.to.x,
    piece.from.r - 2 * piece.control.r + piece.to.r,
  );
  return Math.max(1, Math.ceil(Math.sqrt(offset / (4 * tolerance))));
}

/** The chain as an SVG path in millimetres, x to the right and r upwards (negative y), with true arcs and parabolas. */
export function svgPathOf(pieces: readonly ContourPiece[]): string {
  const mm = (si: number): string => String(Number((si * 1000).toFixed(4)));
  const at = ({ x, r }: ContourPoint): string => `${mm(x)} ${mm(-r)}`;
  const parts = [`M ${at(pieces[0].from)}`];
  for (const piece of pieces) {
    if (piece.kind === 'line') parts.push(`L ${at(piece.to)}`);
    else if (piece.kind === 'parabola') parts.push(`Q ${at(piece.control)} ${at(piece.to)}`);
    else {
      // The centre above the wall (a throat) or below it (the rounding at the inlet) determines the sense of the sweep.
      const sweep = piece.centre.r > piece.from.r || piece.centre.r > piece.to.r ? 0 : 1;
      parts.push(`A ${mm(piece.radius)} ${mm(piece.radius)} 0 0 ${sweep} ${at(piece.to)}`);
    }
  }
  return parts.join(' ');
}
