import { formatNumber } from '../../units';

/** A coordinate on paper [mm]. */
export const at = (value: number): string => String(Number(value.toFixed(3)));

export const escaped = (text: string): string =>
  text.replace(/[&<>"]/g, (c) => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' })[c] ?? c);

/** Height of the text of a drawing [mm]. */
export const textHeight = 2.6;

/** Width of a string on paper [mm]: digits and capitals of a sans-serif font are about 0.6 of its height wide. */
export const textWidth = (text: string, height = textHeight): number => 0.6 * height * text.length;

/** A length [m] as a drawing states it: millimetres without unit, at most two decimals. */
export const millimetres = (length: number): string => formatNumber(Math.round(length * 1e5) / 100, 6);

export const line = (x1: number, y1: number, x2: number, y2: number, look: string): string =>
  `<path class="${look}" d="M${at(x1)} ${at(y1)}L${at(x2)} ${at(y2)}"/>`;

/** A string; `turn` in degrees about its anchor. */
export function write(
  x: number,
  y: number,
  text: string,
  {
    anchor = 'start',
    turn = 0,
    look = 'note',
  }: { anchor?: 'start' | 'middle' | 'end'; turn?: number; look?: string } = {},
): string {
  const turned = turn === 0 ? '' : ` transform="rotate(${at(turn)} ${at(x)} ${at(y)})"`;
  return `<text class="${look}" x="${at(x)}" y="${at(y)}" text-anchor="${anchor}"${turned}>${escaped(text)}</text>`;
}
