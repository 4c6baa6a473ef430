/** Argument checks, made once on entry to a numerical routine and never inside its loops. */
import { MeopError } from '../units/errors';

/** Makes the error of an invalid argument: code `invalid-argument`, with the name of the argument as its path. */
export function invalidArgument(name: string, value: unknown, expected: string): MeopError {
  return new MeopError({ code: 'invalid-argument', path: name, given: value, expected });
}

export function requireFinite(name: string, value: number): void {
  if (!Number.isFinite(value)) throw invalidArgument(name, value, 'a finite number');
}

export function requirePositive(name: string, value: number): void {
  if (!(value > 0 && value < Infinity)) throw invalidArgument(name, value, 'a finite number above zero');
}

export function requireNonNegative(name: string, value: number): void {
  if (!(value >= 0 && value < Infinity)) throw invalidArgument(name, value, 'a finite number, zero or above');
}

export function requireInteger(name: string, value: number, least: number): void {
  if (!Number.isInteger(value) || value < least) {
    throw invalidArgument(name, value, `a whole number of at least ${least}`);
  }
}

export function requireFiniteArray(name: string, values: ArrayLike<number>, least = 1): void {
  if (values.length < least) throw invalidArgument(`${name}.length`, values.length, `at least ${least}`);
  for (let i = 0; i < values.length; i++) requireFinite(`${name}[${i}]`, values[i]);
}

export function requireSameLength(
  firstName: string,
  first: ArrayLike<unknown>,
  secondName: string,
  second: ArrayLike<unknown>,
): void {
  if (first.length !== second.length) {
    throw invalidArgument(
      secondName,
      second.length,
      `a list of ${first.length} values, as many as ${firstName}`,
    );
  }
}

export function requireIncreasing(name: string, values: ArrayLike<number>, least = 1): void {
  requireFiniteArray(name, values, least);
  for (let i = 1; i < values.length; i++) {
    const previous = values[i - 1];
    const current = values[i];
    if (!(current > previous)) {
      throw invalidArgument(`${name}[${i}]`, current, `greater than the value before it (${previous})`);
    }
  }
}
