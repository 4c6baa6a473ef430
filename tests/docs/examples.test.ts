import { existsSync, readdirSync } from 'node:fs';
import vm from 'node:vm';
import { describe, expect, test } from 'vitest';
import { calculations } from '../../src/units';
import { publicSymbols } from './public-symbols';

const modules = readdirSync('src').filter((name) => name !== 'bin' && existsSync(`src/${name}/index.ts`));
const symbols = publicSymbols(modules.map((name) => `src/${name}/index.ts`));
const namespaces = import.meta.glob<Readonly<Record<string, unknown>>>('../../src/*/index.ts', {
  eager: true,
});
// The symbols of declarations in units (`specificImpulse`, `length`, …) give way to the formulas of the same name.
const ordered = Object.entries(namespaces).sort(
  ([a], [b]) => Number(b.includes('/units/')) - Number(a.includes('/units/')),
);
const scope = Object.assign({}, ...ordered.map(([, module]) => module));

// What stands after `// =>`, as far as it can be compared: numbers to the digits that are printed.
function agrees(actual: unknown, expected: unknown, printed: string): boolean {
  if (typeof actual === 'number' && typeof expected === 'number') {
    if (actual === expected) return true;
    const digits = printed.replace(/^[-+]?0*\.?0*|e.*$|\./gi, '').length;
    return Math.abs(actual - expected) <= Math.abs(expected) * Math.max(1e-9, 0.6 * 10 ** (1 - digits));
  }
  if (typeof actual === 'object' && actual !== null && typeof expected === 'string')
    return String(actual) === expected;
  if (typeof expected === 'object' && expected !== null)
    return JSON.stringify(actual) === JSON.stringify(expected);
  return actual === expected;
}

const run = (code: string): unknown => vm.runInNewContext(`(${code.replace(/;\s*$/, '')})`, { ...scope });

// A calculation says what it is in its declaration, which also has a typical call.
const isCalculation = (name: string): boolean =>
  typeof scope[name] === 'function' && 'gives' in scope[name] && 'exampleCall' in scope[name];

describe('documentation', () => {
  test('every public symbol says what it is', () => {
    const silent = symbols
      .filter(({ name, comment }) => comment.trim().length < 10 && !isCalculation(name))
      .map(({ module, name }) => `${module}: ${name}`);
    expect(silent).toEqual([]);
  });

  test('every public function that is no declaration helper has an example', () => {
    const values = symbols.filter(({ name }) => typeof scope[name] === 'function');
    const helpers = /^src\/units/; // the givens of formula declarations are one pattern, shown at `formula`
    const without = values.filter(
      ({ name, examples, module }) => examples.length === 0 && !helpers.test(module) && !isCalculation(name),
    );
    expect(without.map(({ module, name }) => `${module}: ${name}`)).toEqual([]);
  });

  test.each(
    calculations()
      .filter(({ id }) => isCalculation(id)) // not those that other tests have made
      .map(({ id, exampleCall }) => ({ id, exampleCall })),
  )('$id: $exampleCall', async ({ exampleCall }) => {
    expect(await run(exampleCall)).toBeDefined();
  });

  const examples = symbols.flatMap(({ name, examples }) =>
    [...new Set(examples)].map((code) => ({ name, code })),
  );
  const seen = new Set<string>();
  const once = examples.filter(({ name, code }) => !seen.has(name + code) && seen.add(name + code));
  test.each(once)('$name: $code', async ({ code }) => {
    const lines = code.split('\n').filter((line) => line.includes('// =>'));
    expect(lines.length, 'an example shows a result with // =>').toBeGreaterThan(0);
    for (const line of lines) {
      const [expression, printed] = line.split('// =>').map((part) => part.trim());
      const actual = await run(expression);
      expect(
        agrees(actual, run(printed), printed),
        `${expression} gives ${String(actual)}, not ${printed}`,
      ).toBe(true);
    }
  });
});
