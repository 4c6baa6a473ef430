// The tests to run after a change: those that name what the changed files export. The import graph does not help here: tests
// import the index of a module, so that almost every test is related to almost every file.
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';

/** Tests that compile, pack or start programs, or read every page: too long for a quick answer. */
const long = /^tests\/(?:package|bin|docs)\/|\.slow\.test\.ts$|^tests\/motor\/browser|^tests\/units\/type/;
/** Every formula by its declaration; the rules of the folders. */
const ofEveryChange = ['tests/architecture.test.ts', 'tests/formulas.test.ts'];
const [enough, atMost] = [3, 6];

const filesUnder = (folder: string): readonly string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .map((name) => join(folder, name))
    .filter((name) => name.endsWith('.ts'));
const read = (files: readonly string[]): ReadonlyMap<string, string> =>
  new Map(files.map((file) => [file, readFileSync(file, 'utf8')]));

/** The tests that concern the changed files, given by their paths from the root; those of the same folder first. */
export function testsNaming(changed: readonly string[]): readonly string[] {
  const tests = read(filesUnder('tests'));
  const sources = read(filesUnder('src'));
  const short = [...tests.keys()].filter((file) => file.endsWith('.test.ts') && !long.test(file));
  const found = new Set<string>();
  for (const file of changed) {
    if (short.includes(file)) found.add(file);
    else if (tests.has(file))
      for (const test of importers(file, tests)) if (short.includes(test)) found.add(test);
  }
  const changedSources = changed.filter((file) => sources.has(file));
  for (const file of changedSources)
    for (const test of namingOrAbove(file, sources, short, tests).slice(0, atMost)) found.add(test);
  if (changedSources.length > 0) for (const test of ofEveryChange) if (tests.has(test)) found.add(test);
  return [...found];
}

/** The tests that name an export of the file; where too few do, those too that name an export of what imports it, and so on up. */
function namingOrAbove(
  file: string,
  sources: ReadonlyMap<string, string>,
  short: readonly string[],
  tests: ReadonlyMap<string, string>,
): readonly string[] {
  const seen = new Set([file]);
  const found = new Set<string>();
  for (let level = [file]; level.length > 0 && found.size < enough; ) {
    const names = level.flatMap((one) => exportsOf(sources.get(one) ?? ''));
    if (names.length > 0) for (const test of naming(names, file, short, tests)) found.add(test);
    level = level.flatMap((one) => importers(one, sources)).filter((one) => !seen.has(one));
    for (const one of level) seen.add(one);
  }
  return [...found];
}

const exportsOf = (text: string): readonly string[] =>
  [...text.matchAll(/^export (?:const|(?:async )?function) (\w+)/gm)].map(([, name]) => name);

function naming(
  names: readonly string[],
  file: string,
  short: readonly string[],
  tests: ReadonlyMap<string, string>,
): readonly string[] {
  const word = new RegExp(`\\b(?:${names.join('|')})\\b`, 'g');
  const [, ...folders] = dirname(file).split('/');
  const near = (test: string): number =>
    dirname(test)
      .split('/')
      .slice(1)
      .filter((folder, i) => folder === folders[i]).length;
  return short
    .map((test) => ({ test, count: [...(tests.get(test) ?? '').matchAll(word)].length }))
    .filter(({ count }) => count > 0)
    .sort((a, b) => near(b.test) - near(a.test) || b.count - a.count)
    .map(({ test }) => test);
}

/** The files that import a file; an index that passes it on counts for nothing. */
function importers(file: string, among: ReadonlyMap<string, string>): readonly string[] {
  return [...among].flatMap(([other, text]) => {
    if (other.endsWith('/index.ts')) return [];
    const targets = [...text.matchAll(/from '(\.[^']+)'/g)].map(([, name]) =>
      relative('.', resolve(dirname(other), `${name}.ts`)),
    );
    return targets.includes(file) ? [other] : [];
  });
}
