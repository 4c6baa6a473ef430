// Writes docs/validation.md from what the tests of the case files find: npm run validation. With names of test files
// (npm run validation -- FILES) only these run, and the values of the others stay as they are.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';
import { readValidation } from '../tests/cases/read-validation';
import { validationPage } from './pages/validation-page';

const target = 'docs/validation.md';
const chosen = process.argv.slice(2);
const all = readdirSync('tests', { recursive: true, encoding: 'utf8' })
  .map((name) => join('tests', name))
  .filter((name) => name.endsWith('.test.ts') && !name.startsWith(join('tests', 'docs')))
  .filter((name) => /case-check|record-check|check-value/.test(readFileSync(name, 'utf8')));
const tests = chosen.length > 0 ? chosen : all;
const folder = mkdtempSync(join(tmpdir(), 'validation-'));
process.on('exit', () => rmSync(folder, { recursive: true, force: true }));

const { status } = spawnSync(process.execPath, ['node_modules/vitest/vitest.mjs', 'run', ...tests], {
  stdio: 'inherit',
  env: { ...process.env, MEOP_VALIDATION_FOLDER: folder },
});
if (status !== 0) {
  process.stderr.write('The checks do not pass: the report stays as it is.\n');
  process.exit(1);
}

const found = new Map(
  readdirSync(folder).flatMap((name) =>
    readFileSync(join(folder, name), 'utf8')
      .trim()
      .split('\n')
      .map((line): readonly [string, string] => JSON.parse(line)),
  ),
);
// Logs that are not beside this checkout leave their tests out: what the page says of them stays.
const before = existsSync(target) ? readValidation(readFileSync(target, 'utf8')) : new Map<string, string>();
const kept = [...before].filter(([key]) => !found.has(key));
if (kept.length > 0 && chosen.length === 0)
  process.stderr.write(`${kept.length} values were not checked in this run and stay as they were.\n`);
writeFileSync(target, validationPage(new Map([...kept, ...found])));
