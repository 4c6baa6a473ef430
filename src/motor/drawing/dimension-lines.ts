import { type View, xOf, yOf } from './section-view';
import { at, line, millimetres, textHeight, textWidth, write } from './svg-text';

/** A length along the axis between two positions [m], from the parts at two radii. */
export interface AxialDimension {
  readonly from: number;
  readonly to: number;
  readonly name?: string;
}

/** A diameter [m] at a position [m]. */
export interface DiameterDimension {
  readonly diameter: number;
  readonly position: number;
  readonly name?: string;
}

const rowHeight = textHeight + 2.2;
const arrow = 1.8;

const text = (length: number, name: string | undefined, sign = ''): string =>
  `${sign}${millimetres(length)}${name === undefined ? '' : ` ${name}`}`;

/**
 * Places intervals in rows so that none overlaps another of its row: shorter ones nearer to the part, so that extension
 * lines do not cross dimension lines.
 */
export function rowsOf<T extends { readonly low: number; readonly high: number }>(
  intervals: readonly T[],
): readonly (readonly T[])[] {
  const rows: T[][] = [];
  const sorted = [...intervals].sort((a, b) => a.high - a.low - (b.high - b.low) || a.low - b.low);
  for (const one of sorted) {
    const free = rows.find((row) => row.every(({ low, high }) => one.high <= low || one.low >= high));
    if (free === undefined) rows.push([one]);
    else free.push(one);
  }
  return rows;
}

/** Dimension lines along the axis under a view, from a paper height downwards; `height` is what they take. */
export function axialDimensions(
  view: View,
  dimensions: readonly AxialDimension[],
  top: number,
  radius: number,
): { readonly svg: string; readonly height: number } {
  const placed = dimensions.map((one) => {
    const [x1, x2] = [xOf(view, one.from), xOf(view, one.to)].sort((a, b) => a - b);
    const label = text(Math.abs(one.to - one.from), one.name);
    const wide = textWidth(label) + 1;
    const inside = x2 - x1 >= wide + 2 * arrow;
    // A label that does not fit between the arrows stands to the right of them.
    return {
      x1,
      x2,
      label,
      inside,
      low: x1 - (inside ? 0 : 2 * arrow),
      high: inside ? x2 : x2 + 2 * arrow + wide,
    };
  });
  const rows = rowsOf(placed);
  const svg = rows.flatMap((row, k) =>
    row.map(({ x1, x2, label, inside }) => {
      const y = top + (k + 1) * rowHeight;
      const reach = yOf(view, -radius) + 0.6;
      const dimensionLine = inside
        ? `${line(x1, y, x2, y, 'dimension')}${arrowHead(x1, y, 1, 0)}${arrowHead(x2, y, -1, 0)}`
        : `${line(x1 - 2 * arrow, y, x2 + 2 * arrow, y, 'dimension')}${arrowHead(x1, y, -1, 0)}${arrowHead(x2, y, 1, 0)}`;
      return [
        line(x1, reach, x1, y + 0.8, 'extension'),
        line(x2, reach, x2, y + 0.8, 'extension'),
        dimensionLine,
        inside
          ? write((x1 + x2) / 2, y - 0.7, label, { anchor: 'middle' })
          : write(x2 + 2 * arrow + 0.5, y + 0.35 * textHeight, label),
      ].join('');
    }),
  );
  return { svg: svg.join('\n'), height: rows.length * rowHeight + 1 };
}

/** True where the text of a diameter fits between its arrows. */
export const diameterFits = ({ scale }: View, { diameter, name }: DiameterDimension): boolean =>
  diameter * scale >= textWidth(text(diameter, name, '⌀')) + 2 * arrow + 1;

/** Diameters on one side of a view, the smallest nearest to it; `width` is what they take. */
export function diameterDimensions(
  view: View,
  dimensions: readonly DiameterDimension[],
  side: 'left' | 'right',
): { readonly svg: string; readonly width: number } {
  const sorted = [...dimensions].sort((a, b) => a.diameter - b.diameter);
  const sign = side === 'left' ? -1 : 1;
  const edge = xOf(view, side === 'left' ? view.from : view.to);
  let x = edge + sign * 1.2;
  const drawn = sorted.map(({ diameter, position, name }) => {
    x += sign * rowHeight;
    const [high, low] = [yOf(view, diameter / 2), yOf(view, -diameter / 2)];
    const label = text(diameter, name, '⌀');
    const outside = !diameterFits(view, { diameter, position, ...(name !== undefined && { name }) });
    const start = xOf(view, position);
    return [
      line(start, high, x + sign * 0.8, high, 'extension'),
      line(start, low, x + sign * 0.8, low, 'extension'),
      line(x, high - (outside ? 2 * arrow : 0), x, low + (outside ? 2 * arrow : 0), 'dimension'),
      arrowHead(x, high, 0, outside ? -1 : 1),
      arrowHead(x, low, 0, outside ? 1 : -1),
      outside
        ? write(x - 0.7, high - 2 * arrow - 0.6, label, { turn: -90 })
        : write(x - 0.7, (high + low) / 2, label, { anchor: 'middle', turn: -90 }),
    ].join('');
  });
  return { svg: drawn.join('\n'), width: sorted.length === 0 ? 0 : Math.abs(x - edge) + 1.5 };
}

/** An arrowhead whose point is at (x, y), with its body in the direction (dx, dy). */
const arrowHead = (x: number, y: number, dx: number, dy: number): string => {
  const [bx, by] = [x + arrow * dx, y + arrow * dy];
  const [nx, ny] = [0.28 * arrow * dy, 0.28 * arrow * dx];
  return `<path class="arrow" d="M${at(x)} ${at(y)}L${at(bx + nx)} ${at(by + ny)}L${at(bx - nx)} ${at(by - ny)}Z"/>`;
};
