// Mach from area ratio and thrust coefficient on a million points: this library's kernels against the same algorithm in C.
// Run: node bench/thermo/run.mjs [points] [repeats]. Needs cc. Both sides run in this one process's time, alternately.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';

const here = dirname(fileURLToPath(import.meta.url));
const points = Number(process.argv[2] ?? 1e6);
const repeats = Number(process.argv[3] ?? 5);
const work = mkdtempSync(join(tmpdir(), 'bench-thermo-'));

try {
  const program = join(work, 'area-ratio');
  execFileSync('cc', ['-O2', '-march=native', '-o', program, join(here, 'area-ratio.c'), '-lm']);
  const bundle = join(work, 'kernels.mjs');
  await build({
    stdin: {
      contents: `export { machFromAreaRatioSi } from '${join(here, '../../src/thermo/mach-from-area-ratio')}';
export { thrustCoefficientSi } from '${join(here, '../../src/nozzle/ideal-nozzle-kernels')}';`,
      resolveDir: here,
      loader: 'ts',
    },
    bundle: true,
    format: 'esm',
    platform: 'node',
    outfile: bundle,
    logLevel: 'error',
  });
  const { machFromAreaRatioSi, thrustCoefficientSi } = await import(pathToFileURL(bundle).href);

  const area = new Float64Array(points);
  const gamma = new Float64Array(points);
  let state = 12345;
  const next = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 4294967296;
  };
  for (let i = 0; i < points; i++) {
    area[i] = 1.01 + 48.99 * next();
    gamma[i] = 1.04 + 0.36 * next();
  }
  const jobs = {
    supersonic: () => {
      let sum = 0;
      for (let i = 0; i < points; i++) sum += machFromAreaRatioSi(area[i], gamma[i], true);
      return sum;
    },
    subsonic: () => {
      let sum = 0;
      for (let i = 0; i < points; i++) sum += machFromAreaRatioSi(area[i], gamma[i], false);
      return sum;
    },
    thrust: () => {
      let sum = 0;
      for (let i = 0; i < points; i++) sum += thrustCoefficientSi(gamma[i], area[i], 0.02);
      return sum;
    },
  };
  const best = Object.fromEntries(Object.keys(jobs).map((name) => [name, { ours: Infinity, c: Infinity }]));
  for (let round = 0; round < repeats; round++) {
    const lines = execFileSync(program, [String(points), '1'], { encoding: 'utf8' })
      .trim()
      .split('\n');
    for (const line of lines) {
      const [name, nanoseconds, sum] = line.split(' ');
      const start = process.hrtime.bigint();
      const mine = jobs[name]();
      const took = Number(process.hrtime.bigint() - start) / points;
      best[name].ours = Math.min(best[name].ours, took);
      best[name].c = Math.min(best[name].c, Number(nanoseconds));
      if (Math.abs(mine / Number(sum) - 1) > 1e-11)
        throw new Error(`${name}: sums differ: ${mine} and ${sum}`);
    }
  }
  console.log('workload     ours ns/point   C ns/point   ours / C');
  for (const [name, { ours, c }] of Object.entries(best))
    console.log(
      `${name.padEnd(12)} ${ours.toFixed(1).padStart(13)} ${c.toFixed(1).padStart(12)} ${(ours / c).toFixed(2).padStart(10)}`,
    );
} finally {
  rmSync(work, { recursive: true, force: true });
}
