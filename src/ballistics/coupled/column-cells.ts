// The flow path of a grain column whose stations have burned to depths of their own.
import type { SegmentLayout } from '../grain/inputs';
import { addPortCell, CellKind, type PortCells, portCells } from '../port/port-cells';

/** A column cut into stations. */
export interface ColumnPath {
  readonly segments: readonly SegmentLayout[];
  /** Stations of each segment, and the first of them. */
  readonly stations: Int32Array;
  readonly first: Int32Array;
  readonly stationCount: number;
  /** Middle of each station from the head end of the column [m]. */
  readonly position: Float64Array;
  /** Depth at which each station is burned through [m]. */
  readonly burnout: Float64Array;
  /** Open area of the chamber around a gap [m²]. */
  readonly chamberArea: number;
  /** Whether gas passes a free volume between the last bore and the nozzle. */
  readonly hasPlenum: boolean;
  /** Free volume at each end of the column [m³]; where no gap holds it, it counts outside the cells. */
  readonly spareVolume: number;
  readonly cells: PortCells;
  /** Station of each cell, or −1 for a gap. */
  readonly stationOf: Int32Array;
  /** End faces that burn in a gap: their segment is this many, of the head end of the segment and of the aft end of that before. */
  readonly gapBehind: Int32Array;
  /** Burned depth of each station, then of head and aft end of each segment [m]: the state. */
  readonly stateCount: number;
  /** Propellant left and burning area, found with the cells. */
  readonly sums: Float64Array;
}

/** Places in `sums`. */
export enum ColumnSum {
  volume,
  area,
}

const fewestStations = 3;

/** Cuts a column into about this many stations. */
export function columnPath(
  segments: readonly SegmentLayout[],
  wanted: number,
  chamberArea: number,
  hasPlenum: boolean,
  spareVolume: number,
): ColumnPath {
  const whole = segments.reduce((sum, { length }) => sum + length, 0);
  const stations = Int32Array.from(segments, ({ length, slices }) =>
    slices.length > 0 ? slices.length : Math.max(fewestStations, Math.round((wanted * length) / whole)),
  );
  const first = new Int32Array(segments.length);
  for (let k = 1; k < segments.length; k++) first[k] = first[k - 1] + stations[k - 1];
  const stationCount = stations.reduce((sum, n) => sum + n, 0);
  const position = new Float64Array(stationCount);
  const burnout = new Float64Array(stationCount);
  segments.forEach(({ position: at, length, section, slices }, k) => {
    for (let i = 0; i < stations[k]; i++) {
      position[first[k] + i] = at + (length * (i + 0.5)) / stations[k];
      burnout[first[k] + i] = (section ?? slices[i]).burnout;
    }
  });
  const room = stationCount + segments.length + 2;
  return {
    segments,
    stations,
    first,
    stationCount,
    position,
    burnout,
    chamberArea,
    hasPlenum,
    spareVolume,
    cells: portCells(room),
    stationOf: new Int32Array(room),
    gapBehind: new Int32Array(room),
    stateCount: stationCount + 2 * segments.length,
    sums: new Float64Array(2),
  };
}

/** Index of the depth of a segment's head end in the state; that of its aft end is the next. */
export const endOf = (path: ColumnPath, segment: number): number => path.stationCount + 2 * segment;

// A station whose own part burns through while its neighbours do not passes over in this share of its depth at least.
const leastSpread = 1e-5;

/** Cuts the path at the depths of `state` into cells; sums up propellant and burning area. */
export function cutColumn(path: ColumnPath, state: Float64Array): void {
  const { segments, cells, sums } = path;
  cells.count = 0;
  sums.fill(0);
  let behind = 0;
  // Burning face of the segment before, at its aft end.
  let faceBefore = 0;
  for (let k = 0; k < segments.length; k++) {
    const s = segments[k];
    const isSection = s.section !== undefined;
    const end = endOf(path, k);
    const from = isSection && s.headBurns ? Math.max(0, state[end]) : 0;
    const to = s.length - (isSection && s.aftBurns ? Math.max(0, state[end + 1]) : 0);
    const open = to - from > 1e-9 * s.length && isLeft(path, k, state);
    // A segment that is gone is part of the gap.
    if (!open) continue;
    const faceHead = isSection && s.headBurns ? faceArea(path, k, from, state) : 0;
    const gap = s.position + from - behind;
    if (gap > 1e-9 * s.length || faceHead + faceBefore > 0)
      addGap(path, k, gap, faceHead + faceBefore, path.cells.count === 0 ? path.spareVolume : 0);
    addStations(path, k, from, to, state);
    faceBefore = isSection && s.aftBurns ? faceArea(path, k, to, state) : 0;
    behind = s.position + to;
  }
  const last = segments[segments.length - 1];
  const rest = last.position + last.length - behind;
  if (path.hasPlenum || rest > 1e-9 * last.length || faceBefore > 0)
    addGap(path, segments.length, rest, faceBefore, path.spareVolume);
}

/** Whether any propellant of a segment is left. */
function isLeft(path: ColumnPath, k: number, state: Float64Array): boolean {
  for (let i = 0; i < path.stations[k]; i++)
    if (state[path.first[k] + i] < path.burnout[path.first[k] + i] * (1 + leastSpread)) return true;
  return false;
}

/** Propellant area at a burning end, which stands at this distance from the head end of its segment [m²]. */
function faceArea(path: ColumnPath, k: number, at: number, state: Float64Array): number {
  const n = path.stations[k];
  const { length, section } = path.segments[k];
  const i = Math.max(0, Math.min(n - 1, Math.floor((at / length) * n)));
  const [factor = 1] = flawShares(path, k, state);
  return Math.max(0, factor * (section?.volumeAt(state[path.first[k] + i]) ?? 0));
}

function addGap(path: ColumnPath, segment: number, length: number, face: number, spare: number): void {
  const run = Math.max(0, length);
  path.stationOf[path.cells.count] = -1;
  path.gapBehind[path.cells.count] = segment;
  addPortCell(path.cells, CellKind.gap, run, path.chamberArea, face, 0, path.chamberArea * run + spare);
  path.sums[ColumnSum.area] += face;
}

function addStations(path: ColumnPath, k: number, from: number, to: number, state: Float64Array): void {
  const { segments, stations, first, cells, sums, burnout } = path;
  const { length, radius, section, slices } = segments[k];
  const n = stations[k];
  const step = length / n;
  const whole = Math.PI * radius * radius;
  const at0 = first[k];
  const [factor = 1, added = 0] = flawShares(path, k, state);
  for (let i = 0; i < n; i++) {
    const low = Math.max(from, i * step);
    const high = Math.min(to, (i + 1) * step);
    const run = high - low;
    if (!(run > 1e-9 * step)) continue;
    const at = at0 + i;
    const depth = state[at];
    // The spread of depths inside the station, over which its area is the mean: exactly what goes missing.
    const before = state[i > 0 ? at - 1 : at];
    const after = state[i < n - 1 ? at + 1 : at];
    const ways = (i > 0 ? 1 : 0) + (i < n - 1 ? 1 : 0);
    const spread = ways > 0 ? Math.abs(after - before) / ways : 0;
    const table = section ?? slices[i];
    let area: number;
    let held: number;
    if (spread > leastSpread * burnout[at]) {
      const half = 0.5 * spread;
      area = (table.volumeAt(depth - half) - table.volumeAt(depth + half)) / spread;
      if (depth < half) area = table.areaAt(depth);
      held = table.volumeAt(depth);
    } else {
      area = table.areaAt(depth);
      held = table.volumeAt(depth);
    }
    const share = section === undefined ? run / step : run;
    const burning = Math.max(0, (factor * area + added * held) * share);
    const volume = factor * held * share;
    const solid = volume / run;
    const open = Math.max(1e-4 * whole, whole - solid);
    // The edge of the port: at least that of a circle, where part of it is the wall.
    const wetted = Math.max(burning / run, 2 * Math.sqrt(Math.PI * open));
    path.stationOf[cells.count] = at;
    addPortCell(cells, CellKind.bore, run, open, burning, (4 * open) / wetted, open * run);
    sums[ColumnSum.area] += burning;
    sums[ColumnSum.volume] += volume;
  }
}

const shares = new Float64Array(2);

/**
 * What the flaws of a segment make of it at the mean depth of its stations: the factor of its propellant, and the burning
 * area that they add per volume of it [1/m]. Together exactly minus the change of the propellant: V = f·V_sound gives
 * −dV/dw = f·A_sound − f'·V_sound, so that no propellant is made or lost.
 */
function flawShares(path: ColumnPath, k: number, state: Float64Array): Float64Array {
  const { flaw } = path.segments[k];
  shares[0] = 1;
  shares[1] = 0;
  if (flaw === undefined) return shares;
  let sum = 0;
  for (let i = 0; i < path.stations[k]; i++) sum += state[path.first[k] + i];
  const depth = sum / path.stations[k];
  const volume = flaw.sound.volumeAt(depth);
  const factor = volume > 0 ? flaw.whole.volumeAt(depth) / volume : 0;
  shares[0] = factor;
  const added = volume > 0 ? (flaw.whole.areaAt(depth) - factor * flaw.sound.areaAt(depth)) / volume : 0;
  // Stations that lag hold more than the mean says: at the end, when little is left, no more than this.
  const most = (4 * Math.max(flaw.whole.area[0], flaw.sound.area[0])) / flaw.sound.volume[0];
  shares[1] = Math.max(-most, Math.min(most, added));
  return shares;
}
