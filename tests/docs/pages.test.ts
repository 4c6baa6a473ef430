import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import vm from 'node:vm';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import * as meop from '../../src/index';

const pages = [
  'README.md',
  ...readdirSync('docs', { recursive: true, encoding: 'utf8' }).map((name) => join('docs', name)),
]
  .filter((name) => name.endsWith('.md'))
  .sort();
const text = (page: string): string => readFileSync(page, 'utf8');
const blocks = (page: string, language: string): string[] =>
  [...text(page).matchAll(/```(\w+)\n([\s\S]*?)```/g)]
    .filter(([, name]) => name === language)
    .map(([, , code]) => code);

describe('pages', () => {
  const lines = pages.flatMap((page) =>
    blocks(page, 'js').flatMap((code) =>
      code
        .split('\n')
        .filter((line) => line.includes('// =>'))
        .map((line) => ({ page, line })),
    ),
  );
  test('show results', () => expect(lines.length).toBeGreaterThan(10));
  test.each(lines)('$page: $line', ({ line }) => {
    const [expression, printed] = line.split('// =>').map((part) => part.trim());
    const value: unknown = vm.runInNewContext(expression, { ...meop });
    if (typeof value === 'number') expect(Math.abs(value / Number(printed) - 1)).toBeLessThan(1e-8);
    else expect(String(value)).toBe(printed);
  });

  test('the README prints the working it shows', () => {
    const call = blocks('README.md', 'js').find((code) => code.includes('.explain(')) ?? '';
    expect(`${String(vm.runInNewContext(call, { ...meop }))}\n`).toBe(blocks('README.md', 'text')[0]);
  });

  test.each(pages)('%s: its links lead somewhere', (page) => {
    const links = [...text(page).matchAll(/\]\(([^)#]+)(?:#[^)]*)?\)/g)].map(([, target]) => target);
    const broken = links.filter(
      (target) => !/^https?:/.test(target) && !existsSync(join(dirname(page), target)),
    );
    expect(broken).toEqual([]);
  });

  test('their scripts compile, but for the mistakes that the README shows', () => {
    const options: ts.CompilerOptions = {
      strict: true,
      noEmit: true,
      skipLibCheck: true,
      target: ts.ScriptTarget.ES2022,
      module: ts.ModuleKind.ESNext,
      moduleResolution: ts.ModuleResolutionKind.Bundler,
      lib: ['lib.es2023.d.ts', 'lib.dom.d.ts'],
      types: ['node'],
    };
    const scripts = new Map<string, string>();
    for (const page of pages)
      for (const [i, code] of blocks(page, 'ts').entries()) {
        const local = code.replace(
          /from 'meop((?:\/\w+)?)'/g,
          (_, sub: string) => `from './src${sub || '/index'}'`,
        );
        const imported = local.includes('import ')
          ? local
          : `import { hoopStress } from './src/index';\n${local}`;
        scripts.set(`page-${page.replace(/\W/g, '-')}-${i}.ts`, `${imported}\nexport {};`);
      }
    const host = ts.createCompilerHost(options);
    const { readFile, getSourceFile } = host;
    host.readFile = (name) => scripts.get(name) ?? readFile(name);
    host.fileExists = (name) => scripts.has(name) || existsSync(name);
    host.getSourceFile = (name, version) => {
      const code = scripts.get(name);
      return code === undefined ? getSourceFile(name, version) : ts.createSourceFile(name, code, version);
    };
    const program = ts.createProgram([...scripts.keys()], options, host);
    // Of the scripts alone: the sources have a check of their own, and it takes longer than all pages together.
    const wrong = [...scripts.keys()].flatMap((name) => {
      const file = program.getSourceFile(name);
      return [...program.getSyntacticDiagnostics(file), ...program.getSemanticDiagnostics(file)].map(
        ({ messageText }) => `${name}: ${ts.flattenDiagnosticMessageText(messageText, ' ').slice(0, 90)}`,
      );
    });
    expect(
      wrong.filter(
        (line) => !/^page-README-md-2\.ts: Type '"1000 (?:mm|psia)"' is not assignable/.test(line),
      ),
    ).toEqual([]);
    expect(wrong.length, 'the two mistakes that the README shows').toBe(2);
  }, 120_000);
});
