import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { chamberStepSource, stepFile } from '../../scripts/chamber/step-source';

// The tableau itself is held by its order conditions: tests/numerics/ode-tableaus.test.ts.
test('the step of the chamber is what its generator writes (scripts/write-chamber-step.ts)', () => {
  expect(chamberStepSource()).toBe(readFileSync(stepFile, 'utf8'));
});
