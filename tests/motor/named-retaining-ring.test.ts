// Retaining rings by the name of their standard, and what cannot be: sizes from src/structures/closures/retaining-ring-table.ts.
import { describe, expect, test } from 'vitest';
import { motorProblems, parseMotor, review, reviewRetainingRing } from '../../src/index';
import { codeAndPathOf } from '../error-code';
import { type Json, plover, withChange } from './plover';

type Fields = Readonly<Record<string, unknown>>;
const own: Fields = {
  edgeMargin: '6.2 mm',
  shearStrength: '700 MPa',
  chamfer: '0.2 mm',
  dishingCapacity: '25 kN',
};
const withRing = (ring: Fields): Json => withChange('closures.head.retainingRing', ring);
const problems = (ring: Fields, change: (json: Json) => void = () => undefined) => {
  const json = withRing(ring);
  change(json);
  return motorProblems(JSON.parse(JSON.stringify(json))).map(
    ({ path, code, message }) => `${code} ${path.replace('closures.head.retainingRing', 'ring')}: ${message}`,
  );
};
const ringOf = (ring: Fields) => parseMotor(withRing(ring)).closures?.head?.retainingRing;
const judged = (ring: Fields) => review(parseMotor(withRing(ring)));

describe('a ring by name', () => {
  test('supplies its sizes: those given in full give the same review', () => {
    const named = ringOf({ ...own, ring: 'DIN 472 38' });
    // DIN 472, bore 38: 1.5 mm thick, groove of 40 mm and 1.6 mm.
    expect(named?.thickness.value.in('mm')).toBeCloseTo(1.5, 9);
    expect(named?.grooveDepth.value.in('mm')).toBeCloseTo(1, 9);
    expect(named?.grooveWidth?.value.in('mm')).toBeCloseTo(1.6, 9);
    // 55 ± 0.02 mm less twice 8.5 ± 0.02 mm: a bore of 38 ± 0.06 mm under a groove of fixed diameter.
    expect(named?.grooveDepth.plusMinus).toBeCloseTo(0.03e-3, 9);
    const full = {
      ...own,
      thickness: '1.5 mm',
      grooveDepth: { value: '1 mm', plusMinus: '0.03 mm' },
      grooveWidth: '1.6 mm',
    };
    const [a, b] = [judged({ ...own, ring: 'DIN 472 38' }), judged(full)].map(({ margins }) =>
      margins.map(({ id, marginOfSafety }) => `${id} ${marginOfSafety.toFixed(9)}`),
    );
    expect(a).toEqual(b);
  });

  test('the edge margin of the table where none is given', () => {
    const { edgeMargin: _, ...rest } = own;
    expect(ringOf({ ...rest, ring: 'DIN 472 38' })?.edgeMargin.value.in('mm')).toBeCloseTo(3, 9);
  });

  test('a wider bore leaves a shallower groove, since the groove is cut to its diameter', () => {
    const json = withRing({ ...own, ring: 'DIN 472 38' });
    delete json.case.wall;
    json.case.insideDiameter = '38.1 mm' as unknown as Json;
    expect(parseMotor(json).closures?.head?.retainingRing?.grooveDepth.value.in('mm')).toBeCloseTo(0.95, 9);
  });

  test.each<[string, Fields, string]>([
    ['of another bore', { ring: 'DIN 472 40' }, 'contradiction ring.ring: '],
    [
      'with another thickness',
      { ring: 'DIN 472 38', thickness: '1.75 mm' },
      'contradiction ring.thickness: ',
    ],
    [
      'with another groove',
      { ring: 'DIN 472 38', grooveDepth: '1.5 mm' },
      'contradiction ring.grooveDepth: ',
    ],
    [
      'with another groove width',
      { ring: 'DIN 472 38', grooveWidth: '2.15 mm' },
      'contradiction ring.grooveWidth: ',
    ],
    ['that is in no table', { ring: 'DIN 472 38.5' }, 'unknown-name ring.ring: '],
    [
      'thicker than its groove',
      { thickness: '1.7 mm', grooveWidth: '1.6 mm', grooveDepth: '1 mm' },
      'does-not-fit ring.thickness: ',
    ],
    [
      'thicker than its groove with both tolerances',
      {
        thickness: { value: '1.55 mm', plusMinus: '0.05 mm' },
        grooveWidth: { value: '1.62 mm', plusMinus: '0.05 mm' },
        grooveDepth: '1 mm',
      },
      'does-not-fit ring.thickness: ',
    ],
    ['without thickness or name', { grooveDepth: '1 mm' }, 'missing-field ring.thickness: '],
    ['without groove or name', { thickness: '1.5 mm' }, 'missing-field ring.grooveDepth: '],
    [
      'in a groove through the wall',
      { thickness: '1.5 mm', grooveDepth: '9 mm' },
      'does-not-fit ring.grooveDepth: ',
    ],
    [
      'as thick as the end of the case',
      { thickness: '60 mm', grooveDepth: '1 mm' },
      'does-not-fit ring.thickness: ',
    ],
    ['with a negative chamfer', { ring: 'DIN 472 38', chamfer: '-1 mm' }, 'out-of-domain ring.chamfer: '],
    [
      'with no capacity',
      { ring: 'DIN 472 38', dishingCapacity: '0 N' },
      'out-of-domain ring.dishingCapacity: ',
    ],
  ])('%s: rejected', (_, ring, expected) => {
    const found = problems({ ...own, ...ring });
    expect(found.length, found.join('\n')).toBe(1);
    expect(found[0]).toContain(expected);
  });

  test('sizes within the tolerance of the ring agree', () =>
    expect(problems({ ...own, ring: 'DIN 472 38', thickness: '1.46 mm', grooveDepth: '1.08 mm' })).toEqual(
      [],
    ));
});

describe('what the review finds of a ring', () => {
  const item = (ring: Fields) => judged({ ...own, ring: 'DIN 472 38', ...ring }).findings[0];

  test('without the capacity of the manufacturer dishing is not evaluated, and neither is the motor', () => {
    const { dishingCapacity: _, ...rest } = own;
    const { verdict, unjudged } = judged({ ...rest, ring: 'DIN 472 38' });
    expect(verdict).toBe('not judged');
    expect(unjudged.map(({ reason }) => reason).join()).toContain('dishingCapacity not specified');
  });
  test('an edge margin below three groove depths', () => {
    expect(item({ edgeMargin: '2.5 mm' })).toMatchObject({ state: 'does not hold' });
    expect(item({ edgeMargin: '2.5 mm' }).message).toMatch(/(three|3) groove depths/);
  });
  test('a groove that leaves less than 60 % of the wall', () => {
    const deep = { ...own, thickness: '1.5 mm', grooveDepth: '3.5 mm' };
    const { verdict, checks } = judged(deep);
    expect(verdict).toBe('does not hold');
    // 1 − 3.5/8.48 = 0.587 with the thinnest wall.
    expect(checks.find(({ check }) => check === 'wall under the groove')).toMatchObject({
      passes: false,
      message: 'The groove leaves 58.7 % of the wall (required ≥ 60 %).',
    });
  });
  test('a chamfer tilts the ring: the margin against dishing falls with it, and a large one is not carried', () => {
    const margin = (chamfer: string): number =>
      judged({ ...own, ring: 'DIN 472 38', chamfer }).margins.find(({ id }) => id === 'ring-dishing')
        ?.marginOfSafety ?? Number.NaN;
    expect(margin('0.5 mm')).toBeLessThan(margin('0.2 mm'));
    expect(margin('0.2 mm')).toBeLessThan(margin('0 mm'));
    expect(item({ chamfer: '1.5 mm' })).toMatchObject({ state: 'does not hold' });
  });
  test('a case above 200 °C: the temper of the ring', () => {
    const json = withRing({ ...own, ring: 'DIN 472 38' });
    json.case.wallTemperature = '210 degC' as unknown as Json;
    expect(String(review(parseMotor(json)))).toContain('loses its temper above 200 to 250 °C');
    expect(String(review(parseMotor(plover)))).not.toContain('loses its temper');
  });
});

describe('a ring by name in a call', () => {
  const base = {
    pressure: '5 MPa',
    tube: { outsideDiameter: '50 mm', wall: '6 mm', material: '6061-T6 drawn tube' },
  } as const;
  const call = (ring: Fields) => () =>
    reviewRetainingRing({ ...base, ring: { shearStrength: '700 MPa', ...ring } });
  test('has the sizes of the table', () => {
    const sizes = { grooveDepth: '1 mm', thickness: '1.5 mm', edgeMargin: '3 mm' };
    expect(String(call({ ring: 'DIN 472 38' })().margins)).toBe(String(call(sizes)().margins));
  });
  test.each<[Fields, string]>([
    [{}, 'missing-field ring.grooveDepth'],
    [{ ring: 'DIN 472 50' }, 'contradiction ring.ring'],
    [{ ring: 'DIN 472 38', thickness: '2 mm' }, 'contradiction ring.thickness'],
    [
      { grooveDepth: '1 mm', thickness: '1.5 mm', edgeMargin: '3 mm', grooveWidth: '1.4 mm' },
      'out-of-domain ring.thickness',
    ],
    [{ grooveDepth: '2 µm', thickness: '1.5 mm', edgeMargin: '3 mm' }, 'out-of-domain ring.grooveDepth'],
  ])('%j: rejected', (ring, expected) => expect(codeAndPathOf(call(ring))).toBe(expected));
});
