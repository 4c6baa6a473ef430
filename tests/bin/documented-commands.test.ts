import { execFileSync, spawnSync } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { build } from 'esbuild';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { demoMotor } from '../../src/index';
import { type BuiltCommand, builtCommand } from './built-command';

// What the page about the command and the notebook show is run as it stands, in a folder of its own.
const folder = mkdtempSync(join(tmpdir(), 'meop-pages-'));
let command: BuiltCommand;

beforeAll(async () => {
  command = await builtCommand();
  cpSync('examples/motors', join(folder, 'examples', 'motors'), { recursive: true });
  mkdirSync(join(folder, 'motors'));
  const motors = [10.2, 10.4, 10.6, 10.8, 11].map((throat) => {
    const { nozzle, ...motor } = demoMotor();
    return JSON.stringify({ ...motor, nozzle: { ...nozzle, throatDiameter: `${throat} mm` } });
  });
  for (const [i, motor] of motors.entries()) writeFileSync(join(folder, 'motors', `${i}.json`), motor);
  writeFileSync(join(folder, 'motors.ndjson'), `${motors.join('\n')}\n`);
}, 60_000);
afterAll(() => {
  command.remove();
  rmSync(folder, { recursive: true });
});

describe('docs/how-to/command.md', () => {
  const page = readFileSync('docs/how-to/command.md', 'utf8');
  const blocks = [...page.matchAll(/```sh\n([\s\S]*?)```/g)].map(([, code]) => code.trim());
  test('shows commands', () => expect(blocks.length).toBeGreaterThan(3));

  test.each(blocks)('%s', (block) => {
    const code = block.replaceAll('npx meop', `"${process.execPath}" "${command.file}"`);
    const { status, stderr } = spawnSync('sh', ['-e', '-c', code], { cwd: folder, encoding: 'utf8' });
    expect(stderr).toBe('');
    expect(status).toBe(0);
    if (!block.includes('results.ndjson')) return;
    const results = readFileSync(join(folder, 'results.ndjson'), 'utf8').trim().split('\n');
    const peaks = results.map((line) => JSON.parse(line).summary['peak pressure, absolute'].value);
    expect(new Set(peaks).size).toBe(5);
    rmSync(join(folder, 'results.ndjson'));
  });
});

interface Cell {
  readonly cell_type: 'code' | 'markdown';
  readonly source: readonly string[];
  readonly outputs?: readonly unknown[];
}

describe('examples/notebook.ipynb', () => {
  const notebook: { readonly nbformat: number; readonly cells: readonly Cell[] } = JSON.parse(
    readFileSync('examples/notebook.ipynb', 'utf8'),
  );
  const code = notebook.cells.filter(({ cell_type }) => cell_type === 'code');

  test('is a notebook without stored outputs', () => {
    expect(notebook.nbformat).toBe(4);
    expect(code.length).toBeGreaterThan(5);
    for (const { outputs } of code) expect(outputs).toEqual([]);
  });

  test('every cell runs, one after the other, and its last expression shows itself', async () => {
    // The last line of a cell is the expression that the kernel would show.
    const program = code.map(({ source }) => {
      const before = source.slice(0, -1).join('');
      return `${before}\nshow(${source.at(-1)});`;
    });
    const shows = `const show = (value) => {
      const method = value[Symbol.for('Jupyter.display')];
      console.log(JSON.stringify(method ? Object.keys(method.call(value)) : [typeof value]));
    };`;
    const outfile = resolve(command.file, '..', 'notebook.mjs');
    await build({
      stdin: { contents: `${shows}\n${program.join('\n')}`, resolveDir: resolve('.'), loader: 'ts' },
      bundle: true,
      platform: 'node',
      format: 'esm',
      packages: 'external',
      alias: { 'npm:meop': resolve('src/index.ts') },
      outfile,
      logLevel: 'error',
    });
    expect(existsSync(outfile)).toBe(true);
    const out = execFileSync(process.execPath, [outfile], { cwd: 'examples', encoding: 'utf8' });
    const shown: readonly string[][] = out
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line));
    expect(shown.length).toBe(code.length);
    expect(
      shown.filter((types) => types.includes('application/vnd.vegalite.v5+json')).length,
    ).toBeGreaterThan(5);
    expect(shown.filter((types) => types.includes('text/html')).length).toBeGreaterThan(3);
    expect(shown.flat().filter((type) => type === 'object' || type === 'undefined')).toEqual([]);
  });
});
