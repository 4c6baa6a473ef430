// The deepest ray of a set of surfaces, without sampling all of them finely.
import { RAY, type RayPatch } from '../surface';
import type { RayCutter } from './cut';

/** Maximum depth burned along the rays of these patches [m]: the best rays of a grid, then a shrinking search around each. */
export function deepestRay(
  patches: readonly { readonly patch: RayPatch; readonly litAt: number; readonly owner: number }[],
  cutter: RayCutter,
  spacing: number,
): number {
  const ray = new Float64Array(RAY.size);
  const depthAt = (k: number, u: number, v: number): number => {
    const { patch, litAt, owner } = patches[k];
    patch.ray(u, v, ray);
    return litAt + cutter.cut(ray, litAt, owner);
  };
  const best: { k: number; u: number; v: number; du: number; dv: number; depth: number }[] = [];
  patches.forEach(({ patch }, k) => {
    const nu = patch.sizeU === 0 ? 1 : Math.max(3, Math.ceil(patch.sizeU / spacing));
    const nv = patch.sizeV === 0 ? 1 : Math.max(3, Math.ceil(patch.sizeV / spacing));
    for (let i = 0; i <= nu; i++)
      for (let j = 0; j <= nv; j++) {
        const depth = depthAt(k, i / nu, j / nv);
        if (best.length >= 6 && depth <= best[best.length - 1].depth) continue;
        best.push({ k, u: i / nu, v: j / nv, du: 0.5 / nu, dv: 0.5 / nv, depth });
        best.sort((a, b) => b.depth - a.depth);
        if (best.length > 6) best.pop();
      }
  });
  let deepest = 0;
  for (const start of best) {
    let { u, v, du, dv, depth } = start;
    for (let round = 0; round < 24; round++) {
      let moved = false;
      for (const [a, b] of [
        [du, 0],
        [-du, 0],
        [0, dv],
        [0, -dv],
      ] as const) {
        const [p, q] = [Math.min(1, Math.max(0, u + a)), Math.min(1, Math.max(0, v + b))];
        const trial = depthAt(start.k, p, q);
        if (trial <= depth) continue;
        [u, v, depth, moved] = [p, q, trial, true];
      }
      if (!moved) [du, dv] = [du / 2, dv / 2];
    }
    deepest = Math.max(deepest, depth);
  }
  return deepest;
}
