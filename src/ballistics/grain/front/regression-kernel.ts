// Area and volume of a regression at any depth: its closed form, or interpolation between the depths of its table.
import type { RegressionKernel } from './regression';

/**
 * `jumps` lists the depths of jumps, each between two close depths of the table, and other depths at which an
 * integration should be split. `exact` is the closed form, where there is one. At burnout the area is its limit from
 * smaller depths, beyond it zero.
 */
export function regressionKernel(
  depth: Float64Array,
  area: Float64Array,
  volume: Float64Array,
  jumps: readonly number[],
  burnout: number,
  exact?: { readonly area: (depth: number) => number; readonly volume: (depth: number) => number },
): RegressionKernel {
  const n = depth.length;
  const narrow = 2e-6 * burnout;
  const find = (w: number): number => {
    let low = 1;
    let high = n - 1;
    while (low < high) {
      const mid = (low + high) >> 1;
      if (depth[mid] < w) low = mid + 1;
      else high = mid;
    }
    return low;
  };
  // Breaks closer together than the width of a jump are merged.
  const sorted = [...jumps.filter((j) => j > narrow && j < burnout - narrow), burnout].sort((a, b) => a - b);
  const breaks = Float64Array.from(sorted.filter((b, i) => i === 0 || b - sorted[i - 1] > narrow));
  // The last two depths of a regression stand on either side of burnout.
  const closes = depth[n - 1] - depth[n - 2] < narrow;
  const atEnd = exact?.area(burnout * (1 - 1e-13)) ?? area[closes ? n - 2 : n - 1];
  return {
    depth,
    area,
    volume,
    breaks,
    burnout,
    areaAt: (w) => {
      if (!(w > 0)) return area[0];
      if (w > burnout) return 0;
      if (w >= burnout * (1 - 1e-12) || (closes && exact === undefined && w >= depth[n - 2])) return atEnd;
      if (exact !== undefined) return exact.area(w);
      const k = find(w);
      const h = depth[k] - depth[k - 1];
      const u = (w - depth[k - 1]) / h;
      const line = area[k - 1] + u * (area[k] - area[k - 1]);
      if (h < narrow) return line;
      // Minus the derivative of the cubic below: a line, plus a parabola that gives the step its burned volume.
      const mean = (volume[k - 1] - volume[k]) / h;
      return line + 6 * u * (1 - u) * (mean - (area[k - 1] + area[k]) / 2);
    },
    volumeAt: (w) => {
      if (!(w > 0)) return volume[0];
      if (w >= Math.min(burnout, depth[n - 1])) return 0;
      if (exact !== undefined) return exact.volume(w);
      const k = find(w);
      const h = depth[k] - depth[k - 1];
      const u = (w - depth[k - 1]) / h;
      const [v0, v1] = [volume[k - 1], volume[k]];
      if (h < narrow) return v0 + u * (v1 - v0);
      const [a0, a1] = [area[k - 1] * h, area[k] * h];
      const bow = 6 * (v0 - v1 - (a0 + a1) / 2);
      return v0 - u * (a0 + (u * (a1 - a0)) / 2 + bow * u * (0.5 - u / 3));
    },
  };
}
