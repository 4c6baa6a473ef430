import { type Check, checked } from '../declare/group';
import type { Argument, Arguments, Input, Inputs, Values } from '../declare/input';
import { isParameter } from '../declare/optional';
import { readInputs } from '../declare/read-inputs';
import { coherentUnit, formatNumber, prettyUnit } from '../format';
import { isQuantity } from '../quantity-mark';
import { callText, cardText } from './card';
import type { CalculationMetadata } from './declaration';
import { asGiven } from './explain';
import { register } from './registry';
import { withFacts } from './with-facts';
import { closingLines, type ExplainedParameter, printed, type Working } from './working';

/** Declaration common to all procedures. */
interface Declared<I extends Inputs, S> {
  /** The exported name. */
  readonly name: string;
  readonly title: string;
  /** Publication of the method, or its origin in practice. */
  readonly source: string;
  readonly inputs: I;
  /** Description of the result. */
  readonly gives: string;
  /** Checks between values, run after all are read. */
  readonly checks?: readonly Check<Values<I>>[];
  /** The calculation on plain SI numbers, where available; does not check its arguments. */
  readonly si?: S;
  /** Whether it gives a promise, which then rejects with every error, those of the inputs included. */
  readonly asynchronous?: boolean;
}

/** A calculation of any form: an iteration, several results, a whole review. */
export interface ProcedureDeclaration<I extends Inputs, R, S> extends Declared<I, S> {
  /** A typical argument, as code where it requires other calls: `review(demoMotor())`. */
  readonly example: Arguments<I> | string;
  readonly run: (values: Values<I>) => R;
  /** The formulas of the hand calculation, in order, ending with the result. */
  readonly working?: (values: Values<I>, result: R) => readonly Working[];
}

/** A calculation of one subject, such as a motor or a firing, with options. */
export interface SubjectDeclaration<T extends Input, I extends Inputs, R, S> extends Declared<I, S> {
  readonly subject: T;
  /** A typical call, as code. */
  readonly example: string;
  readonly run: (subject: ReturnType<T['read']>, values: Values<I>) => R;
  readonly working?: (values: Values<I>, result: R) => readonly Working[];
}

type Options<I extends Inputs> =
  Readonly<Record<never, never>> extends Arguments<I>
    ? readonly [values?: Arguments<I>]
    : readonly [values: Arguments<I>];

/** Properties of a procedure in addition to its call. */
interface ProcedureBody<G extends readonly unknown[], I extends Inputs, R, S> extends CalculationMetadata {
  readonly inputs: I;
  /** The name of the call. */
  evaluate(...given: G): R;
  /** The calculation as text: arguments, steps where these are formulas, result. */
  explain(...given: G): Working;
  /** The calculation on plain SI numbers, where available; does not check its arguments. */
  readonly si: S;
}

/** A calculation of one options object. */
export interface Procedure<I extends Inputs, R, S = undefined> extends ProcedureBody<Options<I>, I, R, S> {
  (...given: Options<I>): R;
}

/** A calculation of one subject, with options. */
export interface SubjectProcedure<T extends Input, I extends Inputs, R, S = undefined>
  extends ProcedureBody<readonly [subject: Argument<T>, ...Options<I>], I, R, S> {
  (subject: Argument<T>, ...given: Options<I>): R;
}

/** Makes a procedure of one subject with options from one declaration; see the other form. */
export function procedure<const T extends Input, const I extends Inputs, R, S = undefined>(
  declaration: SubjectDeclaration<T, I, R, S>,
): SubjectProcedure<T, I, R, S>;
/**
 * Makes a procedure from one declaration: the checked, unit-aware call, `.explain`, `.si` where available, its
 * card and its tests. `run` receives values that are read, checked and complete. The procedure throws
 * `wrong-kind`, `bare-number`, `missing-field`, `unknown-field`, `unknown-name`, `out-of-domain` and the errors of
 * `run`.
 *
 * @example procedure({ name: 'twice', title: 'Twice a length', source: 'arithmetic', inputs: { size: length('x', 'a length') }, gives: 'twice the length', example: { size: '1 mm' }, run: ({ size }) => size.times(2) })({ size: '3 mm' }).in('mm') // => 6
 */
export function procedure<const I extends Inputs, R, S = undefined>(
  declaration: ProcedureDeclaration<I, R, S>,
): Procedure<I, R, S>;
export function procedure(declaration: AnyDeclaration): unknown {
  const { name, title, source, inputs, gives, checks = [], subject, example } = declaration;
  const top = { procedure: name, path: '' };

  const read = (given: readonly unknown[]): readonly unknown[] => {
    const [first, second] = subject === undefined ? [undefined, given[0]] : given;
    const options = second === undefined && allOmissible(inputs) ? {} : second;
    if (subject === undefined) return [checked(readInputs(inputs, options, top), checks, top)];
    const of = subject.read(first, { procedure: name, path: subjectPath(subject) });
    return [of, checked(readInputs(inputs, options, top), checks, top)];
  };
  const call = (given: readonly unknown[]): unknown => declaration.run(...read(given));
  const evaluate = (...given: readonly unknown[]): unknown =>
    declaration.asynchronous ? new Promise((resolve) => resolve(call(given))) : call(given);
  const explain = (...given: readonly unknown[]): Working => {
    const values = read(given);
    const result = declaration.run(...values);
    const options = Object(values.at(-1));
    const steps = declaration.working?.(options, result) ?? [];
    const cautions: readonly string[] = Array.isArray(Object(result).cautions) ? Object(result).cautions : [];
    const givens = explained(inputs, Object(given.at(subject === undefined ? 0 : 1)), options);
    const below = [
      ...steps.map(String),
      `${gives}:`,
      ...asResult(result)
        .split('\n')
        .map((line) => `  ${line}`),
      ...closingLines(cautions, source),
    ];
    return {
      ...{ title, givens, result: asResult(result), cautions, source },
      ...printed({ title, above: [], givens, below }),
    };
  };

  const facts: CalculationMetadata = {
    id: name,
    title,
    source,
    inputs,
    subject,
    equation: undefined,
    gives,
    exampleCall: typeof example === 'string' ? example : callText(name, example),
    solvable: [],
  };
  const card = (): string => cardText(facts);
  const made = Object.assign((...given: readonly unknown[]) => evaluate(...given), {
    evaluate,
    explain,
    si: declaration.si,
    toString: card,
    [Symbol.for('nodejs.util.inspect.custom')]: card,
  });
  const complete = withFacts(made, name, facts);
  register(complete);
  return complete;
}

/** A declaration of either form without its types, which the overloads have checked. */
interface AnyDeclaration extends Omit<Declared<Inputs, unknown>, 'checks'> {
  readonly subject?: Input;
  readonly checks?: readonly Check<unknown>[];
  readonly example: unknown;
  run(...values: readonly unknown[]): unknown;
  working?(values: unknown, result: unknown): readonly Working[];
}

const allOmissible = (inputs: Inputs): boolean =>
  Object.values(inputs).every(({ need }) => need !== 'required');

// A subject has no field name: its errors use its meaning, or the field where it has fields of its own.
const subjectPath = ({ type, takes }: Input): string =>
  type === 'variants' ? '' : takes().replace(/^an? /, '');

function explained(
  inputs: Inputs,
  given: Readonly<Record<string, unknown>>,
  values: Readonly<Record<string, unknown>>,
): readonly ExplainedParameter[] {
  return Object.entries(inputs).flatMap(([field, input]): readonly ExplainedParameter[] => {
    const value = values[field];
    if (value === undefined) return [];
    if ('fields' in input) return explained(Object(input.fields), Object(given[field]), Object(value));
    const shown = given[field] === undefined ? 'assumed' : asResult(given[field]);
    const symbol = isParameter(input) ? input.symbol : field;
    const si = isParameter(input) ? siText(value, input.kind) : '';
    return [{ symbol, meaning: input.meaning, given: shown, si }];
  });
}

function siText(value: unknown, kind: Parameters<typeof coherentUnit>[0]): string {
  const si = isQuantity(value) ? value.si : Number(value);
  return `${formatNumber(si, 7)} ${prettyUnit(coherentUnit(kind))}`.trimEnd();
}

/** A value on one line or several: its own string where it has one, otherwise its fields. */
function asResult(value: unknown): string {
  if (typeof value !== 'object' || value === null || isQuantity(value)) return asGiven(value);
  if (String(value) !== '[object Object]') return String(value);
  return Object.entries(value)
    .filter(([field, one]) => typeof one !== 'function' && field !== 'cautions')
    .map(([field, one]) => `${field} = ${asGiven(one)}`)
    .join('\n');
}
