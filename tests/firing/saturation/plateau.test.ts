import { describe, expect, test } from 'vitest';
import { detectClipping, type Firing, firing, reduceFiring } from '../../../src/firing';
import { randomStream } from '../../../src/numerics';
import { fromSiArray } from '../../../src/units';

// Invented traces: what is expected follows from how they are made.
const ambient = 1e5;
const time = Float64Array.from({ length: 3000 }, (_, i) => i / 500);
/** Neutral: a short rise, a plateau with one part in a hundred of hump, a short fall. */
const neutral = (t: number): number => {
  const ends = Math.min(1, Math.max(0, (t - 1) / 0.05), Math.max(0, (4 - t) / 0.1));
  return ends * (1 - 0.01 * ((t - 2.5) / 1.5) ** 2);
};
const progressive = (t: number): number =>
  Math.min(1, Math.max(0, (t - 1) / 0.05), Math.max(0, (4 - t) / 0.05)) * (0.5 + (t - 1) / 6);
// Where the fall of 0.05 s begins.
const progressivePeak = 4e6 * progressive(3.95) + ambient;
const coarse = (value: number, step: number): number => step * Math.round(value / step);
// A nozzle of 8 mm and expansion ratio 5 that flows full, vacuum coefficient 1.5.
const throat = (Math.PI / 4) * 0.008 ** 2;
const thrustAt = (gauge: number): number =>
  gauge > 0 ? Math.max(0, throat * (1.5 * (gauge + ambient) - 5 * ambient)) : 0;
interface Made {
  readonly course: (t: number) => number;
  readonly step: number;
  readonly limit?: number;
  readonly thrust: boolean;
  readonly seed?: number;
}
function made({ course, step, limit = Number.POSITIVE_INFINITY, thrust, seed = 1 }: Made): Firing {
  const random = randomStream(seed);
  return firing({
    origin: 'measured',
    time: fromSiArray('time', time, 's'),
    pressure: fromSiArray(
      'absolute pressure',
      time.map((t) => ambient + Math.min(limit, coarse(4e6 * course(t) + 5e3 * random.normal(), step))),
      'MPa',
    ),
    ...(thrust && {
      thrust: fromSiArray(
        'force',
        time.map((t) => thrustAt(4e6 * course(t)) + random.normal()),
        'N',
      ),
    }),
  });
}
const facts = { ambientPressure: '100 kPa', throatDiameter: '8 mm', expansionRatio: 5 } as const;

describe('a neutral grain on a coarse converter', () => {
  test.each([
    ['with thrust', true],
    ['without thrust', false],
  ])('%s: its plateau is told, and left as it is', (_, thrust) => {
    for (let seed = 1; seed <= 10; seed++) {
      const record = made({ course: neutral, step: 1e5, thrust, seed });
      const reduced = reduceFiring(record, facts);
      expect(reduced.recovery).toBeUndefined();
      expect(reduced.clipping.pressure?.certain).toBe(false);
      expect(reduced.cautions.join('\n')).toMatch(
        /flat top, as with clipping or a true plateau.*ranges: \{ pressure/,
      );
      // The highest reading is the converter's own: within a step and the noise of 4 MPa.
      expect(Math.abs((reduced.peakPressure?.value.si ?? 0) - 4e6 - ambient)).toBeLessThan(1e5);
    }
  });

  test('said to be at the end of the range, it is recovered', () => {
    const record = made({ course: neutral, step: 1e5, thrust: true });
    const top = record.pressure?.max();
    const reduced = reduceFiring(record, { ...facts, ...(top && { ranges: { pressure: top } }) });
    expect(reduced.recovery?.channel).toBe('pressure');
  });
});

describe('a flat top that the other channel does not share', () => {
  test('is clipping for certain, and is recovered without a range', () => {
    for (let seed = 1; seed <= 10; seed++) {
      const record = made({ course: progressive, step: 2e4, limit: 3e6, thrust: true, seed });
      expect(detectClipping(record, { ambientPressure: facts.ambientPressure }).pressure?.certain).toBe(true);
      const peak = reduceFiring(record, facts).recovery?.peak.value.si ?? 0;
      expect(Math.abs(peak / progressivePeak - 1)).toBeLessThan(0.03);
    }
  });

  test('alone it is a caution', () => {
    const record = made({ course: progressive, step: 2e4, limit: 3e6, thrust: false });
    const reduced = reduceFiring(record, facts);
    expect(reduced.recovery).toBeUndefined();
    expect(reduced.cautions.join('\n')).toMatch(/flat top/);
  });
});
