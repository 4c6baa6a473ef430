import { hatchOf } from './drawing-style';
import { at } from './svg-text';
import type { Point } from './turned-part';

/** How a section along the axis lies on paper: x along the axis, both halves. */
export interface View {
  /** Millimetres on paper per metre of motor. */
  readonly scale: number;
  /** Position of the motor [m] at the left edge, and the paper there [mm]. */
  readonly from: number;
  readonly to: number;
  readonly left: number;
  /** Paper height of the axis [mm]. */
  readonly axis: number;
}

export const xOf = ({ left, from, scale }: View, position: number): number =>
  left + (position - from) * scale;
export const yOf = ({ axis, scale }: View, radius: number): number => axis - radius * scale;
export const widthOf = ({ from, to, scale }: View): number => (to - from) * scale;

/** A turned part on both sides of the axis: the metal, and its edges except those on the axis. */
export function turned(view: View, outline: readonly Point[], look: string): string {
  const halves = [1, -1].map((side) => outline.map(([z, r]): Point => [xOf(view, z), yOf(view, side * r)]));
  const metal = halves.map((half) => `M${half.map(([x, y]) => `${at(x)} ${at(y)}`).join('L')}Z`).join('');
  const edges = halves
    .flatMap((half) =>
      half.map(([x, y], i) => {
        const [nextX, nextY] = half[(i + 1) % half.length];
        const onAxis = Math.abs(y - view.axis) < 1e-9 && Math.abs(nextY - view.axis) < 1e-9;
        return onAxis ? '' : `M${at(x)} ${at(y)}L${at(nextX)} ${at(nextY)}`;
      }),
    )
    .join('');
  return `<path class="${look}"${hatchOf(look)} d="${metal}"/><path class="edge" d="${edges}"/>`;
}

/** A part cut on both sides of the axis, such as a screw or an O-ring: boxes between two positions and two radii. */
export const boxes = (
  view: View,
  [from, to]: readonly [number, number],
  [low, high]: readonly [number, number],
  look: string,
): string =>
  [1, -1]
    .map((side) => {
      const y = Math.min(yOf(view, side * low), yOf(view, side * high));
      return `<rect class="${look}" x="${at(xOf(view, from))}" y="${at(y)}" width="${at((to - from) * view.scale)}" height="${at((high - low) * view.scale)}"/>`;
    })
    .join('');

/** Circles on both sides of the axis. */
export const circles = (view: View, position: number, radius: number, size: number, look: string): string =>
  [1, -1]
    .map(
      (side) =>
        `<circle class="${look}" cx="${at(xOf(view, position))}" cy="${at(yOf(view, side * radius))}" r="${at((size / 2) * view.scale)}"/>`,
    )
    .join('');
