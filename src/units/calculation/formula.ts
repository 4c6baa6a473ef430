import { inDomain } from '../declare/domain';
import { exampleOf } from '../declare/example';
import type { Arguments } from '../declare/input';
import { type Parameters, type Result, resultOf } from '../declare/parameter';
import { shownValue } from '../error-message';
import { MeopError } from '../errors';
import { readInput } from '../input';
import type { NamedKind } from '../kinds';
import { callText, cardText } from './card';
import type { FormulaDeclaration, FormulaMetadata, SiArguments, SiValues } from './declaration';
import { type Explanation, explanation } from './explain';
import { monotonicRoot } from './inverse';
import { argumentReader } from './read-arguments';
import { register } from './registry';
import { withFacts } from './with-facts';

/** The argument of `solveFor`: every parameter but one, and the result. */
export type SolveArguments<I extends Parameters, K extends NamedKind, F extends keyof I> = Omit<
  Arguments<I>,
  F
> & {
  readonly result: Result<K> | (K extends 'dimensionless' ? number : string);
};

/** A closed-form equation: call it with quantities, or use `.si` on plain SI numbers. */
export interface Formula<I extends Parameters, K extends NamedKind> extends FormulaMetadata {
  readonly inputs: I;
  /** The result with its unit; its `cautions` report where the equation is outside its range of validity. */
  (values: Arguments<I>): Result<K>;
  /** The name of the call. */
  evaluate(values: Arguments<I>): Result<K>;
  /** The equation on plain SI numbers; does not check its arguments. */
  readonly si: (values: SiArguments<I>) => number;
  /** The hand calculation, which prints as text, and as HTML in notebooks. */
  explain(values: Arguments<I>): Explanation;
  /** Cautions for these values; empty where the equation is valid. */
  cautions(values: Arguments<I>): readonly string[];
  /** The equation solved for one of `solvable`: give `result` instead of that parameter. */
  solveFor<F extends keyof I & string>(field: F, values: SolveArguments<I, K, F>): Result<I[F]['kind']>;
}

/**
 * Makes a formula from one declaration: the unit-aware call, `.si`, `.explain`, `.cautions`, `.solveFor`, its card
 * and its tests. `.solveFor` uses the closed form where the declaration has one, and otherwise finds the root
 * within the domain of the parameter where the equation is monotonic there. The formula throws `wrong-kind`,
 * `bare-number`, `missing-field`, `unknown-field`, `out-of-domain` and `not-finite`.
 *
 * @example hoopStress({ pressure: '10 MPa', radius: '20 mm', wall: '2 mm' }).in('MPa') // => 100
 */
export function formula<const I extends Parameters, const K extends NamedKind>(
  declaration: FormulaDeclaration<I, K>,
): Formula<I, K> {
  const { name, title, equation, source, inputs, output, si } = declaration;
  const example: object = declaration.example ?? exampleOf(inputs) ?? {};
  const { valid = [], requires = [], solve } = declaration;
  const read = argumentReader(name, inputs);

  const refused = (code: string, problem: string, given: unknown, path?: string): MeopError =>
    new MeopError({ code, procedure: name, path, given, problem });

  const checked = (values: SiValues<I>): number => {
    for (const holds of requires) {
      const verdict = holds(values);
      if (verdict !== true) throw refused('out-of-domain', verdict, values);
    }
    const value = si(values);
    if (Number.isFinite(value)) return value;
    throw refused('not-finite', `the result is ${value}, not a finite number; check the magnitudes`, values);
  };
  const cautionsAt = (values: SiValues<I>): readonly string[] => {
    let found = none;
    for (const holds of valid) {
      const verdict = holds(values);
      if (verdict !== true) found = [...found, verdict];
    }
    return found;
  };

  /** The value of a field that gives a result; `undefined` where there is none, or more than one. */
  const inverse = (field: keyof I & string, result: number, values: SiValues<I>): number | undefined => {
    const closed = solve?.[field];
    if (closed !== undefined) return closed(result, values);
    if (inputs[field].domain.whole) return undefined;
    const at = (x: number): number => finiteOr(Number.NaN, () => si({ ...values, [field]: x }));
    return monotonicRoot(at, result, inputs[field].domain, typical()[field]);
  };
  let found: SiValues<I> | undefined;
  const typical = (): SiValues<I> => {
    found ??= read(example, output).si;
    return found;
  };
  let solvable: readonly string[] | undefined;
  const findSolvable = (): readonly string[] => {
    const result = si(typical());
    return Object.keys(inputs).filter(
      (field) => solve?.[field] !== undefined || inverse(field, result, typical()) !== undefined,
    );
  };

  const evaluate = (values: object): Result<K> => {
    const given = read(values, output);
    return resultOf(output.kind, checked(given.si), given.shown, cautionsAt(given.si));
  };
  const solveFor = <F extends keyof I & string>(
    field: F,
    { result, ...values }: { readonly result?: unknown } = {},
  ): Result<I[F]['kind']> => {
    if (!facts.solvable.includes(field)) {
      const fields = facts.solvable.join(', ') || 'its result only';
      throw refused('not-solvable', `solves for ${fields}, not for '${field}'`, field, 'field');
    }
    const target = inputs[field];
    const wanted = readInput(output.kind, 'result', result, name).si;
    const given = read(values, target, field);
    const solved = inverse(field, wanted, given.si);
    if (solved === undefined || !Number.isFinite(solved) || !inDomain(solved, target.domain))
      throw refused(
        'no-solution',
        `no single value gives a ${output.meaning} of ${shownValue(result)} here`,
        result,
        field,
      );
    return resultOf<I[F]['kind']>(target.kind, solved, given.shown);
  };

  const facts: FormulaMetadata & { readonly inputs: I } = {
    id: name,
    title,
    equation,
    source,
    inputs,
    output,
    subject: undefined,
    example: { ...example },
    gives: `${output.symbol}, ${output.meaning} (${output.kind})`,
    exampleCall: callText(name, example),
    get solvable() {
      solvable ??= findSolvable();
      return solvable;
    },
  };
  const card = (): string => cardText(facts);
  const made = Object.assign((values: Arguments<I>) => evaluate(values), {
    evaluate,
    si,
    cautions: (values: object) => cautionsAt(read(values, output).si),
    explain: (values: object): Explanation => {
      const given = read(values, output);
      const value = checked(given.si);
      return explanation({ facts, given: { ...values }, ...given, value, cautions: cautionsAt(given.si) });
    },
    solveFor,
    toString: card,
    [Symbol.for('nodejs.util.inspect.custom')]: card,
  });
  const complete = withFacts(made, name, facts);
  register(complete);
  return complete;
}

const none: readonly string[] = Object.freeze([]);

/** The value of an equation, or `otherwise` where the equation is not defined. */
function finiteOr(otherwise: number, value: () => number): number {
  try {
    return value();
  } catch (error) {
    if (error instanceof MeopError) return otherwise;
    throw error;
  }
}
