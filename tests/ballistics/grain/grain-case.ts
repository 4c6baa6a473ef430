import { q } from '../../../src/units';
import cases from '../../cases/ballistics.json';

/** One case of the file, its values read as SI numbers. Every case carries its own source and provenance. */
export interface GrainCase {
  readonly id: string;
  readonly relTol: number;
  readonly origin: string;
  readonly input: (name: string) => number;
  readonly text: (name: string) => string;
  readonly inputs: (name: string) => number[];
  readonly expected: (name: string) => number;
  readonly expectedList: (name: string) => number[];
}

const si = (value: unknown): number => (typeof value === 'string' ? q(value).si : Number(value));
const list = (value: unknown): number[] => (Array.isArray(value) ? value : [value]).map(si);

export function grainCase(id: string): GrainCase {
  const found = cases.find((c) => c.id === id);
  if (found === undefined) throw new Error(`no case ${id}`);
  const inputs: Readonly<Record<string, unknown>> = found.inputs;
  const expected: Readonly<Record<string, unknown>> = found.expected;
  return {
    id,
    relTol: found.relTol,
    origin: `${found.source}; ${found.provenance}`,
    input: (name) => si(inputs[name]),
    text: (name) => String(inputs[name]),
    inputs: (name) => list(inputs[name]),
    expected: (name) => si(expected[name]),
    expectedList: (name) => list(expected[name]),
  };
}

/** Relative difference. */
export const off = (value: number, reference: number): number =>
  Math.abs(value - reference) / Math.abs(reference);
