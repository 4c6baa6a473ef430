import { readLog } from '../../../src/firing';
import { analysedTrace } from '../../../src/firing/analysis/analysed-trace';
import { findBaseline, withoutBaseline } from '../../../src/firing/analysis/baseline';
import { burnEdges } from '../../../src/firing/analysis/burn-edges';
import { integralBetween, lowerBound } from '../../../src/firing/analysis/trace-values';
import { findSpikes } from '../../../src/firing/cleaning/spikes';
import { caseById } from '../../cases/every-case';
import { recordedLog } from '../recorded-logs';

// Expected values: tests/cases/firing.json, computed with numpy 1.24.2 / scipy 1.10.1 from the recorded logs.
export type Trace = { readonly time: Float64Array; readonly values: Float64Array };
const numbers = (value: unknown): readonly number[] => {
  if (!Array.isArray(value)) throw new Error('no list');
  return value.map(Number);
};
export const record = (value: unknown): Readonly<Record<string, unknown>> => {
  if (typeof value !== 'object' || value === null) throw new Error('no record');
  return Object.fromEntries(Object.entries(value));
};

const olemiss = (file: string, channel: 'thrust' | 'pressure', unit: string): Trace =>
  readLog(recordedLog(file), { time: { rate: '2000 Hz' }, channels: { [channel]: { column: 1, unit } } })
    .channels[channel];

export const hanaro = (file: string, column: number, convert: (counts: number) => number): Trace => {
  const { time, values } = readLog(recordedLog(file), {
    time: { column: 1, unit: 'ms' },
    channels: { x: { column, unit: 'counts' } },
  }).channels.x;
  return { time, values: values.map(convert) };
};
export const millivolts = (counts: number): number => (counts * 5000) / 1024;
const cornell = (column: number): Trace =>
  readLog(recordedLog('cornell-2024-04-14.csv'), {
    time: { column: 1, unit: 'ms' },
    channels: { x: { column, unit: 'V' } },
  }).channels.x;
const rocketbuds = (file: string): Trace =>
  readLog(recordedLog(file), {
    time: { column: 1, unit: 's' },
    channels: { thrust: { column: 2, unit: 'g' } },
  }).channels.thrust;
const day24 = 'hanaro-2018-07-24-knsb-7mm.csv';
const thrust24 = (): Trace =>
  hanaro(day24, 4, (c) => ((millivolts(c) - 338.343178) / 20) * 0.64566925 * 9.80665);
const pressure24 = (column: 2 | 3): Trace => {
  const [ohm, offset] = column === 2 ? [219.9, 4.019049852] : [220.7, 4.004481479];
  return hanaro(day24, column, (c) => (millivolts(c) / ohm - offset) * 6.25e5);
};

export const traces: Readonly<Record<string, () => Trace>> = {
  'olemiss-burn1-thrust-constant-zero': () => olemiss('olemiss-2025-04-16-force.csv', 'thrust', 'lbf'),
  'olemiss-burn1-thrust-linear-zero': () => olemiss('olemiss-2025-04-16-force.csv', 'thrust', 'lbf'),
  'olemiss-burn1-pressure': () => olemiss('olemiss-2025-04-16-pressure.csv', 'pressure', 'psig'),
  'hanaro-2018-07-24-thrust-constant-zero': thrust24,
  'hanaro-2018-07-24-thrust-linear-zero': thrust24,
  'hanaro-2018-07-24-pressure-left': () => pressure24(2),
  'hanaro-2018-07-24-pressure-right': () => pressure24(3),
  'cornell-pressure-volts': () => cornell(2),
  'cornell-loadcell-volts': () => cornell(3),
  'rocketbuds-a100-thrust': () => rocketbuds('rocketbuds-2024-04-07-fullfuelA100.txt'),
  'rocketbuds-160023-thrust': () => rocketbuds('rocketbuds-2021-03-27-160023.txt'),
  'rocketbuds-161132-thrust': () => rocketbuds('rocketbuds-2021-03-27-161132.txt'),
};

export function zeroed(
  id: string,
): Trace & { readonly before: number; readonly after: number | undefined; readonly deviation: number } {
  const inputs = record(caseById(id).inputs);
  const { time, values } = traces[id]();
  const span = (value: unknown) => {
    const [from, to] = numbers(value);
    return { from, to };
  };
  const spans = {
    before: span(inputs.zeroWindowS),
    ...(Array.isArray(inputs.afterWindowS) && { after: span(inputs.afterWindowS) }),
  };
  const despiked =
    inputs.spikeRule === undefined
      ? values
      : replaced(values, findSpikes(values, { halfWidth: 1, threshold: 0, limit: 10 }));
  const baseline = findBaseline(analysedTrace(time, despiked), spans);
  const mode = inputs.zeroMode === 'linear' ? 'line' : 'before';
  return {
    time,
    values: withoutBaseline(time, despiked, baseline, mode),
    before: baseline.before,
    after: inputs.afterWindowS === null ? undefined : baseline.after,
    deviation: baseline.beforeDeviation,
  };
}

function replaced(values: Float64Array, spikes: ReturnType<typeof findSpikes>): Float64Array {
  const cleaned = values.slice();
  for (const { index, is } of spikes) cleaned[index] = is;
  return cleaned;
}

export function reduce(id: string): Readonly<Record<string, number>> {
  const [from, to] = numbers(record(caseById(id).inputs).analysisWindowS);
  const { time, values, before, after, deviation } = zeroed(id);
  const first = lowerBound(time, from);
  const last = lowerBound(time, to + 1e-12);
  const inWindow = { from: first, to: last };
  const ten = burnEdges({ time, values, threshold: 0.1, ...inWindow });
  const five = burnEdges({ time, values, threshold: 0.05, ...inWindow });
  const impulse10 = integralBetween(time, values, ten.start, ten.end);
  const impulse5 = integralBetween(time, values, five.start, five.end);
  return {
    peak: ten.peak,
    peakTimeS: ten.peakTime,
    start10S: ten.start,
    end10S: ten.end,
    burnTime10S: ten.end - ten.start,
    impulse10,
    average10: impulse10 / (ten.end - ten.start),
    burnTime5S: five.end - five.start,
    impulse5,
    average5: impulse5 / (five.end - five.start),
    totalImpulseWindow: integralBetween(time, values, from, to),
    baselineBefore: before,
    baselineBeforeStd: deviation,
    ...(after !== undefined && { baselineAfter: after }),
  };
}
