import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { validationPage } from '../../scripts/pages/validation-page';
import { caseFiles, expectedNumbers } from '../cases/every-case';
import { printedError, printedValue } from '../cases/printed-value';
import { readValidation } from '../cases/read-validation';

const page = readFileSync('docs/validation.md', 'utf8');

// That each value of ours is the one that its check finds is held by the checks themselves: tests/cases/record-check.ts.
describe('docs/validation.md', () => {
  test('says of every case what the case files say (npm run validation)', () => {
    expect(page).toBe(validationPage(readValidation(page)));
  });

  test('has a value of ours for at least nine in ten, and for every size and height', () => {
    const printed = readValidation(page);
    const all = caseFiles.flatMap(({ cases }) => cases.flatMap(expectedNumbers));
    expect(printed.size / all.length).toBeGreaterThan(0.9);
    for (const { oneTable, cases } of caseFiles)
      if (oneTable)
        for (const one of cases)
          for (const [name] of expectedNumbers(one)) expect(printed.has(`${one.id} ${name}`)).toBe(true);
  });

  test('prints no value further off than its case allows, but where the test says why', () => {
    const printed = readValidation(page);
    const further = caseFiles.flatMap(({ oneTable, cases }) =>
      oneTable
        ? []
        : cases.flatMap((one) =>
            expectedNumbers(one).flatMap(([name, stated]) => {
              const ours = printed.get(`${one.id} ${name}`);
              if (ours === undefined) return [];
              const [wanted, found] = [Number.parseFloat(String(stated)), Number.parseFloat(ours)];
              // Half of the last digit printed of ours is two digits past the tolerance.
              const allowed = 1.02 * one.relTol * Math.abs(wanted);
              return Math.abs(found - wanted) > allowed ? [`${one.id} ${name}`] : [];
            }),
          ),
    );
    expect(further).toEqual([]);
  });

  test('a changed number, source or heading is noticed', () => {
    const changed = page.replace('| temperatureRatio | 0.5556 |', '| temperatureRatio | 0.5557 |');
    expect(changed).not.toBe(page);
    expect(validationPage(readValidation(changed))).not.toBe(changed);
  });
});

describe('a printed value', () => {
  test.each([
    ['1000 psi', 6894757.293168, 1e-3, '1000 psi'],
    ['21.5 degC', 294.651, 1e-3, '21.501 degC'],
    ['3.5 J/(kg K)', 3.50004, 1e-3, '3.5 J/(kg K)'],
    ['8.26 mm/s/MPa^n', 8.263571, 1e-3, '8.2636 mm/s/MPa^n'],
    [12000, 12000.04, 1e-6, '12000.04'],
  ])('%s', (stated, found, relTol, printed) => {
    expect(printedValue(stated, found, relTol)).toBe(printed);
  });
  test.each([
    ['1000 psi', '1000 psi', '0'],
    [200, '199', '−0.5 %'],
    [0, '0.001', '0.001'],
  ])('%s against %s is off by %s', (stated, printed, error) => {
    expect(printedError(stated, printed)).toBe(error);
  });
});
