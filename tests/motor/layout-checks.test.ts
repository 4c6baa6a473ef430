// Distances and ligaments that follow from the layouts of a motor. Expected values: sums of the dimensions, by hand.
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demoMotor, type Motor, parseMotor } from '../../src/motor';
import { endLigaments, worstJointDistances, worstLigaments } from '../../src/motor/layout/end-ligaments';
import { written } from '../../src/motor/part-lines';
import { layoutChecks } from '../../src/motor/review/layout-checks';
import { orThrow } from '../../src/motor/review/refusals';
import { settingsOf } from '../../src/motor/settings';
import { atWorstCaseTolerances, nominalOf } from '../../src/motor/worst-case-tolerances';
import { q } from '../../src/units';

type Json = { [key: string]: Json };
const plover = readFileSync('examples/motors/plover-50.json', 'utf8');

function changed(text: string, changes: Readonly<Record<string, unknown>>): Motor {
  const json: Json = JSON.parse(text);
  for (const [path, value] of Object.entries(changes)) {
    const keys = path.split('.');
    const last = keys.pop() ?? '';
    const owner = keys.reduce<Json>((node, key) => node[key], json);
    if (value === undefined) delete owner[last];
    else owner[last] = value as Json;
  }
  return parseMotor(json);
}
const tern = JSON.stringify(demoMotor());
const at = (motor: Motor, end: 'head' | 'aft', check: string) => {
  const found = worstLigaments(motor, end)?.find((one) => one.check === check);
  if (found === undefined) throw new Error(`no ${check}`);
  return { ...found, mm: found.value * 1e3, leastMm: found.least * 1e3 };
};

describe('the ligaments of a bolted end at their minimum', () => {
  const motor = parseMotor(tern);
  test.each([
    // 12 − 0.3 mm; 1.5 and 2 diameters of M5.
    ['edge distance of the hole row', 11.7, 7.5, 10],
    // Chord of 45° at the bore of 51 − 0.06 mm; 2.5 and 3 diameters.
    ['pitch of the holes', 50.94 * Math.sin(Math.PI / 8), 12.5, 15],
    // 12 − 0.3 mm from the outer face at 28 − 28 ± 0.1 mm.
    ['metal outside the hole row', 11.6, 7.5, undefined],
    // 28 − 12 mm, less 0.1 and 0.3 mm; the cavity is inside of the ends of the bolts.
    ['metal inside the hole row', 15.6, 7.5, undefined],
    // 20.5 − 12 − 2.65 mm, less 0.1, 0.3 and 0.05 mm.
    ['metal between hole and O-ring groove', 5.4, 5, undefined],
    // 25.45 − 11 − 9 mm, less 0.01 mm.
    ['metal between bolt and opening', 5.44, 2.5, 5],
    // Chord of 45° at a radius of 25.45 − 0.01 − 9 mm, less the bolt.
    ['metal between the ends of the bolts', 32.88 * Math.sin(Math.PI / 8) - 5, 2.5, 5],
    // 28 − 24.2 mm, less 0.1, 0.1 and 0.1 mm; AS568-133: 2.62 mm.
    ['land inside the O-ring groove', 3.5, 2.5, 2.62],
    ['land outside the O-ring groove', 20.3, 2.5, 2.62],
    // 20.5 − 12 − 2.65 − 0.3 mm of clearance, less 0.1, 0.3 and 3/2 of 0.1 mm.
    ['bore under the O-ring at full travel', 5.0, 0, undefined],
  ] as const)('%s', (check, value, least, preferred) => {
    const found = at(motor, 'head', check);
    expect(found.mm).toBeCloseTo(value, 6);
    expect(found.leastMm).toBeCloseTo(least, 6);
    if (preferred === undefined) expect(found.preferred).toBeUndefined();
    else expect((found.preferred ?? 0) * 1e3).toBeCloseTo(preferred, 2);
  });

  test('metal left under the O-ring groove is a part of the metal beside it', () => {
    // (46.8 − 22)/(50.9 − 22), less its changes by 0.03 mm below and 0.02 mm above.
    expect(at(motor, 'head', 'metal left under the O-ring groove').value).toBeCloseTo(
      24.8 / 28.9 - 0.03 / 28.9 - (24.8 / 28.9 - 24.8 / 28.92),
      9,
    );
  });

  test('the opening counts where it is widest at the bolts', () => {
    // 25.45 − 13.25 − 9 mm, less 0.01 mm: the recess of the aft closure.
    expect(at(motor, 'aft', 'metal between bolt and opening').mm).toBeCloseTo(3.19, 6);
    const pocketed = changed(tern, {
      'closures.aft.layout.recess': undefined,
      'nozzle.insert.seat.pocketDepth': '30 mm',
    });
    // 25.45 − 13.075 − 9 mm, less 0.01 and 0.025 mm: the pocket reaches the bolts.
    expect(at(pocketed, 'aft', 'metal between bolt and opening').mm).toBeCloseTo(3.34, 6);
  });

  test('two rows have a distance from hole to hole, staggered', () => {
    const two = changed(tern, {
      'closures.aft.joint.rows': 2,
      'closures.aft.joint.rowSpacing': '6 mm',
      'closures.aft.seals.0.position': '28 mm',
    });
    // √(6² + (51 sin 11.25°)²) mm.
    const nominal = endLigaments(two, 'aft')?.find(({ check }) => check === 'distance between the hole rows');
    expect((nominal?.value ?? 0) * 1e3).toBeCloseTo(Math.hypot(6, 51 * Math.sin(Math.PI / 16)), 9);
  });
});

describe('the ligaments of a ring, a thread and a face seal', () => {
  const motor = parseMotor(plover);
  test.each([
    // 15 − 7.8 − (8 − 7.7) mm, less 0.1 mm and what the play gains: 0.05, 0.05 and 0.06 mm.
    ['head', 'bore under the O-ring at full travel', 6.64, 0],
    // 4 − 0.1 mm; two pitches of 1.5 mm.
    ['aft', 'length of the runout groove', 3.9, 3],
    // (48 − 43.6)/2 mm, less 0.025 and 0.025 mm; AS568-030: 1.78 mm.
    ['aft', 'land outside the face groove', 2.15, 1.778],
    // (38.6 − 26.15)/2 mm, less 0.025 and 0.025 mm.
    ['aft', 'land inside the face groove', 6.175, 1.778],
  ] as const)('%s: %s', (end, check, value, least) => {
    const found = at(motor, end, check);
    expect(found.mm).toBeCloseTo(value, 6);
    expect(found.leastMm).toBeCloseTo(least, 2);
  });

  test('metal left is a ratio', () => {
    // Root 50 − 2·0.6134·1.5 mm over a pocket of 26.15 + 0.05 mm.
    expect(at(motor, 'aft', 'metal left under the thread of the closure').value).toBeCloseTo(
      (50 - 1.8402 - 26.2) / (50 - 26.2),
      6,
    );
  });
});

test('the distances of the joint follow from the layout at their worst', () => {
  const found = worstJointDistances(parseMotor(tern), 'head');
  const mm = (si: number | undefined) => (si ?? Number.NaN) * 1e3;
  // 20.5 − 12 − 2.65 mm, less 0.1, 0.3 and 0.05 mm; 28 − 12 mm, less 0.1 and 0.3 mm; 25.45 − 11 mm, less 0.01 mm.
  expect(mm(found?.sealToHoles)).toBeCloseTo(5.4, 6);
  expect(mm(found?.closureEdgeDistance)).toBeCloseTo(15.6, 6);
  expect(mm(found?.closureThickness)).toBeCloseTo(14.44, 6);
  // (51 − 50.9)/2 mm, with 0.03 and 0.01 mm.
  expect(mm(found?.gap)).toBeCloseTo(0.09, 6);
  expect(worstJointDistances(parseMotor(plover), 'head')).toBeUndefined();
});

test('a tolerance lowers every ligament or leaves it, and the nominal motor is found again from its worst case', () => {
  const tolerance = fc.integer({ min: 0, max: 30 }).map((n) => `${n / 100} mm`);
  const of = (a: string, b: string, c: string) =>
    changed(tern, {
      'closures.head.seals.0.position': { value: '20.5 mm', plusMinus: a },
      'closures.head.joint.edgeDistance': { value: '12 mm', plusMinus: b },
      'closures.head.layout.innerFace': { value: '28 mm', plusMinus: c },
    });
  fc.assert(
    fc.property(tolerance, tolerance, tolerance, (a, b, c) => {
      const motor = of(a, b, c);
      const nominal = endLigaments(motor, 'head') ?? [];
      const worst = worstLigaments(motor, 'head') ?? [];
      const again = worstLigaments(nominalOf(atWorstCaseTolerances(motor)), 'head') ?? [];
      expect(worst.length).toBe(nominal.length);
      worst.forEach(({ value, check }, i) => {
        expect(value, check).toBeLessThanOrEqual(nominal[i].value + 1e-12);
        expect(again[i].value, check).toBeCloseTo(value, 9);
      });
      const [seal, edge, inner] = [a, b, c].map((text) => Number.parseFloat(text));
      const found = worst.find(({ check }) => check === 'metal between hole and O-ring groove');
      expect((found?.value ?? 0) * 1e3).toBeCloseTo(20.5 - 12 - 2.65 - 0.05 - seal - edge, 6);
      const land = worst.find(({ check }) => check === 'land inside the O-ring groove');
      expect((land?.value ?? 0) * 1e3).toBeCloseTo(28 - 24.2 - 0.1 - seal - inner, 6);
    }),
    { numRuns: 20 },
  );
});

/** The conditions of a review; the layout does not depend on the load. */
const conditions = (motor: Motor) => ({
  motor: atWorstCaseTolerances(motor),
  pressure: q('5 MPag').as('gauge pressure'),
  thrust: q('500 N').as('force'),
  settings: settingsOf(motor),
  attempt: orThrow,
});

describe('the review', () => {
  test.each([
    ['edge distance of the hole row', { 'closures.head.joint.edgeDistance': '7.4 mm' }],
    ['pitch of the holes', { 'closures.head.joint.count': 14 }],
    [
      'metal outside the hole row',
      { 'closures.head.layout.length': '22 mm', 'closures.head.layout.cavity': undefined },
    ],
    // 20.5 − 12 − 4.5 − 4 mm of clearance, less the tolerances.
    ['bore under the O-ring at full travel', { 'closures.head.joint.holeDiameter': '9 mm' }],
    ['metal between hole and O-ring groove', { 'closures.head.seals.0.position': '19.5 mm' }],
    ['metal between bolt and opening', { 'closures.head.layout.cavity.diameter': '30 mm' }],
    [
      'metal between the ends of the bolts',
      { 'closures.head.joint.engagement': '18 mm', 'closures.head.layout.cavity': undefined },
    ],
    ['land inside the O-ring groove', { 'closures.head.seals.0.position': '22 mm' }],
    [
      'metal left under the O-ring groove',
      { 'closures.head.layout.cavity.diameter': '42 mm', 'closures.head.joint.engagement': '1.5 mm' },
    ],
  ] as const)('does not hold below the minimum: %s', (check, changes) => {
    const failed = layoutChecks(conditions(changed(tern, changes))).checks.filter(({ passes }) => !passes);
    expect(failed.map((one) => one.check)).toContain(check);
    expect(failed[0].message).toMatch(/required ≥/);
  });

  test.each([
    ['land outside the O-ring groove', { 'closures.head.seals.0.position': '10 mm' }],
    ['length of the runout groove', { 'closures.aft.layout.reliefLength': '2.9 mm' }],
    ['land outside the face groove', { 'closures.aft.layout.diameter': '46 mm' }],
    [
      'metal left under the thread of the closure',
      { 'closures.aft.layout.recess': { diameter: '46 mm', depth: '12 mm' } },
    ],
  ] as const)('does not hold below the minimum of another retention: %s', (check, changes) => {
    const failed = (['head', 'aft'] as const)
      .flatMap((end) => worstLigaments(changed(plover, changes), end) ?? [])
      .filter(({ value, least }) => value < least);
    expect(failed.map((one) => one.check)).toContain(check);
  });

  test('says what is recommended where a ligament is between the two', () => {
    const lines = written(layoutChecks(conditions(parseMotor(tern))).cautions);
    expect(lines.join('\n')).toContain(
      'aft joint: The metal between bolt and opening is 3.19 mm at its minimum; 5.00 mm is recommended',
    );
  });

  test('is not judged for an end without a layout', () => {
    const { unjudged, checks } = layoutChecks(
      conditions(changed(tern, { 'closures.aft.layout': undefined })),
    );
    expect(unjudged.map(({ part, reason }) => `${part}: ${reason}`).join()).toMatch(
      /^aft-closure: closures\.aft\.layout not specified/,
    );
    expect(new Set(checks.map(({ part }) => part))).toEqual(new Set(['head-joint', 'head-closure']));
  });
});
