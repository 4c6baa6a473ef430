import { fromSiArray, type NamedKind, type Quantity } from '../../../src/units';
import { si, siList } from '../../cases/read-case';

/** The inputs of a case. */
export type Inputs = Readonly<Record<string, string | number | readonly (string | number)[]>>;
/** What this library finds for a case, by the names of its expected values, in SI. */
export type Check = (inputs: Inputs) => Readonly<Record<string, number>>;

/** A quantity of a kind from an SI number. */
export const is = <K extends NamedKind>(kind: K, value: number): Quantity<K> =>
  fromSiArray(kind, Float64Array.of(value)).at(0);
/** Specific gas constant from the molar mass and universal constant of a case. */
export const gasFrom = (i: Inputs): number => si(i.universalGasConstant) / si(i.molarMass);
/** Area of a circle. */
export const diameterArea = (d: number): number => (Math.PI / 4) * d * d;

/** One value for each γ of a case, named g120 for 1.2. */
export const byGamma =
  (f: (gamma: number) => number): Check =>
  (i) =>
    Object.fromEntries(siList(i.gammas).map((g) => [`g${Math.round(g * 100)}`, f(g)]));
