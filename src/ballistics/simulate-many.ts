import { fromSiArray, MeopError, readInput, type Series } from '../units';
import { type FieldsOf, requireFields } from '../units/known-fields';
import { batchCautions } from './batch-cautions';
import { sensitivityUnknown } from './rate-by-law';
import { readMotor } from './read-motor';
import type { SimulateInput } from './simulate-input';
import {
  type Outcomes,
  outcomeColumns,
  rowsOf,
  runEnds,
  runRows,
  variationColumns,
} from './simulation/batch-kernel';
import type { MotorModel, RunEnd } from './simulation/motor-model';
import { type SimulationPool, simulationPool } from './thread-pool';
import { type Scatter, type Variation, variationTable, variesTemperature } from './variations';

/** What {@link simulateMany} needs to know. */
export interface SimulateManyOptions {
  readonly motor: SimulateInput;
  /** A list of motors, or random ones. */
  readonly variations: readonly Variation[] | Scatter;
  /** Further grains (with flaws, say), which variations number from 1. */
  readonly grains?: readonly SimulateInput['grain'][];
  /** Threads to run on. Default: some of its own for a batch of 500 and more, else none. */
  readonly pool?: SimulationPool;
  readonly signal?: AbortSignal;
  /** Told how far the work is, from 0 to 1. */
  readonly onProgress?: (fraction: number) => void;
}

/** The outcome of a batch, one place for each motor in the order of the variations. */
export interface Batch {
  readonly count: number;
  readonly peakPressure: Series<'absolute pressure'>;
  readonly timeOfPeakPressure: Series<'time'>;
  readonly peakThrust: Series<'force'>;
  readonly totalImpulse: Series<'impulse'>;
  readonly pressureIntegral: Series<'pressure integral'>;
  /** To burnout; to the end of the run where propellant was left (`ends` says where). */
  readonly burnTime: Series<'time'>;
  readonly endTime: Series<'time'>;
  readonly ends: readonly RunEnd[];
  /** Factors of each motor, by field. */
  readonly factors: Readonly<Record<string, Float64Array>>;
  /** Threads that ran it; 0 for a plain loop. */
  readonly threads: number;
  /** How many motors did not burn out, how many left the range of the burn law, and temperatures that change nothing. */
  readonly cautions: readonly string[];
}

const fields: FieldsOf<SimulateManyOptions> = {
  motor: 'required',
  variations: 'required',
  grains: 'optional',
  pool: 'optional',
  signal: 'optional',
  onProgress: 'optional',
};
const rowsPerTask = 100;
const worthThreads = 500;
const grainColumn = variationColumns.indexOf('grain');
const volumeColumn = variationColumns.indexOf('chamberVolume');

/**
 * Simulates many variations of a motor: tolerances, temperatures, flaws. On worker threads in Node, in a plain loop
 * elsewhere; the results are the same to the last bit, whatever the threads and their order. A motor that runs away or
 * bursts does not stop the others: `ends` says how each one ended.
 *
 * @throws MeopError `out-of-domain`, `missing-field`, `unknown-field`; `out-of-range` where the burn law is told to refuse a pressure that a
 * motor reaches; and all that {@link simulate} throws for the motor itself; the reason of `signal`
 * @example typeof simulateMany // => 'function'
 */
export async function simulateMany(options: SimulateManyOptions): Promise<Batch> {
  requireFields('simulateMany', options, fields);
  const { motor, variations, grains = [], signal, onProgress } = options;
  signal?.throwIfAborted();
  const own = readMotor(motor);
  const models = [own.model, ...grains.map((grain) => readMotor({ ...motor, grain }).model)];
  const factors = variationTable(variations, motor.propellant, ownTemperature(motor), models.length);
  checkVolumes(models, factors);
  const work: Work = {
    models,
    factors,
    count: factors[0].length,
    outcomes: emptyOutcomes(factors[0].length),
    signal,
    onProgress,
  };
  const pool = options.pool ?? (work.count >= worthThreads ? await simulationPool() : undefined);
  try {
    if (pool !== undefined && pool.threads > 0) await onThreads(pool, work);
    else await inLoop(work);
    return {
      ...batchOf(work, pool?.threads ?? 0),
      cautions: [
        ...batchCautions(motor.propellant.law, work.outcomes),
        ...(motor.propellant.law.temperatureSensitivity === undefined &&
        (motor.grainTemperature !== undefined || variesTemperature(variations))
          ? [sensitivityUnknown]
          : []),
      ],
    };
  } finally {
    if (options.pool === undefined) await pool?.close();
  }
}

const ownTemperature = ({ grainTemperature, propellant }: SimulateInput): number =>
  grainTemperature === undefined
    ? propellant.law.referenceTemperature.si
    : readInput('temperature', 'grainTemperature', grainTemperature, 'simulateMany').si;

// Factors and outcomes are held by columns, as they are handed out; rows exist only while a task is under way.
interface Work {
  readonly models: readonly MotorModel[];
  readonly factors: readonly Float64Array[];
  readonly count: number;
  readonly outcomes: Outcomes;
  readonly signal: AbortSignal | undefined;
  readonly onProgress: ((fraction: number) => void) | undefined;
}

async function onThreads(pool: SimulationPool, work: Work): Promise<void> {
  const { models, factors, count, outcomes, signal, onProgress } = work;
  let next = 0;
  let done = 0;
  // Each lane takes the next task when its last is done, so that no thread waits and few rows are in memory twice.
  const lane = async (): Promise<void> => {
    try {
      while (next < count) {
        signal?.throwIfAborted();
        const from = next;
        const to = Math.min(count, from + rowsPerTask);
        next = to;
        store(outcomes, await pool.run(models, rowsOf(factors, from, to)), from);
        done += to - from;
        onProgress?.(done / count);
      }
    } finally {
      // One lane that fails is the end of the batch: the others take no further task.
      next = count;
    }
  };
  await Promise.all(Array.from({ length: 2 * pool.threads }, lane));
  signal?.throwIfAborted();
}

async function inLoop({ models, factors, count, outcomes, signal, onProgress }: Work): Promise<void> {
  for (let from = 0; from < count; from += rowsPerTask) {
    signal?.throwIfAborted();
    const to = Math.min(count, from + rowsPerTask);
    store(outcomes, runRows(models, rowsOf(factors, from, to)), from);
    onProgress?.(to / count);
    // Lets timers, pictures and the abort of the caller have their turn.
    await new Promise((resolve) => setTimeout(resolve));
  }
}

const emptyOutcomes = (count: number): Outcomes => ({
  peakPressure: new Float64Array(count),
  peakTime: new Float64Array(count),
  peakThrust: new Float64Array(count),
  totalImpulse: new Float64Array(count),
  pressureIntegral: new Float64Array(count),
  burnTime: new Float64Array(count),
  endTime: new Float64Array(count),
  end: new Float64Array(count),
  leastBurnPressure: new Float64Array(count),
  greatestPressure: new Float64Array(count),
});

/** Puts rows of results into their columns. */
function store(outcomes: Outcomes, rows: Float64Array, from: number): void {
  const width = outcomeColumns.length;
  outcomeColumns.forEach((name, j) => {
    const column = outcomes[name];
    for (let i = 0; i * width < rows.length; i++) column[from + i] = rows[i * width + j];
  });
}

function checkVolumes(models: readonly MotorModel[], factors: readonly Float64Array[]): void {
  const volumes = factors[volumeColumn];
  const grains = factors[grainColumn];
  volumes.forEach((factor, i) => {
    const { chamberVolume, table } = models[grains[i]];
    if (chamberVolume * factor > table.volume[0]) return;
    throw new MeopError(
      'out-of-domain',
      `simulateMany: variations[${i}].chamberVolume: the chamber would hold no more than the propellant; the free volume must be above zero`,
      `variations[${i}].chamberVolume`,
    );
  });
}

function batchOf({ factors, count, outcomes }: Work, threads: number): Omit<Batch, 'cautions'> {
  return {
    count,
    peakPressure: fromSiArray('absolute pressure', outcomes.peakPressure),
    timeOfPeakPressure: fromSiArray('time', outcomes.peakTime),
    peakThrust: fromSiArray('force', outcomes.peakThrust),
    totalImpulse: fromSiArray('impulse', outcomes.totalImpulse),
    pressureIntegral: fromSiArray('pressure integral', outcomes.pressureIntegral),
    burnTime: fromSiArray('time', outcomes.burnTime),
    endTime: fromSiArray('time', outcomes.endTime),
    ends: Array.from(outcomes.end, (end) => runEnds[end]),
    factors: Object.fromEntries(variationColumns.map((name, j) => [name, factors[j]])),
    threads,
  };
}
