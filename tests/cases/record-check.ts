import { appendFileSync, existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import process from 'node:process';
import { expect } from 'vitest';
import { caseFiles, expectedNumbers } from './every-case';
import { printedValue } from './printed-value';
import { readValidation } from './read-validation';

// `npm run validation` names a folder here, and the checks write what they found into it; every other run holds
// docs/validation.md against what the checks find.
const folder = process.env.MEOP_VALIDATION_FOLDER;

const stated = new Map<string, { readonly value: number | string; readonly relTol: number }>(
  caseFiles.flatMap(({ cases }) =>
    cases.flatMap((one) =>
      expectedNumbers(one).map(
        ([name, value]) => [`${one.id} ${name}`, { value, relTol: one.relTol }] as const,
      ),
    ),
  ),
);
const page = existsSync('docs/validation.md')
  ? readValidation(readFileSync('docs/validation.md', 'utf8'))
  : new Map<string, string>();

/**
 * Records what a check found for a value of a case file: the SI number where the case states a unit, else the number
 * as the case counts it. The name is that of the expected value, `pressure[2]` in a list.
 */
export function recordCheck(id: string, name: string, found: number): void {
  const key = `${id} ${name}`;
  const known = stated.get(key);
  if (known === undefined) throw new Error(`no case expects ${key}`);
  const printed = printedValue(known.value, found, known.relTol);
  if (folder !== undefined)
    appendFileSync(join(folder, `${process.pid}.jsonl`), `${JSON.stringify([key, printed])}\n`);
  else
    expect
      .soft(printed, `docs/validation.md is out of date: run npm run validation (${key})`)
      .toBe(page.get(key));
}

/** Records every value of a case that the check found, by name. */
export function recordChecks(id: string, found: Readonly<Record<string, number>>): void {
  for (const [name, value] of Object.entries(found)) recordCheck(id, name, value);
}
