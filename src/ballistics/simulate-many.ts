import {
  type Arguments,
  callback,
  fromSiArray,
  inputs,
  instance,
  list,
  MeopError,
  optional,
  type Place,
  procedure,
  type Series,
} from '../units';
import { batchCautions } from './batch-cautions';
import { type BatchModel, batchModel, runRows } from './coupled/batch-rows';
import { coupledModel } from './coupled/coupled-run';
import { portChoice } from './coupled/port-choice';
import { erosionLawOf } from './erosive-inputs';
import { portDiagnosis } from './port-diagnosis';
import { sensitivityUnknown } from './rate-by-law';
import { type GivenMotor, readMotor } from './read-motor';
import { burnable, simulateInputs } from './simulate-inputs';
import { type Outcomes, outcomeColumns, rowsOf, runEnds, variationColumns } from './simulation/batch-kernel';
import { chamberWorkspace } from './simulation/chamber-workspace';
import type { RunEnd } from './simulation/motor-model';
import { runChamber } from './simulation/run-chamber';
import { emptyResult } from './simulation/run-result';
import { sampleRecorder } from './simulation/sample-recorder';
import { isPool, type SimulationPool, simulationPool } from './thread-pool';
import { variations, variationTable, variesTemperature } from './variations';

/** The results of a batch, one for each motor in the order of the variations. */
export interface Batch {
  readonly count: number;
  readonly peakPressure: Series<'absolute pressure'>;
  /** At the head end; where the flow along the port is solved for every grain. */
  readonly peakHeadPressure: Series<'absolute pressure'> | undefined;
  readonly timeOfPeakPressure: Series<'time'>;
  readonly peakThrust: Series<'force'>;
  readonly totalImpulse: Series<'impulse'>;
  readonly pressureIntegral: Series<'pressure integral'>;
  /** Time to burnout; where propellant is left, to the end of the run (see `ends`). */
  readonly burnTime: Series<'time'>;
  readonly endTime: Series<'time'>;
  readonly ends: readonly RunEnd[];
  /** Factors of each motor, by field. */
  readonly factors: Readonly<Record<string, Float64Array>>;
  /** Number of threads used; 0 for a loop. */
  readonly threads: number;
  /** Motors that did not burn out, pressures outside the range of the burn law, and temperatures without effect. */
  readonly cautions: readonly string[];
}

const rowsPerTask = 100;
const worthThreads = 500;
const grainColumn = variationColumns.indexOf('grain');
const volumeColumn = variationColumns.indexOf('chamberVolume');

const isSignal = (value: unknown): value is AbortSignal =>
  typeof value === 'object' && value !== null && 'throwIfAborted' in value && 'aborted' in value;

const batchInputs = {
  motor: inputs(simulateInputs, { meaning: 'motor, as for simulate' }),
  variations,
  grains: optional(
    list('further grains, such as grains with flaws, which variations number from 1', burnable, { min: 0 }),
    [],
  ),
  pool: optional(
    instance(
      'threads; if omitted, a batch of 500 or more has its own and a smaller one runs in a loop',
      'a pool made by simulationPool',
      isPool,
    ),
  ),
  signal: optional(instance('signal that aborts the batch', 'an AbortSignal', isSignal)),
  onProgress: optional(
    callback<(fraction: number) => void>('function called with the progress, from 0 to 1'),
  ),
};

/** What {@link simulateMany} takes. */
export type SimulateManyOptions = Arguments<typeof batchInputs>;

/**
 * Simulates many variations of a motor: tolerances, temperatures, flaws. It uses worker threads in Node.js and a loop
 * elsewhere; the results are identical for any number of threads and any order. A motor whose pressure diverges or that
 * bursts does not stop the others: `ends` states how each one ended. The model of the flow along the port is that which
 * the nominal firing of each grain needs, or the one specified.
 *
 * @throws MeopError what {@link simulate} throws for the motor, and `out-of-range` where the burn law does not allow a pressure
 * that a motor reaches; the reason of `signal`
 * @example typeof simulateMany // => 'function'
 */
export const simulateMany = /* @__PURE__ */ procedure({
  name: 'simulateMany',
  title: 'Simulation of many variations of a motor',
  source: 'the method of simulate, for each motor',
  inputs: batchInputs,
  gives: 'a promise of the results of all motors, in the order of the variations',
  example:
    "simulateMany({ motor: { propellant: publishedPropellant('potassium nitrate/sucrose'), grain: tubularSegment({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '85 mm' }), nozzle: { throatDiameter: '8 mm', expansionRatio: 5 }, chamber: { innerDiameter: '50 mm', length: '110 mm' }, ambient: '1 atm' }, variations: { count: 100, seed: 1, standardDeviations: { burnRate: 0.03 } } })",
  asynchronous: true,
  run: async ({ motor, variations: given, grains, pool: own, signal, onProgress }): Promise<Batch> => {
    signal?.throwIfAborted();
    const at = { procedure: 'simulateMany', path: 'motor' };
    const { propellant, grainTemperature } = motor;
    const models = [motor, ...grains.map((grain) => ({ ...motor, grain }))].map((one) => modelOf(one, at));
    const ownTemperature = (grainTemperature ?? propellant.law.referenceTemperature).si;
    const factors = variationTable(given, propellant, ownTemperature, models.length);
    checkVolumes(models, factors);
    const work: Work = {
      models,
      factors,
      count: factors[0].length,
      outcomes: emptyOutcomes(factors[0].length),
      signal,
      onProgress,
    };
    const pool = own ?? (work.count >= worthThreads ? await simulationPool() : undefined);
    try {
      if (pool !== undefined && pool.threads > 0) await onThreads(pool, work);
      else await inLoop(work);
      const isUnknown = propellant.law.temperatureSensitivity === undefined;
      const varies = grainTemperature !== undefined || variesTemperature(given);
      return {
        ...batchOf(work, pool?.threads ?? 0),
        cautions: [
          ...batchCautions(propellant.law, work.outcomes),
          ...(isUnknown && varies ? [sensitivityUnknown] : []),
        ],
      };
    } finally {
      if (own === undefined) await pool?.close();
    }
  },
});

/** The motor with one grain, by the model of the port that its nominal firing needs. */
function modelOf(given: GivenMotor, at: Place): BatchModel {
  const motor = readMotor(given, at);
  const { model, regression } = motor;
  const erosion = erosionLawOf(given.erosiveBurning ?? { law: 'none' });
  const { portModel } = given;
  if (portModel === 'lumped' && erosion.law === 'none') return model;
  if (portModel === 'automatic') {
    const recorder = sampleRecorder(1);
    runChamber(model, chamberWorkspace(), emptyResult(), recorder);
    const samples = recorder.samples();
    const flow = portDiagnosis(model, regression.portArea, regression.si.depth, samples, erosion);
    const port = { motor: model, stations: regression.portArea, depth: regression.si.depth, samples, flow };
    if (portChoice(port, erosion).model === 'lumped') return model;
  }
  return batchModel(coupledModel(given, motor, erosion));
}

// Factors and outcomes are stored by columns, as they are returned; rows exist only during a task.
interface Work {
  readonly models: readonly BatchModel[];
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
  // Each lane starts the next task when its previous one is complete, so that no thread waits and few rows are in memory twice.
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
      // If one lane fails, the batch ends: the others start no further task.
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
    // Lets timers, drawing and an abort by the caller run.
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
  minBurnPressure: new Float64Array(count),
  maxPressure: new Float64Array(count),
  peakHeadPressure: new Float64Array(count),
});

/** Puts rows of results into their columns. */
function store(outcomes: Outcomes, rows: Float64Array, from: number): void {
  const width = outcomeColumns.length;
  outcomeColumns.forEach((name, j) => {
    const column = outcomes[name];
    for (let i = 0; i * width < rows.length; i++) column[from + i] = rows[i * width + j];
  });
}

function checkVolumes(models: readonly BatchModel[], factors: readonly Float64Array[]): void {
  const volumes = factors[volumeColumn];
  const grains = factors[grainColumn];
  volumes.forEach((factor, i) => {
    const { chamberVolume, table } = models[grains[i]];
    if (chamberVolume * factor > table.volume[0]) return;
    throw new MeopError({
      code: 'out-of-domain',
      procedure: 'simulateMany',
      path: `variations.${i}.chamberVolume`,
      given: factor,
      expected: `above ${(table.volume[0] / chamberVolume).toPrecision(6)}, where the propellant fills the chamber`,
    });
  });
}

function batchOf({ models, factors, count, outcomes }: Work, threads: number): Omit<Batch, 'cautions'> {
  return {
    count,
    peakPressure: fromSiArray('absolute pressure', outcomes.peakPressure),
    peakHeadPressure: models.every(({ port }) => port !== undefined)
      ? fromSiArray('absolute pressure', outcomes.peakHeadPressure)
      : undefined,
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
