import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import cases from '../../cases/firing.json';

const folder = new URL('../', import.meta.url);
const texts = readdirSync(folder, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.ts'))
  .map((name) => readFileSync(new URL(name, folder), 'utf8'));

test('every case of tests/cases/firing.json, and every value it expects, is named by a test', () => {
  const missing = cases.flatMap(({ id, expected }) => {
    const here = texts.filter((text) => text.includes(id));
    if (here.length === 0) return [id];
    // The name as a text or a field of its own: a longer name that contains it does not count.
    const named = (name: string): boolean =>
      here.some((text) => new RegExp(`(?<![\\w])${name}(?![\\w])`).test(text));
    return Object.keys(expected)
      .filter((name) => !named(name))
      .map((name) => `${id}: ${name}`);
  });
  expect(missing).toEqual([]);
});

test('every case says where it comes from', () => {
  for (const { id, source, provenance } of cases)
    expect(`${source} ${provenance}`.length, id).toBeGreaterThan(10);
});
