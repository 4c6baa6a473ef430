import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demoMotor, motorJsonSchema, motorProblems, parseMotor } from '../../src/motor';
import { MeopError } from '../../src/units';

type Json = null | boolean | number | string | Json[] | { [key: string]: Json };
/** One motor with radial bolts, one with a retaining ring, a thread and a seal in a face. */
const motors: readonly (readonly [string, Json])[] = [
  ['Tern-54', JSON.parse(JSON.stringify(demoMotor()))],
  ['Plover-50', JSON.parse(readFileSync('examples/motors/plover-50.json', 'utf8'))],
];

interface Leaf {
  readonly keys: readonly (string | number)[];
  readonly value: Json;
  readonly required: boolean;
}

/** What an object must have: its own list in the JSON Schema, found by the fields that it has. */
const schemas = (() => {
  const found: { readonly fields: ReadonlySet<string>; readonly required: readonly string[] }[] = [];
  const walk = (node: unknown): void => {
    if (typeof node !== 'object' || node === null) return;
    const { properties, required } = node as { properties?: object; required?: string[] };
    if (properties) found.push({ fields: new Set(Object.keys(properties)), required: required ?? [] });
    for (const child of Object.values(node)) walk(child);
  };
  walk(motorJsonSchema());
  return found;
})();

function isRequired(owner: { [key: string]: Json }, key: string): boolean {
  const fields = Object.keys(owner);
  const fits = schemas.filter((one) => fields.every((field) => one.fields.has(field)));
  return fits.length > 0 && fits.every(({ required }) => required.includes(key));
}

/** Every quantity and name of the document, and every part that must be there. */
function leaves(node: Json, keys: readonly (string | number)[] = [], required = true): Leaf[] {
  if (Array.isArray(node)) return node.flatMap((item, i) => leaves(item, [...keys, i], false));
  if (typeof node !== 'object' || node === null) return [{ keys, value: node, required }];
  const own = keys.length > 0 && required ? [{ keys, value: node, required }] : [];
  return [
    ...own,
    ...Object.entries(node).flatMap(([key, value]) => leaves(value, [...keys, key], isRequired(node, key))),
  ];
}

const allOf = (whole: Json): Leaf[] =>
  leaves(whole).filter(({ keys }) => !keys.includes('notes') && !keys.includes('$schema'));
const isMeasure = ({ value }: Leaf): boolean => typeof value === 'string' && /^[-\d.]+ \S/.test(value);
const missing = '(the field is left out)';

/** What may be put in a place, so that it is wrong whatever stands around it. */
function wrongs(leaf: Leaf): fc.Arbitrary<Json> {
  const any: Json[] = [null, true, [], ['12 mm'], { values: '1 mm' }, ''];
  if (leaf.required) any.push(missing);
  if (isMeasure(leaf)) {
    const value = String(leaf.value);
    const unit = value.replace(/^\S+ /, '');
    any.push('12 furlongs', '12', 12, `-12 ${unit}x`, `1e400 ${unit}`, `NaN ${unit}`, '12 mol/K', '1,5 mm');
    if (/^(mm|m|MPaa|kPaa|psig|kg\/m\^3|kN|N|kg|g|s|ms|kHz|Hz|g\/mol)$/.test(unit) && value !== '0 mm')
      any.push(`-3 ${unit}`, `1e30 ${unit}`);
    if (/^(MPaa|kPaa)$/.test(unit)) any.push('500 psig');
    if (unit === 'psig') any.push('500 psia');
  } else if (typeof leaf.value === 'string' || typeof leaf.value === 'number')
    any.push('no such name', -7, 'NaN', '3 kg');
  if (leaf.keys.at(-1) === 'name' || leaf.keys.at(-1) === 'source' || leaf.keys.at(-1) === 'reason')
    return fc.constantFrom(null, true, [], -7, '');
  return fc.constantFrom(...any);
}

const pathText = (keys: readonly (string | number)[]): string =>
  keys.reduce<string>(
    (text, key) => (typeof key === 'number' ? `${text}[${key}]` : text === '' ? key : `${text}.${key}`),
    '',
  );

function broken(whole: Json, changes: readonly { readonly leaf: Leaf; readonly wrong: Json }[]): Json {
  const copy: Json = structuredClone(whole);
  for (const { leaf, wrong } of changes) {
    let owner: unknown = copy;
    for (const key of leaf.keys.slice(0, -1)) owner = (owner as Record<string | number, unknown>)[key];
    const last = leaf.keys[leaf.keys.length - 1];
    if (wrong === missing) delete (owner as Record<string | number, unknown>)[last];
    else (owner as Record<string | number, unknown>)[last] = wrong;
  }
  return copy;
}

/** The place that a change spoils: a part that does not say which of several it is cannot be read at all. */
const spoiled = ({ keys, value }: Leaf): readonly (string | number)[] =>
  typeof value === 'string' && ['shape', 'flaw', 'measures', 'seal'].includes(String(keys.at(-1)))
    ? keys.slice(0, -1)
    : keys;

/** Whether one change hides the other: a tolerance cannot be compared with a value that is not there. */
const nested = (a: Leaf, b: Leaf): boolean => {
  const ofOne = (leaf: Leaf) =>
    ['value', 'plusMinus'].includes(String(leaf.keys.at(-1))) ? leaf.keys.slice(0, -1).join() : undefined;
  if (ofOne(a) !== undefined && ofOne(a) === ofOne(b)) return true;
  const [one, two] = [spoiled(a), spoiled(b)];
  return one.every((key, i) => two[i] === key) || two.every((key, i) => one[i] === key);
};

const changesOf = (all: readonly Leaf[]) =>
  fc
    .uniqueArray(fc.nat({ max: all.length - 1 }), { minLength: 1, maxLength: 6 })
    .map((indices) => {
      const chosen: Leaf[] = [];
      for (const i of indices) if (chosen.every((other) => !nested(other, all[i]))) chosen.push(all[i]);
      return chosen;
    })
    .chain((chosen) => fc.tuple(...chosen.map((leaf) => wrongs(leaf).map((wrong) => ({ leaf, wrong })))));

describe.each(motors)('fuzzed documents of %s', (name, whole) => {
  const all = allOf(whole);
  const changes = changesOf(all);

  test('the fuzzer sees the document', () => {
    expect(all.filter(isMeasure).length, name).toBeGreaterThan(60);
    expect(all.filter(({ required }) => required).length).toBeGreaterThan(60);
  });

  test('200 documents with fields missing, wrong units, negative, gauge for absolute, huge: each problem is listed', () => {
    fc.assert(
      fc.property(changes, (given) => {
        const json = broken(whole, given);
        const problems = motorProblems(json);
        const listed = problems.map(({ path }) => path);
        for (const { leaf, wrong } of given) {
          const path = pathText(leaf.keys);
          // At the place itself or inside it; a part of the wrong shape is refused where the shape is told.
          const named = listed.some(
            (one) =>
              one === path ||
              one.startsWith(`${path}.`) ||
              one.startsWith(`${path}[`) ||
              isTold(leaf, wrong, one),
          );
          expect(named, `${path}: ${JSON.stringify(wrong)} in ${JSON.stringify(listed)}`).toBe(true);
        }
        for (const { message } of problems)
          expect(message).toMatch(
            /must|required|mutually exclusive|unknown field|expected|there are|did you mean|[Ww]rite|Use a unit|Available: /,
          );
        expect(() => parseMotor(json)).toThrow(MeopError);
      }),
      { numRuns: 200, seed: 8 },
    );
  });

  // A tolerance without its value is a tolerance of nothing: it is the whole measure that is refused. A seal that does not
  // say that it is in a face is radial, and refused for its groove.
  const isTold = ({ keys }: Leaf, wrong: Json, listed: string): boolean => {
    const owner = pathText(keys.slice(0, -1));
    return (
      wrong === missing &&
      (keys.at(-1) === 'value' ? listed === owner : keys.at(-1) === 'seal' && listed.startsWith(`${owner}.`))
    );
  };

  test('any JSON at all gives problems, never a crash', () => {
    fc.assert(
      fc.property(fc.jsonValue({ maxDepth: 4 }), (json) => {
        expect(motorProblems(json).length).toBeGreaterThan(0);
      }),
      { numRuns: 200, seed: 9 },
    );
  });

  test('any JSON in the place of any part gives problems or a motor, never a crash', () => {
    fc.assert(
      fc.property(fc.nat({ max: all.length - 1 }), fc.jsonValue({ maxDepth: 3 }), (i, value) => {
        const json = broken(whole, [{ leaf: all[i], wrong: value as Json }]);
        if (motorProblems(json).length === 0) expect(parseMotor(json).name.length).toBeGreaterThan(0);
        else expect(() => parseMotor(json)).toThrow(MeopError);
      }),
      { numRuns: 200, seed: 10 },
    );
  });
});
