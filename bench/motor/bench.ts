// How long the review of a motor takes, with its Monte Carlo of 10,000 motors. Run with:
// node scripts/run-ts.mjs bench/motor/bench.ts
import { readFileSync } from 'node:fs';
import { performance } from 'node:perf_hooks';
import { flawEnvelope, type Motor, meop, parseMotor, predict, review } from '../../src/motor';

const load = (name: string): Motor => parseMotor(readFileSync(`examples/motors/${name}.json`, 'utf8'));
const texts = ['tern-54', 'tern-54-cracked'].map((name) =>
  readFileSync(`examples/motors/${name}.json`, 'utf8'),
);
const withSamples = (motor: Motor, samples: number): Motor => ({
  ...motor,
  meop: { ...motor.meop, samples },
});

/** The least of several runs, ms: what the work takes when nothing else runs. */
function least(work: () => unknown, runs = 5): number {
  let best = Number.POSITIVE_INFINITY;
  for (let i = 0; i < runs; i++) {
    const start = performance.now();
    work();
    best = Math.min(best, performance.now() - start);
  }
  return best;
}

const sound = load('tern-54');
const cracked = load('tern-54-cracked');
const first = performance.now();
review(sound);
const cold = performance.now() - first;
const simulated = least(() => predict(sound));
const line = (name: string, ms: number): void =>
  console.log(
    `| ${name} | ${ms.toFixed(ms < 10 ? 2 : 0)} | ${(ms / simulated).toFixed(ms < simulated ? 2 : 1)} |`,
  );

console.log('| work | ms | over one prediction |\n|---|---|---|');
line(
  'read and check a document',
  least(() => parseMotor(texts[0]), 20),
);
line('predict, sound', simulated);
line(
  'predict, cracked',
  least(() => predict(cracked), 2),
);
line('review, sound, first call in the process', cold);
for (const samples of [100, 1000, 10_000, 100_000])
  line(
    `meop, sound, ${samples} motors drawn`,
    least(() => meop(withSamples(sound, samples)), 3),
  );
line(
  'review, sound, 10000 motors drawn',
  least(() => review(withSamples(sound, 10_000)), 3),
);
line(
  'review, cracked, 10000 motors drawn',
  least(() => review(withSamples(cracked, 10_000)), 2),
);
line(
  'flaw envelope, sound',
  least(() => flawEnvelope(sound), 2),
);
const limit = 5000;
const reviewed = least(() => review(withSamples(sound, 10_000)), 2);
console.log(`\nfull review with 10,000 motors under ${limit / 1000} s: ${reviewed < limit ? 'yes' : 'NO'}`);
if (reviewed >= limit) process.exitCode = 1;
