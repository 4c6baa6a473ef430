import { describe, expect, it } from 'vitest';
import { calculations, fromSiValue, isQuantity, MeopError, unitOf } from '../../src/units';
import { exportedFunctions, isCalculation } from './exported';
import { notYet, plainFunctions } from './plain-functions';

const waiting = new Set(Object.values(notYet).flatMap((names) => names.split(' ')));
const found = exportedFunctions.flatMap(({ name, value }) => (isCalculation(value) ? [{ name, value }] : []));

describe('every exported function', () => {
  it('is a formula or a procedure, or is listed as something else', () => {
    const others = exportedFunctions
      .filter(({ name, value }) => !isCalculation(value) && !(name in plainFunctions) && !waiting.has(name))
      .map(({ module, name }) => `${module}: ${name}`);
    expect(others).toEqual([]);
  });
  it('is not listed once it is a calculation, or gone', () => {
    const plain = exportedFunctions.filter(({ value }) => !isCalculation(value)).map(({ name }) => name);
    const stale = [...waiting, ...Object.keys(plainFunctions)].filter((name) => !plain.includes(name));
    expect(stale).toEqual([]);
  });
});

describe.each(found)('$name', ({ name, value }) => {
  it('is exported under its own name, and its card is found by it', () => {
    expect(value.id).toBe(name);
    expect(value.name).toBe(name);
    expect(calculations(name).map(({ id }) => id)).toContain(name);
  });
  it('has a card with title, source, what it gives, a call, and a meaning for every input', () => {
    for (const text of [value.title, value.source, value.gives, value.exampleCall])
      expect(text.trim()).not.toBe('');
    const card = String(value);
    for (const text of [value.title, value.source, value.gives, value.exampleCall])
      expect(card).toContain(text);
    for (const [field, input] of Object.entries(value.inputs)) {
      expect(input.meaning.trim(), `the meaning of ${field}`).not.toBe('');
      expect(card).toContain(input.meaning);
    }
  });
});

// What nobody should pass, and people do.
const poisoned: unknown = JSON.parse('{"__proto__": {"polluted": true}}');
const arguments_: readonly (readonly [string, readonly unknown[]])[] = [
  ['nothing', []],
  ['null', [null]],
  ['a number', [7]],
  ['a text', ['text']],
  ['a list', [[]]],
  ['an object with __proto__', [poisoned]],
  ['a quantity that is not a number', [fromSiValue(Number.NaN, 'length', unitOf('mm'))]],
];

describe('called with what it does not take, every exported function throws a MeopError or answers', () => {
  const functions = exportedFunctions.filter(({ name }) => !waiting.has(name));
  it.each(functions)('$module: $name', async ({ value }) => {
    for (const [what, given] of arguments_)
      try {
        await value(...given);
      } catch (error) {
        expect(error instanceof MeopError, `${what}: ${String(error)}`).toBe(true);
      }
  });
  it('and for each input of each calculation', async () => {
    const wrong = [null, 7, 'text', [], poisoned, fromSiValue(Number.NaN, 'length', unitOf('mm'))];
    for (const { name, value } of found)
      for (const field of Object.keys(value.inputs))
        for (const given of wrong) {
          const options = { ...Object('example' in value ? value.example : {}), [field]: given };
          try {
            await Reflect.apply(
              value,
              undefined,
              value.subject === undefined ? [options] : [undefined, options],
            );
          } catch (error) {
            const what = `${name}({ ${field}: ${isQuantity(given) ? 'NaN quantity' : JSON.stringify(given)} })`;
            expect(error instanceof MeopError, `${what}: ${String(error)}`).toBe(true);
          }
        }
  });
});
