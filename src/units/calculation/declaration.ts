import type { Arguments, Input, Inputs } from '../declare/input';
import type { Parameter, Parameters } from '../declare/parameter';
import type { NamedKind } from '../kinds';

type Standard<I extends Parameters> = {
  [F in keyof I]: I[F]['need'] extends 'required' ? never : F;
}[keyof I];

/** The argument of `.si`: plain SI numbers. */
export type SiArguments<I extends Parameters> = { readonly [F in Exclude<keyof I, Standard<I>>]: number } & {
  readonly [F in Standard<I>]?: number;
};

/** Every parameter in SI, as passed to the validity checks. */
export type SiValues<I extends Parameters> = { readonly [F in keyof I]: number };

/** Declaration of one closed-form equation. */
export interface FormulaDeclaration<I extends Parameters, K extends NamedKind> {
  /** The exported name. */
  readonly name: string;
  readonly title: string;
  /** The equation in the symbols of its parameters, with every product explicit: `σ_h = p·r / t`. */
  readonly equation: string;
  /** Publication of the equation: title, edition, section or equation number. */
  readonly source: string;
  readonly inputs: I;
  readonly output: Parameter<K>;
  /** A typical call, shown on the card; tests vary every formula around it. From the examples of the inputs where it is left out. */
  readonly example?: Arguments<I>;
  /** Each returns true where the formula is valid, otherwise the caution to attach to the result. */
  readonly valid?: readonly ((values: SiValues<I>) => true | string)[];
  /** Each returns true where the formula is defined, otherwise the conflict between the values. */
  readonly requires?: readonly ((values: SiValues<I>) => true | string)[];
  readonly si: (values: SiArguments<I>) => number;
  /** The equation solved for a parameter, in SI, where that has a closed form. */
  readonly solve?: { readonly [F in keyof I]?: (result: number, values: SiValues<I>) => number };
}

/** Metadata of every calculation. */
export interface CalculationMetadata {
  /** The exported name. */
  readonly id: string;
  readonly title: string;
  readonly source: string;
  readonly inputs: Inputs;
  /** Arguments before the options object, if any. */
  readonly subject: Input | undefined;
  /** The equation, for a formula. */
  readonly equation: string | undefined;
  /** Description of the result. */
  readonly gives: string;
  /** A typical call, as code. */
  readonly exampleCall: string;
  /** The inputs for which `solveFor` can solve. */
  readonly solvable: readonly string[];
}

/** Metadata of every formula. */
export interface FormulaMetadata extends CalculationMetadata {
  readonly equation: string;
  readonly inputs: Parameters;
  readonly output: Parameter;
  /** The argument of a typical call. */
  readonly example: Readonly<Record<string, unknown>>;
}
