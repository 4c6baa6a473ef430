import { combine, dimensionless } from './dimension';
import { MeopError } from './errors';
import { escaped, type FormatOptions, formatSi, machineText } from './format';
import type {
  Accepts,
  AddableTo,
  DivisorOf,
  KindOfMinus,
  KindOfPer,
  KindOfPow,
  KindOfRoot,
  KindOfTimes,
  SubtractableFrom,
} from './kind-rules';
import { accepts, differenceOf, isGaugeRatio, isSameKind, kindOfProduct, kindOfSum } from './kind-rules';
import { type Kind, kindOfDimension, type NamedKind } from './kinds';
import { isBelowZero, wrongKind } from './quantity-error';
import { isQuantity, mark } from './quantity-mark';
import { shownIn } from './shown-unit';
import { fromSi, type Unit, unitFor, unitOf } from './unit';
import type { UnitOf } from './unit-names';
import { unitToShow } from './unit-to-show';

declare const kindOf: unique symbol;

/**
 * An immutable value with its dimension, stored as an SI double, and the unit in which it is shown. Make one with
 * {@link q} or {@link quantity}. The compiler knows its kind: a pressure times an area is a force.
 *
 * @example q('1000 psi').times(q('2 in^2')).in('lbf') // => 2000
 */
export interface Quantity<K extends Kind = Kind> {
  /** Present in the type only: `{ si: 5 }` is not a quantity. */
  readonly [kindOf]: K;
  /** The value in coherent SI units. */
  readonly si: number;
  /** The kind, such as `'length'` or `'gauge pressure'`. */
  readonly kind: Kind;
  /** The unit in which it is shown. */
  readonly unit: string;
  /** Cautions: limits of validity that are exceeded. Arithmetic does not propagate them. */
  readonly cautions: readonly string[];
  /** The number in a unit. @throws MeopError `wrong-unit` */
  in(unit: UnitOf<K>): number;
  /** The same quantity, shown in a unit. @throws MeopError `wrong-unit` */
  to(unit: UnitOf<K>): Quantity<K>;
  /** The sum. @throws MeopError `wrong-kind` */
  plus<O extends AddableTo<K>>(other: Quantity<O>): Quantity<K>;
  /** The difference; of two points, such as temperatures, a difference kind. @throws MeopError `wrong-kind` */
  minus<O extends SubtractableFrom<K>>(other: Quantity<O>): Quantity<NoInfer<KindOfMinus<K, O>>>;
  /** The product with a quantity or a number. */
  times<O extends Kind = 'dimensionless'>(
    other: Quantity<O> | number,
  ): Quantity<NoInfer<[O] extends ['dimensionless'] ? K : KindOfTimes<K, O>>>;
  /** The quotient by a quantity or a number. @throws MeopError `divided-by-zero`, `gauge-ratio` */
  per<O extends DivisorOf<K> | 'dimensionless' = 'dimensionless'>(
    other: Quantity<O> | number,
  ): Quantity<NoInfer<[O] extends ['dimensionless'] ? K : KindOfPer<K, O>>>;
  /** An integer power. */
  pow<N extends number>(n: N): Quantity<KindOfPow<K, N>>;
  /** The n-th root. */
  root<N extends number>(n: N): Quantity<KindOfRoot<K, N>>;
  /** The same value meant as another kind of the same dimension: `q('4 N*m').as('torque')`. */
  as<T extends NamedKind>(kind: T): Quantity<T>;
  /** The printed text, with four significant figures by default. */
  format(options?: FormatOptions & { readonly unit?: UnitOf<K> }): string;
  /** The printed text. */
  toString(): string;
  /** A string that parses back to the same bits. */
  toJSON(): string;
}

/** Argument type of a kind: a quantity, or a string whose unit the compiler checks. */
export type QuantityInput<K extends NamedKind> = [QuantityOfKind[NamedKind]] extends [never]
  ? never
  : InputOfKind[K];

// Looked up, not aliased: the compiler's message then lists the allowed units instead of the name of a type.
// The compiler prints a union in the order in which its members were made: all quantities first, so that a message
// names the kind before the units. QuantityInput therefore refers to them first.
type QuantityOfKind = { [K in NamedKind]: Quantity<Accepts<K>> };
type InputOfKind = { [K in NamedKind]: QuantityOfKind[K] | TextOfKind[K] };
type TextOfKind = { [K in NamedKind]: `${number} ${UnitOf<K>}` | (K extends 'length' ? LengthText : never) };
type LengthText =
  | `${number}${'mm' | 'in' | '"'}`
  | `${number}/${number} in`
  | `${number} ${number}/${number} in`;

const none: readonly string[] = Object.freeze([]);

const operand = 'the operand';
const shownUnit = Symbol('unit');
/** The right-hand side of an operation. */
interface Readable {
  readonly si: number;
  readonly kind: Kind;
  readonly [shownUnit]: Unit;
}

class SiQuantity<K extends Kind> implements Quantity<K> {
  declare readonly [kindOf]: K;
  readonly #si: number;
  readonly #kind: Kind;
  readonly #unit: Unit;
  readonly #cautions: readonly string[];

  constructor(si: number, kind: Kind, unit: Unit, cautions: readonly string[]) {
    this.#si = si;
    this.#kind = kind;
    this.#unit = unit;
    this.#cautions = cautions;
  }
  get si(): number {
    return this.#si;
  }
  get kind(): Kind {
    return this.#kind;
  }
  get unit(): string {
    return this.#unit.text;
  }
  get cautions(): readonly string[] {
    return this.#cautions;
  }
  get [shownUnit](): Unit {
    return this.#unit;
  }
  get [mark](): true {
    return true;
  }
  in(unit: string): number {
    return fromSi(this.#si, this.#shown(unit));
  }
  to(unit: string): Quantity<K> {
    return new SiQuantity(this.#si, this.#kind, this.#shown(unit), this.#cautions);
  }
  #shown(unit: string): Unit {
    return unit === this.#unit.text ? this.#unit : unitToShow(this.#kind, unit, this);
  }
  plus(other: Quantity): Quantity<K> {
    return this.#sum(other, false);
  }
  minus<M extends Kind>(other: Quantity): Quantity<M> {
    return this.#sum(other, true);
  }
  #sum<S extends Kind>(other: Quantity, minus: boolean): Quantity<S> {
    const kind = isQuantity(other) ? kindOfSum(this.#kind, other.kind, minus) : undefined;
    if (kind === undefined)
      throw wrongKind(
        other,
        differenceOf(this.#kind),
        operand,
        `${this.toJSON()} ${minus ? 'minus' : 'plus'}`,
      );
    const unit = kind === this.#kind ? this.#unit : shownIn(kind, this.#unit.us);
    return finite(minus ? this.#si - other.si : this.#si + other.si, kind, unit, this);
  }
  times<P extends Kind>(other: Quantity | number): Quantity<P> {
    const right = read(other, 'times');
    return this.#product(right, 1, this.#si * right.si);
  }
  per<P extends Kind>(other: Quantity | number): Quantity<P> {
    const right = read(other, 'per');
    if (right.si === 0)
      throw new MeopError({
        code: 'divided-by-zero',
        procedure: `${this.toJSON()} per`,
        path: operand,
        given: other,
        expected: 'other than zero',
      });
    if (isGaugeRatio(this.#kind, right.kind))
      throw new MeopError({
        code: 'gauge-ratio',
        problem: `${this.toJSON()} per ${String(other)} is not a ratio, since a gauge pressure has no true zero`,
        given: other,
        remedy: 'Use absolute(p, ambient), or .si for loads',
      });
    return this.#product(right, -1, this.#si / right.si);
  }
  #product<P extends Kind>(right: Readable, n: 1 | -1, si: number): Quantity<P> {
    if (right.kind === 'dimensionless') return finite(si, this.#kind, this.#unit, this);
    const dim = combine(this.#unit.dimension, right[shownUnit].dimension, n);
    const kind = kindOfProduct(dim, this.#kind === 'angle' || right.kind === 'angle');
    return finite(si, kind, shownIn(kind, this.#unit.us), this);
  }
  pow<P extends Kind>(n: number): Quantity<P> {
    if (!Number.isInteger(n))
      throw new MeopError({
        code: 'power',
        procedure: 'pow',
        path: 'n',
        given: n,
        expected: 'a whole number',
        remedy: 'For roots use .root',
      });
    return this.#power(n, this.#si ** n);
  }
  root<P extends Kind>(n: number): Quantity<P> {
    if (!Number.isInteger(n) || n < 2 || (this.#si < 0 && n % 2 === 0))
      throw new MeopError({
        code: 'power',
        procedure: 'root',
        path: 'n',
        given: n,
        expected: 'a whole number of at least 2, and odd for a negative quantity',
      });
    const size = Math.abs(this.#si);
    const root = n === 2 ? Math.sqrt(size) : n === 3 ? Math.cbrt(size) : size ** (1 / n);
    return this.#power(1 / n, Math.sign(this.#si) * root);
  }
  #power<P extends Kind>(n: number, si: number): Quantity<P> {
    if (n === 1) return new SiQuantity(si, this.#kind, this.#unit, none);
    const dim = combine(dimensionless, this.#unit.dimension, n);
    const kind = kindOfDimension(dim);
    return finite(si, kind, shownIn(kind, this.#unit.us), this);
  }
  as<T extends NamedKind>(kind: T): Quantity<T> {
    if (!isSameKind(kind, this.#kind)) throw wrongKind(this, kind, 'the quantity', `.as('${kind}')`);
    const unit = accepts(kind, this.#unit.kind) ? this.#unit : shownIn(kind, this.#unit.us);
    return new SiQuantity(this.#si, kind, unit, this.#cautions);
  }
  format(options?: FormatOptions): string {
    const unit = options?.unit === undefined ? this.#unit : this.#shown(options.unit);
    return formatSi(this.#si, this.#kind, unit, options);
  }
  toString(): string {
    return this.format();
  }
  toJSON(): string {
    return machineText(this.#si, this.#unit, this.#kind);
  }
  // A plus sign must not join strings: only a ratio converts to its number, and only a string conversion to a string.
  [Symbol.toPrimitive](hint: string): string | number {
    if (hint === 'string') return this.format();
    if (this.#kind === 'dimensionless') return this.#si;
    const unit = this.#kind === 'angle' ? 'rad' : this.#unit.text;
    throw new MeopError({
      code: 'quantity-as-number',
      problem: `${this.toJSON()} is a quantity, not a number`,
      given: this,
      remedy: `Use .in('${unit}'), or .plus, .minus, .times, .per`,
    });
  }
  [Symbol.for('nodejs.util.inspect.custom')](): string {
    return withCautions(this.format(), this.#cautions);
  }
  [Symbol.for('Jupyter.display')](): Readonly<Record<string, string>> {
    const text = withCautions(this.format(), this.#cautions);
    const html = escaped(text).replaceAll('\n', '<br>');
    return { 'text/plain': text, 'text/html': `<span>${html}</span>` };
  }
}

/** Makes a quantity from an SI double; what the formulas and procedures return. */
export function fromSiValue<K extends Kind>(
  si: number,
  kind: Kind,
  unit: Unit,
  cautions: readonly string[] = none,
): Quantity<K> {
  return new SiQuantity<K>(si, kind, unit, cautions);
}

function read(other: unknown, operation: string): Readable {
  if (other instanceof SiQuantity) return other;
  if (typeof other === 'number') return { si: other, kind: 'dimensionless', [shownUnit]: unitOf('1') };
  if (isQuantity(other))
    return { si: other.si, kind: other.kind, [shownUnit]: unitFor(other.kind, other.unit) };
  throw wrongKind(other, 'dimensionless', operand, operation);
}

function finite<K extends Kind>(si: number, kind: Kind, unit: Unit, given: Quantity): Quantity<K> {
  const below = isBelowZero(si, kind);
  if (Number.isFinite(si) && !below) return new SiQuantity<K>(si, kind, unit, none);
  throw new MeopError({
    code: below ? 'out-of-domain' : 'not-finite',
    problem: `arithmetic on ${given.toJSON()} gives ${below ? 'a temperature below absolute zero' : `${si}, not a finite number`}`,
    given,
  });
}

const withCautions = (text: string, cautions: readonly string[]): string =>
  cautions.length === 0 ? text : `${text}\n${cautions.map((caution) => `  caution: ${caution}`).join('\n')}`;
