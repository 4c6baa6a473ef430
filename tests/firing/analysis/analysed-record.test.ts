import { beforeEach, describe, expect, test, vi } from 'vitest';
import type { Firing } from '../../../src/firing';
import { randomStream } from '../../../src/numerics';
import { syntheticFiring } from '../synthetic-firing';

type BurnEdges = typeof import('../../../src/firing/analysis/burn-edges');

/** The library with an edge finder that notes which samples it searches: loaded anew, since other tests share its modules. */
const searched: Float64Array[] = [];
vi.resetModules();
vi.doMock('../../../src/firing/analysis/burn-edges', async (original) => {
  const actual = await original<BurnEdges>();
  return {
    ...actual,
    edgeFinder: (time: Float64Array, values: Float64Array) => {
      searched.push(values);
      return actual.edgeFinder(time, values);
    },
  };
});
const { detectBurn, detectClipping, firing, reduceFiring, removeBaseline, removeSpikes } = await import(
  '../../../src/firing'
);
const { analysedRecord } = await import('../../../src/firing/analysis/analysed-record');
const { analysedTrace } = await import('../../../src/firing/analysis/analysed-trace');
const { fromSiArray, q } = await import('../../../src/units');
vi.doUnmock('../../../src/firing/analysis/burn-edges');
vi.resetModules();
beforeEach(() => {
  searched.length = 0;
});

function recorded(trial: number, clip: number): Firing {
  const options = { rate: 500, clip, noise: 0.004, drift: 0.01, steps: 4096, gap: false, cutOff: false };
  const made = syntheticFiring(randomStream(62).split(trial), options);
  return firing({
    origin: 'measured',
    time: fromSiArray('time', made.time, 's'),
    pressure: fromSiArray('absolute pressure', made.pressure, 'MPa'),
    thrust: fromSiArray('force', made.thrust, 'N'),
    ambientPressure: q('101325 Pa').as('absolute pressure'),
  });
}

const samples = (values: Float64Array): string => values.join(',');

describe('in one reduction', () => {
  // Raw pressure and thrust; each with its baseline as a level and as a line; the pressure that was reconstructed.
  test.each([
    ['clipped', 0.7, 7],
    ['unclipped', 2, 6],
  ])('the edge finder runs once for each distinct trace: %s', (_, clip, traces) => {
    for (let trial = 0; trial < 5; trial++) {
      searched.length = 0;
      const { status, clipping } = reduceFiring(recorded(trial, clip), { ambientPressure: '101325 Pa' });
      expect(status).toBe('reduced');
      expect(clipping.pressure !== undefined).toBe(clip < 1);
      expect(new Set(searched.map(samples)).size).toBe(traces);
      expect(searched.length).toBe(traces);
    }
  });
});

describe('an analysed record', () => {
  test('is passed from step to step, and what no step changes is not analysed again', () => {
    const first = analysedRecord(removeSpikes(recorded(0, 2)));
    const second = analysedRecord(removeBaseline(first, { channels: ['thrust'] }));
    expect(second.traces.pressure).toBe(first.traces.pressure);
    expect(second.traces.thrust).not.toBe(first.traces.thrust);
    detectClipping(second);
    const third = analysedRecord(detectBurn(second));
    expect(third.traces).toEqual({ pressure: second.traces.pressure, thrust: second.traces.thrust });
    // Pressure; thrust as it was, above its baseline as a level and above its baseline as a line.
    expect(searched.length).toBe(4);
  });

  test('is a record: printed and compared as one, and a copy with other samples is analysed anew', () => {
    const record = recorded(0, 2);
    const analysed = analysedRecord(record);
    expect(analysedRecord(analysed)).toBe(analysed);
    expect(Object.keys(analysed)).toEqual(Object.keys(record));
    expect(String(analysed)).toBe(String(record));
    const { thrust, ...rest } = analysed;
    expect(thrust).toBe(record.thrust);
    expect(analysedRecord({ ...rest }).traces.thrust).toBeUndefined();
  });
});

test('what was found out about a trace is not looked for again', () => {
  const trace = analysedTrace(Float64Array.of(0, 1, 2, 3, 4, 5), Float64Array.of(1, 1, 9, 9, 1, 2));
  expect(trace.edges(0.1, 1)).toBe(trace.edges(0.1, 1));
  expect(trace.edges(0.1, 1)).not.toBe(trace.edges(0.1, 0.5));
  expect(trace.baseline()).toBe(trace.baseline());
  expect(trace.levelled('before', 0)).toBe(trace.levelled('before', 0));
  expect(trace.above(1)).toBe(trace.above(1));
  expect([trace.lowest(), trace.highest(), trace.peakIndex()]).toEqual([1, 9, 2]);
  // The integral is that between the edges: two triangles of 0.9 s and a rectangle of 1 s, less what is below 10 %.
  expect(trace.integral(0.1, 1)).toBeCloseTo(8 + (2 * (0.9 * (8 + 0.8))) / 2, 12);
});
