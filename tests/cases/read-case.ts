import { q } from '../../src/units';
import ballistics from './ballistics.json';
import flow from './flow.json';

/** A value of a case file: a number, a text such as `'21.5 J/(kg K)'`, or lists of them. */
export type CaseValue =
  | number
  | string
  | boolean
  | null
  | readonly CaseValue[]
  | { readonly [field: string]: CaseValue };

/** One check value with where it comes from. */
export interface Case {
  readonly id: string;
  readonly topic: string;
  readonly what: string;
  readonly inputs: Readonly<Record<string, CaseValue>>;
  readonly expected: Readonly<Record<string, CaseValue>>;
  readonly relTol: number;
  readonly source: string;
  readonly provenance: string;
}

/** SI number of a case value: texts are read with the library's own parser after their unit is put in its grammar. */
export function si(value: CaseValue | undefined): number {
  if (typeof value === 'number') return value;
  if (typeof value !== 'string') throw new Error(`no number: ${JSON.stringify(value)}`);
  const [number, ...unit] = value.split(' ');
  return q(`${number} ${grammar(unit.join(' '))}`).si;
}

/** SI numbers of a list of case values. */
export function siList(value: CaseValue | undefined): number[] {
  if (!Array.isArray(value)) throw new Error(`no list: ${JSON.stringify(value)}`);
  return value.map(si);
}

// 'kg/m^2/s' → 'kg/(m^2*s)', 'Pa s' → 'Pa*s', 'J/(kg K)' → 'J/(kg*K)'.
function grammar(unit: string): string {
  const products = unit.trim().replace(/\s+/g, '*');
  const [top, ...bottom] = products.split('/');
  if (bottom.length === 0) return products;
  const divisor = bottom.map((part) => part.replace(/[()]/g, '')).join('*');
  return `${top}/(${divisor})`;
}

const files: Readonly<Record<string, readonly Case[]>> = { ballistics, flow };

/** The case of an id. */
export function caseOf(file: keyof typeof files, id: string): Case {
  const found = files[file].find((c) => c.id === id);
  if (found === undefined) throw new Error(`no case ${id}`);
  return found;
}
