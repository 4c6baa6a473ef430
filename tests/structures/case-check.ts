import { expect, test } from 'vitest';
import { expectedNumbers } from '../cases/every-case';
import { type Case, si } from '../cases/read-case';
import { recordCheck } from '../cases/record-check';
import { structuresCase } from './structures-case';

// Every value expected is in tests/cases/structures.json or hardware.json with its source and provenance; the test's name repeats the id.

/** 1 lbf/in² in Pa, by the definitions of inch, pound and standard gravity. */
export const psi = 6894.757293168361;
/** One inch in m, by definition. */
export const inch = 0.0254;

/** Compares what was computed with what the case expects, each within the tolerance the case states. */
export function matches(one: Case, computed: Readonly<Record<string, number>>): void {
  // A list expects each of its items: `capacity[1]`.
  const all = new Map(expectedNumbers(one));
  for (const [name, value] of Object.entries(computed)) {
    const wanted = si(all.get(name));
    recordCheck(one.id, name, value);
    expect(
      Math.abs(value - wanted),
      `${one.id}: ${name}: ${value}, expected ${wanted} (${one.source})`,
    ).toBeLessThanOrEqual(one.relTol * Math.abs(wanted));
  }
  // Nothing the case states is passed over.
  expect(Object.keys(computed).sort()).toEqual([...all.keys()].sort());
}

/** A test of one case, by its id. */
export const caseTest = (
  id: string,
  compute: (one: Case, input: (name: string) => number) => Readonly<Record<string, number>>,
) =>
  test(id, () => {
    const one = structuresCase(id);
    matches(
      one,
      compute(one, (name) => si(one.inputs[name])),
    );
  });
