import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import cases from '../cases/structures.json';

const folder = new URL('.', import.meta.url);
const texts = readdirSync(folder)
  .filter((name) => name.startsWith('cases-') && name.endsWith('.test.ts'))
  .map((name) => readFileSync(new URL(name, folder), 'utf8'));

test('every case of tests/cases/structures.json is named by a test, and names its source', () => {
  expect(cases.filter(({ id }) => !texts.some((text) => text.includes(id))).map(({ id }) => id)).toEqual([]);
  for (const { id, source, provenance } of cases)
    expect(`${id}: ${source} ${provenance}`.length).toBeGreaterThan(id.length + 10);
});
