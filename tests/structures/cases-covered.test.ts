import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import hardware from '../cases/hardware.json';
import cases from '../cases/structures.json';

const folder = new URL('.', import.meta.url);
const texts = readdirSync(folder)
  .filter((name) => name.startsWith('cases-') && name.endsWith('.test.ts'))
  .map((name) => readFileSync(new URL(name, folder), 'utf8'));

test.each([
  ['structures.json', cases],
  ['hardware.json', hardware],
])('every case of tests/cases/%s is named by a test, and names its source', (_, all) => {
  expect(all.filter(({ id }) => !texts.some((text) => text.includes(id))).map(({ id }) => id)).toEqual([]);
  for (const { id, source, provenance } of all)
    expect(`${id}: ${source} ${provenance}`.length).toBeGreaterThan(id.length + 10);
});
