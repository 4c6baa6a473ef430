import Decimal from 'decimal.js';
import { combine, type Dimension, dimension, dimensionless } from './dimension';
import type { NamedKind } from './kinds';
import { atoms, prefixes } from './unit-table';

/** A unit's size as an exact ratio of two decimals, never rounded on the way. */
export interface ExactUnit {
  readonly above: Decimal;
  readonly below: Decimal;
  readonly dimension: Dimension;
  readonly kind: NamedKind | undefined;
  /** Whether it is built on the inch, the pound or the Fahrenheit degree. */
  readonly us: boolean;
}

let exact: typeof Decimal | undefined; // made at first use: a call at module level would defeat tree shaking
const worked = new Map<string, ExactUnit>();

function decimals(): typeof Decimal {
  exact ??= Decimal.clone({ precision: 100, toExpNeg: -200, toExpPos: 200 });
  return exact;
}

const baseExponents: Readonly<Record<string, Parameters<typeof dimension>[0]>> = {
  m: [1, 0, 0, 0, 0],
  g: [0, 1, 0, 0, 0],
  s: [0, 0, 1, 0, 0],
  K: [0, 0, 0, 1, 0],
  mol: [0, 0, 0, 0, 1],
};

/** One factor of a unit text: an atom, its size and its exponent. */
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
  const D = decimals();
  const grams = name === 'g' ? 1000 : 1; // the SI base is the kilogram
  return { above: new D(1), below: new D(grams), dimension: dimension(baseExponents[name]), kind, us: false };
}

function prefixedAtom(name: string): ExactUnit | undefined {
  const prefix = name[0] === 'u' || name[0] === 'μ' ? 'µ' : name[0];
  const rest = name.slice(1);
  if (!Object.hasOwn(atoms, rest) || !atoms[rest][1]?.split(' ').includes(prefix)) return undefined;
  const unit = exactAtom(rest);
  return unit && { ...unit, above: unit.above.times(prefixes[prefix]) };
}

/** The product of factors; one atom by itself keeps its kind. */
export function exactProduct(factors: readonly UnitFactor[]): ExactUnit {
  if (factors.length === 1 && factors[0].power === 1) return factors[0].unit;
  return factors.reduce((product, { unit, power }) => times(product, unit, power), pure(1));
}

// Definitions are this library's own table: products and quotients of numbers and atoms, left to right.
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
  const D = decimals();
  return { above: new D(value), below: new D(1), dimension: dimensionless, kind: undefined, us: false };
}

function times(
  product: ExactUnit,
  { above, below, dimension: own, us }: ExactUnit,
  power: number,
): ExactUnit {
  const [up, down] = power < 0 ? [below, above] : [above, below];
  return {
    above: product.above.times(up.pow(Math.abs(power))),
    below: product.below.times(down.pow(Math.abs(power))),
    dimension: combine(product.dimension, own, power),
    kind: undefined,
    us: product.us || us,
  };
}

/** A multiplier and a divisor in doubles: a short exact ratio where there is one, else rounded once. */
export function doubles({ above, below }: ExactUnit): { factor: number; divisor: number } {
  const ratio = above.div(below);
  const [n, d] = ratio.toFraction(1e6).map(Number);
  if (n < 1e6 && above.times(d).eq(below.times(n))) return { factor: n, divisor: d };
  return { factor: ratio.toNumber(), divisor: 1 };
}
