// Every value of tests/cases/gas-nozzle.json, each with its source and provenance in the name of its check.
import { describe, expect, test } from 'vitest';
import cases from '../cases/gas-nozzle.json';
import { si } from '../cases/read-case';
import { recordCheck } from '../cases/record-check';
import type { Check, Inputs } from './gas-nozzle-checks/check';
import { flowChecks } from './gas-nozzle-checks/flow-checks';
import { gasChecks } from './gas-nozzle-checks/gas-checks';
import { hardwareChecks } from './gas-nozzle-checks/hardware-checks';
import { thrustChecks } from './gas-nozzle-checks/thrust-checks';

const checks: Readonly<Record<string, Check>> = {
  ...flowChecks,
  ...gasChecks,
  ...thrustChecks,
  ...hardwareChecks,
};

describe('gas dynamics and nozzle: published and computed values', () => {
  test('every case has a check, and every check a case', () => {
    expect(Object.keys(checks).sort()).toEqual(cases.map(({ id }) => id).sort());
  });

  for (const { id, what, inputs, expected, relTol, source, provenance } of cases) {
    test(`${id}: ${what} [${source}; ${provenance}]`, () => {
      const known: Inputs = Object.fromEntries(
        Object.entries(inputs).filter(([, value]) => value !== undefined),
      );
      const found = checks[id](known);
      for (const [field, value] of Object.entries(expected)) {
        if (value === undefined) continue;
        const wanted = si(value);
        recordCheck(id, field, found[field]);
        // relTol follows the coarsest printed digit of the case.
        expect(
          Math.abs(found[field] - wanted),
          `${field}: ${found[field]} against ${wanted}`,
        ).toBeLessThanOrEqual(relTol * Math.abs(wanted));
      }
    });
  }
});
