import { fromSiArray, MeopError, readInput, type Series } from '../units';
import { batchCautions } from './batch-cautions';
import { readMotor } from './read-motor';
import type { SimulateInput } from './simulate-input';
import { outcomeColumns, runEnds, runRows, variationColumns } from './simulation/batch-kernel';
import type { MotorModel, RunEnd } from './simulation/motor-model';
import { type SimulationPool, simulationPool } from './thread-pool';
import { type Scatter, type Variation, variationRows } from './variations';

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
  /** How many motors did not burn out, and how many left the range of the burn law. */
  readonly cautions: readonly string[];
}

const rowsPerTask = 100;
const worthThreads = 500;
const grainColumn = variationColumns.indexOf('grain');
const volumeColumn = variationColumns.indexOf('chamberVolume');

/**
 * Simulates many variations of a motor: tolerances, temperatures, flaws. On worker threads in Node, in a plain loop
 * elsewhere; the results are the same to the last bit, whatever the threads and their order. A motor that runs away or
 * bursts does not stop the others: `ends` says how each one ended.
 *
 * @throws MeopError `out-of-domain`, `unknown-field`; `out-of-range` where the burn law is told to refuse a pressure that a
 * motor reaches; and all that {@link simulate} throws for the motor itself; the reason of `signal`
 * @example typeof simulateMany // => 'function'
 */
export async function simulateMany(options: SimulateManyOptions): Promise<Batch> {
  const { motor, variations, grains = [], signal, onProgress } = options;
  signal?.throwIfAborted();
  const own = readMotor(motor);
  const models = [own.model, ...grains.map((grain) => readMotor({ ...motor, grain }).model)];
  const temperature = ownTemperature(motor);
  const rows = variationRows(variations, motor.propellant, temperature, models.length);
  const count = rows.length / variationColumns.length;
  checkVolumes(models, rows, count);
  const pool = options.pool ?? (count >= worthThreads ? await simulationPool() : undefined);
  const out = new Float64Array(count * outcomeColumns.length);
  try {
    if (pool !== undefined && pool.threads > 0) await onThreads(pool, models, rows, out, signal, onProgress);
    else await inLoop(models, rows, out, signal, onProgress);
    return { ...batchOf(rows, out, pool?.threads ?? 0), cautions: batchCautions(motor.propellant.law, out) };
  } finally {
    if (options.pool === undefined) await pool?.close();
  }
}

const ownTemperature = ({ grainTemperature, propellant }: SimulateInput): number =>
  grainTemperature === undefined
    ? propellant.law.referenceTemperature.si
    : readInput('temperature', 'grainTemperature', grainTemperature, 'simulateMany').si;

type Progress = ((fraction: number) => void) | undefined;

async function onThreads(
  pool: SimulationPool,
  models: readonly MotorModel[],
  rows: Float64Array,
  out: Float64Array,
  signal: AbortSignal | undefined,
  onProgress: Progress,
): Promise<void> {
  const tasks = taskStarts(rows);
  let next = 0;
  let done = 0;
  // Each lane takes the next task when its last is done, so that no thread waits and few rows are in memory twice.
  const lane = async (): Promise<void> => {
    try {
      while (next < tasks.length) {
        signal?.throwIfAborted();
        const [from, to] = tasks[next++];
        const part = await pool.run(
          models,
          rows.slice(from * variationColumns.length, to * variationColumns.length),
        );
        out.set(part, from * outcomeColumns.length);
        done += to - from;
        onProgress?.((done * variationColumns.length) / rows.length);
      }
    } finally {
      // One lane that fails is the end of the batch: the others take no further task.
      next = tasks.length;
    }
  };
  await Promise.all(Array.from({ length: 2 * pool.threads }, lane));
  signal?.throwIfAborted();
}

async function inLoop(
  models: readonly MotorModel[],
  rows: Float64Array,
  out: Float64Array,
  signal: AbortSignal | undefined,
  onProgress: Progress,
): Promise<void> {
  for (const [from, to] of taskStarts(rows)) {
    signal?.throwIfAborted();
    const part = runRows(models, rows.subarray(from * variationColumns.length, to * variationColumns.length));
    out.set(part, from * outcomeColumns.length);
    onProgress?.((to * variationColumns.length) / rows.length);
    // Lets timers, pictures and the abort of the caller have their turn.
    await new Promise((resolve) => setTimeout(resolve));
  }
}

function taskStarts(rows: Float64Array): readonly (readonly [number, number])[] {
  const count = rows.length / variationColumns.length;
  return Array.from({ length: Math.ceil(count / rowsPerTask) }, (_, i) => [
    i * rowsPerTask,
    Math.min(count, (i + 1) * rowsPerTask),
  ]);
}

function checkVolumes(models: readonly MotorModel[], rows: Float64Array, count: number): void {
  for (let i = 0; i < count; i++) {
    const at = i * variationColumns.length;
    const { chamberVolume, table } = models[rows[at + grainColumn]];
    if (chamberVolume * rows[at + volumeColumn] > table.volume[0]) continue;
    throw new MeopError(
      'out-of-domain',
      `simulateMany: variations[${i}].chamberVolume: the chamber would hold no more than the propellant; the free volume must be above zero`,
      `variations[${i}].chamberVolume`,
    );
  }
}

function batchOf(rows: Float64Array, out: Float64Array, threads: number): Omit<Batch, 'cautions'> {
  const count = out.length / outcomeColumns.length;
  const column = (name: (typeof outcomeColumns)[number]): Float64Array => {
    const j = outcomeColumns.indexOf(name);
    return Float64Array.from({ length: count }, (_, i) => out[i * outcomeColumns.length + j]);
  };
  return {
    count,
    peakPressure: fromSiArray('absolute pressure', column('peakPressure')),
    timeOfPeakPressure: fromSiArray('time', column('peakTime')),
    peakThrust: fromSiArray('force', column('peakThrust')),
    totalImpulse: fromSiArray('impulse', column('totalImpulse')),
    pressureIntegral: fromSiArray('pressure integral', column('pressureIntegral')),
    burnTime: fromSiArray('time', column('burnTime')),
    endTime: fromSiArray('time', column('endTime')),
    ends: Array.from(column('end'), (end) => runEnds[end]),
    factors: Object.fromEntries(
      variationColumns.map((name, j) => [
        name,
        Float64Array.from({ length: count }, (_, i) => rows[i * variationColumns.length + j]),
      ]),
    ),
    threads,
  };
}
