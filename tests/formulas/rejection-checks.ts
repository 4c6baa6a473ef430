import { expect } from 'vitest';
import { fromSiValue, MeopError, unitFor } from '../../src/units';
import type { Parameter } from '../../src/units/declare/parameter';
import { kindFacts } from '../../src/units/kinds';
import { exampleValues, type TestedFormula } from './found-formulas';

const metric = ({ kind }: Parameter): string => kindFacts(kind)?.metric ?? '1';
const asQuantity = (given: Parameter, si: number): unknown =>
  fromSiValue(si, given.kind, unitFor(given.kind, metric(given)));

/** The error that a call throws; anything but a MeopError fails the test. */
function rejection(call: () => unknown, what: string): MeopError {
  try {
    call();
  } catch (error) {
    expect(error, what).toBeInstanceOf(MeopError);
    if (error instanceof MeopError) return error;
  }
  throw new Error(`accepted ${what}`);
}

export function checkNotFinite(formula: TestedFormula): void {
  for (const [field, given] of Object.entries(formula.inputs))
    for (const [value, ...codes] of [
      [`NaN ${metric(given)}`, 'not-finite'],
      [`1e999 ${metric(given)}`, 'not-finite'],
      [`-Infinity ${metric(given)}`, 'not-finite'],
      ...[Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY].flatMap((bad) => [
        [asQuantity(given, bad), 'not-finite', 'out-of-domain'],
        [bad, 'not-finite', 'bare-number', 'out-of-domain'],
      ]),
    ]) {
      const what = `${field}: ${String(value)}`;
      const error = rejection(() => formula({ ...formula.example, [field]: value }), what);
      expect(codes, `${what}: ${error.message}`).toContain(error.code);
      expect(error.path, what).toBe(field);
      expect(error.message).toContain(field);
    }
}

/** SI values just outside each bound of a domain. */
function outside({ domain }: Parameter): readonly number[] {
  const step = (bound: number): number => Math.max(1e-9, Math.abs(bound) * 1e-6);
  return [
    ...(domain.above === undefined ? [] : [domain.above, domain.above - step(domain.above)]),
    ...(domain.min === undefined ? [] : [domain.min - step(domain.min)]),
    ...(domain.below === undefined ? [] : [domain.below, domain.below + step(domain.below)]),
    ...(domain.max === undefined ? [] : [domain.max + step(domain.max)]),
    ...(domain.whole ? [1.5] : []),
  ];
}

export function checkDomains(formula: TestedFormula): void {
  for (const [field, given] of Object.entries(formula.inputs))
    for (const si of outside(given)) {
      const what = `${field}: ${si} in SI`;
      const call = (): unknown => formula({ ...formula.example, [field]: asQuantity(given, si) });
      const error = rejection(call, what);
      expect(error.code, `${what}: ${error.message}`).toBe('out-of-domain');
      expect(error.path).toBe(field);
      expect(error.message).toContain(field);
      expect(error.expected, 'says what would have been accepted').toBeTruthy();
    }
}

export function checkWrongFields(formula: TestedFormula): void {
  const { example, inputs } = formula;
  const values = exampleValues(formula);
  const expectRejected = (change: object, code: string, path: string): void => {
    const error = rejection(() => formula({ ...example, ...change }), `${code} of ${path}`);
    expect(error.code, error.message).toBe(code);
    expect(error.path).toBe(path);
    expect(error.message).toContain(path);
    expect(error.message).toContain(formula.id);
  };
  for (const [field, given] of Object.entries(inputs)) {
    const foreign = given.kind === 'amount' ? '1 N' : '1 mol';
    expectRejected({ [field]: foreign }, 'wrong-kind', field);
    for (const bad of [null, {}, [], true, () => 1]) expectRejected({ [field]: bad }, 'wrong-kind', field);
    expectRejected({ [field]: '' }, 'no-number', field);
    if (given.kind !== 'dimensionless') expectRejected({ [field]: values[field] }, 'bare-number', field);
    if (given.standard === undefined) expectRejected({ [field]: undefined }, 'missing-field', field);
  }
  expectRejected({ noSuchField: '1 mm' }, 'unknown-field', 'noSuchField');
  const call: (values: unknown) => unknown = (values) => Reflect.apply(formula, undefined, [values]);
  for (const bad of [undefined, null, 7, 'text'])
    expect(rejection(() => call(bad), String(bad)).code).toBe('missing-field');
}
