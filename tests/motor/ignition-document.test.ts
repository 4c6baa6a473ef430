import { describe, expect, test } from 'vitest';
import { compare, meop, parseMotor, predict, report, review } from '../../src/motor';
import { ignitionCautions } from '../../src/motor/review/ignition-review';
import { changed } from './changed-motor';

const parsed = (changes: Record<string, unknown>) => parseMotor(changed('tern', changes));

const heatLoss = {
  heatTransferCoefficient: { value: '800 W/(m^2*K)', plusMinus: '200 W/(m^2*K)' },
  wallTemperature: '600 K',
};
const assumedBlockage = {
  fraction: { value: 0.2, plusMinus: 0.05 },
  duration: { value: '10 ms', plusMinus: '2 ms' },
};

describe('heat loss of a document', () => {
  test('lowers pressure and impulse, and its tail-off includes it', () => {
    const [without, with_] = [predict(parsed({})), predict(parsed({ heatLoss }))];
    expect(with_.peakPressure.si).toBeLessThan(without.peakPressure.si);
    expect(with_.totalImpulse.si).toBeLessThan(without.totalImpulse.si);
    expect(without.history[0]).toContain('tail-off isothermal');
    expect(with_.history[0]).toContain('tail-off with heat loss');
    const given = predict(parsed({ heatLoss: { ...heatLoss, wallArea: '600 cm^2' } }));
    expect(given.peakPressure.si).toBeLessThan(without.peakPressure.si);
  });

  test('is calibrated by a firing: the coefficient that it was made with is the alternative to another efficiency', () => {
    const fired = predict(parsed({ heatLoss: { ...heatLoss, heatTransferCoefficient: '2400 W/(m^2*K)' } }));
    const { patchReasons } = compare(parsed({ heatLoss }), { firing: fired });
    const reason = patchReasons.find((text) => text.startsWith('heatLoss.heatTransferCoefficient'));
    const found = Number(/would become (\S+) W/.exec(reason ?? '')?.[1]);
    expect(Math.abs(found / 2400 - 1)).toBeLessThan(0.05);
  });

  test('is in the implied burning area: over the depth it sums to the propellant that burned', () => {
    const strong = parsed({ heatLoss: { ...heatLoss, heatTransferCoefficient: '5000 W/(m^2*K)' } });
    const fired = predict(strong);
    const area = compare(strong, { firing: fired }).impliedArea;
    const [depth, burning] = [area?.depth.si ?? [], area?.burningArea.si ?? []];
    let volume = 0;
    for (let i = 1; i < depth.length; i++)
      volume += 0.5 * (burning[i] + burning[i - 1]) * (depth[i] - depth[i - 1]);
    // The density of the document; without the loss of some 4 % in c* the sum is that much low.
    expect(Math.abs((1750 * volume) / fired.balance.burned.si - 1)).toBeLessThan(0.01);
  });

  test('is at its worst-case limit in the worst case: the lower coefficient', () => {
    const { worstCase } = meop(parsed({ heatLoss }));
    const value = worstCase.values.find(({ input }) => input === 'heatLoss.heatTransferCoefficient')?.value;
    expect(value?.si).toBe(600);
  });
});

describe('blockage of a document', () => {
  const free = meop(parsed({}));
  const blocked = meop(parsed({ 'nozzle.assumedBlockage': assumedBlockage }));

  test('is in the worst case, at its worst-case limits, and nowhere else', () => {
    expect(blocked.nominal.peakPressure.si).toBe(free.nominal.peakPressure.si);
    expect(blocked.percentile.pressure.si).toBe(free.percentile.pressure.si);
    expect(blocked.worstCase.pressure.si).toBeGreaterThan(free.worstCase.pressure.si);
    const { blockage } = blocked.worstCase;
    expect(blockage?.fraction).toBe(0.25);
    expect(blockage?.duration.in('ms')).toBeCloseTo(12, 9);
    expect(blockage?.without.si).toBe(free.worstCase.peakPressure.si);
    expect(blockage?.from.si).toBe(free.worstCase.firing.timeOfPeakPressure.si);
    // (1 − φ)^(−1/(1−n)) with the exponent at its upper limit, 0.34.
    const lasting = (blockage?.lasting.si ?? 0) / (blockage?.without.si ?? 1);
    expect(lasting).toBeCloseTo(0.75 ** (-1 / 0.66), 9);
    expect((blockage?.peak.si ?? 0) / (blockage?.without.si ?? 1)).toBeLessThan(lasting);
  });

  test('is named where it is missing or not included', () => {
    const named = ({ notIncluded }: typeof free) => notIncluded.filter((text) => text.includes('fragment'));
    expect(named(free)).toEqual(['throat blockage by a fragment (no nozzle.assumedBlockage)']);
    expect(named(blocked)).toEqual([]);
    const nominal = meop(
      parsed({
        'nozzle.assumedBlockage': assumedBlockage,
        meop: { basis: 'nominal', samples: 100, seed: 1 },
      }),
    );
    expect(named(nominal)).toEqual([
      'throat blockage by a fragment (nozzle.assumedBlockage is in the worst case only)',
    ]);
  });

  test('a blockage that begins at a stated time begins then', () => {
    const early = meop(parsed({ 'nozzle.assumedBlockage': { ...assumedBlockage, from: '0.3 s' } }));
    const event = early.worstCase.firing.events.find(({ name }) => name === 'throat partly blocked');
    expect(event?.time.si).toBe(0.3);
  });
});

describe('the review', () => {
  const found = review(parsed({ heatLoss, 'nozzle.assumedBlockage': assumedBlockage }));

  test('shows the pulse and the band of ignition, as text and as a report', () => {
    const text = String(found);
    const html = report(found, { format: 'html' });
    for (const shown of [text, html])
      expect(shown).toContain('Assumed throat blockage: 25.0 % of the throat area');
    expect(text).toContain('ignition over a flame spread of 2 ms to 100 ms');
    expect(html).toContain('Ignition by time of flame spread');
    for (const shown of [text, html])
      expect(shown).toContain('of wall lowers the characteristic velocity by');
    expect(found.ignition.spreads.length).toBe(6);
    expect(found.assumptions.some((line) => line.includes('to exclude the loss of heatLoss'))).toBe(true);
  });

  test('warns of a nominal motor that can hang', () => {
    const hanging = parsed({ ignition: { partialFraction: 0.2, fullIgnitionPressure: '1.2 MPaa' } });
    const { cautions } = review(hanging);
    expect(cautions.some((text) => text.startsWith('Nominal motor: hang-fire'))).toBe(true);
  });

  test('warns where a faster flame raises the peak, from 2 % on', () => {
    const [, high] = found.ignition.peakPressure;
    expect(ignitionCautions(found.ignition, high.si / 1.019)).toEqual([]);
    const [caution] = ignitionCautions(found.ignition, high.si / 1.05);
    expect(caution).toContain('5.0 % above that of the specified ignition');
  });
});
