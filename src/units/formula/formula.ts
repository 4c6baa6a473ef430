import { MeopError } from '../errors';
import { readInput } from '../input';
import type { NamedKind } from '../kinds';
import { fromSiValue } from '../quantity';
import { quoted } from '../quantity-error';
import type { Unit } from '../unit';
import { cardText } from './card';
import type {
  Arguments,
  Declaration,
  FormulaMetadata,
  Givens,
  Result,
  SiArguments,
  SiValues,
} from './declaration';
import { inDomain } from './domain';
import { type Explanation, explanation } from './explain';
import { argumentReader } from './read-arguments';
import { register } from './registry';

/** The argument of `solveFor`: every parameter but one, and the result. */
export type SolveArguments<I extends Givens, K extends NamedKind, F extends keyof I> = Omit<
  Arguments<I>,
  F
> & {
  readonly result: Result<K> | (K extends 'dimensionless' ? number : string);
};

/** A closed-form equation: call it with quantities, or use `.si` on plain SI numbers. */
export interface Formula<I extends Givens, K extends NamedKind> extends FormulaMetadata {
  /** The result with its unit; its `cautions` say where the equation left its validity. */
  (values: Arguments<I>): Result<K>;
  /** The call itself, under a name. */
  evaluate(values: Arguments<I>): Result<K>;
  /** The equation on plain SI numbers; checks nothing. */
  readonly si: (values: SiArguments<I>) => number;
  /** The calculation written out as a person would: prints as text, in notebooks as HTML. */
  explain(values: Arguments<I>): Explanation;
  /** What to keep in mind for these values; empty where the equation may be trusted. */
  cautions(values: Arguments<I>): readonly string[];
  /** The equation solved for one of `solvable`: give `result` instead of that parameter. */
  solveFor<F extends keyof I & string>(field: F, values: SolveArguments<I, K, F>): Result<I[F]['kind']>;
}

/**
 * Makes a formula from one declaration: the unit-aware call, `.si`, `.explain`, `.cautions`, `.solveFor`, its card and
 * its place in the tests all come from it. The formula throws `wrong-kind`, `bare-number`, `missing-field`,
 * `unknown-field`, `out-of-domain` and `not-finite`.
 *
 * @example hoopStress({ pressure: '10 MPa', radius: '20 mm', wall: '2 mm' }).in('MPa') // => 100
 */
export function formula<const I extends Givens, const K extends NamedKind>(
  declaration: Declaration<I, K>,
): Formula<I, K> {
  const { name, title, equation, source, inputs, output, example, si } = declaration;
  const { valid = [], requires = [], solve } = declaration;
  const read = argumentReader(name, inputs);

  const refusal = (code: string, what: string, value: unknown, path?: string): MeopError =>
    new MeopError(code, `${name}: ${what}`, path, { value });

  const checked = (values: SiValues<I>): number => {
    for (const holds of requires) {
      const verdict = holds(values);
      if (verdict !== true) throw refusal('out-of-domain', verdict, values);
    }
    const value = si(values);
    if (Number.isFinite(value)) return value;
    throw refusal('not-finite', `these values give ${value}, not a finite number: check their size`, values);
  };
  const cautionsAt = (values: SiValues<I>): readonly string[] => {
    let found = none;
    for (const holds of valid) {
      const verdict = holds(values);
      if (verdict !== true) found = [...found, verdict];
    }
    return found;
  };

  const evaluate = (values: object): Result<K> => {
    const given = read(values, output);
    return present(output.kind, checked(given.si), given.shown, cautionsAt(given.si));
  };
  const solveFor = <F extends keyof I & string>(
    field: F,
    { result, ...values }: { readonly result?: unknown } = {},
  ): Result<I[F]['kind']> => {
    const solver = solve?.[field];
    if (!solver) {
      const fields = facts.solvable.join(', ') || 'its result only';
      throw refusal('not-solvable', `it is solved for ${fields}, not for '${field}'`, field, 'field');
    }
    const target = inputs[field];
    const wanted = readInput(output.kind, 'result', result, name).si;
    const given = read(values, target, field);
    const solved = solver(wanted, given.si);
    if (!Number.isFinite(solved) || !inDomain(solved, target.domain))
      throw refusal(
        'no-solution',
        `no ${field} gives a ${output.meaning} of ${quoted(result)} here`,
        result,
        field,
      );
    return present<I[F]['kind']>(target.kind, solved, given.shown, none);
  };

  const facts = {
    id: name,
    title,
    equation,
    source,
    inputs,
    output,
    example: { ...example },
    solvable: Object.keys(solve ?? {}),
  };
  const card = (): string => cardText(facts);
  const made = Object.assign((values: Arguments<I>) => evaluate(values), facts, {
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
  Object.defineProperty(made, 'name', { value: name });
  register(made);
  return made;
}

const none: readonly string[] = Object.freeze([]);

function present<K extends NamedKind>(
  kind: K,
  si: number,
  unit: Unit,
  cautions: readonly string[],
): Result<K> {
  // True by the definition of Result: a number where there is no dimension, else a quantity.
  return (kind === 'dimensionless' ? si : fromSiValue<K>(si, kind, unit, cautions)) as Result<K>;
}
