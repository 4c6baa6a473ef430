import { either, inputs, length, list, optional, procedure, ratio, type Values, words } from '../../../units';
import { outer } from '../grain-inputs';
import { refused, requireFit } from '../misfit';
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
import { extent, extentOf } from './core';
import { cylindricalGrain } from './grain';
import { crossingOf } from './outline-crossing';
import { partialCore, throughCore } from './prism-core';
import { pathLoops } from './svg-path';

const context = 'extrudedCore';
const coordinate = (symbol: string) => length(symbol, `${symbol} of the corner`, {});
const corner = inputs(
  {
    x: coordinate('x'),
    y: coordinate('y'),
    bulge: optional(
      ratio(
        'b',
        'tangent of a quarter of the angle of the arc to the next corner; positive where the arc bulges to the right of the direction of travel, 0 for a straight line',
      ),
      0,
    ),
  },
  { meaning: 'a corner of the outline' },
);

/**
 * For mandrels of any shape. The outline is drawn about the axis of the grain and is cut off at the wall. A loop inside
 * another is propellant; loops that cross themselves or each other are rejected.
 */
export const extrudedCore = /* @__PURE__ */ procedure({
  name: context,
  title: 'Core of any closed outline; ends inhibited by default',
  source: 'geometry; path data as in SVG 2 (W3C), chapter 9',
  inputs: {
    ...outer('none'),
    outline: either('outline of the core as SVG path data, or as corners joined by straight lines or arcs', [
      words('SVG path data', { example: 'M 8 0 A 8 8 0 0 1 -8 0 A 8 8 0 0 1 8 0 Z' }),
      list('corners of the outline', corner, { min: 2 }),
    ]),
    unit: optional(
      length('u', 'length of one unit of the path', { example: '1 mm', worse: 'neither' }),
      1e-3,
    ),
    ...extent,
  },
  gives: 'the grain',
  example: {
    outerDiameter: '50 mm',
    length: '80 mm',
    outline: 'M 8 0 A 8 8 0 0 1 -8 0 A 8 8 0 0 1 8 0 Z',
  },
  run: (values) => {
    const given = values.outline;
    const radius = values.outerDiameter.si / 2;
    const high = values.length.si;
    const [from, to] = extentOf(context, values, ['from', 'to'], high);
    const unit = values.unit.si;
    const raw =
      typeof given === 'string'
        ? pathLoops(given, { tolerance: (1e-4 * radius) / unit, field: 'outline' }).map((loop) =>
            loop.map((e) => scaled(e, unit)),
          )
        : [polyline(given)];
    const crossing = crossingOf(raw);
    if (crossing !== undefined)
      throw refused(
        context,
        'outline',
        given,
        'loops that do not cross or overlap',
        `It crosses or retraces itself at (${crossing.map((v) => Number((1e3 * v).toPrecision(4))).join(', ')}) mm: draw the single outline that the loops enclose`,
      );
    const whole = outline(oriented(raw).flat());
    requireFit(context, outlineReach(whole) > 0, 'outline', given, 'an outline that encloses an area');
    const cut = clippedOutline(whole, radius);
    if (cut === undefined)
      throw refused(context, 'outline', given, 'an outline at least partly inside the wall');
    const core =
      from <= 0 && to >= high ? throughCore('core', cut, high) : partialCore('core', cut, from, to, high);
    return cylindricalGrain('extruded core', values, [core]);
  },
});

const scaled = (e: OutlineElement, k: number): OutlineElement =>
  e.kind === 'line'
    ? line(k * e.x0, k * e.y0, k * e.x1, k * e.y1)
    : arc(k * e.cx, k * e.cy, k * e.radius, e.start, e.sweep);

function polyline(corners: readonly Values<typeof corner.fields>[]): OutlineElement[] {
  const at = corners.map(({ x, y, bulge }) => ({ x: x.si, y: y.si, bulge }));
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
