import { readdirSync, readFileSync, statSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';

// The floors, from the ground up: a module imports only from floors below its own.
const floors = [
  ['units', 'numerics'],
  ['thermo', 'structures'],
  ['nozzle'],
  ['firing'],
  ['ballistics'],
  ['motor'],
  ['bin'],
];
// numerics refuses its arguments with the error of units; nothing else crosses within a floor.
const allowedWithinFloor = new Set(['numerics>units']);
const floorOf = (module: string): number => floors.findIndex((floor) => floor.includes(module));

function sources(folder: string): string[] {
  return readdirSync(folder).flatMap((name) => {
    const path = join(folder, name);
    if (statSync(path).isDirectory()) return sources(path);
    return path.endsWith('.ts') ? [path] : [];
  });
}
const files = sources('src');
const text = (file: string): string => readFileSync(file, 'utf8');
const imports = (file: string): string[] =>
  [...text(file).matchAll(/(?:from|import\()\s*['"]([^'"]+)['"]/g)].map((match) => match[1]);

describe('the house', () => {
  test('there are sources to look at', () => expect(files.length).toBeGreaterThan(20));

  test('a module imports only from floors below its own, and nobody the root index', () => {
    const wrong: string[] = [];
    for (const file of files) {
      const module = relative('src', file).split('/')[0];
      if (module === 'index.ts') continue;
      for (const target of imports(file).filter((name) => name.startsWith('.'))) {
        const path = relative(resolve('src'), resolve(dirname(file), target));
        const other = path.split('/')[0];
        if (other === module) continue;
        const within = floorOf(other) === floorOf(module) && allowedWithinFloor.has(`${module}>${other}`);
        if (floorOf(other) < 0 || !(floorOf(other) < floorOf(module) || within))
          wrong.push(`${file} imports ${target}`);
      }
    }
    expect(wrong).toEqual([]);
  });

  // From the lowest: a folder imports from the indexes of the folders below it. Other modules import the index of the grain only.
  const folders = ['surface', 'flaws', 'shapes', 'front', 'column', 'draw'];
  test('the folders of the grain import one way, through their indexes', () => {
    const grain = resolve('src/ballistics/grain');
    expect(
      readdirSync(grain)
        .filter((name) => !name.endsWith('.ts'))
        .sort(),
    ).toEqual([...folders].sort());
    const wrong: string[] = [];
    for (const file of files) {
      const own = relative(grain, resolve(file)).split('/');
      for (const target of imports(file).filter((name) => name.startsWith('.'))) {
        const path = relative(grain, resolve(dirname(file), target));
        const [folder, ...within] = path.split('/');
        if (
          folder === own[0] ||
          (folder === '..' && (own[0] === '..' || /^\.\.\/\.\.\/(?:units|numerics)/.test(path)))
        )
          continue;
        const allowed =
          own[0] === '..'
            ? path === '' || path === 'inputs'
            : folder === 'grain-inputs' ||
              folder === 'misfit' ||
              (within.length === 0 &&
                (own[0] === 'index.ts' ||
                  own[0] === 'inputs.ts' ||
                  folders.indexOf(folder) < folders.indexOf(own[0])));
        if (!allowed) wrong.push(`${file} imports ${target}`);
      }
    }
    expect(wrong).toEqual([]);
  });

  test('the index of a folder of the grain names the folders that it imports', () => {
    for (const folder of folders) {
      const path = join('src/ballistics/grain', folder);
      const used = sources(path).flatMap((file) =>
        imports(file).flatMap((name) => /^\.\.\/(\w+)$/.exec(name)?.[1] ?? []),
      );
      const sentence = /\* (?:The lowest folder: i|I)mports ([^.]*)\./.exec(text(join(path, 'index.ts')));
      const named = [...(sentence?.[1] ?? '').matchAll(/`(\w+)`/g)].map(([, name]) => name);
      expect(sentence, `${folder}/index.ts names its imports`).not.toBeNull();
      expect(named, folder).toEqual(folders.filter((name) => used.includes(name)));
    }
  });

  test('no file imports itself by way of others, types aside', () => {
    const known = new Set(files.map((file) => resolve(file)));
    const loads = new Map(
      files.map((file) => [
        resolve(file),
        [...text(file).matchAll(/^(?:import|export) (?!type )(?:[^;']*? from )?'(\.[^']+)'/gm)]
          .filter(([all]) => !/^\w+ \{(?:\s*type [^,}]+,?)*\s*\}/.test(all))
          .flatMap(([, name]) => [`${name}.ts`, `${name}/index.ts`])
          .map((name) => resolve(dirname(file), name))
          .filter((path) => known.has(path)),
      ]),
    );
    expect([...loads.values()].flat().length).toBeGreaterThan(files.length);
    const done = new Set<string>();
    const circles: string[] = [];
    const visit = (file: string, above: readonly string[]): void => {
      if (above.includes(file))
        circles.push(
          [...above.slice(above.indexOf(file)), file].map((one) => relative('src', one)).join(' > '),
        );
      if (done.has(file)) return;
      done.add(file);
      for (const next of loads.get(file) ?? []) visit(next, [...above, file]);
    };
    for (const file of known) visit(file, []);
    expect(circles).toEqual([]);
  });

  test('nothing under src but src/bin uses a Node built-in', () => {
    const builtin =
      /^(?:node:|fs|path|os|url|util|crypto|stream|buffer|process|child_process|worker_threads)(?:$|\/|[a-z])/;
    const wrong = files
      .filter((file) => !file.startsWith('src/bin'))
      .flatMap((file) =>
        imports(file)
          .filter((name) => builtin.test(name))
          .map((name) => `${file} imports ${name}`),
      );
    expect(wrong).toEqual([]);
  });

  test('only src/units uses decimal.js, and src/units does not load zod', () => {
    const users = (name: string): string[] => files.filter((file) => imports(file).includes(name));
    // The build keeps only what this file uses of it (tsup.config.ts).
    expect(users('decimal.js')).toEqual(['src/units/exact-factor.ts']);
    expect(
      users('zod').filter((file) => /^src\/(?:units|numerics|thermo|structures|nozzle)\//.test(file)),
    ).toEqual([]);
  });

  test('no file passes 300 lines', () => {
    const long = files.map((file) => `${text(file).split('\n').length - 1} ${file}`);
    expect(long.filter((line) => Number.parseInt(line, 10) > 300)).toEqual([]);
  });

  test('an index only re-exports and opens with a comment; there is no utils, common or helpers', () => {
    for (const file of files.filter((name) => name.endsWith('/index.ts'))) {
      const code = text(file)
        .replace(/\/\*[\s\S]*?\*\//g, '')
        .replace(/\/\/.*$/gm, '');
      const rest = code
        .replace(/export\s+(?:type\s+)?(?:\*(?:\s+as\s+\w+)?|\{[^}]*\})\s+from\s+'[^']+';?/g, '')
        .trim();
      expect(rest, file).toBe('');
      expect(text(file).trimStart().startsWith('/**'), `${file} opens with a module comment`).toBe(true);
    }
    expect(files.filter((file) => /\/(?:utils?|common|helpers?)(?:\/|\.ts$)/.test(file))).toEqual([]);
  });

  test('no any, no non-null assertion, no silenced compiler', () => {
    const code = (file: string): string => text(file).replace(/\/\*[\s\S]*?\*\/|\/\/.*$/gm, '');
    const wrong = files.filter(
      (file) =>
        /@ts-(?:ignore|expect-error|nocheck)/.test(text(file)) ||
        /\bas any\b|: any\b|as unknown as/.test(code(file)),
    );
    expect(wrong).toEqual([]);
  });
});
