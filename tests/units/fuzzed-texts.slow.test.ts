import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { MeopError, namedKinds, q } from '../../src/units';
import { unitNames } from '../../src/units/unit-names';
import { evaluate } from './gnu-evaluator';
import { askGnu, gnuInstalled, gnuRows } from './gnu-names';

// 100,000 texts: each is worth what GNU Units says, or is refused by a MeopError with a code. Nothing else may happen.

const seed = 20240229; // the same texts on every machine; another seed is another test
const units = [...new Set([...gnuRows.keys(), ...namedKinds().flatMap(unitNames)])].filter(
  (text) => text !== 'kg_TNT', // differs from GNU Units for the reason given in gnu-units.test.ts
);
const letters = [
  ...' .,+-*/^()0123456789eE\t\n·⋅×⁰¹²³⁻µμ°℃″"\'#%_abcdFgkKlmMNnoPprsStuxyz½−º˚\u00a0\u2009Ω日💥\u0000',
];

const number = fc.oneof(
  fc.double({ noDefaultInfinity: true, noNaN: true }).map(String),
  fc.integer({ min: -2000, max: 2000 }).map(String),
  fc.tuple(fc.nat(99), fc.nat(64)).map(([a, b]) => `${a}/${b}`),
  fc.tuple(fc.integer({ min: -9, max: 9 }), fc.nat(15), fc.nat(16)).map(([w, a, b]) => `${w} ${a}/${b}`),
  fc.constantFrom(
    '',
    '.5',
    '5.',
    '+1e3',
    '1e-9',
    '-0',
    '007',
    '1e400',
    'NaN',
    'Infinity',
    '1,000',
    '--1',
    '1½',
    '-2 ⅜',
    '¾',
    '−5',
    '2e−3',
  ),
);
const exponent = fc.oneof(
  { weight: 4, arbitrary: fc.constant('') },
  { weight: 2, arbitrary: fc.constantFrom('^2', '^-1', '²', '³', '⁻¹', '⁻²', '^0.5', '^+3') },
  { weight: 1, arbitrary: fc.constantFrom('^', '⁻', '^x', '^99', '^0.3', '²²', '^2.', '^1e3') },
);
const factor = fc.tuple(fc.constantFrom(...units), exponent).map((parts) => parts.join(''));
const product = fc
  .tuple(fc.array(factor, { minLength: 1, maxLength: 3 }), fc.constantFrom('*', '·', ' * ', '×', '⋅'))
  .map(([factors, sign]) => factors.join(sign));
const unit = fc.oneof(
  product,
  fc.tuple(product, factor).map(([above, below]) => `${above}/${below}`),
  fc.tuple(product, product).map(([above, below]) => `${above}/(${below})`),
);
const valid = fc.tuple(number, fc.constantFrom(' ', '', '  '), unit).map((parts) => parts.join(''));
const mutated = fc
  .tuple(
    valid,
    fc.array(fc.tuple(fc.nat(3), fc.nat(60), fc.constantFrom(...letters)), { minLength: 1, maxLength: 3 }),
  )
  .map(([text, changes]) =>
    changes.reduce((now, [what, at, letter]) => {
      const i = at % (now.length + 1);
      const kept = what === 0 ? i : i + 1; // insert, replace, remove, double
      const added = what === 0 || what === 1 ? letter : what === 2 ? '' : (now[i] ?? '') + (now[i] ?? '');
      return now.slice(0, i) + added + now.slice(kept);
    }, text),
  );
const anything = fc.oneof(
  fc.string({ unit: fc.constantFrom(...letters), maxLength: 30 }),
  fc.string({ unit: 'binary', maxLength: 30 }),
  fc.string({ unit: 'grapheme', maxLength: 20 }),
);

/** What the library makes of a text: its SI value, or the code of its refusal. Throws where it does anything else. */
function outcome(text: string): { readonly si: number } | { readonly code: string } {
  try {
    const { si } = q(text);
    if (!Number.isFinite(si)) throw new Error(`${JSON.stringify(text)} is ${si}`);
    return { si };
  } catch (error) {
    if (error instanceof MeopError && /^[a-z-]+$/.test(error.code) && error.message.length < 500)
      return { code: error.code };
    throw error;
  }
}

// The library rounds each unit once, the evaluator multiplies rounded factors: up to six of them, to powers up to 7.
const close = (a: number, b: number): boolean =>
  Math.abs(a - b) <= 1e-13 * Math.abs(b) || Math.abs(a - b) < 1e-300;

describe('fuzzed texts', () => {
  const accepted = new Set<string>();
  const codes = new Map<string, number>();

  it.each([
    ['of the grammar', valid, 35_000],
    ['of the grammar with mistakes', mutated, 45_000],
    ['of any letters', anything, 20_000],
  ] as const)('%s are worth what GNU Units says, or are refused with a code', (_, texts, numRuns) => {
    fc.assert(
      fc.property(texts, (text) => {
        const result = outcome(text);
        if ('code' in result) {
          codes.set(result.code, (codes.get(result.code) ?? 0) + 1);
          return;
        }
        const expected = evaluate(text);
        expect(expected, `accepted ${JSON.stringify(text)}`).toBeDefined();
        const same = expected && close(result.si, expected.si);
        expect(same, `${JSON.stringify(text)} is ${result.si}, not ${expected?.si}`).toBe(true);
        accepted.add(text);
      }),
      { numRuns, seed },
    );
  });

  it('came to every kind of answer', () => {
    expect(accepted.size).toBeGreaterThan(8_000);
    expect([...codes.keys()].sort()).toEqual([
      'ambiguous-unit',
      'dimension-range',
      'no-number',
      'not-finite',
      'out-of-domain', // a temperature below absolute zero
      'unit-syntax',
      'unknown-unit',
    ]);
  });

  it.runIf(gnuInstalled())('are worth what the GNU Units installed here says, in 1,200 samples', () => {
    // GNU Units takes no half powers and no more than a hundred factors, and overflows on its way at the ends of the range.
    const all = [...accepted].filter((text) => {
      const ordinary = (size: number): boolean =>
        size === 0 || (Math.abs(size) > 1e-200 && Math.abs(size) < 1e200);
      const { si, kind } = q(text);
      if (kind === 'temperature' && si < 0) return false; // refused below absolute zero, which formulas do here
      return !/\^.*\.5|\^-?\d\d/.test(text) && ordinary(si) && ordinary(Number.parseFloat(text) || 0);
    });
    const samples = Array.from({ length: 1200 }, (_, i) => all[Math.floor((i * all.length) / 1200)]);
    const answers = askGnu(samples.map((text) => evaluate(text)?.gnu ?? ''));
    const differing = samples.flatMap((text, i) => {
      const answer = answers[i];
      const { si } = q(text);
      return answer && close(si, answer.value) ? [] : [`${text}: ${si}, ${answer?.value}`];
    });
    expect(samples.length).toBeGreaterThan(900);
    expect(differing).toEqual([]);
  });
});
