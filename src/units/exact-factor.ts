import Decimal from 'decimal.js';
import { combine, type Dimension, dimension, dimensionless } from './dimension';
import type { NamedKind } from './kinds';
import { atoms, prefixes } from './unit-table';

/** A unit's size in SI to a hundred digits: exact, except for factors with a third or π. */
export interface ExactUnit {
  readonly size: Decimal;
  readonly dimension: Dimension;
  readonly kind: NamedKind | undefined;
  /** True if it is based on the inch, the pound or the Fahrenheit degree. */
  readonly us: boolean;
}

let exact: typeof Decimal | undefined; // made on first use: a call at module level would defeat tree shaking
const worked = new Map<string, ExactUnit>();

function decimals(): typeof Decimal {
  exact ??= Decimal.clone({ precision: 100 });
  return exact;
}

const baseExponents: Readonly<Record<string, Parameters<typeof dimension>[0]>> = {
  m: [1, 0, 0, 0, 0],
  g: [0, 1, 0, 0, 0],
  s: [0, 0, 1, 0, 0],
  K: [0, 0, 0, 1, 0],
  mol: [0, 0, 0, 0, 1],
};

/** One factor of a unit string: an atom, its size and its exponent. */
export interface UnitFactor {
  readonly atom: string;
  readonly unit: ExactUnit;
  readonly power: number;
}

/** The exact size of an atom, prefixed or not; `undefined` where there is no such atom. */
export function exactAtom(name: string): ExactUnit | undefined {
  const made = worked.get(name) ?? plainAtom(name) ?? prefixedAtom(name);
  if (made) worked.set(name, made);
  return made;
}

const usRoots = /^(?:in|lb|degF|degR|delta_degF)$/;

function plainAtom(name: string): ExactUnit | undefined {
  if (!Object.hasOwn(atoms, name)) return undefined;
  const [definition, , kind] = atoms[name];
  if (definition !== '') {
    const made = define(definition);
    return { ...made, kind, us: made.us || usRoots.test(name) };
  }
  const one = pure(name === 'g' ? '0.001' : 1); // the SI base is the kilogram
  return { ...one, dimension: dimension(baseExponents[name]), kind };
}

function prefixedAtom(name: string): ExactUnit | undefined {
  const [prefix] = name;
  const rest = name.slice(1);
  if (!Object.hasOwn(atoms, rest) || !atoms[rest][1]?.split(' ').includes(prefix)) return undefined;
  const unit = exactAtom(rest);
  return unit && { ...unit, size: unit.size.times(prefixes[prefix]) };
}

/** The product of factors. */
export const exactProduct = (factors: readonly UnitFactor[]): ExactUnit =>
  factors.reduce((product, { unit, power }) => times(product, unit, power), pure(1));

// Definitions are from the table of this library: products and quotients of numbers and atoms, left to right.
function define(definition: string): ExactUnit {
  let product = pure(1);
  for (const [, operator, number, atom, power = 1] of definition.matchAll(
    /(^|[*/])(?:([\d.]+)|([^*/^]+))(?:\^(\d))?/g,
  )) {
    const one = number || atom === 'pi' ? pure(number ?? decimals().acos(-1)) : exactAtom(atom);
    if (!one) throw new Error(`unit table: ${definition}`);
    product = times(product, one, operator === '/' ? -power : Number(power));
  }
  return product;
}

function pure(value: Decimal.Value): ExactUnit {
  const size = new (decimals())(value);
  return { size, dimension: dimensionless, kind: undefined, us: false };
}

const times = (product: ExactUnit, { size, dimension: own, us }: ExactUnit, power: number): ExactUnit => ({
  size: product.size.times(size.pow(power)),
  dimension: combine(product.dimension, own, power),
  kind: undefined,
  us: product.us || us,
});

/** A multiplier and a divisor in doubles: a short exact ratio where there is one, otherwise rounded once. */
export function doubles({ size }: ExactUnit): { factor: number; divisor: number } {
  const [factor, divisor] = size.toFraction(1e6).map(Number);
  const short = factor < 1e6 && size.times(divisor).minus(factor).abs().lt('1e-90');
  return short ? { factor, divisor } : { factor: size.toNumber(), divisor: 1 };
}
