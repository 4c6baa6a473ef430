// The rounded front that grows from the rim of a prism: around its flat ends and around the edge of an inhibitor.
import { elementLength, elementNormal, elementX, elementY, type OutlineElement } from './outline';
import type { PrismShape } from './prism-shape';
import type { RayPatch } from './source';
import { type CornerFan, fansInWedge, type Wedge } from './symmetry';

/** A ring of the prism at height z whose normals turn from angle `from` to `to`, measured from the side's normal upwards. */
interface Rim {
  readonly z: number;
  readonly from: number;
  readonly to: number;
}

function rimsOf({ outline, from, to, faces }: PrismShape): Rim[] {
  const quarter = Math.PI / 2;
  const rims: Rim[] = [];
  const side = faces.side;
  for (const [z, face, up] of [
    [from, faces.start, -1],
    [to, faces.end, 1],
  ] as const) {
    const sideMeets = side !== undefined && (up < 0 ? side[0] <= from : side[1] >= to);
    // Normals turn upwards to the normal of the flat end, past it under an inhibited end, and downwards next to an
    // inhibited side.
    const high = outline.sheet
      ? face === 'through'
        ? 0
        : quarter
      : face === 'burning'
        ? quarter
        : 2 * quarter;
    const low = sideMeets ? 0 : -quarter;
    if (face !== 'through' && (face === 'burning' || sideMeets))
      rims.push(up > 0 ? { z, from: low, to: high } : { z, from: -high, to: -low });
  }
  if (side !== undefined) {
    if (side[0] > from) rims.push({ z: side[0], from: -quarter, to: 0 });
    if (side[1] < to) rims.push({ z: side[1], from: 0, to: quarter });
  }
  return rims;
}

export function prismRim(
  shape: PrismShape,
  pieces: readonly OutlineElement[],
  wedge: Wedge,
  reach: number,
  idle: number,
): RayPatch[] {
  const fans = fansInWedge(shape.outline, wedge);
  const patches: RayPatch[] = [];
  for (const rim of rimsOf(shape)) {
    for (const e of pieces) patches.push(ringPatch(e, rim, reach, idle, wedge.copies));
    for (const fan of fans) patches.push(pointPatch(fan, rim, reach, wedge.copies));
  }
  return patches;
}

/** Along one element: a bent cylinder for a line, a torus for an arc. */
function ringPatch(e: OutlineElement, rim: Rim, reach: number, idle: number, copies: number): RayPatch {
  const fan = rim.to - rim.from;
  const length = elementLength(e);
  return {
    sizeU: length * idle,
    sizeV: fan * reach,
    copies,
    ray: (u, v, out) => {
      const a = elementNormal(e, u);
      const tilt = rim.from + v * fan;
      const c = Math.cos(tilt);
      out[0] = elementX(e, u);
      out[1] = elementY(e, u);
      out[2] = rim.z;
      out[3] = c * Math.cos(a);
      out[4] = c * Math.sin(a);
      out[5] = Math.sin(tilt);
      out[6] = 0;
      out[7] = length * fan;
      out[8] = e.kind === 'arc' ? e.sweep * fan * c : 0;
    },
  };
}

/** At one corner: a piece of a sphere. */
function pointPatch({ x, y, from, sweep }: CornerFan, rim: Rim, reach: number, copies: number): RayPatch {
  // Under an inhibited end the nearest surface is a side, never a corner: the fan stops at the end's normal.
  const quarter = Math.PI / 2;
  const low = Math.max(rim.from, -quarter);
  const fan = Math.min(rim.to, quarter) - low;
  return {
    sizeU: sweep * reach,
    sizeV: fan * reach,
    copies,
    ray: (u, v, out) => {
      const a = from + u * sweep;
      const tilt = low + v * fan;
      const c = Math.cos(tilt);
      out[0] = x;
      out[1] = y;
      out[2] = rim.z;
      out[3] = c * Math.cos(a);
      out[4] = c * Math.sin(a);
      out[5] = Math.sin(tilt);
      out[6] = 0;
      out[7] = 0;
      out[8] = sweep * fan * c;
    },
  };
}
