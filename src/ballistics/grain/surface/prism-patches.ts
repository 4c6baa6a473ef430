// The rays that leave a prism: its sides, the fans at its corners, its flat ends and its rims.
import { elementLength, elementNormal, elementX, elementY, type OutlineElement } from './outline';
import { prismRim } from './prism-rim';
import type { PrismShape } from './prism-shape';
import type { RayPatch } from './source';
import { type CornerFan, elementsInWedge, fansInWedge, type Wedge } from './symmetry';

/** Rays of the part of a prism in the wedge. `round`: the outline is a circle about the axis. */
export function prismPatches(shape: PrismShape, wedge: Wedge, reach: number, round: boolean): RayPatch[] {
  const { outline: o, from, to, faces } = shape;
  const patches: RayPatch[] = [];
  const copies = wedge.copies;
  const idle = wedge.axisymmetric && round ? 0 : 1;
  const pieces = o.elements.flatMap((e) => elementsInWedge(e, o.fold, o.phase, wedge));
  if (faces.side !== undefined && faces.side[1] > faces.side[0]) {
    const [s0, s1] = faces.side;
    for (const e of pieces) patches.push(sidePatch(e, s0, s1, idle, copies));
    for (const fan of fansInWedge(o, wedge)) patches.push(cornerPatch(fan, s0, s1, reach, copies));
  }
  if (!o.sheet)
    for (const [z, face, up] of [
      [from, faces.start, -1],
      [to, faces.end, 1],
    ] as const)
      if (face === 'burning') for (const e of pieces) patches.push(capPatch(e, z, up, idle, copies));
  return [...patches, ...prismRim(shape, pieces, wedge, reach, idle)];
}

/** The side of the prism over one element: a face for a line, w1 from the curvature for an arc. */
function sidePatch(e: OutlineElement, z0: number, z1: number, idle: number, copies: number): RayPatch {
  const length = elementLength(e);
  const w0 = length * (z1 - z0);
  const w1 = e.kind === 'arc' ? e.sweep * (z1 - z0) : 0;
  return {
    sizeU: length * idle,
    sizeV: z1 - z0,
    copies,
    ray: (u, v, out) => {
      const a = elementNormal(e, u);
      out[0] = elementX(e, u);
      out[1] = elementY(e, u);
      out[2] = z0 + v * (z1 - z0);
      out[3] = Math.cos(a);
      out[4] = Math.sin(a);
      out[5] = 0;
      out[6] = w0;
      out[7] = w1;
      out[8] = 0;
    },
  };
}

/** The fan that rounds off a convex corner of the cavity. */
function cornerPatch(
  { x, y, from, sweep }: CornerFan,
  z0: number,
  z1: number,
  reach: number,
  copies: number,
): RayPatch {
  return {
    sizeU: sweep * reach,
    sizeV: z1 - z0,
    copies,
    ray: (u, v, out) => {
      const a = from + u * sweep;
      out[0] = x;
      out[1] = y;
      out[2] = z0 + v * (z1 - z0);
      out[3] = Math.cos(a);
      out[4] = Math.sin(a);
      out[5] = 0;
      out[6] = 0;
      out[7] = sweep * (z1 - z0);
      out[8] = 0;
    },
  };
}

/** A flat end: signed triangles from the axis to the element, which add up to the area inside the outline. */
function capPatch(e: OutlineElement, z: number, up: 1 | -1, idle: number, copies: number): RayPatch {
  const far = Math.max(...[0, 0.5, 1].map((u) => Math.hypot(elementX(e, u), elementY(e, u))));
  return {
    sizeU: elementLength(e) * idle,
    sizeV: far,
    copies,
    ray: (u, v, out) => {
      const x = elementX(e, u);
      const y = elementY(e, u);
      const normal = elementNormal(e, u);
      out[0] = v * x;
      out[1] = v * y;
      out[2] = z;
      out[3] = 0;
      out[4] = 0;
      out[5] = up;
      // Twice the swept triangle: (p × dp/du) v, with dp/du along the element, normal to its normal.
      out[6] = v * elementLength(e) * (x * Math.cos(normal) + y * Math.sin(normal));
      out[7] = 0;
      out[8] = 0;
    },
  };
}
