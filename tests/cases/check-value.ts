import { expect } from 'vitest';
import { expectedNumbers } from './every-case';
import type { Case } from './read-case';
import { si } from './read-case';
import { recordCheck } from './record-check';

/** Holds what was found against a value of a case within its tolerance, and records both for the validation report. */
export function checkValue(one: Case, name: string, found: number, relTol = one.relTol): void {
  const stated = expectedNumbers(one).find(([each]) => each === name)?.[1];
  if (stated === undefined) throw new Error(`${one.id} expects no number ${name}`);
  recordCheck(one.id, name, found);
  // A unit that quantities do not hold, such as mm/s/MPa^n: the number in that unit.
  const wanted = /\^n|\^-?\d+\.\d/.test(String(stated)) ? Number.parseFloat(String(stated)) : si(stated);
  expect(Math.abs(found - wanted), `${one.id}: ${name}: ${found}, not ${stated}`).toBeLessThanOrEqual(
    relTol * Math.abs(wanted),
  );
}
