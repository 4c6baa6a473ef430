// What run.mjs times: the kernel alone, its rows for the C program, and batches on threads.
import { writeFileSync } from 'node:fs';
import {
  propellant,
  regress,
  type SimulateInput,
  simulateMany,
  simulationPool,
  tubularSegment,
} from '../../src/ballistics';
import { runRows } from '../../src/ballistics/coupled/batch-rows';
import { readMotor } from '../../src/ballistics/read-motor';
import { simulateInputs } from '../../src/ballistics/simulate-inputs';
import { outcomeColumns, rowsOf, variationColumns } from '../../src/ballistics/simulation/batch-kernel';
import { chamberWorkspace } from '../../src/ballistics/simulation/chamber-workspace';
import type { MotorModel } from '../../src/ballistics/simulation/motor-model';
import { runChamber } from '../../src/ballistics/simulation/run-chamber';
import { emptyResult } from '../../src/ballistics/simulation/run-result';
import { variations, variationTable } from '../../src/ballistics/variations';
import { readInputs } from '../../src/units';

/** The segment motor of the reference cases; `segments` of them in a row with the throat to match. */
export function motor(segments: number, tolerance: number): SimulateInput {
  const one = regress(tubularSegment({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '85 mm' }));
  const times = (values: Float64Array): Float64Array => values.map((value) => segments * value);
  return {
    propellant: propellant({
      density: '1780 kg/m^3',
      law: { coefficient: 7, rateUnit: 'mm/s', pressureUnit: 'MPa', exponent: 0.32 },
      gamma: 1.14,
      molarMass: '40 g/mol',
      flameTemperature: '1600 K',
    }),
    grain: { ...one, si: { ...one.si, area: times(one.si.area), volume: times(one.si.volume) } },
    chamber: { volume: `${segments * Math.PI * 2.5 ** 2 * 11} cm^3` },
    nozzle: { throatDiameter: `${7 * Math.sqrt(segments)} mm`, expansionRatio: 5, separation: 'none' },
    ambient: '101325 Pa',
    ignition: { initialPressure: '0.2 MPa' },
    stopPressure: '0.2 MPa',
    tolerance,
  };
}

const scatter = (count: number) => ({
  count,
  seed: 5,
  standardDeviations: { burnRate: 0.02, density: 0.01, throatDiameter: 0.003, characteristicVelocity: 0.01 },
});

const at = { procedure: 'bench', path: '' };
const modelOf = (input: SimulateInput): MotorModel =>
  readMotor(readInputs(simulateInputs, input, at), at).model;

/** Processor time, so that other programs on the machine count less. */
function nanosecondsSince(start: NodeJS.CpuUsage): number {
  const { user, system } = process.cpuUsage(start);
  return 1e3 * (user + system);
}

/** Nanoseconds of one run, best of `repeats`, and what the error is measured on. */
export function single(tolerance: number, repeats: number) {
  const model = modelOf(motor(1, tolerance));
  const workspace = chamberWorkspace();
  const result = emptyResult();
  let best = Number.POSITIVE_INFINITY;
  for (let k = 0; k < repeats; k++) {
    const start = process.cpuUsage();
    for (let i = 0; i < 100; i++) runChamber(model, workspace, result);
    best = Math.min(best, nanosecondsSince(start) / 100);
  }
  return {
    nanoseconds: best,
    steps: result.steps,
    evaluations: result.evaluations,
    result: [result.burnoutTime, result.pressureIntegral, result.burnoutPressure] as const,
  };
}

/** Models, rows and their file for the C program. */
export function prepareRows(count: number, tolerance: number, file: string) {
  const input = motor(4, tolerance);
  const model = modelOf(input);
  const rows = rowsOf(
    variationTable(variations.read(scatter(count), at), input.propellant, 294.15, 1),
    0,
    count,
  );
  writeFileSync(file, inputOfC(model, rows));
  return { models: [model], rows };
}

function inputOfC(m: MotorModel, rows: Float64Array): Float64Array {
  const { depth, area, volume, bow, pieceEnds, firstInterval, lastInterval } = m.table;
  const width = variationColumns.length;
  const factors = rows.filter((_, i) => i % width < 6);
  const head = [
    ...[
      depth.length,
      pieceEnds.length,
      rows.length / width,
      m.table.burnout,
      m.law.lnCoefficients[0],
      m.law.exponents[0],
    ],
    ...[
      m.density,
      m.gasEnergy,
      m.characteristicVelocity,
      m.gamma,
      m.chamberVolume,
      m.throatRadius,
      m.exitArea,
    ],
    ...[
      m.ambientPressure,
      m.initialPressure,
      m.stopPressure,
      m.pressureLimit,
      m.timeLimit,
      m.tolerance,
      m.thrustEfficiency,
      0,
    ],
  ];
  return Float64Array.from([
    ...[...head, ...depth, ...area, ...volume, ...bow],
    ...[...pieceEnds, ...firstInterval, ...lastInterval, ...factors],
  ]);
}

/** One pass over the rows in nanoseconds, and the sums to compare. */
export function pass(models: readonly MotorModel[], rows: Float64Array) {
  const start = process.cpuUsage();
  const out = runRows(models, rows);
  const nanoseconds = nanosecondsSince(start);
  const sum = (column: number): number =>
    out.reduce((total, value, i) => (i % outcomeColumns.length === column ? total + value : total), 0);
  return { nanoseconds, sums: [sum(0), sum(3), sum(5)] as const };
}

/** Seconds for batches on threads, pool started before, processor time of all threads together, and memory after each. */
export async function batches(counts: readonly number[], tolerance: number) {
  const input = motor(4, tolerance);
  const pool = await simulationPool({ threads: 2 });
  const found: {
    count: number;
    seconds: number;
    processor: number;
    threads: number;
    megabytes: number;
  }[] = [];
  for (const count of counts) {
    const start = performance.now();
    const used = process.cpuUsage();
    const batch = await simulateMany({ motor: input, variations: scatter(count), pool });
    found.push({
      count,
      seconds: (performance.now() - start) / 1000,
      processor: nanosecondsSince(used) / 1e9,
      threads: batch.threads,
      megabytes: process.memoryUsage().rss / 2 ** 20,
    });
  }
  await pool.close();
  return found;
}
