import { describe, expect, test } from 'vitest';
import { readLog, reduceFiring } from '../../../src/firing';
import { randomStream } from '../../../src/numerics';

// Invented logs: an arch of 40 bar and 620 N from 2 to 5 s with a tail of 0.15 s, its truth in closed form below.
const arch = (t: number): number =>
  t < 2 || t > 5
    ? 0
    : Math.min(1, (t - 2) / 0.1) * (1 - (0.3 * (t - 3.5) ** 2) / 2.25) * Math.min(1, (5 - t) / 0.15);
const facts = { ambientPressure: '101325 Pa', throatDiameter: '12 mm', propellantMass: '0.9 kg' } as const;

function reduced(header: string, of: (t: number) => readonly number[], rate = 200) {
  const random = randomStream(42);
  const lines = Array.from({ length: 9 * rate }, (_, i) => {
    const values = of(i / rate).map((value) => (value + 0.05 * random.normal()).toFixed(3));
    return `${i / rate},${values.join(',')}\n`;
  });
  return reduceFiring(readLog(`t (s),${header}\n${lines.join('')}`), facts);
}

describe('a burst gives no result', () => {
  test('pressure and thrust gone faster than the chamber can empty', () => {
    const { status, totalImpulse, cautions } = reduced('pressure (barg),thrust (N)', (t) =>
      t < 3 ? [60 * arch(t) * (t - 1), 930 * arch(t) * (t - 1)] : [0, 0],
    );
    expect(status).toBe('no result');
    expect(totalImpulse).toBeUndefined();
    expect(cautions.join('\n')).toMatch(/A chamber with that burned volume needs .* The motor burst/);
    expect(new Set(cautions).size).toBe(cautions.length);
  });

  test('the transducer went with it: at once, and not back to its zero', () => {
    const { status, cautions } = reduced('pressure (barg),thrust (N)', (t) =>
      t < 3 ? [60 * arch(t), 930 * arch(t)] : [-30, 0],
    );
    expect(status).toBe('no result');
    expect(cautions.join('\n')).toMatch(/zero does not return/);
  });

  test('where thrust goes on it was the wire, and thrust still counts', () => {
    const { status, totalImpulse, peakPressure, cautions } = reduced('pressure (barg),thrust (N)', (t) =>
      t < 4 ? [60 * arch(t), 620 * arch(t)] : [0, 620 * arch(t)],
    );
    expect(status).toBe('reduced');
    expect(peakPressure).toBeUndefined();
    expect(cautions.join('\n')).toMatch(/Thrust continues/);
    // ∫ arch dt by Simpson's rule on 3000 intervals, written out here.
    const h = 3 / 3000;
    const sum = Array.from(
      { length: 3001 },
      (_, i) => (i % 3000 === 0 ? 1 : i % 2 ? 4 : 2) * arch(2 + i * h),
    );
    const impulse = (620 * h * sum.reduce((a, b) => a + b, 0)) / 3;
    expect(Math.abs((totalImpulse?.value.si ?? 0) / impulse - 1)).toBeLessThan(0.01);
  });

  test('an ordinary end does not look like one, at any rate', () => {
    for (const rate of [50, 200, 1000])
      expect(reduced('pressure (barg),thrust (N)', (t) => [40 * arch(t), 620 * arch(t)], rate).status).toBe(
        'reduced',
      );
  });
});

test('of twin transducers the one behind a blocked port is left out, and named', () => {
  const { record, cautions } = reduced('pressure left (barg),pressure right (barg),thrust (N)', (t) => [
    40 * arch(t),
    40 * arch(t - 0.25),
    620 * arch(t),
  ]);
  expect(cautions.join('\n')).toMatch(/pressure right: it lags pressure left by 0\.25 s/);
  expect(record.history.join('\n')).toMatch(/pressure is pressure left alone/);
});

test('grams taken for newtons are named where the propellant is known, without any pressure', () => {
  const { cautions } = reduced('thrust (N)', (t) => [(620 * arch(t) * 1000) / 9.80665]);
  expect(cautions.join('\n')).toMatch(
    /outside the range of solid motors .* grams-force were read as newtons/,
  );
});

test('a load cell wired the wrong way round is told as such', () => {
  const { status, cautions } = reduced('thrust (N)', (t) => [-620 * arch(t)]);
  expect(status).toBe('no result');
  expect(cautions.join('\n')).toMatch(/Invert its sign/);
});

test('hands on the stand before ignition do not move the zero, and are told', () => {
  const { record, cautions } = reduced('thrust (N)', (t) => [
    620 * arch(t) + (t > 0.9 && t < 1.1 ? 15 : 0) + 3,
  ]);
  expect(cautions.join('\n')).toMatch(/samples before ignition are disturbed/);
  // 3 N is what the log was given.
  expect(record.history.join('\n')).toMatch(/\b(2\.99|3|3\.00)\d* N .* subtracted from thrust/);
});
