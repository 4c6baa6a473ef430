// node bench/chamber/port.mjs [marches] [repeats]
// The march along a port against the same algorithm in C.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import process from 'node:process';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';

const marches = Number(process.argv[2] ?? 5000);
const repeats = Number(process.argv[3] ?? 9);
const here = dirname(fileURLToPath(import.meta.url));
const folder = mkdtempSync(join(dirname(dirname(here)), 'node_modules', '.bench-port-'));
process.on('exit', () => rmSync(folder, { recursive: true, force: true }));
await build({
  entryPoints: { kernel: join(here, 'port-kernel.ts') },
  bundle: true,
  format: 'esm',
  platform: 'node',
  packages: 'external',
  outdir: folder,
  outExtension: { '.js': '.mjs' },
  logLevel: 'error',
});
const { preparePort } = await import(pathToFileURL(join(folder, 'kernel.mjs')).href);
const program = join(folder, 'port-march');
execFileSync('cc', ['-O3', '-o', program, join(here, 'port-march.c'), '-lm']);
const out = (text) => process.stdout.write(`${text}\n`);
out('cells  erosion  ours µs  C -O3 µs  ratio  sums agree within');
for (const count of [30, 60, 120])
  for (const erodes of [false, true]) {
    const input = join(folder, `${count}-${erodes}.bin`);
    const pass = preparePort(count, marches, erodes, input);
    let ours = { nanoseconds: Number.POSITIVE_INFINITY };
    let theirs = Number.POSITIVE_INFINITY;
    let sums = [];
    // They take turns, so that a busy machine slows both alike.
    for (let k = 0; k < repeats; k++) {
      const one = pass();
      if (one.nanoseconds < ours.nanoseconds) ours = one;
      const [nanoseconds, ...found] = execFileSync(program, [input, '1'], { encoding: 'utf8' })
        .trim()
        .split(' ')
        .map(Number);
      theirs = Math.min(theirs, nanoseconds);
      sums = found;
    }
    const agree = Math.max(...sums.map((sum, i) => Math.abs(sum / ours.sums[i] - 1)));
    out(
      [
        String(count).padStart(5),
        (erodes ? 'yes' : 'none').padStart(7),
        (ours.nanoseconds / marches / 1e3).toFixed(2).padStart(7),
        (theirs / marches / 1e3).toFixed(2).padStart(8),
        (ours.nanoseconds / theirs).toFixed(2).padStart(5),
        agree.toExponential(1).padStart(8),
      ].join('  '),
    );
    if (!(agree < 1e-9)) throw new Error('the two programs do not compute the same');
  }
