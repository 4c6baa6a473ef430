// Many varied firings of one motor by either model of the port: what a thread runs.
import { type RegressionKernel, regressionKernel, type SegmentLayout } from '../grain/inputs';
import { outcomeColumns, outcomeRow, variationColumns, variedModel } from '../simulation/batch-kernel';
import { chamberWorkspace } from '../simulation/chamber-workspace';
import type { MotorModel } from '../simulation/motor-model';
import { runChamber } from '../simulation/run-chamber';
import { emptyResult, type RunResult } from '../simulation/run-result';
import type { CoupledModel } from './coupled-model';
import { runCoupled } from './run-coupled';

/** A coupled model that a thread can be sent: tables instead of functions. */
export type PlainCoupled = Omit<CoupledModel, 'motor' | 'segments'> & {
  readonly segments: readonly PlainSegment[];
};

type Table = Pick<RegressionKernel, 'depth' | 'area' | 'volume' | 'breaks' | 'burnout'>;

type PlainSegment = Omit<SegmentLayout, 'section' | 'slices' | 'flaw'> & {
  readonly section: Table | undefined;
  readonly slices: readonly Table[];
  readonly flaw:
    | { readonly from: number; readonly to: number; readonly whole: Table; readonly sound: Table }
    | undefined;
};

/** A motor of a batch; without `port` it runs by the lumped model. */
export interface BatchModel extends MotorModel {
  readonly port?: PlainCoupled;
}

const tableOf = ({ depth, area, volume, breaks, burnout }: RegressionKernel): Table => ({
  depth,
  area,
  volume,
  breaks,
  burnout,
});

/** A motor for a batch that runs by the coupled model. */
export function batchModel({ motor, segments, ...rest }: CoupledModel): BatchModel {
  return {
    ...motor,
    port: {
      ...rest,
      segments: segments.map(({ section, slices, flaw, ...place }) => ({
        ...place,
        section: section && tableOf(section),
        slices: slices.map(tableOf),
        flaw: flaw && { ...flaw, whole: tableOf(flaw.whole), sound: tableOf(flaw.sound) },
      })),
    },
  };
}

const kernelOf = ({ depth, area, volume, breaks, burnout }: Table): RegressionKernel =>
  regressionKernel(depth, area, volume, [...breaks], burnout);

const segmentOf = ({ section, slices, flaw, ...place }: PlainSegment): SegmentLayout => ({
  ...place,
  section: section && kernelOf(section),
  slices: slices.map(kernelOf),
  flaw: flaw && { ...flaw, whole: kernelOf(flaw.whole), sound: kernelOf(flaw.sound) },
});

/** Runs rows of variations of the models; gives their results, row after row. */
export function runRows(models: readonly BatchModel[], rows: Float64Array): Float64Array {
  const count = rows.length / variationColumns.length;
  const width = outcomeColumns.length;
  const out = new Float64Array(count * width);
  const workspace = chamberWorkspace();
  const lumped = emptyResult();
  const ports = models.map(({ port }) => port && { ...port, segments: port.segments.map(segmentOf) });
  const grainColumn = variationColumns.indexOf('grain');
  for (let row = 0; row < count; row++) {
    const motor = variedModel(models, rows, row);
    const port = ports[rows[row * variationColumns.length + grainColumn]];
    let result: RunResult = lumped;
    let head = Number.NaN;
    if (port === undefined) runChamber(motor, workspace, lumped);
    else {
      const { peakHeadPressure, ...run } = coupledOf(motor, port);
      result = run;
      head = peakHeadPressure;
    }
    outcomeRow(result, head, out, row * width);
  }
  return out;
}

// The section of the chamber stays as it is where the volume of the chamber varies: its ends take that up.
const coupledOf = (motor: MotorModel, port: Omit<CoupledModel, 'motor'>) => runCoupled({ ...port, motor });
