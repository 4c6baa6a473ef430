import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { firing, isModelRocketMotor, motorClass, summarize } from '../../src/firing';
import { q, series } from '../../src/units';

// Cases of the static-firing notes, each with its source beside it.

const close = (value: number | undefined, expected: number, relTol: number): void => {
  expect(value).toBeDefined();
  expect(Math.abs((value ?? Number.NaN) / expected - 1)).toBeLessThanOrEqual(relTol);
};
const thrustRecord = (t: readonly number[], thrust: readonly number[]) =>
  firing({ origin: 'measured', time: series(t, 's'), thrust: series(thrust, 'N') });

describe('summary of a firing', () => {
  // Source: Sutton & Biblarz, burn and action time definitions; NFPA 1125 (5 %). Definitions from memory; numbers
  // computed with numpy 1.24.2 / scipy 1.10.1.
  it('trapezoid: 10 % and 5 % burn times, impulses, averages', () => {
    const sum = summarize(thrustRecord([0, 0.1, 1.9, 2.1], [0, 500, 500, 0]));
    close(sum.actionTime.si, 2.07, 1e-6);
    close(sum.burnTimeFivePercent.si, 2.085, 1e-6);
    close(sum.totalImpulse?.si, 975, 1e-6);
    close(sum.tenPercent.impulse?.si, 974.25, 1e-6);
    close(sum.tenPercent.averageThrust?.si, 470.652174, 1e-6);
    close(sum.fivePercent.averageThrust?.si, 467.535971, 1e-6);
  });

  // Source: Sutton & Biblarz, definition of web burnout (from memory): for a straight plateau and a straight tail the
  // bisector passes through the knee. Burn time counts from the first 10 % point, 0.01 s here.
  it('aft tangent: a sharp knee is the burnout', () => {
    const sum = summarize(thrustRecord([0, 0.1, 1.9, 2.1], [0, 500, 500, 0]));
    close(sum.burnTime?.si, 1.9 - 0.01, 1e-9);
  });

  it('aft tangent: a tail of exponential decay is found within a sixth of its time constant, at any scale of the axes', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 0.05, noNaN: true }),
        fc.double({ min: -0.25, max: 0.25, noNaN: true }),
        fc.double({ min: 1, max: 1e4, noNaN: true }),
        fc.double({ min: 0.1, max: 100, noNaN: true }),
        (tau, progressivity, height, length) => {
          const n = 2000;
          const t = Array.from({ length: n }, (_, i) => (1.4 * i) / (n - 1));
          const shape = (s: number): number => {
            const rise = 1 - Math.exp(-s / 0.01);
            const plateau = 1 + progressivity * (Math.min(s, 1) - 0.5);
            return rise * plateau * (s <= 1 ? 1 : Math.exp(-(s - 1) / tau));
          };
          const record = thrustRecord(
            t.map((s) => s * length),
            t.map((s) => height * shape(s)),
          );
          const sum = summarize(record);
          expect(sum.burnTime).toBeDefined();
          const burnout = (sum.burnTime?.si ?? 0) + sum.tenPercent.start.si;
          // The straight line through 80 % to 40 % of a decay reaches its start 0.12 time constants early (by hand).
          expect(burnout / length - 1).toBeGreaterThan(-0.003 - 0.16 * tau);
          expect(burnout / length - 1).toBeLessThan(0.003);
        },
      ),
      { numRuns: 50 },
    );
  });

  // Source: Isp = I/(m·g0); c* = A_t·∫p dt/m; C_F = I/(A_t·∫p dt); computed with numpy 1.24.2 / scipy 1.10.1.
  it('specific impulse, c* and thrust coefficient of known integrals', () => {
    const isp = summarize(thrustRecord([0, 1], [950, 950]), { propellantMass: '0.72 kg' });
    close(isp.specificImpulse?.in('s'), 134.545889, 1e-6);
    const pressure = firing({
      origin: 'measured',
      time: series([0, 1], 's'),
      pressure: series([6.4, 6.4], 'MPa'),
    });
    const cStar = summarize(pressure, { propellantMass: '0.80 kg', throatDiameter: '12 mm' });
    close(cStar.characteristicVelocity?.in('m/s'), 904.778684, 1e-6);
    const both = firing({
      origin: 'measured',
      time: series([0, 1], 's'),
      pressure: series([5.5076, 5.5076], 'MPa'),
      thrust: series([308.99, 308.99], 'N'),
      initialThroatDiameter: q('7 mm'),
    });
    close(summarize(both).thrustCoefficient, 1.45779371, 1e-5);
  });

  // Source: c* = ∫p·A_t dt / m of the burn itself; a triangle of 4 MPa above ambient over 2 s, closed form.
  it('c* and the pressure integral do not grow with the quiet parts of a log', () => {
    const log = (lead: number) =>
      summarize(
        firing({
          origin: 'measured',
          time: series([0, lead, lead + 1, lead + 2, 2 * lead + 2], 's'),
          pressure: series([0.1, 0.1, 4.1, 0.1, 0.1], 'MPa'),
          ambientPressure: q('0.1 MPa').as('absolute pressure'),
        }),
        { propellantMass: '0.5 kg', throatDiameter: '12 mm' },
      );
    const burn = 2 * 0.1e6 + 0.5 * 2 * 4e6;
    for (const lead of [0.1, 1, 30]) {
      close(log(lead).pressureIntegral?.si, burn, 1e-3);
      close(log(lead).characteristicVelocity?.si, (burn * Math.PI * 0.006 ** 2) / 0.5, 1e-3);
      expect(log(lead).definitions.pressureIntegral).toMatch(/above ambient/);
    }
  });

  it('a spike in the quiet part does not move the edges', () => {
    const t = [0, 0.5, 0.501, 0.502, 1, 1.1, 2.9, 3.1, 4];
    const quiet = summarize(thrustRecord(t, [0, 0, 0, 0, 0, 500, 500, 0, 0]));
    const spiked = summarize(thrustRecord(t, [0, 0, 200, 0, 0, 500, 500, 0, 0]));
    expect(spiked.actionTime.si).toBe(quiet.actionTime.si);
  });

  it('says which definition and which trace it used, and that an end is cut off', () => {
    const sum = summarize(thrustRecord([0, 1], [500, 500]));
    expect(sum.definitions.averageThrust).toMatch(/NFPA 1125/);
    expect(sum.cautions.join()).toMatch(/start is missing[\s\S]*end is missing/);
    expect(String(sum)).toMatch(/total impulse +500 N·s/);
  });

  it('refuses a record without thrust and pressure', () => {
    const record = firing({ origin: 'measured', time: series([0, 1], 's'), web: series([0, 1], 'mm') });
    expect(() => summarize(record)).toThrow(expect.objectContaining({ code: 'nothing-to-sum-up' }));
  });

  it('a trace that never rises above zero has no times: pressure gives them, or the record is refused', () => {
    for (const thrust of [
      [-5, -5, -5],
      [0, 0, 0],
      [-1, -2, -1],
      [0, -1, 0],
    ])
      expect(() => summarize(thrustRecord([0, 1, 2], thrust))).toThrow(
        expect.objectContaining({ code: 'nothing-to-sum-up', path: 'thrust' }),
      );
    const held = firing({ ...thrustRecord([0, 1, 2], [0, 0, 0]), pressure: series([0, 2, 0], 'MPa') });
    expect(summarize(held).actionTime.si).toBeCloseTo(1.8, 12);
    expect(summarize(held).definitions.trace).toMatch(/pressure/);
  });

  it('refuses a misspelt option, and a mass or throat that is none', () => {
    const record = thrustRecord([0, 1], [5, 5]);
    const misspelt: object = { propelantMass: '1 kg' };
    expect(() => summarize(record, misspelt)).toThrow(expect.objectContaining({ code: 'unknown-field' }));
    for (const options of [{ propellantMass: '0 kg' }, { throatDiameter: '0 mm' }] as const)
      expect(() => summarize(firing({ ...record, pressure: series([2, 2], 'MPa') }), options)).toThrow(
        expect.objectContaining({ code: 'out-of-domain', path: Object.keys(options)[0] }),
      );
  });
});

describe('motor class', () => {
  // Source: NFPA 1125 table as repeated in encyclopedia articles on motor classification (published, seen).
  const letters = 'ABCDEFGHIJKLMNO'.split('');
  const high = [2.5, 5, 10, 20, 40, 80, 160, 320, 640, 1280, 2560, 5120, 10240, 20480, 40960];
  const low = [
    1.26, 2.51, 5.01, 10.01, 20.01, 40.01, 80.01, 160.01, 320.01, 640.01, 1280.01, 2560.01, 5120.01, 10240.01,
    20480.01,
  ];
  it.each(letters.map((letter, i) => [letter, low[i], high[i]] as const))(
    '%s from %f to %f N·s',
    (letter, from, to) => {
      expect(motorClass(q(from, 'N*s')).letter).toBe(letter);
      expect(motorClass(q(to, 'N*s')).letter).toBe(letter);
      expect(motorClass(q(to, 'N*s')).percentOfRange).toBe(100);
    },
  );

  // Source: 1/2A 0.625-1.25 seen in an encyclopedia entry; smaller ones from memory. Picks from the same table.
  it.each([
    [0.2, '1/8A'],
    [0.3125, '1/8A'],
    [0.313, '1/4A'],
    [0.625, '1/4A'],
    [0.626, '1/2A'],
    [2.504, 'A'],
    [2.505, 'B'],
    [0.4, '1/4A'],
    [0.7, '1/2A'],
    [1.25, '1/2A'],
    [1.26, 'A'],
    [2.51, 'B'],
    [160.01, 'H'],
    [639.9, 'I'],
    [4679, 'L'],
  ])('%f N·s is %s', (impulse, letter) => {
    expect(motorClass(q(impulse, 'N*s')).letter).toBe(letter);
  });

  it('goes on doubling beyond O, and says that this is from memory', () => {
    expect(motorClass('50000 N*s').letter).toBe('P');
    expect(motorClass('50000 N*s').basis).toMatch(/from memory/);
    expect(motorClass('371 N*s').basis).toMatch(/NFPA 1125/);
    expect(() => motorClass('0 N*s')).toThrow(expect.objectContaining({ code: 'out-of-domain' }));
  });

  // Source: NFPA 1122/1125 limits (published, seen / from memory).
  it('knows a model rocket motor', () => {
    expect(isModelRocketMotor({ totalImpulse: '120 N*s', averageThrust: '80.3 N' })).toBe(false);
    expect(isModelRocketMotor({ totalImpulse: '120 N*s', averageThrust: '79.9 N' })).toBe(true);
    expect(isModelRocketMotor({ totalImpulse: '165 N*s', averageThrust: '60 N' })).toBe(false);
  });
});
