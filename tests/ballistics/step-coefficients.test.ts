import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

// The chamber's step writes the coefficients out as constants of its own function, where the engine folds them into the
// code; they are those of the general integrator, whose order conditions are tested (tests/numerics/ode-tableaus.test.ts).
const coefficients = (file: string): Map<string, number> =>
  new Map(
    [...readFileSync(file, 'utf8').matchAll(/^ *const ([A-Z]+\d*) = (-?[\d.]+);$/gm)].map(
      ([, name, value]) => [name, Number(value)],
    ),
  );

test('the step of the chamber has the coefficients of the general integrator', () => {
  const general = coefficients('src/numerics/rodas5p.ts');
  const own = coefficients('src/ballistics/simulation/chamber-step.ts');
  const shared = [...own].filter(([name]) => general.has(name));
  expect(shared.length).toBeGreaterThan(60);
  expect(shared.filter(([name, value]) => general.get(name) !== value)).toEqual([]);
});
