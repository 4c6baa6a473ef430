// Regression of grains against fast marching, and against the same algorithm in C.
// Run: node bench/grain/run.mjs [repeats]. Needs python3 with scikit-fmm, and cc. All sides run alternately in this one run.
import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';

const here = dirname(fileURLToPath(import.meta.url));
const repeats = Number(process.argv[2] ?? 5);
const work = mkdtempSync(join(tmpdir(), 'bench-grain-'));
const fastest = (job) => {
  let best = Number.POSITIVE_INFINITY;
  let result;
  for (let i = 0; i < repeats; i++) {
    const start = performance.now();
    result = job();
    best = Math.min(best, performance.now() - start);
  }
  return { ms: best, result };
};

try {
  const bundle = join(work, 'grains.mjs');
  await build({
    entryPoints: [join(here, 'grains.ts')],
    bundle: true,
    format: 'esm',
    platform: 'node',
    outfile: bundle,
    logLevel: 'error',
  });
  const { sectionPerimeter, solve, solveAt, error } = await import(pathToFileURL(bundle).href);

  // Reference: tests/cases/ballistics.json, finned6-section, semi-analytic quadrature good to 1e-7 (numpy 1.24.2 / scipy 1.10.1).
  const depths = [2, 4, 8, 12, 15.5];
  const reference = [216.396319, 225.164435, 230.95035, 226.478168, 240.600281];
  const errorOf = (p) => Math.max(...p.map((v, i) => Math.abs(v / reference[i] - 1)));
  console.log('Section of a six-finned grain, greatest error of the perimeter before the wall is reached');
  for (let i = 0; i < 30; i++) sectionPerimeter(depths, 1e-2);
  for (const cells of [91, 182, 364]) {
    const marched = JSON.parse(
      execFileSync(
        '/usr/bin/python3',
        [join(here, 'fast_marching.py'), cells, repeats, ...depths].map(String),
        {
          encoding: 'utf8',
        },
      ),
    );
    const target = errorOf(marched.perimeter);
    const accuracy =
      [1e-1, 3e-2, 1e-2, 1e-3, 1e-4].find((a) => errorOf(sectionPerimeter(depths, a)) <= target) ?? 1e-5;
    const ours = fastest(() => sectionPerimeter(depths, accuracy));
    console.log(
      `  ${cells} cells a radius: fast marching ${(1e3 * marched.seconds).toFixed(1)} ms, error ${target.toExponential(1)};` +
        ` here ${ours.ms.toFixed(2)} ms, error ${errorOf(ours.result).toExponential(1)}: ${((1e3 * marched.seconds) / ours.ms).toFixed(0)} times faster`,
    );
  }

  console.log('Finocyl with two cracks, no symmetry');
  const fine = solveAt(40);
  const ours = fastest(() => solve(2e-3));
  const held = ours.result.rays.reduce(
    (n, c) => n + c.depth.byteLength + c.weight.byteLength + c.middle.byteLength,
    0,
  );
  console.log(
    `  accuracy 2e-3: ${ours.ms.toFixed(0)} ms, ${ours.result.cells} cells, error ${(100 * error(ours.result, fine)).toFixed(3)} % against 40 cells a radius` +
      ` (${fine.cells} cells), estimated ${(100 * ours.result.achieved).toFixed(3)} %`,
  );
  console.log(`  memory: ${(held / 1e6).toFixed(1)} MB of typed arrays held for the finer of two samplings`);

  const source = join(here, 'cracked-finocyl.c');
  if (existsSync(source)) {
    const program = join(work, 'cracked-finocyl');
    execFileSync('cc', ['-O2', '-march=native', '-o', program, source, '-lm']);
    // Both at one spacing, sampling and tally: no search for the accuracy.
    const spacing = 6;
    // Alternately, so that a busy machine holds up both.
    let js = fastest(() => solveAt(spacing));
    let c;
    for (let round = 0; round < 4; round++) {
      const theirs = JSON.parse(
        execFileSync(program, [String(spacing), String(repeats)], { encoding: 'utf8' }),
      );
      if (c === undefined || theirs.ms < c.ms) c = theirs;
      const again = fastest(() => solveAt(spacing));
      if (again.ms < js.ms) js = again;
    }
    const ms = js.ms;
    console.log(
      `  same algorithm in C, ${spacing} cells a radius: ${c.ms.toFixed(0)} ms, ${c.cells} cells, cast volume ${c.volume.toFixed(2)} mm³;` +
        ` here ${ms.toFixed(0)} ms, ${js.result.cells} cells, ${(1e9 * js.result.volume[0]).toFixed(2)} mm³: ${(ms / c.ms).toFixed(2)} times the time of C`,
    );
  }
} finally {
  rmSync(work, { recursive: true });
}
