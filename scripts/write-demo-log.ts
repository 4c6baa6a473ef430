// Writes the log of a static firing that never was: the cracked Tern-54, simulated, as a hobby logger records it. The
// transducer ends at 1000 psi and clips; noise, a small zero and a slow thermocouple are added from a seeded generator.
// Run with: node scripts/run-ts.mjs scripts/write-demo-log.ts
import { readFileSync, writeFileSync } from 'node:fs';
import { parseMotor, predict } from '../src/motor';
import { randomStream } from '../src/numerics';

const motor = parseMotor(readFileSync('examples/motors/tern-54-cracked.json', 'utf8'));
const firing = predict(motor);
const ambient = motor.ambient.pressure.value.si;
const random = randomStream(54);
const rate = 500; // Hz
const [before, after] = [0.6, 1.2]; // s of rest on either side
const psi = 6894.757293168361;
const range = 1000; // psi
const span = firing.time.si[firing.time.length - 1];

/** A channel of the prediction at a time after ignition; its rest outside. */
function at(values: Float64Array, time: number, rest: number): number {
  const t = firing.time.si;
  if (time <= t[0] || time >= span) return rest;
  let k = 1;
  while (t[k] < time) k++;
  return values[k - 1] + ((time - t[k - 1]) / (t[k] - t[k - 1])) * (values[k] - values[k - 1]);
}

const rows = ['time (s),pressure (psig),thrust (N),temperature case middle (degC)'];
const count = Math.round((before + span + after) * rate);
for (let i = 0; i < count; i++) {
  const time = i / rate;
  const burned = time - before;
  const pressure = (at(firing.pressure.si, burned, ambient) - ambient) / psi + 1.5 + 1.2 * random.normal();
  const thrust = at(firing.thrust.si, burned, 0) + 0.6 + 1.5 * random.normal();
  // The wall warms while it burns and soaks on after.
  const heated = 1 - Math.exp(-Math.max(0, burned) / 4);
  const wall = 20 + 78 * heated + 0.3 * random.normal();
  const step = (value: number, size: number): string => (Math.round(value / size) * size).toFixed(1);
  rows.push(
    [time.toFixed(3), step(Math.min(range, pressure), 0.5), step(thrust, 0.5), step(wall, 0.2)].join(','),
  );
}
writeFileSync('examples/motors/tern-54-firing.csv', `${rows.join('\n')}\n`);
