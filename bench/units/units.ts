import { convert, convertMany } from 'convert';
import Qty from 'js-quantities';
import { unit as mathUnit, multiply } from 'mathjs';
import { inches, Measure, mega, newtons, pascals } from 'safe-units';
import unitmath from 'unitmath';
import { formula, gaugePressure, length, q, stress } from '../../src/units';

// Each row is a task; each task is done by every library that can do it, on the same 1,000 different values so that no
// library can remember an answer. Rounds are interleaved, the round at the first quartile counts, and only ratios are reported.

const count = 1000;
const rounds = 31;
const values = Array.from({ length: count }, (_, i) => 500 + i * 1.37);

type Work = (i: number) => number;
type Task = Readonly<Record<string, Work>>;

const hoopStress = formula({
  name: 'hoopStress',
  title: 'Hoop stress',
  equation: 'σ = p·r / t',
  source: 'made for this measurement',
  inputs: {
    pressure: gaugePressure('p', 'internal pressure'),
    radius: length('r', 'mean radius'),
    wall: length('t', 'wall thickness'),
  },
  output: stress('σ', 'hoop stress'),
  example: { pressure: '1000 psi', radius: '38 mm', wall: '3.2 mm' },
  valid: [({ radius, wall }) => radius / wall >= 10 || 'the wall is not thin'],
  si: ({ pressure, radius, wall }) => (pressure * radius) / wall,
});
interface Shell {
  readonly pressure: number;
  readonly radius: number;
  readonly wall: number;
}
const { si } = hoopStress; // as an embedding keeps it
const byHand = ({ pressure, radius, wall }: Shell): number => (pressure * radius) / wall;

const psiTexts = values.map((value) => `${value} psi` as const);
const inPsi = values.map((value) => q(value, 'psi'));
const area = q('2 in^2');
const mathPsi = values.map((value) => mathUnit(value, 'psi'));
const mathArea = mathUnit(2, 'in^2');
const qtyPsi = values.map((value) => new Qty(value, 'psi'));
const qtyArea = new Qty(2, 'in2');
const unitmathPsi = values.map((value) => unitmath(value, 'psi'));
const unitmathArea = unitmath(2, 'in^2');
// safe-units has no psi of its own; its measures are made of its own pascals, inches and newtons.
const psi = Measure.of(6894.757293168361, pascals, 'psi');
const megapascals = mega(pascals);
const lbf = Measure.of(4.4482216152605, newtons, 'lbf');
const safePsi = values.map((value) => Measure.of(value, psi));
const safeArea = Measure.of(2, inches.squared());
const shells: readonly Shell[] = values.map((value) => ({
  pressure: value * 7000,
  radius: 0.038,
  wall: 0.0032,
}));
const radius = q('38 mm');
const wall = q('3.2 mm');

const tasks: Readonly<Record<string, Task>> = {
  'parse and convert': {
    meop: (i) => q(psiTexts[i]).in('MPa'),
    mathjs: (i) => mathUnit(psiTexts[i]).toNumber('MPa'),
    'js-quantities': (i) => new Qty(psiTexts[i]).to('MPa').scalar,
    unitmath: (i) => unitmath(psiTexts[i]).to('MPa').getValue(),
    convert: (i) => convertMany(psiTexts[i]).to('MPa'),
  },
  'construct and convert': {
    meop: (i) => q(values[i], 'psi').in('MPa'),
    mathjs: (i) => mathUnit(values[i], 'psi').toNumber('MPa'),
    'js-quantities': (i) => new Qty(values[i], 'psi').to('MPa').scalar,
    unitmath: (i) => unitmath(values[i], 'psi').to('MPa').getValue(),
    'safe-units': (i) => Measure.of(values[i], psi).valueIn(megapascals),
    convert: (i) => convert(values[i], 'psi').to('MPa'),
  },
  'multiply and convert': {
    meop: (i) => inPsi[i].times(area).in('lbf'),
    mathjs: (i) => multiply(mathPsi[i], mathArea).toNumber('lbf'),
    'js-quantities': (i) => qtyPsi[i].mul(qtyArea).to('lbf').scalar,
    unitmath: (i) => unitmathPsi[i].mul(unitmathArea).to('lbf').getValue(),
    'safe-units': (i) => safePsi[i].times(safeArea).valueIn(lbf),
  },
  'formula of three inputs': {
    'by hand': (i) => byHand(shells[i]),
    '.si': (i) => si(shells[i]),
    'with quantities': (i) => hoopStress({ pressure: inPsi[i], radius, wall }).si,
    'with texts': (i) => hoopStress({ pressure: psiTexts[i], radius: '38 mm', wall: '3.2 mm' }).si,
  },
};

let sink = 0;
/** Nanoseconds a call: the work over all values, repeated until a round takes about 2 ms. */
function round(work: Work, repeats: number): number {
  const start = performance.now();
  for (let r = 0; r < repeats; r++) for (let i = 0; i < count; i++) sink += work(i);
  return ((performance.now() - start) * 1e6) / (repeats * count);
}

function repeatsFor(work: Work): number {
  for (let warm = 0; warm < 3; warm++) round(work, 1);
  return Math.max(1, Math.round(2e6 / (round(work, 1) * count)));
}

// The edge of the fastest quarter: what other work does to a round on a busy machine is left out.
const typical = (times: readonly number[]): number => [...times].sort((a, b) => a - b)[times.length >> 2];

for (const [name, task] of Object.entries(tasks)) {
  const entries = Object.entries(task).map(([library, work]) => ({
    library,
    work,
    repeats: repeatsFor(work),
    times: [0],
  }));
  for (const entry of entries) entry.times.pop();
  for (let r = 0; r < rounds; r++)
    for (const { work, repeats, times } of entries) times.push(round(work, repeats));
  console.log(`\n${name}`);
  const [{ times: reference }] = entries;
  const own = typical(reference);
  for (const { library, times } of entries) {
    const ns = typical(times);
    console.log(
      `  ${library.padEnd(18)} ${ns.toFixed(1).padStart(9)} ns ${(ns / own).toFixed(2).padStart(8)} ×`,
    );
  }
}
if (!Number.isFinite(sink)) throw new Error('a library returned what is no number');
