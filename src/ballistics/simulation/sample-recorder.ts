import { lookUp, lookUpArray, Surface } from './burn-table';
import { nozzleMassFlow, thrustAt, updateNozzle } from './chamber-nozzle';
import { ignitedFraction, outflowRatioAt } from './chamber-slopes';
import type { ChamberWorkspace } from './chamber-workspace';
import type { MotorModel } from './motor-model';
import type { RunRecorder } from './run-record';

/** Something that happened during a run. */
export interface RunMark {
  readonly crossing: string;
  readonly time: number;
  readonly depth: number;
}

/** The columns of a recorded run, in step with time. */
export interface RunSamples {
  readonly time: Float64Array;
  readonly pressure: Float64Array;
  readonly depth: Float64Array;
  readonly throatRadius: Float64Array;
  readonly thrust: Float64Array;
  readonly massFlow: Float64Array;
  /** Ignited burning area [m²]. */
  readonly burningArea: Float64Array;
  /** Propellant left [m³]. */
  readonly volume: Float64Array;
  readonly marks: readonly RunMark[];
}

const columns = 8;

/** A recorder that keeps `perStep` samples of every step. */
export function sampleRecorder(perStep: number): RunRecorder & { samples(): RunSamples } {
  let rows = new Float64Array(1024 * columns);
  let count = 0;
  const marks: RunMark[] = [];
  const surface = lookUpArray();

  const sample = (
    m: MotorModel,
    w: ChamberWorkspace,
    t: number,
    p: number,
    y: number,
    throat: number,
  ): void => {
    // Time must increase from sample to sample: a step below the spacing of doubles adds nothing.
    if (count > 0 && !(t > rows[(count - 1) * columns])) return;
    if ((count + 1) * columns > rows.length) {
      const larger = new Float64Array(2 * rows.length);
      larger.set(rows);
      rows = larger;
    }
    if (m.erosionRate !== 0) updateNozzle(m, w, throat);
    lookUp(m.table, w.piece, Math.min(y, m.table.pieceEnds[w.piece]), w.interval, surface);
    const at = count * columns;
    rows[at] = t;
    rows[at + 1] = p;
    rows[at + 2] = Math.max(0, y); // a first step of no burning may round to below
    rows[at + 3] = throat;
    rows[at + 4] = thrustAt(m, w, p, throat);
    // Mass, not gas energy: hot igniter gas is lighter.
    rows[at + 5] = nozzleMassFlow(m, w, p, throat) / outflowRatioAt(m, w, t, p, y, throat);
    rows[at + 6] = Math.max(0, surface[Surface.area]) * ignitedFraction(m, w, t);
    rows[at + 7] = Math.max(0, surface[Surface.volume]);
    count++;
  };
  const column = (j: number): Float64Array =>
    Float64Array.from({ length: count }, (_, i) => rows[i * columns + j]);
  return {
    perStep,
    begin: (m, w, t, p, y, throat) => {
      count = 0;
      marks.length = 0;
      sample(m, w, t, p, y, throat);
    },
    sample,
    mark: (_m, _w, crossing, time, _p, depth) => {
      if (crossing === 'none') return;
      surface.fill(0); // the piece may have changed
      marks.push({ crossing, time, depth });
    },
    samples: () => ({
      time: column(0),
      pressure: column(1),
      depth: column(2),
      throatRadius: column(3),
      thrust: column(4),
      massFlow: column(5),
      burningArea: column(6),
      volume: column(7),
      marks,
    }),
  };
}
