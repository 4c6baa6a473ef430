// A document is declared: its schema, its types and its JSON Schema follow from the declaration.
import { describe, expect, test } from 'vitest';
import { demoMotor, parseMotor } from '../../src/motor';
import { runSchema } from '../../src/motor/document/run-schema';
import { schemaOf } from '../../src/motor/document/schema-of';
import { placedValues } from '../../src/motor/varied-motor';
import { choice, count, inputs, length, list, optional, ratio, variants } from '../../src/units';

const plate = inputs(
  {
    size: length('d', 'size of the plate', { example: '10 mm', worse: 'low' }),
    factor: optional(ratio('k', 'factor', { min: 1, example: 2, worse: 'high' })),
    edge: choice('edge of the plate', ['clamped', 'free']),
    holes: optional(
      list(
        'holes',
        variants('hole', 'hole in the plate', {
          round: { diameter: length('h', 'diameter', { example: '2 mm', worse: 'high' }) },
          square: {
            side: length('a', 'side', { example: '2 mm', worse: 'high' }),
            count: count('n', 'number'),
          },
        }),
      ),
    ),
  },
  { meaning: 'plate', instead: { width: 'Give size' } },
);
const schema = schemaOf(plate);

describe('the schema of declared inputs', () => {
  test('reads quantities with their tolerances, choices, lists and variants', () => {
    const { whole } = runSchema(schema, {
      size: { value: '1 cm', plusMinus: '1 %' },
      edge: 'free',
      holes: [{ hole: 'square', side: '2 mm', count: 4 }],
    });
    // 1 % of 1 cm.
    expect(whole?.size.value.in('mm')).toBeCloseTo(10, 12);
    expect(whole?.size.plusMinus).toBeCloseTo(1e-4, 15);
    const [hole] = whole?.holes ?? [];
    expect(hole?.hole === 'square' && hole.count).toBe(4);
    expect(whole?.factor).toBeUndefined();
  });

  test('keeps what could be read beside what could not', () => {
    const { whole, parts, issues } = runSchema(schema, {
      size: '3 mm',
      factor: 0.5,
      edge: 'fre',
      holes: [{ hole: 'oval' }, { hole: 'round', diameter: '-1 mm' }],
    });
    expect(whole).toBeUndefined();
    expect(parts?.size?.value.in('mm')).toBe(3);
    expect(parts).toMatchObject({ holes: [undefined, { hole: 'round' }] });
    expect(issues.map(({ path }) => path?.join('.'))).toEqual([
      'factor',
      'edge',
      'holes.0.hole',
      'holes.1.diameter',
    ]);
  });

  test('a quantity without a declared worse end does not compile', () => {
    const size = length('d', 'size of the plate', { example: '10 mm' });
    const bare = inputs({ size }, { meaning: 'plate' });
    // @ts-expect-error its worst-case limit is not declared
    expect(() => schemaOf(bare)).not.toThrow();
  });
});

test('every value of a motor has a declared worse end', () => {
  const values = placedValues(parseMotor(demoMotor()));
  expect(values.length).toBeGreaterThan(80);
  expect(values.filter(({ worse }) => worse === undefined)).toEqual([]);
});
