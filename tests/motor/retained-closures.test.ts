// Expected margins are those of src/structures, called with the worst sizes worked out by hand from the tolerances.
import { describe, expect, test } from 'vitest';
import {
  compare,
  customThread,
  faceSeal,
  flawEnvelope,
  type Margin,
  marginOfSafety,
  parseMotor,
  predict,
  type Quantity,
  q,
  report,
  review,
  reviewRetainingRing,
  reviewThreadedClosure,
} from '../../src/index';
import { structureMargins } from '../../src/motor/review/hardware-review';
import { settingsOf } from '../../src/motor/settings';
import { atWorstCaseTolerances } from '../../src/motor/worst-case-tolerances';
import { type Json, plover, withChange } from './plover';

const motor = parseMotor(plover);
const judged = review(motor);
const { pressure } = judged.meop;

const at = (json: unknown) => review(parseMotor(json));
const least = (reviews: readonly { readonly margins: readonly Margin[] }[], mode: string): number =>
  Math.min(
    ...reviews.flatMap(({ margins }) =>
      margins.filter((one) => one.mode === mode).map(({ marginOfSafety: left }) => left),
    ),
  );
const own = (part: string) => judged.margins.filter((one) => one.part === part);
// 55.02 mm outside and 8.48 mm of wall: the widest bore is 38.06 mm.
describe('a retaining ring', () => {
  const ring = (grooveDepth: '1.05 mm' | '0.95 mm') =>
    reviewRetainingRing({
      pressure,
      tube: {
        outsideDiameter: '55.02 mm',
        wall: '8.48 mm',
        material: '6061-T6 drawn tube',
        wallTemperature: '80 degC',
      },
      ring: {
        grooveDepth,
        edgeMargin: '6.1 mm',
        thickness: '1.44 mm',
        shearStrength: '700 MPa',
        chamfer: '0.2 mm',
        // 38.06 mm of bore, 37.88 mm of closure.
        play: '0.09 mm',
        dishingCapacity: '25 kN',
      },
      factors: { yieldFactor: 1.5, ultimateFactor: 2 },
    });
  const both = [ring('1.05 mm'), ring('0.95 mm')];

  test('is judged as reviewRetainingRing does it, each mode at the depth that leaves it less', () => {
    const found = own('head-joint');
    expect(found.map(({ mode }) => mode).sort()).toEqual(both[0].margins.map(({ mode }) => mode).sort());
    for (const { mode, marginOfSafety: left } of found) expect(left, mode).toBeCloseTo(least(both, mode), 9);
    // A shallow groove bears less, a deep one leaves less wall.
    const of = (i: number, mode: string) => least([both[i]], mode);
    expect(of(1, 'bearing of the groove, yield')).toBeLessThan(of(0, 'bearing of the groove, yield'));
    expect(of(0, 'hoop at the groove')).toBeLessThan(of(1, 'hoop at the groove'));
  });

  test('stands in retainingRings, not in joints', () => {
    const { head } = judged.retainingRings;
    expect(judged.joints).toEqual({});
    expect(head?.endForce.si).toBeCloseTo(both[0].endForce.si, 6);
    expect(head?.governing.mode).toBe(own('head-joint')[0].mode);
    for (const { mode } of both[0].margins) expect(String(head)).toContain(mode);
    expect(judged.cautions.join('\n')).toContain(
      'Ask the manufacturer for its value at elevated temperature',
    );
  });
});

// The thread is cut to its own diameter: the narrowest tube, 54.98 mm, leaves least outside it.
describe('a thread of its own', () => {
  const closure = (p: Quantity<'gauge pressure'>, closureTemperature?: '80 degC') =>
    reviewThreadedClosure({
      pressure: p,
      thread: customThread({ majorDiameter: '50 mm', pitch: '1.5 mm' }),
      engagement: '11.5 mm',
      tube: { outsideDiameter: '54.98 mm', material: '6061-T6 drawn tube', wallTemperature: '80 degC' },
      closureMaterial: '6061-T6 bar',
      sealDiameter: '50 mm',
      reliefDiameter: '50.5 mm',
      ...(closureTemperature && { closureTemperature }),
      factors: { yieldFactor: 1.5, ultimateFactor: 2 },
    });
  const both = [closure(pressure, '80 degC'), closure(pressure)];

  test('is judged as reviewThreadedClosure does it, with the closure hot or cold, whichever leaves less', () => {
    const found = own('aft-joint');
    expect(found.map(({ mode }) => mode).sort()).toEqual(both[0].margins.map(({ mode }) => mode).sort());
    for (const { mode, marginOfSafety: left } of found) expect(left, mode).toBeCloseTo(least(both, mode), 9);
    const { aft } = judged.threads;
    expect(aft?.growth.si).toBeCloseTo(both[1].growth.si, 12);
    expect(both[1].growth.si).toBeGreaterThan(both[0].growth.si);
    expect(aft?.endForce.si).toBeCloseTo(both[0].endForce.si, 6);
  });

  test('lets go where its stress is the strength, which comes sooner than in proportion', () => {
    for (const one of own('aft-joint').filter(({ mode }) => mode.startsWith('shear'))) {
      const reached = one.failurePressure ?? pressure;
      const then = [closure(reached, '80 degC'), closure(reached)].map((other) =>
        other.margins.find(({ mode }) => mode === one.mode),
      );
      const used = Math.max(...then.map((other) => (other?.applied.si ?? 0) / (other?.allowable.si ?? 1)));
      expect(used, one.mode).toBeCloseTo(1, 6);
      expect(reached.si).toBeLessThan((pressure.si * one.allowable.si) / one.applied.si);
    }
  });

  test('that parts as the case opens is a margin that does not hold, never a crash', () => {
    // 0.05 mm of wall are left under the thread's groove.
    const thin = parseMotor(withChange('closures.aft.thread.reliefDiameter', '54.9 mm'));
    const margins = structureMargins(
      atWorstCaseTolerances(thin),
      q('40 MPag').as('gauge pressure'),
      q('500 N').as('force'),
      settingsOf(thin),
    ).margins.filter(({ part }) => part === 'aft-joint');
    const parted = margins.find(({ mode }) => mode === 'threads that no longer meet');
    expect(parted?.marginOfSafety).toBeLessThan(0);
    expect(parted?.cautions.join()).toContain('se a coarser thread or a thicker wall');
    for (const one of margins) {
      expect(Number.isFinite(one.marginOfSafety), one.mode).toBe(true);
      if (one.mode.startsWith('shear'))
        expect(one.failurePressure?.si).toBeLessThanOrEqual((parted?.failurePressure?.si ?? 0) * 1.00001);
    }
  });

  test('in inches has the limits of a unified thread', () => {
    const json = withChange('closures.aft.thread', {
      majorDiameter: '2 in',
      pitch: '1/16 in',
      engagement: '12 mm',
    });
    const expected = reviewThreadedClosure({
      pressure,
      thread: customThread({ majorDiameter: '2 in', pitch: '1/16 in' }),
      engagement: '12 mm',
      tube: { outsideDiameter: '54.98 mm', material: '6061-T6 drawn tube', wallTemperature: '80 degC' },
      closureMaterial: '6061-T6 bar',
    });
    const mode = "shear of the case's thread";
    const found = at(json).margins.find((one) => one.mode === mode);
    expect(found?.marginOfSafety).toBeCloseTo(least([expected], mode), 9);
  });

  test('in a bore wider than its minor diameter is judged as low as that leaves it, and that is said', () => {
    const threaded = (majorDiameter: string) => {
      const json = withChange('closures.aft.thread.majorDiameter', majorDiameter);
      delete json.closures.aft.layout; // its closure is too wide for such a thread
      return at(json);
    };
    const wide = threaded('39.2 mm');
    const full = threaded('40.2 mm');
    const thread = customThread({ majorDiameter: '39.2 mm', pitch: '1.5 mm' });
    const expected = reviewThreadedClosure({
      pressure,
      thread: { ...thread, limits: { ...thread.limits, internalMinorMax: q('38.06 mm').as('length') } },
      engagement: '11.5 mm',
      tube: { outsideDiameter: '54.98 mm', material: '6061-T6 drawn tube', wallTemperature: '80 degC' },
      closureMaterial: '6061-T6 bar',
      sealDiameter: '43.65 mm', // the seal in the face reaches further
      reliefDiameter: '50.5 mm',
      closureTemperature: '80 degC',
    });
    const mode = "shear of the closure's thread";
    expect(least([wide.threads.aft ?? { margins: [] }], mode)).toBeCloseTo(least([expected], mode), 9);
    expect(wide.cautions.join()).toContain('exceeds the minor diameter');
    expect(full.cautions.join()).not.toContain('exceeds the minor diameter');
  });
});

describe('a seal in a face', () => {
  test('is judged as faceSeal does it, over its tolerances', () => {
    const expected = faceSeal({
      ring: '030',
      grooveOutsideDiameter: { nominal: '43.6 mm', plusMinus: '0.05 mm' },
      grooveInsideDiameter: { nominal: '38.6 mm', plusMinus: '0.05 mm' },
      grooveDepth: { nominal: '1.3 mm', plusMinus: '0.03 mm' },
      pressure,
      faceGap: '0.02 mm',
      hardness: 80,
      coldest: '0 degC',
      hottest: '80 degC',
    });
    const [found] = judged.faceSeals;
    expect(found).toMatchObject({ closure: 'aft', place: 1 });
    expect(String(found.face)).toBe(String(expected));
    expect(judged.seals.map(({ closure, place }) => [closure, place])).toEqual([['head', 1]]);
    expect(judged.faceSeals.every(({ face }) => face.passes)).toBe(true);
  });

  test('that fails is told everywhere', () => {
    const shallow = at(withChange('closures.aft.seals.0.grooveDepth', '1.1 mm'));
    expect(shallow.verdict).toBe('does not hold');
    expect(shallow.verdictSentence).toMatch(/^Does not hold: aft closure, seal 1, squeeze, maximum: /);
    expect(shallow.cautions.join('\n')).toContain('aft seal 1: squeeze, maximum');
    const page = report(shallow);
    expect(page.replace(/\s+/g, ' ')).toContain('aft closure, seal 1 does not hold ✗ squeeze, maximum');
    expect(page).toContain('aft closure, seal 1');
  });

  test('gives the pressure the area within its groove', () => {
    const bolted = withChange('closures.head', {
      ...(JSON.parse(plover).closures.head as Json),
      retainingRing: undefined,
      layout: undefined,
      joint: {
        thread: 'M5',
        boltClass: 'A2-70',
        count: 8,
        shearPlane: 'thread',
        holeDiameter: '5.3 mm',
        edgeDistance: '12 mm',
        engagement: '9 mm',
      },
      seals: [{ ...(JSON.parse(plover).closures.aft.seals[0] as Json), faceGap: '0.3 mm' }],
    });
    const force = at(JSON.parse(JSON.stringify(bolted))).joints.head?.endForce.si ?? 0;
    // 43.6 mm and its tolerance.
    expect(force / (pressure.si * (Math.PI / 4) * 0.04365 ** 2)).toBeCloseTo(1, 9);
  });
});

describe('the review of both', () => {
  test('explain prints the number of every margin, and the stress it is of', () => {
    for (const one of judged.margins) {
      const { applied, allowable, factor } = one;
      expect(one.marginOfSafety).toBe(
        marginOfSafety.si({ applied: applied.si, allowable: allowable.si, factor }),
      );
      const said = String(one.explain());
      const [, printed = ''] =
        [...said.matchAll(/^ *MS = (?:.*= )?([-−]?[\d.]+)(?: {2}margin of safety)?$/gm)].at(-1) ?? [];
      expect(Number(printed.replace('−', '-')) / one.marginOfSafety, said).toBeCloseTo(1, 3);
      // The working comes to the stress that the margin is of, to four figures.
      const worked = said.slice(0, said.indexOf('Margin of safety'));
      const numbers = (worked.match(/\d+(?:\.\d+)?/g) ?? []).map(Number);
      const isWorked = numbers.some((x) => Math.abs(x / applied.in(applied.unit) - 1) < 5e-4);
      if (one.part.endsWith('-joint')) expect(isWorked, worked).toBe(true);
    }
  });

  test('the failure order, the flaw envelope and what a firing used know every mode', () => {
    const modes = judged.margins.filter(({ part }) => part.endsWith('-joint')).map(({ mode }) => mode);
    expect(judged.failureOrder.map(({ mode }) => mode)).toEqual(expect.arrayContaining(modes));
    expect(flawEnvelope(motor).rows.map(({ mode }) => mode)).toEqual(expect.arrayContaining(modes));
    const found = compare(motor, { firing: predict(motor) });
    expect(found.utilisations.map(({ mode }) => mode)).toEqual(expect.arrayContaining(modes));
    expect(found.reuse.findings.map(({ finding }) => finding).join()).toContain('retaining ring');
  });

  test('a hotter wall leaves less of every mode of case, ring groove and thread', () => {
    const hot = at(withChange('case.wallTemperature', '150 degC'));
    for (const one of judged.margins.filter(({ part }) => part.endsWith('-joint'))) {
      if (one.mode.endsWith('of the ring')) continue; // its strength is its maker's
      const other = hot.margins.find(({ part, mode }) => part === one.part && mode === one.mode);
      expect(other?.marginOfSafety, one.mode).toBeLessThan(one.marginOfSafety);
    }
  });

  test('what is left out, and a tolerance that does not count, is said', () => {
    const json = withChange('closures.aft.thread', {
      majorDiameter: { value: '50 mm', plusMinus: '0.1 mm' },
      pitch: '1.5 mm',
      engagement: '12 mm',
    });
    delete json.closures.aft.seals[0 as unknown as string].faceGap;
    const said = at(json).assumptions.join('\n');
    for (const part of [
      'The tolerance of closures.aft.thread.majorDiameter is neglected',
      'closures.aft.thread.reliefDiameter not specified',
      'closures.aft.seals[0].faceGap not specified',
      'closures.aft.thread: pressure is assumed to act on the whole thread diameter',
    ])
      expect(said).toContain(part);
    expect(said).not.toContain('grooveDepth');
  });

  test('the report names what comes first of each', () => {
    const page = report(judged).replace(/\s+/g, ' ');
    expect(page).toMatch(
      /head joint: First permanent set: bearing of the groove, yield, at [^:]*First separation: dishing of the ring, at /,
    );
    expect(page).toMatch(
      /aft joint: First permanent set: [^.]*\.\d+ MPa gauge\. First separation: folding of the wall under the thread, yield, at /,
    );
    expect(judged.failureOrders.head?.warns).toBe(false);
    expect(judged.failureOrders.aft?.warns).toBe(false);
    expect(page).toContain('aft closure, seal 1 (face)');
    expect(report(judged, { format: 'html' })).toContain('O-rings in face glands at MEOP');
  });
});
