import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  compare,
  demoMotor,
  type MotorDocument,
  motorProblems,
  parseMotor,
  predict,
  type Review,
  review,
} from '../../src/motor';
import { meopOf } from '../../src/motor/meop/meop';
import { reuseReview } from '../../src/motor/reuse/reuse-review';
import { hardwareReview } from '../../src/motor/review/hardware-review';
import { settingsOf } from '../../src/motor/settings';
import { fromSiValue, quantity, unitOf } from '../../src/units';
import { plover } from './plover';

type History = NonNullable<MotorDocument['history']>;
const withHistory = (history: History): MotorDocument => ({ ...demoMotor(), history });

// One MEOP for all: the ledger does not change it.
const demo = parseMotor(demoMotor());
const pressure = meopOf(demo, new Map()).pressure;
const thrust = meopOf(demo, new Map()).thrust;

/** The reuse of the demo motor with a ledger, at its own MEOP or at a multiple of it. */
function reuse(history: History, factor = 1) {
  const motor = parseMotor(withHistory(history));
  const meop = fromSiValue<'gauge pressure'>(pressure.si * factor, 'gauge pressure', unitOf('MPag'));
  const { worst, structure, seals } = hardwareReview(motor, meop, thrust, settingsOf(motor));
  return reuseReview({ motor, worst, meop, margins: structure.margins, joints: structure.joints, seals });
}
const part = (found: ReturnType<typeof reuse>, id: string) => {
  const one = found.parts.find((each) => each.part === id);
  if (one === undefined) throw new Error(`no part ${id}`);
  return one;
};
const fired = (times: number, mpa: number) => ({ kind: 'firing', pressure: `${mpa} MPag`, times }) as const;
const checkOf = (found: Pick<Review, 'checks'>, check: string) =>
  found.checks.find((one) => one.check === check);

describe('life of the parts', () => {
  const whole = review(demoMotor());
  test('every pressure-bearing part has a statement; what governs has the fewest firings', () => {
    expect(whole.reuse.parts.map((one) => one.part)).toEqual([
      'case',
      'head-closure',
      'head-joint',
      'aft-closure',
      'aft-joint',
      'throat-insert',
    ]);
    for (const { features, remainingFirings, statement } of whole.reuse.parts) {
      expect(statement).not.toBe('');
      for (const { remainingFirings: left, isBound } of features)
        if (!isBound) expect(left).toBeGreaterThanOrEqual(remainingFirings ?? 0);
    }
  });

  test('bolt holes: nominal net section times the loaded hole with clearance, written out', () => {
    const [governing] = part(whole.reuse, 'head-joint').features;
    expect(governing.feature).toBe('bolt holes of the case in tension');
    // Worst-case tube: outside 54.02 mm, wall 1.48 mm, eight holes of 5.4 mm; bore 51.06 mm.
    const end = (whole.meop.pressure.si * Math.PI * 0.05106 ** 2) / 4;
    const net = end / (Math.PI * 1.48e-3 * (54.02e-3 - 1.48e-3) - 8 * 5.4e-3 * 1.48e-3);
    expect(governing.nominal.si / net).toBeCloseTo(1, 3);
    const x = 5.4e-3 / ((Math.PI * (54.02e-3 - 1.48e-3)) / 8);
    const kt = 12.882 - 52.714 * x + 89.762 * x ** 2 - 51.667 * x ** 3;
    expect(governing.notchFactor / (1.5 * kt)).toBeCloseTo(1, 3);
    expect(governing.verdict).toBe('local yielding');
  });

  test('a ring and a thread have their grooves and threads, and an estimate says so', () => {
    const found = review(JSON.parse(plover)).reuse;
    const features = found.parts.flatMap((one) => one.features.map(({ feature }) => feature));
    expect(features).toContain('root of the ring groove');
    expect(features).toContain('thread run-out of the case');
    expect(found.label).toBe('first-order estimate');
    expect(found.cautions.join()).toContain('history not specified');
  });

  test('order of the verdicts: a motor whose section yields has no life, and says at which pressure', () => {
    const weak = part(reuse({}, 3), 'head-joint'); // 15.3 MPa, above bearing yield at 10.2 MPa
    expect(weak.remainingFirings).toBe(0);
    expect(weak.statement).toContain('No life is estimated');
    expect(weak.statement).toContain(String(weak.firstYield?.pressure));
    expect(weak.statement).toContain('The section fails before fatigue counts');
  });

  test('higher pressure never increases life', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.3, max: 2.4, noNaN: true }),
        fc.double({ min: 1, max: 1.3, noNaN: true }),
        (factor, more) => {
          const [low, high] = [reuse({}, factor), reuse({}, factor * more)];
          for (const { part: id, remainingFirings = 0 } of high.parts)
            expect(remainingFirings).toBeLessThanOrEqual(
              part(low, id).remainingFirings ?? Number.POSITIVE_INFINITY,
            );
        },
      ),
      { numRuns: 15 },
    );
  });
});

describe('ledger', () => {
  test('more cycles never increase what remains, and a higher pressure uses more', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 150 }),
        fc.integer({ min: 1, max: 50 }),
        fc.double({ min: 1, max: 9, noNaN: true }),
        (times, more, mpa) => {
          const one = part(reuse({ pressurisations: [fired(times, mpa)] }), 'aft-joint');
          const two = part(reuse({ pressurisations: [fired(times, mpa), fired(more, mpa)] }), 'aft-joint');
          const higher = part(reuse({ pressurisations: [fired(times, mpa * 1.1)] }), 'aft-joint');
          expect(one.firings).toBe(times);
          expect(two.firings).toBe(times + more);
          expect(two.remainingFirings).toBeLessThanOrEqual(one.remainingFirings ?? 0);
          expect(higher.remainingFirings).toBeLessThanOrEqual(one.remainingFirings ?? 0);
          expect(two.used).toBeGreaterThan(one.used ?? 0);
        },
      ),
      { numRuns: 15 },
    );
  });

  test('a firing at MEOP leaves one planned firing less; the planned number leaves none and fails', () => {
    const planned = part(reuse({}), 'head-joint').remainingFirings ?? 0;
    const at = pressure.in('MPag');
    const used = (times: number) => reuse({ pressurisations: [fired(times, at)] });
    // The fraction of a firing that the whole number leaves out may use up one more.
    expect(
      Math.abs((part(used(10), 'head-joint').remainingFirings ?? 0) - (planned - 10)),
    ).toBeLessThanOrEqual(1);
    expect(checkOf(used(10), 'cycles used')?.passes).toBe(true);
    const spent = used(planned + 1).checks.filter(({ passes }) => !passes);
    expect(spent.map((one) => [one.part, one.check])).toEqual([
      ['head-joint', 'cycles used'],
      ['aft-joint', 'cycles used'],
    ]);
  });

  test('a part that did not see a pressurisation has used nothing', () => {
    const found = reuse({ pressurisations: [{ ...fired(20, 4), parts: ['case', 'head-joint'] }] });
    expect(part(found, 'head-joint').firings).toBe(20);
    expect(part(found, 'aft-joint').firings).toBe(0);
    expect(part(found, 'aft-joint').used).toBe(0);
  });

  test('proof tests are counted apart, with the strength of the cold metal', () => {
    const found = reuse({ pressurisations: [{ kind: 'proof', pressure: '7.6 MPag' }, fired(2, 4)] });
    const joint = part(found, 'head-joint');
    expect([joint.proofs, joint.firings]).toEqual([1, 2]);
    const asFiring = part(reuse({ pressurisations: [fired(1, 7.6), fired(2, 4)] }), 'head-joint');
    expect(joint.used).toBeLessThan(asFiring.used ?? 0); // twice yield exceeds the local stress range of hot metal by more
  });

  test('a firing past yield leaves no life, whatever the count', () => {
    const found = reuse({ pressurisations: [fired(1, 11)] }); // bearing of the case yields at 10.2 MPa
    expect(part(found, 'head-joint').remainingFirings).toBe(0);
    expect(checkOf(found, 'cycles used')?.passes).toBe(true); // the plain case
    const failed = found.checks.filter(({ passes }) => !passes);
    expect(failed.map((one) => one.part)).toEqual(['head-joint', 'aft-joint']);
    expect(failed[0].message).toContain('exceeded');
  });

  test('heat: half an hour at 200 °C keeps the temper of 6061-T6, at 300 °C it does not', () => {
    // MIL-HDBK-5J figure 3.6.2.2.1(d): 96.3 % of 276 MPa is 266 MPa after half an hour at 200 °C, 51 % at 300 °C.
    const hot = (wallTemperature: '200 degC' | '300 degC' | '400 degC') =>
      reuse({ pressurisations: [{ ...fired(1, 4), wallTemperature, timeHot: '10 min' }] });
    expect(checkOf(hot('200 degC'), 'temper after heating')?.passes).toBe(true);
    expect(hot('200 degC').heat?.yieldAfter?.in('MPa')).toBeCloseTo(0.963 * 276, 0);
    expect(checkOf(hot('300 degC'), 'temper after heating')?.passes).toBe(false);
    expect(hot('300 degC').heat?.statement).toContain('replace the case');
    expect(checkOf(hot('400 degC'), 'temper after heating')?.passes).toBe(false);
  });
});

describe('measurements', () => {
  // Limits written out: 2 % of a 5.3 mm hole is 0.106 mm, 0.1 % of a 51 mm bore 0.051 mm, 95·290/310 a hardness of 88.9.
  test.each([
    ['elongation of the bolt holes', { measure: 'hole length', part: 'head-joint', length: '5.40 mm' }, true],
    [
      'elongation of the bolt holes',
      { measure: 'hole length', part: 'head-joint', length: '5.41 mm' },
      false,
    ],
    ['growth of the bore', { measure: 'bore', diameter: '51.05 mm' }, true],
    ['growth of the bore', { measure: 'bore', diameter: '51.06 mm' }, false],
    ['growth of the bore', { measure: 'bore', diameter: '51.06 mm', asMade: '51.02 mm' }, true],
    ['ovality of the bore', { measure: 'ovality', difference: '0.04 mm' }, true],
    ['ovality of the bore', { measure: 'ovality', difference: '0.06 mm' }, false],
    ['hardness', { measure: 'hardness', part: 'case', hardness: 90 }, true],
    ['hardness', { measure: 'hardness', part: 'aft-closure', hardness: 88 }, false],
    ['cracks', { measure: 'crack', part: 'throat-insert', found: false }, true],
    ['cracks', { measure: 'crack', part: 'throat-insert', found: true }, false],
    [
      'lengthening of the screws',
      { measure: 'screw length', part: 'aft-joint', length: '16.02 mm', asMade: '16 mm', grip: '12 mm' },
      true,
    ],
    [
      'lengthening of the screws',
      { measure: 'screw length', part: 'aft-joint', length: '16.03 mm', asMade: '16 mm', grip: '12 mm' },
      false,
    ],
  ] as const)('%s: %o passes: %s', (check, measurement, passes) => {
    expect(checkOf(reuse({ measurements: [measurement] }), check)?.passes).toBe(passes);
  });

  test('groove burr and thread gauge of a motor that has them', () => {
    const motor = (history: History) => review({ ...JSON.parse(plover), history });
    const burr = (height: '0.04 mm' | '0.06 mm') =>
      motor({ measurements: [{ measure: 'groove burr', part: 'head-joint', height }] });
    // 5 % of a groove of 1 mm is 0.05 mm.
    expect(checkOf(burr('0.04 mm'), 'lip of the ring groove')?.passes).toBe(true);
    expect(checkOf(burr('0.06 mm'), 'lip of the ring groove')?.passes).toBe(false);
    const gauge = motor({ measurements: [{ measure: 'thread gauge', part: 'aft-joint', accepted: false }] });
    expect(checkOf(gauge, 'thread gauge')?.passes).toBe(false);
  });

  test('a measurement beyond its limit fails the verdict of the review, with its date and both numbers', () => {
    const worn = review(
      withHistory({
        measurements: [{ measure: 'hole length', part: 'head-joint', length: '5.45 mm', date: '2026-05-02' }],
      }),
    );
    expect(worn.verdict).toBe('does not hold');
    const failed = worn.checks.find(({ passes }) => !passes);
    expect(failed?.message).toMatch(/^2026-05-02: 0.15 mm over 5.3 mm; not less than the limit of 0.106 mm$/);
    expect(String(worn)).toContain('elongation of the bolt holes');
  });

  test('a measurement of a part that the motor does not have is rejected', () => {
    const paths = motorProblems(
      withHistory({
        measurements: [
          { measure: 'groove burr', part: 'head-joint', height: '0.01 mm' },
          { measure: 'crack', part: 'aft-closure', found: false },
          { measure: 'thread gauge', part: 'aft-joint', accepted: true },
        ],
      }),
    ).map(({ path }) => path);
    expect(paths).toEqual(['history.measurements[0].part', 'history.measurements[2].part']);
  });
});

describe('a metal of the user', () => {
  const strength = (value: string) => ({ value, basis: 'S', source: 'mill certificate' }) as const;
  const withCase = (more: object): Review =>
    review({
      ...demoMotor(),
      case: {
        ...demoMotor().case,
        wallTemperature: undefined,
        material: {
          name: 'own tube',
          form: 'tube',
          class: 'metal',
          yieldStrength: strength('241 MPa'),
          ultimateStrength: strength('290 MPa'),
          elasticModulus: strength('68.9 GPa'),
          shearUltimate: strength('186 MPa'),
          bearingYield: { at1_5: strength('338 MPa'), at2_0: strength('386 MPa') },
          bearingUltimate: { at1_5: strength('462 MPa'), at2_0: strength('607 MPa') },
          poissonRatio: { value: 0.33, basis: 'typical', source: 'data sheet' },
          ...more,
        },
      },
    } as MotorDocument);
  const elongation = { value: 0.1, basis: 'S', source: 'mill certificate' };
  test('without an elongation has no estimate, and says so', () =>
    expect(part(withCase({}).reuse, 'head-joint').statement).toContain('own tube has no elongation'));
  test('with constants of tests is estimated by them, with their source', () => {
    // Numbers for the test, not of a metal: those of the case strain-life-cycles.
    const cyclic = {
      strengthCoefficient: '450 MPa',
      hardeningExponent: 0.08,
      fatigueStrength: '650 MPa',
      fatigueExponent: -0.1,
      fatigueDuctility: 0.3,
      ductilityExponent: -0.65,
      source: 'numbers for a test',
    };
    const plain = part(withCase({ elongation }).reuse, 'head-joint');
    const tested = part(withCase({ elongation, cyclic }).reuse, 'head-joint');
    expect(plain.remainingFirings).toBeGreaterThan(0);
    expect(tested.remainingFirings).not.toBe(plain.remainingFirings);
    expect(tested.features[0].basis).toContain('numbers for a test');
  });
});

describe('comparison', () => {
  test('counts the firing just compared, and its entry for the ledger is valid in the document', () => {
    const before = parseMotor(withHistory({ pressurisations: [fired(2, 4)] }));
    const found = compare(before, { firing: predict(before) });
    expect(found.reuse.parts.find((one) => one.part === 'head-joint')?.firings).toBe(3);
    expect(found.reuse.inspections).toEqual(review(before).reuse.inspections);
    const { ledgerEntry: entry } = found.reuse;
    if (entry === undefined || found.peakPressureUpperBound === undefined) throw new Error('no entry');
    const after = { ...before.document, history: { pressurisations: [fired(2, 4), entry] } };
    expect(motorProblems(after)).toEqual([]);
    // Written to four digits.
    expect(quantity('gauge pressure', entry.pressure).si / found.peakPressureUpperBound.si).toBeCloseTo(1, 3);
    expect(String(found)).toContain('entry for history.pressurisations');
    expect(String(found)).toContain('inspect: ');
    expect(
      found.reuse.findings.some(({ finding }) => finding.includes('planned firings at MEOP remain')),
    ).toBe(true);
  });
});

describe('inspections', () => {
  test('are in the sizes of the motor, each with its source', () => {
    const { inspections } = review(demoMotor()).reuse;
    const limit = (inspection: string) =>
      String(inspections.find((one) => one.inspection === inspection)?.limit);
    expect(limit('elongation of the bolt holes')).toBe('0.106 mm');
    expect(limit('permanent growth of the bore')).toBe('0.051 mm');
    for (const { source, instruction } of inspections) {
      expect(source).toMatch(/no published source|from memory|MIL-HDBK/);
      expect(instruction).toMatch(/[Rr]eject|check/);
    }
    expect(String(review(demoMotor()))).toContain(
      'inspect: head and aft joint: elongation of the bolt holes',
    );
  });
  test('the ovality limit is what the gap of a seal allows, where that is less', () => {
    const wide = structuredClone(demoMotor());
    const seal = { ...wide.closures?.head?.seals[0], closureDiameter: '50.84 mm', hardness: 70 };
    const tight = review({
      ...wide,
      closures: { ...wide.closures, head: { ...wide.closures?.head, seals: [seal] } },
    } as MotorDocument);
    const oval = tight.reuse.inspections.find(({ inspection }) => inspection === 'ovality of the bore');
    const gland = tight.seals[0].gland;
    const left = (gland.clearanceLimit?.si ?? 0) - gland.clearanceUnderPressure.max.si;
    expect(left).toBeLessThan(0.051e-3);
    expect(oval?.limit).toMatchObject({ si: Math.max(0, left) });
  });
});
