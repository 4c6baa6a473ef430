import { describe, expect, test } from 'vitest';
import { demoMotor, type MotorDocument, report, review } from '../../src/motor';
import { reviewJoint } from '../../src/structures';

const sound = review(demoMotor());
const withFactors = (proofFactor: number, more: Partial<MotorDocument> = {}) =>
  review({ ...demoMotor(), factors: { yieldFactor: 1.5, ultimateFactor: 2, proofFactor }, ...more });

// The joint of the demo motor at its worst-case limits and at room temperature, at a pressure.
const coldJoint = (pressure: NonNullable<typeof sound.proof>['pressure']) =>
  reviewJoint({
    pressure,
    tube: { outsideDiameter: '54.02 mm', wall: '1.48 mm', material: '6061-T6 drawn tube' },
    closureMaterial: '6061-T6 bar',
    sealDiameter: '51.06 mm',
    gap: '0.05 mm',
    thread: 'M5',
    boltClass: 'A2-70',
    count: 8,
    shearPlane: 'thread',
    holeDiameter: '5.4 mm',
    edgeDistance: '11.7 mm',
    engagement: '9 mm',
    // What follows from the layout at its worst, as in the test of the joint at MEOP.
    sealToHoles: '5.4 mm',
    closureEdgeDistance: '15.6 mm',
    closureThickness: '14.44 mm',
    factors: { yieldFactor: 1, ultimateFactor: 1 },
  });

describe('the proof test', () => {
  test('is at the proof factor times MEOP, with every part that bears pressure', () => {
    expect(sound.proof.pressure.si / sound.meop.pressure.si).toBeCloseTo(1.5, 12);
    expect(new Set(sound.proof.margins.map(({ part }) => part))).toEqual(
      new Set(['case', 'head-closure', 'head-joint', 'aft-closure', 'aft-joint', 'throat-insert']),
    );
    // Nothing that bears pressure and has a yield limit is left out.
    const proved = new Set(sound.proof.margins.map(({ part, id }) => `${part} ${id}`));
    for (const { part, id, limit, failurePressure } of sound.margins)
      if (limit === 'yield' && failurePressure !== undefined)
        expect(proved.has(`${part} ${id}`), `${part} ${id}`).toBe(true);
    expect(sound.margins.some(({ id }) => id === 'proof-yield')).toBe(false); // once, here
  });

  test('compares yield limits with a factor of 1 and cold minimum strengths', () => {
    const cold = coldJoint(sound.proof.pressure);
    for (const one of sound.proof.margins) {
      expect(one.factor).toBe(1);
      expect(one.temperature, one.mode).toBeUndefined();
    }
    const own = sound.proof.margins.filter(({ part, limit }) => part === 'head-joint' && limit === 'yield');
    expect(own.length).toBeGreaterThan(4);
    for (const one of own) {
      const same = cold.modes.find(({ id }) => id === one.id);
      expect(one.marginOfSafety, one.mode).toBeCloseTo(same?.marginOfSafety ?? Number.NaN, 9);
    }
    const hot = sound.margins.find(({ id }) => id === 'case-bearing-yield');
    const test = sound.proof.margins.find(({ id }) => id === 'case-bearing-yield');
    expect(test?.allowable.si).toBeGreaterThan((hot?.allowable.si ?? 0) * 1.05);
  });

  test('a mode without a yield limit is compared with its strength, one with a yield limit only with that', () => {
    const ids = sound.proof.margins.map(({ id }) => id);
    expect(ids).toContain('insert-hoop'); // graphite
    expect(ids).toContain('case-tear-out');
    for (const id of ['case-bearing', 'net-section', 'bolt-shear', 'plate-bending', 'burst-barlow'])
      expect(ids).not.toContain(id);
  });

  test('names the weakest part, and every part above 90 % of yield', () => {
    expect(sound.proof.weakest).toBe(sound.proof.margins[0]);
    expect(sound.proof.weakest?.id).toBe('case-bearing-yield');
    expect(sound.proof.nearYield).toEqual([]);
    const near = withFactors(2);
    expect(near.verdict).toBe('holds');
    expect(new Set(near.proof.nearYield.map(({ id }) => id))).toEqual(new Set(['case-bearing-yield']));
    for (const { applied, allowable } of near.proof.nearYield) {
      expect(applied.si / allowable.si).toBeGreaterThan(0.9);
      expect(applied.si / allowable.si).toBeLessThan(1);
    }
  });

  test('a joint that yields below the proof pressure does not hold, whatever its margins at MEOP', () => {
    const high = withFactors(2.2);
    expect(high.margins.every(({ marginOfSafety }) => marginOfSafety >= 0)).toBe(true);
    const yields = high.proof.weakest?.failurePressure?.si ?? Number.NaN;
    expect(yields).toBeLessThan(high.proof.pressure.si);
    expect(high.verdictSentence).toContain(
      'Does not hold: head and aft joint, bearing yield, case wall at proof pressure, MS −',
    );
    expect(report(high)).toContain('Above 90 % of yield: head joint, bearing yield, case');
  });

  test('a hot proof test is with the strengths at its temperature', () => {
    const hot = review({ ...demoMotor(), proofTest: { temperature: '90 degC' } });
    // The case is evaluated at 90 °C in the firing as well: only the pressure differs.
    for (const id of ['case-bearing-yield', 'bore-hoop-yield', 'plate-bending-yield'] as const) {
      const fired = sound.margins.find((one) => one.id === id);
      const proved = hot.proof.margins.find((one) => one.id === id);
      expect(proved?.failurePressure?.si, id).toBeCloseTo(fired?.failurePressure?.si ?? Number.NaN, 3);
    }
    expect(hot.proof.atTemperature).toEqual([]);
    expect(hot.proof.cautions).toEqual([]);
  });

  test('a pressure of the document below the required one does not hold', () => {
    const low = review({ ...demoMotor(), proofTest: { pressure: '6 MPag' } });
    expect(low.proof.pressure.in('MPa')).toBe(6);
    expect(low.verdictSentence).toMatch(/^Does not hold: case, proof pressure: 6 MPag \(required ≥ /);
    const enough = review({ ...demoMotor(), proofTest: { pressure: '8.2 MPag' } });
    expect(enough.verdict).toBe('holds');
  });
});

describe('the strength in the firing that a cold proof test shows', () => {
  test('is the proof factor divided by the stress ratio, for the weakest mode of each part', () => {
    const { atTemperature, cautions } = sound.proof;
    expect(atTemperature.length).toBeGreaterThan(3);
    for (const { id, part, stressRatio, shownFactor, requiredPressure } of atTemperature) {
      const of = (margins: typeof sound.margins) =>
        margins.find((one) => one.id === id && one.part === part)?.allowable.si ?? Number.NaN;
      expect(stressRatio).toBeCloseTo(of(sound.proof.margins) / of(sound.margins), 12);
      expect(shownFactor).toBeCloseTo(1.5 / stressRatio, 12);
      expect(requiredPressure.si / sound.meop.pressure.si).toBeCloseTo(1.5 * stressRatio, 12);
      for (const other of sound.proof.margins.filter((one) => one.part === part && one.limit === 'yield'))
        expect(
          other.allowable.si /
            (sound.margins.find((one) => one.id === other.id && one.part === part)?.allowable.si ?? 0),
        ).toBeLessThanOrEqual(stressRatio * (1 + 1e-12));
    }
    expect(cautions.join()).toContain('does not prove the strength in the firing');
    expect(sound.cautions.join('\n')).toContain(cautions[0]);
  });

  test('cannot be shown where the required pressure yields a cold part', () => {
    const { proof } = withFactors(2);
    const [worst] = proof.atTemperature;
    expect(worst.yieldsBefore?.id).toBe('case-bearing-yield');
    expect(worst.yieldsBefore?.failurePressure?.si).toBeLessThan(worst.requiredPressure.si);
    expect(proof.cautions.join()).toContain('cannot be proved cold');
    expect(sound.proof.atTemperature.every(({ yieldsBefore }) => yieldsBefore === undefined)).toBe(true);
  });

  test('a motor without heat has none', () => {
    const { wallTemperature: _, ...tube } = demoMotor().case;
    expect(review({ ...demoMotor(), case: tube }).proof.atTemperature).toEqual([]);
  });

  test('is in the report', () => {
    const json = JSON.parse(report(sound, { format: 'json' }));
    const section = json.sections.find(({ id }: { id: string }) => id === 'proof');
    expect(section.lead[0]).toContain('Proof test at 8.0');
    expect(section.tables.length).toBe(2);
    for (const format of ['text', 'markdown', 'html', 'csv'] as const)
      expect(report(sound, { format }).replace(/\s+/g, ' ')).toContain('stress ratio');
    expect(String(sound)).toContain('Proof test at 8.0');
  });
});
