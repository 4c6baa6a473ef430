// Outlines of the usual mandrels, by their dimensions [m, rad].
import { arc, line, type Outline, type OutlineElement, outline } from './outline';

export const circleOutline = (radius: number, cx = 0, cy = 0): Outline =>
  outline([arc(cx, cy, radius, 0, 2 * Math.PI)]);

/** The gap between a rod and a tube. */
export const annulusOutline = (inner: number, outer: number): Outline =>
  outline([arc(0, 0, outer, 0, 2 * Math.PI), arc(0, 0, inner, 0, -2 * Math.PI)]);

/**
 * `count` fins about the axis that end at `tip`: square, or round with the half width as radius. The sides of
 * neighbouring fins end where they meet, so that the area that fins share about the axis is counted once. Undefined
 * if square fins leave nothing between them.
 */
export function finOutline(
  count: number,
  halfWidth: number,
  tip: number,
  end: 'square' | 'round',
  phase = 0,
): Outline | undefined {
  const h = halfWidth;
  // Distance along the fin at which the sides of neighbours meet. A single fin begins at the axis; two are placed
  // back to back.
  const root = count > 2 ? h / Math.tan(Math.PI / count) : 0;
  const base = count === 1 ? [line(0, h, 0, -h)] : [];
  const chain = (elements: readonly OutlineElement[]): Outline =>
    outline([...elements, ...base], { fold: count, phase });
  if (end === 'square') {
    if (root >= tip) return undefined;
    return chain([line(root, -h, tip, -h), line(tip, -h, tip, h), line(tip, h, root, h)]);
  }
  const centre = tip - h;
  if (root < centre)
    return chain([
      line(root, -h, centre, -h),
      arc(centre, 0, h, -Math.PI / 2, Math.PI),
      line(centre, h, root, h),
    ]);
  // Wide fins: their round tips meet before their sides would.
  const s = centre * Math.sin(Math.PI / count);
  const notch = centre * Math.cos(Math.PI / count) + Math.sqrt(h * h - s * s);
  const turn = Math.atan2(notch * Math.sin(Math.PI / count), notch * Math.cos(Math.PI / count) - centre);
  return chain([arc(centre, 0, h, -turn, 2 * turn)]);
}

/** A star by the parameters of NASA SP-8076; angles in rad. Undefined when the sides do not meet. */
export function starOutline(star: {
  readonly points: number;
  readonly outerRadius: number;
  readonly web: number;
  readonly fillet: number;
  readonly angularFraction: number;
  readonly openingAngle: number;
}): Outline | undefined {
  const { points, fillet: f } = star;
  const half = star.openingAngle / 2;
  const b = (star.angularFraction * Math.PI) / points;
  const centre = star.outerRadius - star.web - f;
  const cx = centre * Math.cos(b);
  const cy = centre * Math.sin(b);
  const run = (cy - f * Math.cos(half)) / Math.sin(half);
  const tip = cx + f * Math.sin(half) - run * Math.cos(half);
  if (!(centre > 0) || !(run > 0) || !(tip > 0)) return undefined;
  const turn = Math.PI / 2 - half + b;
  const side = [cx + f * Math.sin(half), cy - f * Math.cos(half)] as const;
  const elements: OutlineElement[] = [];
  const land = Math.PI / points - b;
  if (land > 1e-12) elements.push(arc(0, 0, centre + f, -b - land, land));
  if (f > 0) elements.push(arc(cx, -cy, f, -b, turn));
  elements.push(line(side[0], -side[1], tip, 0), line(tip, 0, side[0], side[1]));
  if (f > 0) elements.push(arc(cx, cy, f, -turn + b, turn));
  if (land > 1e-12) elements.push(arc(0, 0, centre + f, b, land));
  return outline(elements, { fold: points });
}

/** Parallel-sided spokes of propellant inside a ring. */
export function wagonWheelOutline(wheel: {
  readonly spokes: number;
  readonly ringRadius: number;
  readonly halfThickness: number;
  readonly spokeRadius: number;
}): Outline {
  const { spokes, ringRadius: rw, halfThickness: t, spokeRadius: ri } = wheel;
  const alpha = Math.asin(t / rw);
  const foot = Math.sqrt(rw * rw - t * t);
  const gap = Math.PI / spokes - alpha;
  return outline(
    [
      arc(0, 0, rw, -Math.PI / spokes, gap),
      line(foot, -t, ri, -t),
      line(ri, -t, ri, t),
      line(ri, t, foot, t),
      arc(0, 0, rw, alpha, gap),
    ],
    { fold: spokes },
  );
}

/** Outline of a debonded stretch of wall, which burns inwards. */
export function wallOutline(radius: number, from: number, sweep: number): Outline {
  if (sweep >= 2 * Math.PI - 1e-9) return outline([arc(0, 0, radius, 0, -2 * Math.PI)], { sheet: true });
  return outline([arc(0, 0, radius, from + sweep, -sweep)], { sheet: true });
}
