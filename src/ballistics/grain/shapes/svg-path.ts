// Reads outlines from SVG path data (W3C SVG 2, chapter 9). Lines and circular arcs are kept; other curves become
// short lines.
import { refused } from '../misfit';
import { arc, line, type OutlineElement } from '../surface';

/** How path data is read. */
export interface PathOptions {
  /** Deviation allowed where a curve becomes lines, in units of the path. */
  readonly tolerance: number;
  /** Name of the field in error messages. */
  readonly field: string;
}

const COUNTS: Readonly<Record<string, number>> = {
  M: 2,
  L: 2,
  H: 1,
  V: 1,
  C: 6,
  S: 4,
  Q: 4,
  T: 2,
  A: 7,
  Z: 0,
};

/** Closed loops of a path, in the path's own units. Every subpath is closed. */
export function pathLoops(data: string, options: PathOptions): OutlineElement[][] {
  const fail = (expected: string, remedy?: string): Error =>
    refused('extrudedCore', options.field, data, expected, remedy);
  const tokens = data.match(/[a-zA-Z]|[-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?/g) ?? [];
  if (data.replace(/[a-zA-Z]|[-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?|[\s,]/g, '') !== '')
    throw fail('SVG path data');
  const loops: OutlineElement[][] = [];
  let loop: OutlineElement[] = [];
  let [x, y, startX, startY] = [0, 0, 0, 0];
  let [ctrlX, ctrlY] = [0, 0];
  let lastCommand = '';
  let i = 0;
  const lineTo = (nx: number, ny: number): void => {
    if (nx !== x || ny !== y) loop.push(line(x, y, nx, ny));
    [x, y] = [nx, ny];
  };
  const close = (): void => {
    if (Math.hypot(startX - x, startY - y) > 1e-12) lineTo(startX, startY);
    if (loop.length > 0) loops.push(loop);
    loop = [];
    [x, y] = [startX, startY];
  };
  const curve = (at: (t: number) => readonly [number, number], roughLength: number): void => {
    const parts = Math.min(400, Math.max(4, Math.ceil(Math.sqrt(roughLength / (8 * options.tolerance)))));
    for (let k = 1; k <= parts; k++) lineTo(...at(k / parts));
  };
  while (i < tokens.length) {
    const first = tokens[i];
    const isLetter = /[a-zA-Z]/.test(first);
    if (isLetter) i++;
    const command: string = isLetter
      ? first
      : lastCommand === 'M'
        ? 'L'
        : lastCommand === 'm'
          ? 'l'
          : lastCommand;
    const upper = command.toUpperCase();
    const count = COUNTS[upper];
    if (count === undefined || (!isLetter && count === 0))
      throw fail('SVG path data of the commands M L H V C S Q T A Z', `Replace '${first}'`);
    const v = tokens.slice(i, i + count).map(Number);
    if (v.length < count || v.some((n) => !Number.isFinite(n)))
      throw fail(`SVG path data with ${count} numbers after '${command}'`);
    i += count;
    const [ox, oy] = command === upper ? [0, 0] : [x, y];
    if (upper === 'M') {
      close();
      [x, y] = [v[0] + ox, v[1] + oy];
      [startX, startY] = [x, y];
    } else if (upper === 'L') lineTo(v[0] + ox, v[1] + oy);
    else if (upper === 'H') lineTo(v[0] + ox, y);
    else if (upper === 'V') lineTo(x, v[0] + oy);
    else if (upper === 'Z') close();
    else if (upper === 'A') {
      const part = arcTo(x, y, v, ox, oy);
      if (part === undefined) throw fail('SVG path data with circular arcs only', 'Make rx equal to ry');
      if (part.kind === 'line') lineTo(part.x1, part.y1);
      else {
        loop.push(part);
        [x, y] = [v[5] + ox, v[6] + oy];
      }
    } else {
      const smooth =
        (upper === 'S' && /[CcSs]/.test(lastCommand)) || (upper === 'T' && /[QqTt]/.test(lastCommand));
      const mirrored: readonly [number, number] = smooth ? [2 * x - ctrlX, 2 * y - ctrlY] : [x, y];
      const p = v.map((n, k) => n + (k % 2 === 0 ? ox : oy));
      const poles: readonly (readonly [number, number])[] =
        upper === 'C'
          ? [
              [x, y],
              [p[0], p[1]],
              [p[2], p[3]],
              [p[4], p[5]],
            ]
          : upper === 'S'
            ? [[x, y], mirrored, [p[0], p[1]], [p[2], p[3]]]
            : upper === 'Q'
              ? [
                  [x, y],
                  [p[0], p[1]],
                  [p[2], p[3]],
                ]
              : [[x, y], mirrored, [p[0], p[1]]];
      [ctrlX, ctrlY] = poles[poles.length - 2];
      const rough = poles
        .slice(1)
        .reduce((sum, q, k) => sum + Math.hypot(q[0] - poles[k][0], q[1] - poles[k][1]), 0);
      curve((t) => bezier(poles, t), rough);
    }
    lastCommand = command;
  }
  close();
  if (loops.length === 0) throw fail('SVG path data with at least one closed outline');
  return loops;
}

/** De Casteljau's construction. */
function bezier(poles: readonly (readonly [number, number])[], t: number): readonly [number, number] {
  let row = poles;
  while (row.length > 1)
    row = row
      .slice(1)
      .map((q, k) => [row[k][0] + t * (q[0] - row[k][0]), row[k][1] + t * (q[1] - row[k][1])] as const);
  return row[0];
}

/** A circular arc by its end points (SVG 2, appendix B.2.4); undefined for an ellipse. */
function arcTo(
  x: number,
  y: number,
  v: readonly number[],
  ox: number,
  oy: number,
): OutlineElement | undefined {
  const [rx, ry, , large, sweep] = v;
  const [ex, ey] = [v[5] + ox, v[6] + oy];
  if (rx === 0 || ry === 0) return line(x, y, ex, ey);
  if (Math.abs(Math.abs(rx) - Math.abs(ry)) > 1e-9 * Math.abs(rx)) return undefined;
  const half = Math.hypot(ex - x, ey - y) / 2;
  const radius = Math.max(Math.abs(rx), half);
  const height = Math.sqrt(Math.max(0, radius * radius - half * half));
  const side = (large !== 0) === (sweep !== 0) ? -1 : 1;
  const [nx, ny] = [-(ey - y) / (2 * half), (ex - x) / (2 * half)];
  // The centre lies left of the chord for a counterclockwise arc shorter than a half turn (y pointing up).
  const cx = (x + ex) / 2 + side * height * nx;
  const cy = (y + ey) / 2 + side * height * ny;
  const from = Math.atan2(y - cy, x - cx);
  let turn = Math.atan2(ey - cy, ex - cx) - from;
  if (sweep !== 0 && turn <= 0) turn += 2 * Math.PI;
  if (sweep === 0 && turn >= 0) turn -= 2 * Math.PI;
  return arc(cx, cy, radius, from, turn);
}
