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

/** Every parameter in SI, as the validity checks see them. */
export type SiValues<I extends Parameters> = { readonly [F in keyof I]: number };

/** Everything a careful engineer wants to know about one closed-form equation. */
export interface FormulaDeclaration<I extends Parameters, K extends NamedKind> {
  /** The name it is exported under. */
  readonly name: string;
  readonly title: string;
  /** The equation in the symbols of its parameters, every product written out: `σ_h = p·r / t`. */
  readonly equation: string;
  /** Where the equation is published: title, edition, section or equation number. */
  readonly source: string;
  readonly inputs: I;
  readonly output: Parameter<K>;
  /** A typical call: shown on the card, and the point around which every formula is tested. From the examples of the inputs where it is left out. */
  readonly example?: Arguments<I>;
  /** Each returns true where the formula may be trusted, else the caution to attach to the result. */
  readonly valid?: readonly ((values: SiValues<I>) => true | string)[];
  /** Each returns true where the formula exists at all, else what is wrong with these values together. */
  readonly requires?: readonly ((values: SiValues<I>) => true | string)[];
  readonly si: (values: SiArguments<I>) => number;
  /** The equation solved for a parameter, in SI, where that has a closed form. */
  readonly solve?: { readonly [F in keyof I]?: (result: number, values: SiValues<I>) => number };
}

/** What every calculation states of itself, whatever its inputs. */
export interface CalculationMetadata {
  /** The name it is exported under. */
  readonly id: string;
  readonly title: string;
  readonly source: string;
  readonly inputs: Inputs;
  /** What comes before the options object, where there is anything. */
  readonly subject: Input | undefined;
  /** The equation, where it is one. */
  readonly equation: string | undefined;
  /** What it gives, in words. */
  readonly gives: string;
  /** A typical call, as code. */
  readonly exampleCall: string;
  /** The inputs that `solveFor` solves for. */
  readonly solvable: readonly string[];
}

/** What every formula states of itself. */
export interface FormulaMetadata extends CalculationMetadata {
  readonly equation: string;
  readonly inputs: Parameters;
  readonly output: Parameter;
  /** The argument of a typical call. */
  readonly example: Readonly<Record<string, unknown>>;
}
