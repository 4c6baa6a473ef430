import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { firing, type Log, readLog, reduceFiring } from '../../src/firing';
import { fromSiArray, MeopError } from '../../src/units';

/** Runs a call that may refuse, but only by the library's own error. */
function refusesAtMost<T>(call: () => T): T | undefined {
  try {
    return call();
  } catch (error) {
    if (error instanceof MeopError) return undefined;
    throw error;
  }
}

const columns = {
  time: { column: 1, unit: 'ms' },
  channels: { thrust: { column: 2, unit: 'N' }, pressure: { column: 3, unit: 'barg' } },
} as const;

function sound(log: Log): void {
  for (const { time, values } of Object.values(log.channels)) {
    expect(time.length).toBe(values.length);
    for (let i = 0; i < time.length; i++) {
      expect(Number.isFinite(values[i])).toBe(true);
      if (i > 0) expect(time[i]).toBeGreaterThan(time[i - 1]);
    }
  }
}

const goodLines = Array.from({ length: 80 }, (_, i) => `${10 * i},${100 + i},${200 + i}`);

describe('nothing that a file may hold crashes the reader', () => {
  test('arbitrary bytes', async () => {
    await fc.assert(
      fc.asyncProperty(fc.uint8Array({ maxLength: 600 }), async (bytes) => {
        try {
          sound(await readLog([bytes], columns));
        } catch (error) {
          if (!(error instanceof MeopError)) throw error;
        }
      }),
      { numRuns: 300 },
    );
  });

  test('text made of what logs are made of', () => {
    const piece = fc.constantFrom(
      '1',
      '-2.5',
      '3e4',
      ',',
      ';',
      '\t',
      ' ',
      '\n',
      '\r\n',
      '"',
      '#',
      'nan',
      't (s)',
      '.',
      '-',
      'e',
      '1e308',
      '1e999',
      '\0',
      '12:30:01',
    );
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 120 }), (pieces) => {
        const log = refusesAtMost(() => readLog(pieces.join(''), columns));
        if (log) sound(log);
        refusesAtMost(() => readLog(pieces.join('')));
      }),
      { numRuns: 500 },
    );
  });

  test('what comes before the break is kept, wherever a log is cut off', () => {
    const text = `${goodLines.join('\n')}\n`;
    fc.assert(
      fc.property(
        fc.integer({ min: 200, max: text.length }),
        fc.uint8Array({ maxLength: 40 }),
        (cut, garbage) => {
          const kept = text.slice(0, cut);
          const whole = kept.slice(0, kept.lastIndexOf('\n') + 1);
          const count = whole.split('\n').length - 1;
          const log = readLog(
            `${whole}\n${String.fromCharCode(...garbage.map((b) => (b < 64 ? b + 64 : b)))}\n`,
            columns,
          );
          const thrust = [...log.channels.thrust.values.subarray(0, count)];
          expect(thrust).toEqual(Array.from({ length: count }, (_, i) => 100 + i));
          sound(readLog(kept, columns));
        },
      ),
      { numRuns: 200 },
    );
  });

  test('shuffled rows are put back in order and none is lost', () => {
    fc.assert(
      fc.property(fc.shuffledSubarray(goodLines, { minLength: goodLines.length }), (lines) => {
        const log = readLog(lines.join('\n'), columns);
        sound(log);
        expect(log.channels.thrust.values.length).toBe(goodLines.length);
        expect([...log.channels.thrust.values].sort((a, b) => a - b)).toEqual(
          goodLines.map((_, i) => 100 + i),
        );
      }),
      { numRuns: 200 },
    );
  });
});

test('any record of finite numbers reduces or is refused, and never gives a number that is none', () => {
  const value = fc.double({ min: -1e6, max: 1e7, noNaN: true });
  fc.assert(
    fc.property(fc.array(value, { minLength: 2, maxLength: 60 }), fc.boolean(), (values, withPressure) => {
      const n = values.length;
      const record = firing({
        origin: 'measured',
        time: fromSiArray(
          'time',
          Float64Array.from({ length: n }, (_, i) => i / 50),
          's',
        ),
        thrust: fromSiArray('force', Float64Array.from(values), 'N'),
        ...(withPressure && {
          pressure: fromSiArray(
            'absolute pressure',
            Float64Array.from(values, (v) => Math.abs(v)),
            'MPa',
          ),
        }),
      });
      const reduced = refusesAtMost(() =>
        reduceFiring(record, {
          ambientPressure: '101 kPa',
          throatDiameter: '8 mm',
          propellantMass: '0.2 kg',
        }),
      );
      if (!reduced) return;
      const { totalImpulse, peakPressure, burnTime, thrustCoefficient } = reduced;
      for (const number of [
        totalImpulse?.value.si,
        totalImpulse?.low.si,
        peakPressure?.high.si,
        burnTime?.si,
        thrustCoefficient,
      ])
        if (number !== undefined) expect(Number.isFinite(number)).toBe(true);
      expect(String(reduced)).not.toMatch(/NaN|undefined/);
    }),
    { numRuns: 200 },
  );
});
