// The columns of a recorded coupled run.
import { thrustAt } from '../simulation/chamber-nozzle';
import type { RunMark, RunSamples } from '../simulation/sample-recorder';
import { throatOpening } from '../transient/throat-opening';
import { cubic } from './coupled-integrals';
import type { CoupledRun } from './coupled-state';

/** The columns of a lumped run, and what only the coupled one knows. */
export interface CoupledSamples extends RunSamples {
  /** Static pressure at the head end [Pa]. */
  readonly headPressure: Float64Array;
  /** Port area at the aft end [m²]. */
  readonly aftArea: Float64Array;
  /** By station: mass flux, Mach number, static pressure [Pa], burned depth [m]. */
  readonly flux: readonly Float64Array[];
  readonly mach: readonly Float64Array[];
  readonly pressureAt: readonly Float64Array[];
  readonly depthAt: readonly Float64Array[];
}

const perStep = 5;

enum Row {
  time,
  head,
  slope,
  stagnation,
  flow,
  throat,
  area,
  volume,
  meanDepth,
  aft,
  stations,
}

/** A recorder of a coupled run. */
export function coupledRecorder(): {
  readonly record: (run: CoupledRun) => void;
  readonly samples: () => CoupledSamples;
} {
  const rows: Float64Array[] = [];
  const marks: RunMark[] = [];
  let flowed: boolean | undefined;
  let last: CoupledRun | undefined;
  return {
    record: (run) => {
      last = run;
      const { state, path } = run;
      const n = path.stationCount;
      const row = new Float64Array(Row.stations + 4 * n);
      row[Row.time] = state.time;
      row[Row.head] = state.headPressure;
      row[Row.slope] = state.headSlope;
      // Before the first step nothing flows yet.
      row[Row.stagnation] = state.stagnation > 0 ? state.stagnation : state.headPressure;
      row[Row.flow] = state.flow;
      row[Row.throat] = state.throatRadius;
      row[Row.area] = state.area;
      row[Row.volume] = state.volume;
      let sum = 0;
      for (let i = 0; i < n; i++) sum += Math.min(state.depth[i], path.burnout[i]);
      row[Row.meanDepth] = n > 0 ? sum / n : 0;
      if (state.stagnation > 0) takeStations(run, row);
      else row.fill(state.headPressure, Row.stations + 2 * n, Row.stations + 3 * n);
      const aft = path.cells.area[path.cells.count - 1];
      row[Row.aft] = aftBore(run) ?? aft;
      rows.push(row);
      if (flowed === false && run.workspace.flowing)
        marks.push({ crossing: 'closure', time: state.time, depth: row[Row.meanDepth] });
      flowed = run.workspace.flowing;
    },
    samples: () => tabulate(last, rows, marks),
  };
}

/** Area of the last cell of a bore [m²]. */
function aftBore({ path: { cells, stationOf } }: CoupledRun): number | undefined {
  for (let c = cells.count - 1; c >= 0; c--) if (stationOf[c] >= 0) return cells.area[c];
  return undefined;
}

/** Flow at every station; where an end has passed it, that of the gap. */
function takeStations({ path, march, state }: CoupledRun, row: Float64Array): void {
  const n = path.stationCount;
  const { cells, stationOf } = path;
  const put = (at: number, c: number, wide: boolean): void => {
    row[Row.stations + at] = wide ? Math.abs(march.massFlow[c]) / path.chamberArea : march.flux[c];
    row[Row.stations + n + at] = wide ? 0 : march.mach[c];
    row[Row.stations + 2 * n + at] = march.pressure[c];
  };
  let next = 0;
  for (let c = 0; c < cells.count; c++) {
    const at = stationOf[c];
    if (at < 0) continue;
    for (; next < at; next++) put(next, c, true);
    put(at, c, false);
    next = at + 1;
  }
  for (; next < n; next++) put(next, cells.count - 1, true);
  for (let i = 0; i < n; i++) row[Row.stations + 3 * n + i] = Math.min(state.depth[i], path.burnout[i]);
}

function tabulate(
  run: CoupledRun | undefined,
  rows: readonly Float64Array[],
  marks: readonly RunMark[],
): CoupledSamples {
  const n = run?.path.stationCount ?? 0;
  const count = rows.length === 0 ? 0 : 1 + (rows.length - 1) * perStep;
  const make = (): Float64Array => new Float64Array(count);
  const time = make();
  const head = make();
  const stagnation = make();
  const throat = make();
  const thrust = make();
  const flow = make();
  const area = make();
  const volume = make();
  const depth = make();
  const aft = make();
  const columns = Array.from({ length: 4 * n }, make);
  for (let i = 0; i < count; i++) {
    const k = Math.min(rows.length - 1, Math.ceil(i / perStep));
    const from = rows[Math.max(0, k - 1)];
    const to = rows[k];
    const u = k === 0 ? 1 : (i - (k - 1) * perStep) / perStep;
    const h = to[Row.time] - from[Row.time];
    const between = (j: number): number => from[j] + u * (to[j] - from[j]);
    time[i] = between(Row.time);
    const straight = between(Row.head);
    const bent = cubic(from[Row.head], h * from[Row.slope], to[Row.head], h * to[Row.slope], u);
    // The first step starts from rest, without a slope.
    head[i] = k <= 1 ? straight : bent;
    stagnation[i] = (head[i] * between(Row.stagnation)) / (straight > 0 ? straight : 1);
    throat[i] = between(Row.throat);
    thrust[i] =
      run === undefined
        ? 0
        : throatOpening(run.model.motor, time[i]) *
          thrustAt(run.model.motor, run.workspace, stagnation[i], throat[i]);
    const supply = between(Row.stagnation);
    flow[i] = supply > 0 ? (between(Row.flow) * stagnation[i]) / supply : 0;
    area[i] = between(Row.area);
    volume[i] = between(Row.volume);
    depth[i] = between(Row.meanDepth);
    aft[i] = between(Row.aft);
    for (let j = 0; j < 4 * n; j++) columns[j][i] = between(Row.stations + j);
  }
  return {
    time,
    pressure: stagnation,
    depth,
    throatRadius: throat,
    thrust,
    massFlow: flow,
    burningArea: area,
    volume,
    marks,
    headPressure: head,
    aftArea: aft,
    flux: columns.slice(0, n),
    mach: columns.slice(n, 2 * n),
    pressureAt: columns.slice(2 * n, 3 * n),
    depthAt: columns.slice(3 * n),
  };
}
