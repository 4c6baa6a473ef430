// Layouts that cannot be built are refused when the document is read, each at the field to change.
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demoMotor, motorProblems, parseMotor } from '../../src/motor';
import { motorLayout } from '../../src/motor/layout';

type Json = { [key: string]: Json };
const documents = {
  tern: JSON.stringify(demoMotor()),
  plover: readFileSync('examples/motors/plover-50.json', 'utf8'),
};

/** A demo motor with one value changed, or left out. */
function changed(motor: keyof typeof documents, ...changes: readonly (readonly [string, unknown])[]): Json {
  const json: Json = JSON.parse(documents[motor]);
  for (const [path, value] of changes) {
    const keys = path.split('.');
    const last = keys.pop() ?? '';
    const owner = keys.reduce<Json>((node, key) => {
      node[key] ??= {};
      return node[key];
    }, json);
    if (value === undefined) delete owner[last];
    else owner[last] = value as Json;
  }
  return json;
}

const head = 'closures.head';
const aft = 'closures.aft';

// Tern-54 head: closure 0 to 28 mm, cavity from 14 mm, holes 9.35 to 14.65 mm, groove 20.5 to 24.2 mm.
// Plover-50 head: ring 6.2 to 7.7 mm, closure 8 to 24 mm, groove 15 to 18.7 mm; aft: -4 to 24 mm, thread 4 to 16 mm.
describe('a layout that cannot be built', () => {
  test.each([
    ['tern', `${head}.layout.diameter`, '51 mm', undefined, 'less than the bore'],
    ['tern', `${head}.layout.diameter`, '49.7 mm', undefined, 'looser closure tilts'],
    ['tern', `${head}.layout.innerFace`, '24 mm', `${head}.seals.0.position`, 'whole groove in the closure'],
    ['tern', `${head}.layout.innerFace`, '30 mm', 'case.chamberLength', '320 mm, what the inner faces'],
    [
      'tern',
      `${head}.layout.shoulder`,
      { diameter: '50 mm', thickness: '2 mm' },
      `${head}.layout.shoulder.diameter`,
      'more than the bore',
    ],
    [
      'tern',
      `${head}.layout.shoulder`,
      { diameter: '54 mm', thickness: '2 mm' },
      `${head}.layout.length`,
      '30 mm',
    ],
    ['tern', `${head}.layout.cavity.diameter`, '51 mm', undefined, 'less than the diameter of the closure'],
    ['tern', `${head}.layout.cavity.diameter`, '9 mm', undefined, 'more than the opening'],
    ['tern', `${head}.layout.cavity.diameter`, '47 mm', `${head}.seals.0.grooveDiameter`, 'breaks into it'],
    ['tern', `${head}.layout.cavity.depth`, '30 mm', undefined, 'less than the length of the closure'],
    ['tern', `${head}.layout.cavity.depth`, '15 mm', `${head}.thickness`, '13 mm'],
    ['tern', `${head}.layout.recess`, { diameter: '30 mm', depth: '1 mm' }, `${head}.thickness`, '13 mm'],
    ['tern', `${head}.joint.engagement`, '15 mm', undefined, 'reach the cavity'],
    ['tern', `${head}.joint.edgeDistance`, '27 mm', undefined, 'with the holes in the closure'],
    ['tern', `${head}.joint.edgeDistance`, '22 mm', `${head}.seals.0.position`, 'go through the groove'],
    ['tern', `${head}.joint.sealToHoles`, '6 mm', undefined, 'mutually exclusive'],
    ['tern', `${head}.seals.0.position`, undefined, undefined, 'required with closures.head.layout'],
    ['tern', `${head}.seals.0.position`, '12 mm', undefined, 'go through the groove'],
    ['tern', `${head}.seals.0.position`, '4 mm', undefined, 'pressure side of the holes'],
    ['tern', `${head}.seals.0.position`, '25 mm', undefined, 'whole groove in the closure'],
    ['tern', `${aft}.layout.innerFace`, '39 mm', 'case.chamberLength', 'what the inner faces'],
    ['tern', `${aft}.joint.engagement`, '12.5 mm', undefined, 'reach the recess'],
    [
      'tern',
      `${aft}.layout.recess`,
      { diameter: '47 mm', depth: '22 mm' },
      `${aft}.seals.0.grooveDiameter`,
      'diameter of the recess',
    ],
    [
      'tern',
      'nozzle.insert.seat.pocketDiameter',
      '51 mm',
      undefined,
      'less than the diameter of the closure',
    ],
    ['tern', 'nozzle.insert.seat.pocketDepth', '40 mm', undefined, 'the length of the closure'],
    ['tern', `${head}.layout.threadStart`, '2 mm', undefined, 'belongs to a thread'],
    ['plover', `${head}.layout.length`, '17 mm', undefined, 'retaining ring is between'],
    ['plover', `${head}.retainingRing.edgeMargin`, '14 mm', `${head}.layout.length`, 'retaining ring'],
    ['plover', `${head}.seals.0.position`, '5 mm', undefined, 'whole groove in the closure'],
    ['plover', `${aft}.layout.diameter`, '48.5 mm', undefined, 'passes through the thread'],
    ['plover', `${aft}.layout.threadStart`, undefined, undefined, 'start of the engaged thread'],
    ['plover', `${aft}.layout.threadStart`, '14 mm', `${aft}.thread.engagement`, 'at most 10 mm'],
    ['plover', `${aft}.layout.reliefLength`, '9 mm', undefined, 'at most 8 mm'],
    ['plover', `${aft}.layout.length`, '18 mm', `${aft}.layout.threadStart`, 'at least 6 mm'],
    ['plover', `${aft}.seals.0.grooveOutsideDiameter`, '48.2 mm', undefined, 'open to the outside'],
    ['plover', `${aft}.seals.0.position`, '10 mm', undefined, 'no face elsewhere'],
    ['plover', 'nozzle.insert.seat.pocketDiameter', '39 mm', `${aft}.seals.0.grooveInsideDiameter`, 'pocket'],
  ] as const)('%s, %s: %s', (motor, path, value, place, says) => {
    const problems = motorProblems(changed(motor, [path, value]));
    const written = (place ?? path).replace(/\.(\d+)(?=\.|$)/g, '[$1]');
    const found = problems.find((one) => one.path === written);
    expect(found?.message, JSON.stringify(problems)).toContain(says);
    expect(['does-not-fit', 'contradiction', 'missing-field']).toContain(found?.code);
  });

  test('lists its seals from the gas outwards', () => {
    const seal = JSON.parse(documents.tern).closures.head.seals[0];
    const seals = (...positions: readonly string[]) =>
      motorProblems(
        changed(
          'tern',
          [`${head}.layout.innerFace`, '40 mm'],
          [`${head}.layout.length`, '40 mm'],
          ['case.length', '402 mm'],
          [`${head}.seals`, positions.map((position) => ({ ...seal, position }))],
        ),
      ).map(({ path }) => path);
    expect(seals('28 mm', '20.5 mm')).toEqual([]);
    expect(seals('20.5 mm', '28 mm')).toEqual(['closures.head.seals[1].position']);
    expect(seals('23 mm', '20.5 mm')).toEqual(['closures.head.seals[1].position']);
  });

  test('places a face seal in the shoulder of a closure that has one', () => {
    const face = {
      seal: 'face',
      ring: '030',
      grooveOutsideDiameter: '43.6 mm',
      grooveInsideDiameter: '38.6 mm',
      grooveDepth: '1.3 mm',
      faceGap: '0.3 mm',
    };
    const shouldered = (diameter: string, seal: object) =>
      motorProblems(
        changed(
          'plover',
          [`${head}.retainingRing`, undefined],
          [`${head}.joint`, JSON.parse(documents.tern).closures.head.joint],
          [
            `${head}.layout`,
            {
              innerFace: '24 mm',
              length: '28 mm',
              diameter: '37.9 mm',
              shoulder: { diameter, thickness: '4 mm' },
            },
          ],
          [`${head}.seals`, [seal]],
        ),
      ).map(({ path }) => path);
    expect(shouldered('50 mm', face)).toEqual([]);
    expect(shouldered('43 mm', face)).toEqual(['closures.head.seals[0].grooveOutsideDiameter']);
    expect(shouldered('50 mm', { ...face, position: '24 mm' })).toEqual(['closures.head.seals[0].position']);
  });
});

describe('a layout that can be built', () => {
  test('is that of both demo motors', () => {
    expect(motorProblems(documents.tern)).toEqual([]);
    expect(motorProblems(documents.plover)).toEqual([]);
  });

  test('of one end does not need one of the other', () => {
    expect(motorProblems(changed('tern', [`${aft}.layout`, undefined]))).toEqual([]);
    const deep = motorProblems(
      changed('tern', [`${aft}.layout`, undefined], [`${head}.layout.innerFace`, '70 mm']),
    );
    expect(deep.map(({ path }) => path)).toContain('closures.head.layout.innerFace');
  });

  test('keeps features apart and in metal wherever they are moved, or is refused', () => {
    const within = (min: number, max: number) =>
      fc.integer({ min: 1000 * min, max: 1000 * max }).map((n) => n / 1000);
    let built = 0;
    fc.assert(
      fc.property(within(15, 45), within(0.2, 1), within(0, 0.7), within(0.05, 0.9), (face, ...parts) => {
        const [seal, hole, cavity] = parts.map((part) => part * face);
        const json = changed(
          'tern',
          [`${head}.layout.innerFace`, `${face} mm`],
          [`${head}.layout.length`, `${face} mm`],
          ['case.length', `${362 + face} mm`],
          [`${head}.thickness`, '0.5 mm'],
          [`${head}.layout.cavity.depth`, `${cavity} mm`],
          [`${head}.seals.0.position`, `${seal} mm`],
          [`${head}.joint.edgeDistance`, `${hole} mm`],
        );
        if (motorProblems(json).length > 0) return;
        built += 1;
        const layout = motorLayout(parseMotor(json));
        const end = layout.head;
        if (end === undefined) throw new Error('the layout was not read');
        const [{ span }] = end.grooves;
        const [row] = end.holeRows;
        // In order from the end of the case: outer face, bolts, holes, groove, inner face.
        const order = [
          end.outerFace,
          row.position - row.boltDiameter / 2,
          row.position + row.holeDiameter / 2,
        ];
        const along = [...order, span.from, span.to, end.innerFace];
        expect([...along].sort((a, b) => a - b)).toEqual(along);
        // The parts of the chain add up to the case: head closure, chamber, aft closure.
        const { from, to } = layout.chamber;
        expect(from + (to - from) + 0.04).toBeCloseTo(layout.case.span.to, 9);
        expect(to - from).toBeCloseTo(0.322, 9);
      }),
      { numRuns: 150 },
    );
    expect(built).toBeGreaterThan(10);
  });
});
