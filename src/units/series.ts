import { MeopError } from './errors';
import { formatNumber, prettyUnit } from './format';
import type { Kind, NamedKind } from './kinds';
import { finiteSi } from './parse';
import { fromSiValue, type Quantity } from './quantity';
import { shownIn } from './shown-unit';
import { fromSi, type Unit, unitFor, unitOf } from './unit';
import type { KindOfUnit, UnitOf } from './unit-names';
import { unitToShow } from './unit-to-show';

declare const kindOfSeries: unique symbol;
const mark = Symbol.for('meop.series');

/**
 * A sequence of values of one kind: SI doubles in one typed array, and the unit in which they are shown.
 *
 * @example series([1, 2], 'in').in('mm')[1] // => 50.8
 */
export interface Series<K extends Kind = Kind> {
  readonly [kindOfSeries]: K;
  readonly kind: Kind;
  readonly unit: string;
  readonly length: number;
  /** The SI doubles themselves, not a copy: treat them as read-only. */
  readonly si: Float64Array;
  /** A new array of numbers in a unit. */
  in(unit: UnitOf<K>): Float64Array;
  /** The same values, shown in a unit. */
  to(unit: UnitOf<K>): Series<K>;
  /** One value; from the end where the index is negative. @throws MeopError `index-range` */
  at(index: number): Quantity<K>;
  /** The minimum. @throws MeopError `empty-series` */
  min(): Quantity<K>;
  /** The maximum. @throws MeopError `empty-series` */
  max(): Quantity<K>;
  /** The numbers in the unit shown, for JSON: `{ unit, values }`. */
  toJSON(): { readonly unit: string; readonly values: readonly number[] };
  toString(): string;
}

class SiSeries<K extends Kind> implements Series<K> {
  declare readonly [kindOfSeries]: K;
  readonly kind: Kind;
  readonly si: Float64Array;
  readonly #unit: Unit;

  constructor(si: Float64Array, kind: Kind, unit: Unit) {
    this.si = si;
    this.kind = kind;
    this.#unit = unit;
  }
  get [mark](): true {
    return true;
  }
  get unit(): string {
    return this.#unit.text;
  }
  get length(): number {
    return this.si.length;
  }
  in(unit: string): Float64Array {
    const shown = unitToShow(this.kind, unit, this);
    return this.si.map((value) => fromSi(value, shown));
  }
  to(unit: string): Series<K> {
    return new SiSeries<K>(this.si, this.kind, unitToShow(this.kind, unit, this));
  }
  at(index: number): Quantity<K> {
    const value = this.si.at(index);
    if (value === undefined || !Number.isInteger(index))
      throw new MeopError({
        code: 'index-range',
        procedure: 'at',
        path: 'index',
        given: index,
        expected: `a whole number below ${this.length}, the number of values`,
      });
    return fromSiValue<K>(value, this.kind, this.#unit);
  }
  min(): Quantity<K> {
    return this.#extreme(Math.min);
  }
  max(): Quantity<K> {
    return this.#extreme(Math.max);
  }
  #extreme(pick: (a: number, b: number) => number): Quantity<K> {
    if (this.length === 0)
      throw new MeopError({ code: 'empty-series', problem: 'an empty series has no minimum or maximum' });
    return fromSiValue<K>(
      this.si.reduce((a, b) => pick(a, b)),
      this.kind,
      this.#unit,
    );
  }
  toJSON(): { readonly unit: string; readonly values: readonly number[] } {
    return { unit: this.#unit.machineText, values: [...this.in(this.#unit.text)] };
  }
  toString(): string {
    const { si, length } = this;
    const few = length > 5 ? [...si.slice(0, 4), si[length - 1]] : [...si];
    const shown = few.map((value) => formatNumber(fromSi(value, this.#unit)));
    if (length > 5) shown.splice(4, 0, '…');
    return `[${shown.join(', ')}] ${prettyUnit(this.#unit.text)} (${this.length} values of ${this.kind})`;
  }
  [Symbol.for('nodejs.util.inspect.custom')](): string {
    return this.toString();
  }
}

/** True if a value is a series, of this copy of the library or of another. */
export function isSeries(value: unknown): value is Series {
  return typeof value === 'object' && value !== null && mark in value;
}

/**
 * Makes a series from numbers in a unit.
 *
 * @throws MeopError `not-finite` or `out-of-domain` naming the first value that is not a finite number, or is below absolute zero
 * @example series([0.5, 1], 'MPa').max().in('bar') // => 10
 */
export function series<const U extends string>(
  values: ArrayLike<number>,
  unit: U,
): Series<NoInfer<KindOfUnit<U>>> {
  const shown = unitOf(unit);
  return new SiSeries<KindOfUnit<U>>(siValues(values, shown), shown.kind, shown);
}

/**
 * Makes a series of a named kind from numbers in a unit, where the unit does not determine the kind.
 *
 * @throws MeopError `not-finite`, `wrong-unit`
 * @example seriesOf('gauge pressure', [1, 2], 'bar').kind // => 'gauge pressure'
 */
export function seriesOf<const K extends NamedKind>(
  kind: K,
  values: ArrayLike<number>,
  unit: UnitOf<K>,
): Series<K> {
  const shown = unitToShow(kind, unit, 'this series');
  return new SiSeries<K>(siValues(values, shown), kind, shown);
}

/** Makes a series of SI doubles without copying or checking them, for kernels. */
export function fromSiArray<const K extends NamedKind>(
  kind: K,
  si: Float64Array,
  unit?: UnitOf<K>,
): Series<K> {
  return new SiSeries<K>(si, kind, unit === undefined ? shownIn(kind, false) : unitFor(kind, unit));
}

function siValues(values: ArrayLike<number>, unit: Unit): Float64Array {
  const si = new Float64Array(values.length);
  for (let i = 0; i < si.length; i++) si[i] = finiteSi(values[i], unit, values[i], i);
  return si;
}
