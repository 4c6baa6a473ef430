// Runs a TypeScript program of this repository: node scripts/run-ts.mjs examples/first-calculation.ts [arguments]
// Bundled in memory with esbuild, so that examples and benchmarks need no build step.
import { mkdtempSync, rmSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import process from 'node:process';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const [program, ...rest] = process.argv.slice(2);
if (!program) {
  process.stderr.write('usage: node scripts/run-ts.mjs PROGRAM.ts [arguments]\n');
  process.exit(2);
}
// Beside node_modules, so that packages resolve from the bundle as they do from the source.
const folder = mkdtempSync(join(root, 'node_modules', '.run-ts-'));
process.on('exit', () => rmSync(folder, { recursive: true, force: true }));
const outfile = join(folder, 'program.mjs');
await build({
  entryPoints: [resolve(program)],
  bundle: true,
  platform: 'node',
  format: 'esm',
  target: 'node20',
  packages: 'external',
  sourcemap: 'inline',
  outfile,
  logLevel: 'error',
});
process.argv = [process.argv[0], resolve(program), ...rest];
await import(pathToFileURL(outfile).href);
