import { depthField, litSources } from '../front';
import type { Grain } from '../shapes';
import { flawMark, frontBands, type SectionView } from './section-view';

/** A section of a grain along its axis as SVG: the port before ignition, and the flaws. */
export interface LongitudinalSection {
  readonly port: string;
  readonly flaws: string;
}

/** Cuts a grain along its axis; `left` and `top` are the page position of its head end, and `scale` page units per metre. */
export function longitudinalSection(
  grain: Grain,
  { left, top, scale, towards }: Pick<SectionView, 'left' | 'top' | 'scale'> & { readonly towards: number },
): LongitudinalSection {
  const { radius, length } = grain.shape.envelope;
  const lit = litSources(grain.shape);
  const [c, s] = [Math.cos(towards), Math.sin(towards)];
  const view: SectionView = {
    width: length,
    height: 2 * radius,
    point: (x, y) => [(y - radius) * c, (y - radius) * s, x],
    scale,
    left,
    top,
  };
  return {
    port: frontBands(view, depthField(lit), []),
    flaws: lit
      .slice(lit.length - grain.flaws.length)
      .map(({ source }) => flawMark(view, source, radius))
      .join('\n'),
  };
}

/** The direction of the first flaw that is off the axis [rad]; undefined where none is. */
export function flawDirection(grain: Grain): number | undefined {
  const lit = litSources(grain.shape);
  const [aside] = lit
    .slice(lit.length - grain.flaws.length)
    .map(({ source }) => flawMiddle(source.samples()))
    .filter(([x, y]) => Math.hypot(x, y) > 1e-3 * grain.shape.envelope.radius);
  return aside && Math.atan2(aside[1], aside[0]);
}

/** The mean of the points of a flaw. */
export function flawMiddle(points: Float64Array): readonly [number, number, number] {
  const sum = [0, 0, 0];
  points.forEach((v, i) => {
    sum[i % 3] += (3 * v) / points.length;
  });
  return [sum[0], sum[1], sum[2]];
}
