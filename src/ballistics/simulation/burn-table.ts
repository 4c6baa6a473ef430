// Burning area and propellant volume by burned depth, cut into pieces on which both are smooth.

/** The regression as the chamber needs it: plain SI numbers that correspond to `depth`. */
export interface DepthTable {
  /** Burned depth [m], ascending from 0; a jump of the area stands between two depths close together. */
  readonly depth: Float64Array;
  /** Burning area [m²]. */
  readonly area: Float64Array;
  /** Propellant left [m³]. */
  readonly volume: Float64Array;
  /** Depth at which the last propellant burns [m]. */
  readonly burnout: number;
}

/** A depth table ready for the kernel. */
export interface BurnTable extends DepthTable {
  /** What each interval's burned volume has over that of a straight line between its two areas, as an area [m²]. */
  readonly bow: Float64Array;
  /** Depths where a piece ends, ascending, burnout last [m]. */
  readonly pieceEnds: Float64Array;
  /** First and last interval of each piece. */
  readonly firstInterval: Int32Array;
  readonly lastInterval: Int32Array;
}

// Two depths closer than this share of the burnout depth stand for a jump.
const narrowShare = 2e-6;

/**
 * Prepares a table: between depths the volume is a cubic that meets the volumes and areas of both, so the area is
 * exactly minus its derivative and what burns is what goes missing. `landings` are further depths to land on.
 */
export function burnTable(table: DepthTable, landings: readonly number[] = []): BurnTable {
  const { depth, area, volume, burnout } = withKinks(table, landings);
  const intervals = depth.length - 1;
  const narrow = narrowShare * burnout;
  const bow = new Float64Array(intervals);
  const jumps: number[] = [];
  for (let k = 0; k < intervals; k++) {
    const h = depth[k + 1] - depth[k];
    if (h < narrow) jumps.push(0.5 * (depth[k] + depth[k + 1]));
    else bow[k] = (volume[k] - volume[k + 1]) / h - 0.5 * (area[k] + area[k + 1]);
  }
  const ends: number[] = [];
  for (const end of [...jumps, ...landings].sort((a, b) => a - b))
    if (end > narrow && end < burnout - narrow && end - (ends.at(-1) ?? 0) > narrow) ends.push(end);
  const pieceEnds = Float64Array.from([...ends, burnout]);
  const firstInterval = new Int32Array(pieceEnds.length);
  const lastInterval = new Int32Array(pieceEnds.length);
  const wide = (k: number): boolean => depth[k + 1] - depth[k] >= narrow;
  pieceEnds.forEach((end, piece) => {
    const start = piece === 0 ? 0 : pieceEnds[piece - 1];
    let first = 0;
    while (first < intervals - 1 && !(wide(first) && depth[first + 1] > start + 0.5 * narrow)) first++;
    let last = intervals - 1;
    while (last > first && !(wide(last) && depth[last] < end - 0.5 * narrow)) last--;
    firstInterval[piece] = first;
    lastInterval[piece] = last;
  });
  return { depth, area, volume, burnout, bow, pieceEnds, firstInterval, lastInterval };
}

// Depths between the three of a parabola: far enough apart that the scatter of a sampled table is not blown up.
const stride = 3;

/**
 * Puts a depth into the table at each landing that it passes over: where a front meets the wall the area has a kink,
 * often its peak, which a straight line from depth to depth would cut off. The area there is that of the parabola
 * through three depths before, on which the front does not know of the wall yet.
 */
function withKinks(table: DepthTable, landings: readonly number[]): DepthTable {
  const { burnout } = table;
  const depth = [...table.depth];
  const area = [...table.area];
  const volume = [...table.volume];
  for (const at of [...new Set(landings)].sort((a, b) => a - b)) {
    const k = depth.findIndex((value) => value > at) - 1;
    const h = depth[k + 1] - depth[k];
    const share = (at - depth[k]) / h;
    // Close to a depth there is one already; close to a jump or the start there is no parabola.
    if (!(k >= 2 * stride && share > 1e-3 && share < 1 - 1e-3)) continue;
    const run = depth.slice(k - 2 * stride, k + 2);
    if (run.some((value, i) => i > 0 && value - run[i - 1] < 10 * narrowShare * burnout)) continue;
    const [d0, d1, d2] = [run[0], run[stride], run[2 * stride]];
    const slope = (area[k] - area[k - stride]) / (d2 - d1);
    const bend = (slope - (area[k - stride] - area[k - 2 * stride]) / (d1 - d0)) / (d2 - d0);
    const x = at - d2;
    // Newton's form about the last depth, and its integral from there.
    const areaAt = area[k] + x * (slope + bend * (d2 - d1 + x));
    const burned = x * (area[k] + x * (0.5 * slope + bend * (0.5 * (d2 - d1) + x / 3)));
    if (!(areaAt > 0) || !(volume[k] - burned > volume[k + 1])) continue;
    depth.splice(k + 1, 0, at);
    area.splice(k + 1, 0, areaAt);
    volume.splice(k + 1, 0, volume[k] - burned);
  }
  return {
    depth: Float64Array.from(depth),
    area: Float64Array.from(area),
    volume: Float64Array.from(volume),
    burnout,
  };
}

/** Places in the array that {@link lookUp} fills: the values found, then the interval of the last search. */
export enum Surface {
  area,
  areaSlope,
  volume,
  from,
  to,
  perDepth,
  areaFrom,
  areaRise,
  bow,
  volumeFrom,
  height,
}

/** An array for {@link lookUp}; fill it with zeros when table or piece change. */
export const lookUpArray = (): Float64Array => new Float64Array(11);

/**
 * Area, its slope and volume at a depth inside a piece, into `out`; a little beyond the piece its last polynomial
 * goes on. Gives the interval, a good `hint` for the next call.
 */
export function lookUp(table: BurnTable, piece: number, y: number, hint: number, out: Float64Array): number {
  const k = y >= out[Surface.from] && y < out[Surface.to] ? hint : moveTo(table, piece, y, hint, out);
  const u = (y - out[Surface.from]) * out[Surface.perDepth];
  const a0 = out[Surface.areaFrom];
  const rise = out[Surface.areaRise];
  const b = out[Surface.bow];
  out[Surface.area] = a0 + u * (rise + 6 * b * (1 - u));
  out[Surface.areaSlope] = (rise + 6 * b * (1 - 2 * u)) * out[Surface.perDepth];
  out[Surface.volume] =
    out[Surface.volumeFrom] - out[Surface.height] * u * (a0 + u * (0.5 * rise + b * (3 - 2 * u)));
  return k;
}

/** Takes the numbers of the interval that holds y into `out`; gives the interval. */
function moveTo(
  { depth, area, volume, bow, firstInterval, lastInterval }: BurnTable,
  piece: number,
  y: number,
  hint: number,
  out: Float64Array,
): number {
  const first = firstInterval[piece];
  const last = lastInterval[piece];
  let k = Math.min(Math.max(hint, first), last);
  while (k < last && y >= depth[k + 1]) k++;
  while (k > first && y < depth[k]) k--;
  const h = depth[k + 1] - depth[k];
  out[Surface.from] = depth[k];
  out[Surface.to] = depth[k + 1];
  out[Surface.height] = h;
  out[Surface.perDepth] = 1 / h;
  out[Surface.areaFrom] = area[k];
  out[Surface.areaRise] = area[k + 1] - area[k];
  out[Surface.bow] = bow[k];
  out[Surface.volumeFrom] = volume[k];
  return k;
}
