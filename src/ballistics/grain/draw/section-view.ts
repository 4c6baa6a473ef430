// One section of a grain as SVG: bands between burn fronts, the port, and the flaws on top.
import type { DepthField } from '../front';
import type { Source } from '../surface';
import { type FieldGrid, regionLoops } from './iso-contours';

/** A rectangle of the plane [m] and how it maps to the grain and to the page. */
export interface SectionView {
  readonly width: number;
  readonly height: number;
  /** Point of the grain at (x, y) of the view, measured from its lower left. */
  readonly point: (x: number, y: number) => readonly [number, number, number];
  /** Page units per metre, and the page position of the view's upper left. */
  readonly scale: number;
  readonly left: number;
  readonly top: number;
}

function sampled(view: SectionView, value: (x: number, y: number, z: number) => number): FieldGrid {
  const cell = Math.max(view.width, view.height) / 260;
  const columns = Math.ceil(view.width / cell) + 1;
  const rows = Math.ceil(view.height / cell) + 1;
  const values = new Float64Array(columns * rows);
  for (let j = 0; j < rows; j++)
    for (let i = 0; i < columns; i++)
      values[j * columns + i] = value(
        ...view.point((view.width * i) / (columns - 1), (view.height * j) / (rows - 1)),
      );
  return { columns, rows, values };
}

/** A polyline through fewer points, which deviates from the others by at most 0.05 page units. */
function thinned(points: readonly (readonly [number, number])[]): (readonly [number, number])[] {
  const kept = points.slice(0, 1);
  let anchor = 0;
  for (let end = 2; end < points.length; end++) {
    const [ax, ay] = points[anchor];
    const [dx, dy] = [points[end][0] - ax, points[end][1] - ay];
    const size = Math.hypot(dx, dy);
    const missed = points
      .slice(anchor + 1, end)
      .some(([x, y]) => Math.abs((x - ax) * dy - (y - ay) * dx) > 0.05 * size);
    if (!missed && end - anchor < 200) continue;
    anchor = end - 1;
    kept.push(points[anchor]);
  }
  if (points.length > 1) kept.push(points[points.length - 1]);
  return kept;
}

const path = (view: SectionView, grid: FieldGrid, level: number): string =>
  regionLoops(grid, level)
    .map((loop) => {
      const points = loop.map(([i, j]) => {
        const x = view.left + (view.scale * view.width * i) / (grid.columns - 1);
        const y = view.top + view.scale * view.height * (1 - j / (grid.rows - 1));
        return [x, y] as const;
      });
      return `M${thinned(points)
        .map(([x, y]) => `${x.toFixed(2)} ${y.toFixed(2)}`)
        .join('L')}Z`;
    })
    .join('');

/** Bands between burn fronts, drawn from the deepest front to the port. `fronts` are depths in ascending order. */
export function frontBands(view: SectionView, field: DepthField, fronts: readonly number[]): string {
  const grid = sampled(view, field.opensAt);
  const last = Math.max(1, fronts.length - 1);
  const bands = fronts
    .map((w, k) => `<path class="front" style="--t:${(k / last).toFixed(3)}" d="${path(view, grid, w)}"/>`)
    .reverse();
  return [...bands, `<path class="port" d="${path(view, grid, 0)}"/>`].join('\n');
}

/** Outline of the flaw in the section. A flaw without thickness is drawn as a line. */
export function flawMark(view: SectionView, source: Source, radius: number): string {
  const foot = new Float64Array(3);
  const grid = sampled(view, (x, y, z) => source.nearest(x, y, z, foot));
  const cell = Math.max(view.width, view.height) / 260;
  const d = path(view, grid, source.sheet ? Math.max(0.022 * radius, 0.7 * cell) : 0);
  return d === '' ? '' : `<path class="flaw" d="${d}"/>`;
}
