import type { QuantityInput } from '../../../units';
import { type FieldsOf, requireFields } from '../../../units/known-fields';
import { inMillimetres, readLength, refused, requireFit } from '../measure';
import {
  arc,
  clippedOutline,
  elementX,
  elementY,
  line,
  type OutlineElement,
  outline,
  outlineReach,
} from '../surface';
import { type Grain, makeGrain, type OuterMeasures, outerFields, readEnds } from './grain';
import { crossingOf } from './outline-crossing';
import { partialCore, throughCore } from './prism-core';
import { pathLoops } from './svg-path';

/** A corner of a polyline outline. The line to the next corner is an arc when `bulge` is specified. */
export interface OutlinePoint {
  readonly x: QuantityInput<'length'>;
  readonly y: QuantityInput<'length'>;
  /**
   * Tangent of a quarter of the angle of the arc to the next corner; positive when the arc bulges to the right of the
   * direction of travel. Default 0 (a straight line).
   */
  readonly bulge?: number;
}

const fields: FieldsOf<Parameters<typeof extrudedCore>[0]> = {
  ...outerFields,
  outline: 'required',
  unit: 'optional',
  from: 'optional',
  to: 'optional',
};
const pointFields: FieldsOf<OutlinePoint> = { x: 'required', y: 'required', bulge: 'optional' };

/**
 * A core of any closed outline, for mandrels of any shape: corners joined by straight lines or arcs, or SVG path data
 * with the length of one of its units. The outline is drawn about the axis of the grain and is cut off at the wall. A
 * loop inside another is propellant; loops that cross themselves or each other are rejected. Ends are inhibited by
 * default.
 *
 * @throws MeopError `grain-measure` when the outline is not a closed curve inside the grain
 * @example extrudedCore({ outerDiameter: '50 mm', length: '80 mm', outline: 'M 8 0 A 8 8 0 0 1 -8 0 A 8 8 0 0 1 8 0 Z', unit: '1 mm' }).kind // => 'extruded core'
 */
export function extrudedCore(
  options: OuterMeasures & {
    /** SVG path data, or the corners of a closed polyline. */
    readonly outline: string | readonly OutlinePoint[];
    /** Length of one unit of SVG path data [length]. Default 1 mm. */
    readonly unit?: QuantityInput<'length'>;
    /** Start of the core [length from the head end]. Default: the head end. */
    readonly from?: QuantityInput<'length'>;
    /** End of the core [length from the head end]. Default: the aft end. */
    readonly to?: QuantityInput<'length'>;
  },
): Grain {
  const context = 'extrudedCore';
  requireFields(context, options, fields);
  const radius = readLength(context, 'outerDiameter', options.outerDiameter) / 2;
  const length = readLength(context, 'length', options.length);
  const from = options.from === undefined ? 0 : readLength(context, 'from', options.from, 'zero');
  const to = options.to === undefined ? length : readLength(context, 'to', options.to);
  requireFit(
    from < length,
    context,
    'from',
    options.from,
    `less than the length of the grain (${inMillimetres(length)})`,
  );
  requireFit(to > from, context, 'to', options.to, `greater than from (${inMillimetres(from)})`);
  const unit = options.unit === undefined ? 1e-3 : readLength(context, 'unit', options.unit);
  const raw =
    typeof options.outline === 'string'
      ? pathLoops(options.outline, { tolerance: (1e-4 * radius) / unit, field: 'outline' }).map((loop) =>
          loop.map((e) => scaled(e, unit)),
        )
      : [polyline(options.outline)];
  const crossing = crossingOf(raw);
  if (crossing !== undefined)
    throw refused(
      context,
      'outline',
      options.outline,
      'loops that do not cross or overlap',
      `It crosses or retraces itself at (${crossing.map((v) => Number((1e3 * v).toPrecision(4))).join(', ')}) mm: draw the single outline that the loops enclose`,
    );
  const loops = oriented(raw);
  const whole = outline(loops.flat());
  requireFit(
    outlineReach(whole) > 0,
    context,
    'outline',
    options.outline,
    'an outline that encloses an area',
  );
  const cut = clippedOutline(whole, radius);
  if (cut === undefined)
    throw refused(context, 'outline', options.outline, 'an outline at least partly inside the wall');
  const core =
    from <= 0 && to >= length ? throughCore('core', cut, length) : partialCore('core', cut, from, to, length);
  return makeGrain({
    kind: 'extruded core',
    shape: { envelope: { form: 'cylinder', radius, length }, ports: [core], inert: [] },
    burningEnds: readEnds(context, options.burningEnds, 'none'),
  });
}

const scaled = (e: OutlineElement, k: number): OutlineElement =>
  e.kind === 'line'
    ? line(k * e.x0, k * e.y0, k * e.x1, k * e.y1)
    : arc(k * e.cx, k * e.cy, k * e.radius, e.start, e.sweep);

function polyline(points: readonly OutlinePoint[]): OutlineElement[] {
  const context = 'extrudedCore';
  requireFit(Array.isArray(points), context, 'outline', points, 'SVG path data or a list of corners');
  requireFit(points.length >= 2, context, 'outline', points, 'a list of at least two corners');
  const at = points.map((p, i) => {
    requireFields(`${context}: outline[${i}]`, p, pointFields);
    const bulge = p.bulge ?? 0;
    requireFit(Number.isFinite(bulge), context, `outline[${i}].bulge`, bulge, 'a finite number');
    return {
      x: readLength(context, `outline[${i}].x`, p.x, 'any'),
      y: readLength(context, `outline[${i}].y`, p.y, 'any'),
      bulge,
    };
  });
  return at.flatMap((p, i): OutlineElement[] => {
    const q = at[(i + 1) % at.length];
    const chord = Math.hypot(q.x - p.x, q.y - p.y);
    if (chord === 0) return [];
    if (p.bulge === 0) return [line(p.x, p.y, q.x, q.y)];
    const sweep = 4 * Math.atan(p.bulge);
    const radius = chord / (2 * Math.abs(Math.sin(sweep / 2)));
    const height = chord / 2 / Math.tan(sweep / 2);
    const cx = (p.x + q.x) / 2 - (height * (q.y - p.y)) / chord;
    const cy = (p.y + q.y) / 2 + (height * (q.x - p.x)) / chord;
    return [arc(cx, cy, radius, Math.atan2(p.y - cy, p.x - cx), sweep)];
  });
}

/** Twice the signed area of a closed loop: chords, and the segments that arcs add. */
const signedArea = (loop: readonly OutlineElement[]): number =>
  loop.reduce((sum, e) => {
    const chord = elementX(e, 0) * elementY(e, 1) - elementX(e, 1) * elementY(e, 0);
    return sum + chord + (e.kind === 'arc' ? e.radius * e.radius * (e.sweep - Math.sin(e.sweep)) : 0);
  }, 0);

const reversed = (loop: readonly OutlineElement[]): OutlineElement[] =>
  loop
    .map((e) =>
      e.kind === 'line'
        ? line(e.x1, e.y1, e.x0, e.y0)
        : arc(e.cx, e.cy, e.radius, e.start + e.sweep, -e.sweep),
    )
    .reverse();

/** Loops around a cavity run counterclockwise, loops around propellant inside it clockwise, according to the depth of nesting. */
function oriented(loops: readonly OutlineElement[][]): OutlineElement[][] {
  return loops.map((loop, i) => {
    const [x, y] = [elementX(loop[0], 0.5), elementY(loop[0], 0.5)];
    const depth = loops.filter((other, j) => j !== i && windsAround(other, x, y)).length;
    return signedArea(loop) > 0 === (depth % 2 === 0) ? loop : reversed(loop);
  });
}

/** True if the loop encloses the point: sums the angle that it sweeps, by short chords. */
function windsAround(loop: readonly OutlineElement[], x: number, y: number): boolean {
  let turn = 0;
  for (const e of loop)
    for (let k = 0; k < 32; k++) {
      const a = Math.atan2(elementY(e, k / 32) - y, elementX(e, k / 32) - x);
      const b = Math.atan2(elementY(e, (k + 1) / 32) - y, elementX(e, (k + 1) / 32) - x);
      turn += Math.atan2(Math.sin(b - a), Math.cos(b - a));
    }
  return Math.abs(turn) > Math.PI;
}
