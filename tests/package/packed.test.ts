import { readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { gzipSync } from 'node:zlib';
import { build } from 'esbuild';
import { chromium as browsers } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { namedKinds, quantity } from '../../src/units';
import { unitNames } from '../../src/units/unit-names';
import { chromium, installPacked, type Packed, run } from './packed';

const bin = (name: string): string => resolve('node_modules/.bin', name);
let packed: Packed;
beforeAll(() => {
  packed = installPacked();
}, 300_000);
afterAll(() => rmSync(dirname(packed.tarball), { recursive: true }));

const call = "hoopStress({ pressure: '1000 psi', radius: '1.5 in', wall: '0.125 in' }).in('psi')";
const manifest: { exports: Record<string, unknown> } = JSON.parse(readFileSync('package.json', 'utf8'));
const subpaths = Object.keys(manifest.exports).filter((path) => path !== './package.json');

describe('the packed library, installed in an empty folder', () => {
  test('as ES modules: named and star imports of every subpath', () => {
    const lines = subpaths.map((path, i) => `import * as m${i} from '${path.replace('.', 'meop')}';`);
    const checks = subpaths.map((_, i) => `if (Object.keys(m${i}).length === 0) throw new Error('empty');`);
    const program = [...lines, "import { hoopStress } from 'meop';", ...checks, `console.log(${call});`].join(
      '\n',
    );
    writeFileSync(join(packed.folder, 'star.mjs'), program);
    expect(run('node', ['star.mjs'], packed.folder).trim()).toBe('12000');
  });

  test('as CommonJS: every subpath', () => {
    const lines = subpaths.map(
      (path) =>
        `if (Object.keys(require('${path.replace('.', 'meop')}')).length === 0) throw new Error('empty');`,
    );
    writeFileSync(
      join(packed.folder, 'use.cjs'),
      `${lines.join('\n')}\nconst { hoopStress } = require('meop');\nconsole.log(${call});`,
    );
    expect(run('node', ['use.cjs'], packed.folder).trim()).toBe('12000');
  });

  test('quantities of the ES module and of the CommonJS copy work together', () => {
    const program = `import { createRequire } from 'node:module';
      import { q } from 'meop/units';
      const other = createRequire(import.meta.url)('meop/units');
      console.log(q('1000 psi').times(other.q('2 in^2')).in('lbf'));`;
    writeFileSync(join(packed.folder, 'both.mjs'), program);
    expect(run('node', ['both.mjs'], packed.folder).trim()).toBe('2000');
  });

  test('errors of the CommonJS copy are errors of the ES module, under the name of the class', () => {
    const program = `import { createRequire } from 'node:module';
      import { inspect } from 'node:util';
      import { MeopError, q } from 'meop/units';
      const other = createRequire(import.meta.url)('meop/units');
      const thrownBy = (make) => { try { make('1 furlong'); } catch (error) { return error; } };
      const errors = [thrownBy(q), thrownBy(other.q)];
      console.log(JSON.stringify([
        errors.map((error) => error instanceof MeopError && error instanceof other.MeopError),
        new TypeError('x') instanceof MeopError,
        [MeopError, other.MeopError].map((one) => inspect(one)),
        errors.map(({ name, code, given }) => [name, code, given]),
      ]));`;
    writeFileSync(join(packed.folder, 'errors.mjs'), program);
    const facts = ['MeopError', 'unknown-unit', '1 furlong'];
    expect(JSON.parse(run('node', ['errors.mjs'], packed.folder))).toEqual([
      [true, true],
      false,
      ['[class MeopError extends Error]', '[class MeopError extends Error]'],
      [facts, facts],
    ]);
  });

  test('every unit has the size that it has in the sources, though decimal.js was trimmed', () => {
    const units = namedKinds().flatMap((kind) => unitNames(kind).map((unit) => [kind, unit] as const));
    expect(units.length).toBeGreaterThan(250);
    const program = `import { quantity } from 'meop/units';
      const units = JSON.parse(process.argv[2]);
      console.log(JSON.stringify(units.map(([kind, unit]) => quantity(kind, '1 ' + unit).si)));`;
    writeFileSync(join(packed.folder, 'units.mjs'), program);
    const sizes: unknown = JSON.parse(run('node', ['units.mjs', JSON.stringify(units)], packed.folder));
    expect(sizes).toEqual(units.map(([kind, unit]) => quantity(kind, `1 ${unit}`).si));
  });

  test('the type declarations show the card of every calculation', () => {
    const folder = join(packed.folder, 'node_modules/meop/dist');
    const text = readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter((name) => name.endsWith('.d.ts'))
      .map((name) => readFileSync(join(folder, name), 'utf8'))
      .join('\n');
    const declared = [
      ...text.matchAll(/^(?:export )?declare const (\w+): (?:Formula|Procedure|SubjectProcedure)</gm),
    ];
    expect(declared.length).toBeGreaterThan(190);
    const shown = new Set(
      [...text.matchAll(/ \* Source: (?:(?!\*\/)[\s\S])*\*\/\n(?:export )?declare const (\w+):/g)].map(
        ([, name]) => name,
      ),
    );
    expect(declared.map(([, name]) => name).filter((name) => !shown.has(name))).toEqual([]);
  });

  test.each([
    ['node16', 'node16'],
    ['esnext', 'bundler'],
  ])('from TypeScript with module %s and moduleResolution %s', (module, moduleResolution) => {
    const source = `import { hoopStress, q, type Quantity } from 'meop';
      import { longitudinalStress } from 'meop/structures';
      const stress: Quantity<'stress'> = hoopStress({ pressure: '1000 psi', radius: q('1.5 in'), wall: '1/8 in' });
      export const n: number = longitudinalStress({ pressure: '7 MPa', radius: '38 mm', wall: '3.2mm' }).in('ksi') + stress.in('MPa');
      // @ts-expect-error a length is no pressure
      hoopStress({ pressure: '1000 mm', radius: '38 mm', wall: '3.2 mm' });`;
    writeFileSync(join(packed.folder, 'use.ts'), source);
    // The declarations of the library are checked with it, those of TypeScript itself are not.
    const options = {
      strict: true,
      noEmit: true,
      skipDefaultLibCheck: true,
      target: 'es2022',
      module,
      moduleResolution,
      types: [],
    };
    writeFileSync(
      join(packed.folder, 'tsconfig.json'),
      JSON.stringify({ compilerOptions: options, files: ['use.ts'] }),
    );
    expect(run(bin('tsc'), ['-p', 'tsconfig.json'], packed.folder)).toBe('');
  });

  test('publint and attw find nothing', () => {
    expect(run(bin('publint'), ['run', packed.tarball, '--strict'], packed.folder)).toContain('All good');
    run(bin('attw'), [packed.tarball, '--profile', 'node16', '--no-emoji'], packed.folder);
  });

  test('the command answers on standard input, fails with 1, and does not understand a stray word', () => {
    const meop = join(packed.folder, 'node_modules/.bin/meop');
    const told = run(
      meop,
      [],
      packed.folder,
      process.env,
      "hoopStress({ pressure: '1000 psi', radius: '1.5 in', wall: '0.125 in' })",
    );
    expect(told.trim()).toBe('12000 psi');
    expect(() => run(meop, [], packed.folder, process.env, "q('1 furlong')")).toThrow(
      "unknown unit 'furlong'",
    );
    expect(() => run(meop, ['--nonsense'], packed.folder)).toThrow("unknown command '--nonsense'");
    expect(run(meop, ['--help'], packed.folder)).toContain('Exit codes');
  });

  test('all of meop imports fast', () => {
    const program = "const t = performance.now(); await import('meop'); console.log(performance.now() - t);";
    writeFileSync(join(packed.folder, 'time-all.mjs'), program);
    const times = Array.from({ length: 7 }, () => Number(run('node', ['time-all.mjs'], packed.folder)));
    // 80 ms on a quiet machine, half of it reading the text; the rest is room for a busy one.
    expect(Math.min(...times)).toBeLessThan(130);
  });

  test('many firings run on threads and give the bits of a plain loop', () => {
    const program = `import { propellant, simulateMany, simulationPool, tubularSegment } from 'meop';
      const law = { coefficient: 7, rateUnit: 'mm/s', pressureUnit: 'MPa', exponent: 0.32 };
      const gas = { gamma: 1.14, molarMass: '40 g/mol', flameTemperature: '1600 K' };
      const motor = {
        propellant: propellant({ density: '1780 kg/m^3', law, ...gas }),
        grain: tubularSegment({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '85 mm' }),
        chamber: { innerDiameter: '50 mm', length: '110 mm' },
        nozzle: { throatDiameter: '7 mm', expansionRatio: 5 },
        ignition: { initialPressure: '0.2 MPa' },
        ambient: '101325 Pa',
      };
      const variations = { count: 300, seed: 3, standardDeviations: { burnRate: 0.03 } };
      const plain = await simulateMany({ motor, variations });
      const pool = await simulationPool({ threads: 2 });
      const threaded = await simulateMany({ motor, variations, pool });
      await pool.close();
      const same = plain.peakPressure.si.every((p, i) => p === threaded.peakPressure.si[i]);
      console.log(JSON.stringify([plain.threads, threaded.threads, same]));`;
    writeFileSync(join(packed.folder, 'threads.mjs'), program);
    expect(JSON.parse(run('node', ['threads.mjs'], packed.folder))).toEqual([0, 2, true]);
  });

  test('meop/units does not load zod, and imports fast', () => {
    const program = `const t = performance.now(); await import('meop/units'); const ms = performance.now() - t;
      const { createRequire } = await import('node:module');
      console.log(JSON.stringify({ ms }));`;
    writeFileSync(join(packed.folder, 'time.mjs'), program);
    const times = Array.from({ length: 5 }, () =>
      Number(JSON.parse(run('node', ['time.mjs'], packed.folder)).ms),
    );
    expect(Math.min(...times)).toBeLessThan(15);
    const loaded = run(
      'node',
      [
        '--input-type=module',
        '-e',
        "import 'meop/units'; import m from 'node:module'; console.log(Object.keys(m._pathCache).join());",
      ],
      packed.folder,
    );
    expect(loaded).not.toContain('zod');
  });
});

async function bundled(code: string, format: 'esm' | 'iife', external: string[] = []): Promise<string> {
  const { outputFiles } = await build({
    stdin: { contents: code, resolveDir: packed.folder, loader: 'js' },
    bundle: true,
    minify: true,
    write: false,
    format,
    charset: 'utf8',
    platform: 'browser',
    external,
    logLevel: 'error',
  });
  return outputFiles[0].text;
}
const kilobytes = (text: string): number => gzipSync(text).length / 1000;

describe('bundles', () => {
  // Ceilings with little headroom on purpose: whoever raises one says why in the commit.
  // 14 kB before inputs and procedures were declared here: they took the reading of arguments from every other module.
  test('meop/units without decimal.js is under 19 kB gzipped', async () => {
    const { outputFiles } = await build({
      stdin: { contents: "export * from './src/units';", resolveDir: process.cwd(), loader: 'ts' },
      bundle: true,
      minify: true,
      write: false,
      format: 'esm',
      charset: 'utf8',
      external: ['decimal.js'],
    });
    expect(kilobytes(outputFiles[0].text)).toBeLessThan(19);
  });

  test('one formula, everything included, is under 25 kB gzipped', async () => {
    const text = await bundled("export { hoopStress } from 'meop';", 'esm');
    expect(kilobytes(text)).toBeLessThan(25);
    expect(text, 'another formula came along').not.toContain('idealCharacteristicVelocity');
  });

  test.skipIf(chromium() === undefined)('run in a browser', async () => {
    const code = await bundled(`import { hoopStress } from 'meop'; globalThis.answer = ${call};`, 'iife');
    const browser = await browsers.launch({
      executablePath: chromium() ?? '',
      args: [
        '--no-sandbox',
        '--disable-gpu',
        '--no-first-run',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
      ],
    });
    try {
      const page = await browser.newPage();
      const errors: string[] = [];
      page.on('pageerror', (error) => errors.push(String(error)));
      await page.setContent('<!doctype html><title>meop</title>');
      await page.addScriptTag({ content: code });
      expect(await page.evaluate('answer')).toBe(12000);
      expect(errors).toEqual([]);
    } finally {
      await browser.close();
    }
  });
});
