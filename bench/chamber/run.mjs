// node bench/chamber/run.mjs [rows] [repeats]
// Simulated firings against SciPy's stiff integrator at the same achieved error and against C; then batches on threads.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import process from 'node:process';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';

const rows = Number(process.argv[2] ?? 2000);
const repeats = Number(process.argv[3] ?? 7);
const here = dirname(fileURLToPath(import.meta.url));
const root = dirname(dirname(here));
const folder = mkdtempSync(join(root, 'node_modules', '.bench-chamber-'));
process.on('exit', () => rmSync(folder, { recursive: true, force: true }));
await build({
  entryPoints: {
    kernel: join(here, 'kernel.ts'),
    'simulate-worker': join(root, 'src/ballistics/simulate-worker.ts'),
  },
  bundle: true,
  splitting: true,
  format: 'esm',
  platform: 'node',
  packages: 'external',
  outdir: folder,
  outExtension: { '.js': '.js' },
  logLevel: 'error',
});
const { batches, pass, prepareRows, single } = await import(pathToFileURL(join(folder, 'kernel.js')).href);
const out = (text) => process.stdout.write(`${text}\n`);

// 1. One firing, error against the work, both integrators.
const lines = execFileSync('python3', [join(here, 'lsoda.py')], { encoding: 'utf8' })
  .trim()
  .split('\n')
  .map((line) => JSON.parse(line));
const [{ scipy, reference }, ...lsoda] = lines;
const errorOf = (result) => Math.max(...result.map((value, i) => Math.abs(value / reference[i] - 1)));
const peers = lsoda.map(({ rtol, seconds, result }) => ({ rtol, seconds, error: errorOf(result) }));
out(
  `one firing of the segment motor, SciPy ${scipy} LSODA; error: worst of burnout time, pressure integral and pressure at burnout`,
);
out('tolerance  steps  error    µs      LSODA rtol  error    µs       LSODA / ours');
for (const tolerance of [1e-4, 1e-5, 1e-6, 1e-7, 1e-8]) {
  const ours = single(tolerance, repeats);
  const error = errorOf(ours.result);
  // The loosest setting of the peer that is at least as good.
  const peer = peers.find((candidate) => candidate.error <= error) ?? peers.at(-1);
  out(
    [
      tolerance.toExponential(0).padEnd(9),
      String(ours.steps).padStart(5),
      error.toExponential(1).padStart(8),
      (ours.nanoseconds / 1e3).toFixed(0).padStart(6),
      peer.rtol.toExponential(0).padStart(11),
      peer.error.toExponential(1).padStart(9),
      (peer.seconds * 1e6).toFixed(0).padStart(7),
      ((peer.seconds * 1e9) / ours.nanoseconds).toFixed(1).padStart(9),
    ].join('  '),
  );
}

// 2. The same algorithm in C on the same rows: for any processor of this kind, and with what this one has besides
// (fused multiply-adds, which JavaScript cannot ask for). The three take turns, so that a busy machine slows all alike.
const input = join(folder, 'rows.bin');
const programs = [
  { flags: ['-O2'], nanoseconds: Number.POSITIVE_INFINITY, sums: [] },
  { flags: ['-O2', '-march=native'], nanoseconds: Number.POSITIVE_INFINITY, sums: [] },
].map((build, i) => ({ ...build, path: join(folder, `chamber-${i}`) }));
for (const { flags, path } of programs)
  execFileSync('cc', [...flags, '-o', path, join(here, 'chamber.c'), '-lm']);
const { models, rows: table } = prepareRows(rows, 1e-6, input);
let ours = { nanoseconds: Number.POSITIVE_INFINITY };
for (let k = 0; k < repeats; k++) {
  const one = pass(models, table);
  if (one.nanoseconds < ours.nanoseconds) ours = one;
  for (const program of programs) {
    const said = execFileSync(program.path, [input, '1'], { encoding: 'utf8' });
    const [nanoseconds, ...found] = said.trim().split(' ').map(Number);
    program.nanoseconds = Math.min(program.nanoseconds, nanoseconds);
    program.sums = found;
  }
}
out(`\n${rows} varied firings of a 4-segment motor, one thread, tolerance 1e-6`);
out(`ours ${(ours.nanoseconds / rows / 1e3).toFixed(1)} µs a firing`);
for (const { flags, nanoseconds, sums } of programs) {
  const agree = Math.max(...sums.map((sum, i) => Math.abs(sum / ours.sums[i] - 1)));
  const each = (nanoseconds / rows / 1e3).toFixed(1);
  const ratio = (ours.nanoseconds / nanoseconds).toFixed(2);
  out(`cc ${flags.join(' ')}: ${each} µs, ours / C ${ratio}; sums agree within ${agree.toExponential(1)}`);
  if (!(agree < 1e-9)) throw new Error('the two programs do not compute the same');
}

// 3. Batches.
out('\nbatches of a 4-segment motor on threads, tolerance 1e-6');
out('firings  threads  seconds  processor s  µs of it a firing  resident MB');
for (const { count, seconds, processor, threads, megabytes } of await batches(
  [100, 1000, 10_000, 100_000],
  1e-6,
))
  out(
    [
      String(count).padStart(7),
      String(threads).padStart(7),
      seconds.toFixed(3).padStart(8),
      processor.toFixed(3).padStart(11),
      ((processor / count) * 1e6).toFixed(0).padStart(17),
      megabytes.toFixed(0).padStart(11),
    ].join('  '),
  );
