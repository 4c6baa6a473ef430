import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { demoMotor, type MotorDocument, parseMotor, report, review } from '../../src/motor';
import {
  closureForce,
  factorSet,
  lameHoopStress,
  marginOfSafety,
  reviewJoint,
  reviewShell,
  snatchLoad,
} from '../../src/structures';

const sound = review(demoMotor());
const cracked = review(parseMotor(readFileSync('examples/motors/tern-54-cracked.json', 'utf8')));
const named = (mode: string, part = 'case') =>
  sound.margins.find((one) => one.mode === mode && one.part === part);

describe('review', () => {
  test('the sound demo motor holds; the cracked one does not, and its transducer saturates', () => {
    expect([sound.verdict, sound.unjudged]).toEqual(['holds', []]);
    expect(cracked.verdict).toBe('does not hold');
    expect(sound.instruments.every(({ passes }) => passes)).toBe(true);
    expect(cracked.meop.pressure.si / sound.meop.pressure.si).toBeGreaterThan(1.5);
    const transducer = cracked.instruments.find(({ measures }) => measures === 'pressure');
    expect(transducer?.headroom).toBeLessThan(1);
    expect(transducer?.checks[0].message).toContain('saturates');
  });

  test('margins are sorted, the governing one is the first, and every one is the formula of its own numbers', () => {
    const values = sound.margins.map(({ marginOfSafety: left }) => left);
    expect(values).toEqual([...values].sort((a, b) => a - b));
    expect(sound.governing).toBe(sound.margins[0]);
    for (const { applied, allowable, factor, marginOfSafety: left } of sound.margins)
      expect(left).toBe(marginOfSafety.si({ applied: applied.si, allowable: allowable.si, factor }));
  });

  test('the hoop stress is that of lameHoopStress on the thinnest wall and the widest tube', () => {
    // 54.02 mm outside, 1.48 mm of wall: the document's tolerances.
    const expected = lameHoopStress({
      pressure: sound.meop.pressure,
      insideRadius: '25.53 mm',
      outsideRadius: '27.01 mm',
      radius: '25.53 mm',
    });
    const margin = named('yield at the bore, hoop stress');
    expect((margin?.applied.si ?? 0) / expected.si).toBeCloseTo(1, 12);
    expect(margin?.factor).toBe(factorSet('ground test').yieldFactor);
    const shell = reviewShell({
      tube: {
        material: '6061-T6 drawn tube',
        outsideDiameter: '54.02 mm',
        wall: '1.48 mm',
        wallTemperature: '90 degC',
      },
      meop: sound.meop.pressure,
      factors: { set: 'ground test' },
    });
    const same = shell.margins.find(({ mode }) => mode === margin?.mode);
    expect(margin?.marginOfSafety).toBeCloseTo(same?.marginOfSafety ?? Number.NaN, 12);
  });

  test('the joint is that of reviewJoint, and the end force that of closureForce on the greatest bore', () => {
    const joint = reviewJoint({
      pressure: sound.meop.pressure,
      tube: {
        outsideDiameter: '54.02 mm',
        wall: '1.48 mm',
        material: '6061-T6 drawn tube',
        wallTemperature: '90 degC',
      },
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
      // The layout at its worst: groove at 20.4 mm, inner face at 27.9 mm, holes at 12.3 mm with a radius of 2.7 mm, closure of 50.88 mm, cavity of 22 mm.
      sealToHoles: '5.4 mm',
      closureEdgeDistance: '15.6 mm',
      closureThickness: '14.44 mm',
      closureTemperature: '90 degC', // not given: the closure is taken as hot as the case
    });
    for (const { mode, marginOfSafety: left } of joint.modes)
      expect(named(mode, 'head-joint')?.marginOfSafety, mode).toBeCloseTo(left, 9);
    const force = closureForce({ pressure: sound.meop.pressure, sealDiameter: '51.06 mm' });
    expect((sound.joints.head?.endForce.si ?? 0) / force.si).toBeCloseTo(1, 12);
  });

  test('explain prints the numbers of the margin', () => {
    for (const margin of sound.margins) {
      const text = String(margin.explain());
      expect(text).toContain(margin.mode);
      const numbers = (text.replaceAll('−', '-').match(/-?\d+(?:\.\d+)?(?:e[-+]?\d+)?/g) ?? []).map(Number);
      // The margin as it is printed: to four figures.
      const printed = numbers.some(
        (x) => Math.abs(x - margin.marginOfSafety) <= 5e-4 * Math.abs(margin.marginOfSafety),
      );
      expect(printed, `${margin.mode} ${margin.marginOfSafety}\n${text}`).toBe(true);
    }
  });

  test('the failure order is by pressure, and at that pressure the mode has just nothing left', () => {
    const pressures = sound.failureOrder.map(({ failurePressure }) => failurePressure.si);
    expect(pressures).toEqual([...pressures].sort((a, b) => a - b));
    const [first] = sound.failureOrder;
    const mode = sound.margins.find((one) => one.mode === first.mode && one.part === first.part);
    // Stress goes with pressure: allowable over applied, times MEOP.
    expect(first.failurePressure.si).toBeCloseTo(
      (sound.meop.pressure.si * (mode?.allowable.si ?? 0)) / (mode?.applied.si ?? 1),
      0,
    );
    expect(first.meopRatio).toBeCloseTo(first.failurePressure.si / sound.meop.pressure.si, 12);
    expect(first.mode).toContain('bearing');
  });

  test('the restraint sees the worst thrust as snatchLoad has it', () => {
    const { restraint } = sound;
    if (restraint === undefined) throw new Error('the demo motor has a restraint');
    const load = snatchLoad({
      load: sound.meop.worstCase.peakThrust,
      stiffness: restraint.stiffness,
      slack: '5 mm',
    });
    expect(restraint.snatchLoad.si / load.si).toBeCloseTo(1, 9);
  });

  test('the rise at ignition is met with the samples that the rate gives', () => {
    const [chamber] = sound.instruments;
    const { rise } = chamber;
    expect(rise?.samples).toBeCloseTo((rise?.time.si ?? 0) * 1000, 9);
    const slow: MotorDocument = {
      ...demoMotor(),
      instruments: [{ measures: 'thrust', name: 'slow', range: '2 kN', sampleRate: '10 Hz' }],
    };
    const [cell] = review(slow).instruments;
    expect(cell.passes).toBe(false);
    expect(cell.checks.find(({ check }) => check === 'samples in rise')?.passes).toBe(false);
  });

  test('what the document does not say is said: no part is judged in silence', () => {
    const { closures: _, stand: __, instruments: ___, factors: ____, ...rest } = demoMotor();
    const bare = review(rest);
    const unjudged = bare.unjudged.map(({ reason }) => reason);
    const said = [...bare.cautions, ...bare.assumptions, ...unjudged].join('\n');
    for (const what of [
      'closures.head not specified',
      'closures.aft not specified',
      'Stand not specified',
      'Instruments not specified',
      'factors.set not specified',
    ])
      expect(said).toContain(what);
    expect(bare.margins.every(({ part }) => part === 'case' || part === 'throat-insert')).toBe(true);
    expect(bare.verdict).toBe('not judged');
    expect(bare.unjudged.map(({ part }) => part)).toEqual([
      'head-closure',
      'head-joint',
      'aft-closure',
      'aft-joint',
      'throat-insert',
    ]);
    const { nozzle } = demoMotor();
    const { insert: _____, ...plain } = nozzle;
    const without = review({ ...demoMotor(), nozzle: plain });
    expect([without.verdict, without.unjudged.map(({ part }) => part)]).toEqual([
      'not judged',
      ['throat-insert'],
    ]);
    const { headline } = JSON.parse(report(without, { format: 'json' }));
    expect(headline).toContain(
      'Not judged: throat insert (nozzle.insert not specified; its strength and its retention are not evaluated).',
    );
  });

  test('margins fall where the pressure rises and where the wall gets hotter', () => {
    const hot = review({ ...demoMotor(), case: { ...demoMotor().case, wallTemperature: '150 degC' } });
    for (const margin of sound.margins) {
      const other = cracked.margins.find((one) => one.mode === margin.mode && one.part === margin.part);
      if (other !== undefined && margin.failurePressure !== undefined)
        expect(other.marginOfSafety, margin.mode).toBeLessThan(margin.marginOfSafety);
    }
    const hoop = (of: typeof sound) =>
      of.margins.find(({ mode }) => mode === 'yield at the bore, hoop stress')?.marginOfSafety ?? 0;
    expect(hoop(hot)).toBeLessThan(hoop(sound));
  });

  test('prints with its verdict, every mode and every caution', () => {
    const text = String(cracked);
    expect(text).toContain(cracked.verdictSentence);
    for (const { mode } of cracked.margins) expect(text).toContain(mode);
    for (const caution of cracked.cautions) expect(text).toContain(caution);
  });
});
