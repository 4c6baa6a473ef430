// A grain of constant section with burning flat ends. The distance is the smaller of that to the port and that to an
// end, so the front consists of the front of the section, on a shrinking length, and of the remaining section at each
// end.
import type { DepthBreak } from './depth-levels';
import type { FrontTable } from './front-tally';

export interface SectionTable extends FrontTable {
  readonly depth: Float64Array;
  readonly breaks: readonly DepthBreak[];
  readonly burnout: number;
}

/** Adds burning ends to the `table` of the whole length with both ends inhibited. */
export function withBurningEnds(table: SectionTable, length: number, faces: 1 | 2): SectionTable {
  const lengthGone = length / faces;
  const eps = 2e-7 * lengthGone;
  const ends = lengthGone < table.burnout;
  const at = (values: Float64Array, w: number): number => {
    let k = 1;
    while (k < table.depth.length - 1 && table.depth[k] < w) k++;
    const f = (w - table.depth[k - 1]) / (table.depth[k] - table.depth[k - 1]);
    return values[k - 1] + f * (values[k] - values[k - 1]);
  };
  const depth = ends
    ? [...table.depth.filter((w) => w < lengthGone - 2 * eps), lengthGone - eps, lengthGone + eps]
    : [...table.depth];
  const n = depth.length;
  const area = new Float64Array(n);
  const volume = new Float64Array(n);
  for (let k = 0; k < n - 1; k++) {
    const w = depth[k];
    const left = (length - faces * w) / length;
    const section = at(table.volume, w);
    area[k] = at(table.area, w) * left + (faces * section) / length;
    volume[k] = section * left;
  }
  const scaled = table.breaks
    .filter((b) => b.depth < lengthGone)
    .map((b) => ({ depth: b.depth, jump: b.jump * (1 - (faces * b.depth) / length) }));
  const breaks = ends ? [...scaled, { depth: lengthGone, jump: -area[n - 2] }] : scaled;
  return {
    depth: Float64Array.from(depth),
    area,
    volume,
    breaks,
    burnout: ends ? lengthGone : table.burnout,
  };
}
