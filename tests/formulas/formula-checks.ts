import fc from 'fast-check';
import { expect } from 'vitest';
import { fromSiValue, isQuantity, MeopError, namedKinds, unitFor } from '../../src/units';
import type { Parameter } from '../../src/units/declare/parameter';
import { dimensionOfKind, kindFacts, type NamedKind } from '../../src/units/kinds';
import { fromSi } from '../../src/units/unit';
import { unitNames } from '../../src/units/unit-names';
import { definedIn, mainPart, occurrences, symbolsIn } from './equation-symbols';
import { exampleValues, nearExample, siOf, type TestedFormula, type Values } from './found-formulas';

// Each check throws where a formula breaks the rule it is named for. They are functions, not tests, so that
// tests/formulas/formula-checks.test.ts can show that a formula made wrong on purpose is caught.

const runs = 25;

// A quotient of two results: 1e-9 leaves seven digits for cancellation inside a formula, and no wrong power passes.
const same = (actual: number, expected: number, scale = Math.abs(expected)): void => {
  expect(Math.abs(actual - expected), `${actual} against ${expected}`).toBeLessThanOrEqual(1e-9 * scale);
};

const factorsFor = ({ inputs }: TestedFormula, min = 0.8, max = 1.25): fc.Arbitrary<number[]> => {
  const count = Object.keys(inputs).length;
  const factor = fc.double({ min, max, noNaN: true });
  return fc.array(factor, { minLength: count, maxLength: count });
};

/** The values as quantities, so that nothing is lost between text and double. */
function asQuantities({ inputs }: TestedFormula, values: Values): Readonly<Record<string, unknown>> {
  return Object.fromEntries(
    Object.entries(inputs).map(([field, { kind }]) => [
      field,
      fromSiValue(values[field], kind, unitFor(kind, kindFacts(kind)?.metric ?? '1')),
    ]),
  );
}

/** The result at these values; `undefined` where the formula says that they are outside its domain together. */
function resultAt(formula: TestedFormula, values: Values): unknown {
  try {
    return formula(asQuantities(formula, values));
  } catch (error) {
    if (error instanceof MeopError && error.code === 'out-of-domain') return undefined;
    throw error;
  }
}

export function checkIsDocumented({ title, source, equation, inputs, output }: TestedFormula): void {
  for (const text of [title, source, equation]) expect(text.trim()).not.toBe('');
  for (const [field, { symbol, meaning }] of Object.entries({ ...inputs, output })) {
    expect(symbol.trim(), `the symbol of ${field}`).not.toBe('');
    expect(meaning.trim(), `the meaning of ${field}`).not.toBe('');
  }
  const symbols = Object.values(inputs).map(({ symbol }) => symbol);
  expect(new Set(symbols).size, `two inputs share a symbol: ${symbols}`).toBe(symbols.length);
}

export function checkEquationSymbols({ equation, inputs, output }: TestedFormula): void {
  expect(equation, 'an equation has an equals sign').toContain('=');
  const declared = [...Object.values(inputs), output].map(({ symbol }) => symbol);
  for (const symbol of declared)
    expect(occurrences(equation, symbol, declared), `${symbol} in ${equation}`).toBeGreaterThan(0);
  const main = mainPart(equation);
  const explained = [...definedIn(equation), ...symbolsIn(equation.slice(main.length), declared)];
  const others = symbolsIn(main, declared).filter((name) => !explained.includes(name));
  expect(others, `symbols of ${equation} that nothing explains`).toEqual([]);
}

export function checkExample(formula: TestedFormula): void {
  expect(Number.isFinite(siOf(formula(formula.example)))).toBe(true);
  expect(formula.cautions(formula.example), 'a typical call stays within the validity').toEqual([]);
  for (const field of Object.keys(formula.example)) expect(Object.keys(formula.inputs)).toContain(field);
}

export function checkSiEqualsCall(formula: TestedFormula): void {
  const check = (factors: readonly number[]): void => {
    const values = nearExample(formula, factors);
    const result = resultAt(formula, values);
    if (result === undefined) return;
    expect(siOf(result)).toBe(formula.si(values)); // the same function on the same bits
    if (isQuantity(result)) expect(result.kind).toBe(formula.output.kind);
    else expect(formula.output.kind).toBe('dimensionless');
  };
  check(Object.keys(formula.inputs).map(() => 1));
  fc.assert(fc.property(factorsFor(formula), check), { numRuns: runs });
}

export function checkHomogeneity(formula: TestedFormula): void {
  const scale = fc.double({ min: 0.3, max: 3, noNaN: true });
  const bases = fc.tuple(scale, scale, scale, scale, scale);
  fc.assert(
    fc.property(factorsFor(formula), bases, (factors, sizes) => {
      const grown = (kind: NamedKind): number =>
        dimensionOfKind(kind).exponents.reduce((product, e, i) => product * sizes[i] ** e, 1);
      const values = nearExample(formula, factors);
      if (resultAt(formula, values) === undefined) return;
      const rescaled = Object.fromEntries(
        Object.entries(formula.inputs).map(([field, { kind }]) => [field, values[field] * grown(kind)]),
      );
      same(formula.si(rescaled), formula.si(values) * grown(formula.output.kind));
    }),
    { numRuns: runs },
  );
}

/** Every unit text that a given may be written in. */
function unitsFor({ kind }: Parameter): readonly string[] {
  const general = kind === 'temperature difference' ? kind : (kindFacts(kind)?.general ?? kind);
  const names = namedKinds().flatMap((named) =>
    named === kind || named === general ? unitNames(named) : [],
  );
  return kind === 'dimensionless' ? ['', '%'] : kind === 'specific impulse' ? [...names, 's'] : names;
}

export function checkUnitInvariance(formula: TestedFormula): void {
  const expected = formula.si(exampleValues(formula));
  const choices = Object.values(formula.inputs).map((given) => fc.constantFrom(...unitsFor(given)));
  fc.assert(
    fc.property(fc.tuple(...choices), (units) => {
      const values = exampleValues(formula);
      const texts = Object.fromEntries(
        Object.entries(formula.inputs).map(([field, { kind, domain }], i) => {
          const unit = unitFor(kind, domain.whole ? '1' : units[i] || '1');
          return [field, `${fromSi(values[field], unit)} ${unit.text === '1' ? '' : unit.text}`];
        }),
      );
      same(siOf(formula(texts)), expected);
    }),
    { numRuns: runs * 2 },
  );
}

export function checkExplanation(formula: TestedFormula): void {
  const explanation = formula.explain(formula.example);
  expect(explanation.value).toBe(siOf(formula(formula.example)));
  const text = String(explanation);
  const { source, equation, title, inputs, output } = formula;
  const parts = Object.values(inputs).flatMap(({ symbol, meaning }) => [symbol, meaning]);
  for (const part of [source, equation, title, output.symbol, output.meaning, ...parts])
    expect(text).toContain(part);
  const symbols = Object.values(inputs).map(({ symbol }) => symbol);
  const right = explanation.substitution.slice(explanation.substitution.indexOf('=') + 1);
  for (const symbol of symbols)
    expect(occurrences(right, symbol, symbols), `${symbol} in ${explanation.substitution}`).toBe(0);
  expect(explanation.toHtml()).toMatch(/^<figure>.*<\/figure>$/su);
  expect(text).not.toMatch(/NaN|undefined|\[object/u);
}

export function checkInverses(formula: TestedFormula): void {
  const check = (factors: readonly number[], mustSolve: boolean): void => {
    const values = nearExample(formula, factors);
    const result = resultAt(formula, values);
    if (result === undefined) return;
    for (const field of formula.solvable) {
      const { [field]: left, ...rest } = asQuantities(formula, values);
      expect(left).toBeDefined();
      let solved: number;
      try {
        solved = siOf(formula.solveFor(field, { ...rest, result }));
      } catch (error) {
        if (mustSolve || !(error instanceof MeopError && error.code === 'no-solution')) throw error;
        continue;
      }
      // Forward again, not back to the value given: an equation may have two roots.
      const scale = Math.max(Math.abs(siOf(result)), Math.abs(values[field] === 0 ? 1 : 0));
      same(formula.si({ ...values, [field]: solved }), siOf(result), scale);
    }
  };
  check(
    Object.keys(formula.inputs).map(() => 1),
    true,
  );
  fc.assert(
    fc.property(factorsFor(formula), (factors) => check(factors, false)),
    { numRuns: runs },
  );
}

export function checkFiniteNearExample(formula: TestedFormula): void {
  fc.assert(
    fc.property(factorsFor(formula), (factors) => {
      const result = resultAt(formula, nearExample(formula, factors));
      if (result !== undefined) expect(Number.isFinite(siOf(result))).toBe(true);
    }),
    { numRuns: runs * 4 },
  );
}
