// Expected stresses are written out by hand with the source of each equation, at 5 MPa on the widest bore of the document: 50.02 mm
// outside less twice 5.98 mm of wall, 38.06 mm.
import { describe, expect, test } from 'vitest';
import { type FailureModeId, motorProblems, parseMotor, q, review } from '../../src/index';
import { structureMargins } from '../../src/motor/review/hardware-review';
import { settingsOf } from '../../src/motor/settings';
import { atWorstCaseTolerances } from '../../src/motor/worst-case-tolerances';
import { type Json, withChange } from './plover';

const bore = 0.03806;
const pressure = 5e6;
const head = (fields: { readonly [field: string]: unknown }) => {
  const json = withChange('closures.head.notes', undefined);
  const { opening: _, ...closure } = json.closures.head;
  json.closures.head = { ...closure, ...fields } as Json;
  return json;
};
const judged = (json: Json) => {
  const motor = parseMotor(json);
  return structureMargins(
    atWorstCaseTolerances(motor),
    q('5 MPa').as('gauge pressure'),
    q('1 kN'),
    settingsOf(motor),
  );
};
const ofHead = (json: Json) => judged(json).margins.filter(({ part }) => part === 'head-closure');
const applied = (json: Json, id: FailureModeId): number => {
  const found = ofHead(json).find((one) => one.id === id);
  if (found === undefined) throw new Error(`no ${id}`);
  return found.applied.si;
};
const near = (value: number, wanted: number) => expect(value / wanted).toBeCloseTo(1, 9);

describe('a flat closure', () => {
  const flat = head({ thickness: { value: '8 mm', plusMinus: '0.1 mm' } });
  test('bends as the supported plate (Roark) and shears at its support, p·D/(4·t) (statics)', () => {
    near(applied(flat, 'plate-bending'), (3 / 8) * 3.33 * pressure * (bore / 2 / 0.0079) ** 2);
    near(applied(flat, 'plate-shear'), (pressure * bore) / (4 * 0.0079));
    expect(ofHead(flat).map(({ id }) => id)).toEqual([
      'plate-bending-yield',
      'plate-bending',
      'plate-shear-yield',
      'plate-shear',
    ]);
  });
  test('bending is held against tension, shear against shear: 42 and 27 ksi, 35 and 35/√3 ksi (MIL-HDBK-5J, 6061-T6 bar)', () => {
    const strength = (id: FailureModeId) => ofHead(flat).find((one) => one.id === id)?.allowable.si ?? 0;
    near(strength('plate-shear') / strength('plate-bending'), 27 / 42);
    near(strength('plate-shear-yield') / strength('plate-bending-yield'), 1 / Math.sqrt(3));
  });
  test('a strength that is not known is stated', () => {
    const material = {
      name: 'plate of the certificate',
      form: 'plate',
      class: 'metal',
      yieldStrength: { value: '240 MPa', basis: 'S', source: 'mill certificate' },
      poissonRatio: { value: 0.33, basis: 'typical', source: 'mill certificate' },
    };
    const reasons = judged(head({ thickness: '8 mm', material })).unjudged.map(({ reason }) => reason);
    expect(reasons.join()).toContain('no minimum ultimate strength');
  });
  test('the form may be written out', () => {
    const written = head({ thickness: '8 mm', shape: { form: 'flat' } });
    near(applied(written, 'plate-shear'), (pressure * bore) / (4 * 0.008));
  });
  test('a foil says that it has left plate theory, with the stretched deflection', () => {
    const foil = (edgeSupport: string) =>
      judged(head({ thickness: '0.5 mm', edgeSupport }))
        .cautions.map(({ text }) => text)
        .filter((text) => text.includes('linear theory'));
    expect(foil('clamped')[0]).toContain('with stretching of a fixed rim it is');
    expect(foil('simply supported')[0]).toContain('allowed ≤ 0.5');
    expect(judged(flat).cautions.some(({ text }) => text.includes('linear theory'))).toBe(false);
  });
});

describe('a stepped closure', () => {
  const shape = {
    form: 'stepped',
    ringThickness: { value: '5 mm', plusMinus: '0.1 mm' },
    hubDiameter: { value: '28 mm', plusMinus: '0.2 mm' },
  };
  const stepped = head({ thickness: '14 mm', shape });
  const [a, b, t, h, nu] = [bore / 2, 0.0139, 0.0049, 0.014, 0.33];
  // Ring on a rigid hub (Timoshenko, circular plates): moment where they meet.
  const moment =
    (pressure / 16) *
    ((2 * ((3 + nu) * a ** 4 + (1 - nu) * b ** 4)) / ((1 + nu) * a * a + (1 - nu) * b * b) - 4 * b * b);
  test('is judged at ring, hub and support, each at its worst size', () => {
    near(applied(stepped, 'plate-ring-bending'), (6 * moment) / t ** 2);
    near(applied(stepped, 'plate-bending'), (6 * (moment + (pressure * (3 + nu) * b * b) / 16)) / h ** 2);
    near(applied(stepped, 'plate-shear'), (pressure * bore) / (4 * t));
  });
  test('an opening of the hub more than doubles its stress', () => {
    const bored = head({ thickness: '14 mm', shape, opening: '9.7 mm' });
    expect(applied(bored, 'plate-bending')).toBeGreaterThan(2 * applied(stepped, 'plate-bending'));
  });
  test('a ring that is too thin does not hold, and the review names it', () => {
    const thin = head({ thickness: '14 mm', shape: { ...shape, ringThickness: '1.5 mm' } });
    const text = String(review(parseMotor(thin)));
    expect(text).toContain('bending of the thin ring of the plate');
    expect(text.split('\n')[0]).toMatch(/does not hold/i);
  });
});

describe('a dished closure', () => {
  const wall = { thickness: { value: '2 mm', plusMinus: '0.1 mm' } };
  // ASME VIII-1, UG-32 and appendix 1-4 (from memory): σ = p·(L·M/(2·t) + 0.1).
  test('hemisphere', () => {
    const json = head({ ...wall, shape: { form: 'dished', crownRadius: '19.03 mm' } });
    near(applied(json, 'head-stress'), pressure * (0.01903 / 0.0038 + 0.1));
    expect(judged(json).unjudged.filter(({ part }) => part === 'head-closure')).toEqual([]);
  });
  test('torisphere', () => {
    const json = head({ ...wall, shape: { form: 'dished', crownRadius: '38 mm', knuckleRadius: '3.8 mm' } });
    near(applied(json, 'head-stress'), pressure * ((0.038 * (3 + Math.sqrt(10))) / 4 / 0.0038 + 0.1));
    expect(judged(json).cautions.some(({ text }) => text.includes('elastic peak'))).toBe(true);
  });
  test('ellipsoid', () => {
    const json = head({ ...wall, shape: { form: 'ellipsoidal', depth: '9.5 mm' } });
    const factor = (2 + (bore / 0.019) ** 2) / 6;
    near(applied(json, 'head-stress'), pressure * ((bore * factor) / 0.0038 + 0.1));
  });
  test('an opening and the knuckle of a thin head are not judged', () => {
    const reasons = (fields: { readonly [field: string]: unknown }) =>
      judged(
        head({
          ...wall,
          shape: { form: 'dished', crownRadius: '38 mm', knuckleRadius: '3.8 mm' },
          ...fields,
        }),
      )
        .unjudged.filter(({ part }) => part === 'head-closure')
        .map(({ reason }) => reason)
        .join();
    expect(reasons({})).toBe('');
    expect(reasons({ opening: '9.7 mm' })).toContain('opening of a dished head');
    expect(reasons({ thickness: '0.07 mm' })).toContain('buckling is not evaluated');
  });
});

test('a material without minimum strength is not judged', () => {
  const { unjudged } = judged(head({ material: '4140 tempered 540 C' }));
  expect(unjudged.some(({ reason }) => reason.includes('no minimum strength'))).toBe(true);
});

describe('a shape that does not fit is refused at its field', () => {
  test.each([
    [{ form: 'stepped', ringThickness: '5 mm', hubDiameter: '39 mm' }, 'hubDiameter'],
    [{ form: 'stepped', ringThickness: '15 mm', hubDiameter: '30 mm' }, 'ringThickness'],
    [{ form: 'dished', crownRadius: '15 mm' }, 'crownRadius'],
    [{ form: 'dished', crownRadius: '38 mm' }, 'knuckleRadius'],
    [{ form: 'dished', crownRadius: '38 mm', knuckleRadius: '39 mm' }, 'knuckleRadius'],
    [{ form: 'ellipsoidal', depth: '3 mm' }, 'depth'],
    [{ form: 'pointed' }, 'form'],
  ])('%j', (shape, field) => {
    const problems = motorProblems(head({ thickness: '14 mm', shape }));
    expect(problems.map(({ path }) => path)).toContain(`closures.head.shape.${field}`);
  });
  test('a hub smaller than its opening', () => {
    const shape = { form: 'stepped', ringThickness: '5 mm', hubDiameter: '9 mm' };
    const problems = motorProblems(head({ thickness: '14 mm', opening: '9.7 mm', shape }));
    expect(problems.map(({ path }) => path)).toContain('closures.head.shape.hubDiameter');
  });
});
