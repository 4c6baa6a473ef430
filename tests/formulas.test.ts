import { describe, expect, it } from 'vitest';
import * as check from './formulas/formula-checks';
import { formulasOf, type TestedFormula } from './formulas/found-formulas';
import * as reject from './formulas/rejection-checks';

// Every formula that any module exports, found by itself: a new formula is under test by being exported.

const modules = import.meta.glob<object>(['../src/*/index.ts', '!../src/bin/**']);
const found = new Map<string, { readonly formula: TestedFormula; readonly paths: string[] }>();
const broken: [path: string, error: unknown][] = [];

for (const [path, load] of Object.entries(modules)) {
  try {
    for (const [name, formula] of formulasOf(await load())) {
      const known = found.get(name);
      if (known) known.paths.push(path);
      else found.set(name, { formula, paths: [path] });
    }
  } catch (error) {
    broken.push([path, error]);
  }
}

describe('the search for formulas', () => {
  it('loads every module', () => expect(broken).toEqual([]));
  it('finds the pilot formulas', () => {
    const pilots = [
      'hoopStress',
      'longitudinalStress',
      'idealCharacteristicVelocity',
      'burnRate',
      'closureForce',
    ];
    expect([...found.keys()]).toEqual(expect.arrayContaining(pilots));
  });
  it('finds each name in one module only', () => {
    expect([...found].filter(([, { paths }]) => paths.length > 1)).toEqual([]);
  });
});

describe.each([...found].map(([name, { formula }]) => ({ name, formula })))('$name', ({ name, formula }) => {
  it('is exported under its own name', () => {
    expect(formula.id).toBe(name);
    expect(formula.name).toBe(name);
  });
  it('has a source, and a meaning and a symbol for everything', () => check.checkIsDocumented(formula));
  it('names its inputs in the equation, and nothing else', () => check.checkEquationSymbols(formula));
  it('evaluates its example within its validity', () => check.checkExample(formula));
  it('gives by .si what the unit-aware call gives', () => check.checkSiEqualsCall(formula));
  it('is dimensionally homogeneous', () => check.checkHomogeneity(formula));
  it('gives the same result whatever the units', () => check.checkUnitInvariance(formula));
  it('explains with its number, source and symbols', () => check.checkExplanation(formula));
  it('is finite, or refuses, around its example', () => check.checkFiniteNearExample(formula));
  it('rejects NaN and infinity, naming the field', () => reject.checkNotFinite(formula));
  it('rejects what is outside a domain, naming the field', () => reject.checkDomains(formula));
  it('rejects wrong, bare, missing and unknown fields', () => reject.checkWrongFields(formula));
  it.runIf(formula.solvable.length > 0)('inverts', () => check.checkInverses(formula));
});
