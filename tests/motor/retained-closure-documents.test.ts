// What is refused of closures held by a retaining ring or a thread, and of seals in a face.
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { motorProblems, parseMotor, reviewProblems } from '../../src/index';
import { type Json, plover, withChange } from './plover';

describe('bad documents', () => {
  const joint = { thread: 'M5' };
  test.each([
    ['closures.head.retainingRing', undefined, 'closures.head.joint', 'missing-field', 'retainingRing'],
    ['closures.aft.joint', joint, 'closures.aft.thread', 'contradiction', 'give one retention'],
    ['closures.head.retainingRing.grooveDepth', '6 mm', undefined, 'contradiction', 'that of DIN 472 38'],
    ['closures.head.retainingRing.grooveDepth', '-1 mm', undefined, 'out-of-domain', 'above 0'],
    ['closures.head.retainingRing.edgeMargin', '60 mm', undefined, 'does-not-fit', 'beyond the chamber'],
    ['closures.head.retainingRing.thickness', '60 mm', undefined, 'contradiction', 'that of DIN 472 38'],
    [
      'closures.head.retainingRing.shearStrength',
      undefined,
      undefined,
      'missing-field',
      'by its manufacturer',
    ],
    ['closures.aft.thread.majorDiameter', '56 mm', undefined, 'does-not-fit', 'outside diameter of the case'],
    ['closures.aft.thread.majorDiameter', '38.5 mm', undefined, 'does-not-fit', 'at least one pitch larger'],
    ['closures.aft.thread.pitch', '20 mm', undefined, 'out-of-domain', 'a quarter of the diameter'],
    ['closures.aft.thread.engagement', '60 mm', undefined, 'does-not-fit', 'beyond the chamber'],
    ['closures.aft.thread.reliefDiameter', '49 mm', undefined, 'does-not-fit', 'Omit it'],
    ['closures.aft.thread.reliefDiameter', '55 mm', undefined, 'does-not-fit', 'outside diameter'],
    [
      'closures.aft.seals.0.grooveOutsideDiameter',
      '55 mm',
      undefined,
      'does-not-fit',
      'The face of the case closes',
    ],
    ['closures.aft.seals.0.grooveInsideDiameter', '44 mm', undefined, 'does-not-fit', 'of the groove'],
    ['closures.aft.seals.0.grooveInsideDiameter', '17 mm', undefined, 'does-not-fit', 'surrounds'],
    ['closures.aft.seals.0.grooveDepth', '16 mm', undefined, 'does-not-fit', 'thickness of the closure'],
    ['closures.aft.seals.0.seal', 'fase', undefined, 'unknown-name', "did you mean 'face'"],
    ['closures.aft.seals.0.seal', undefined, 'closures.aft.seals.0.grooveDepth', 'unknown-field', '"face"'],
    ['closures.head.seals.0.seal', 'face', 'closures.head.seals.0.grooveWidth', 'unknown-field', 'radial'],
    ['closures.head.seals.0.faceGap', '1 mm', undefined, 'unknown-field', 'Add "seal": "face"'],
  ])('%s: %s', (path, value, place, code, says) => {
    const problems = motorProblems(withChange(path, value));
    const written = (place ?? path).replace(/\.(\d+)(?=\.|$)/g, '[$1]');
    const found = problems.find((one) => one.path === written);
    expect(found?.code, JSON.stringify(problems)).toBe(code);
    expect(found?.message).toContain(says);
    for (const { message } of problems)
      expect(message).toMatch(/must|required|expected|mutually exclusive|unknown field|did you mean|write/);
  });

  test('two ways and three ways at once, each but the first', () => {
    const json = withChange('closures.aft.joint', joint);
    json.closures.aft.retainingRing = json.closures.head.retainingRing;
    const paths = motorProblems(json).map((one) => one.path);
    expect(paths).toEqual(
      expect.arrayContaining([
        'closures.aft.retainingRing',
        'closures.aft.thread',
        'closures.aft.joint.count',
      ]),
    );
  });

  test('faces that open by the play of what holds the closure: the gap is asked for', () => {
    const json = withChange('closures.head.seals', JSON.parse(plover).closures.aft.seals);
    delete json.closures.head.seals[0 as unknown as string].faceGap;
    const [problem] = motorProblems(json);
    expect(problem).toMatchObject({ path: 'closures.head.seals[0].faceGap', code: 'missing-field' });
    expect(problem.message).toContain('retaining ring');
  });

  test('what only the checks refuse stands at its place: a groove through the thinnest wall, a groove too narrow', () => {
    const json = withChange('closures.head.retainingRing.grooveDepth', {
      value: '8.45 mm',
      plusMinus: '0.05 mm',
    });
    delete json.closures.head.retainingRing.ring;
    json.closures.aft.seals[0 as unknown as string].grooveInsideDiameter = '42 mm' as unknown as Json;
    expect(motorProblems(json)).toEqual([]);
    expect(reviewProblems(parseMotor(json)).map(({ path }) => path)).toEqual([
      'closures.head.retainingRing.grooveDepth',
      'closures.aft.seals[0].grooveInsideDiameter',
    ]);
  });

  test('materials are asked only for what their closure is judged by', () => {
    const own = {
      name: 'own',
      form: 'bar',
      class: 'metal',
      yieldStrength: { value: '240 MPa', basis: 'S', source: 'certificate' },
      ultimateStrength: { value: '290 MPa', basis: 'S', source: 'certificate' },
    };
    expect(reviewProblems(parseMotor(withChange('closures.head.material', own)))).toEqual([]);
    const [problem, ...more] = reviewProblems(parseMotor(withChange('closures.aft.material', own)));
    expect(problem.path).toBe('closures.aft.material.shearUltimate');
    expect(more).toEqual([]);
  });
});

test('the closures of the how-to are sound', () => {
  const page = readFileSync('docs/how-to/review.md', 'utf8');
  const [, [, closures = ''] = []] = [...page.matchAll(/```json\n([\s\S]+?)```/g)];
  const json = withChange('closures', JSON.parse(closures));
  expect(motorProblems(json)).toEqual([]);
  expect(reviewProblems(parseMotor(json))).toEqual([]);
});

test('the JSON Schema lets an editor ask for one way of holding, and for either seal', () => {
  const { properties } = JSON.parse(readFileSync('schema/motor.schema.json', 'utf8'));
  for (const end of ['head', 'aft']) {
    const { oneOf, properties: fields } = properties.closures.properties[end];
    expect(oneOf).toEqual(
      ['joint', 'retainingRing', 'thread', 'axialBolts'].map((field) => ({ required: [field] })),
    );
    expect(fields.retainingRing.description).toContain('retaining ring');
    expect(fields.thread.description).toContain('closure');
  }
});
