import { designJoint, material, reviewJoint, threadGeometry } from '../../src/structures';
import { type HandJoint, type HandStrengths, handWritten } from './hand-written';

const parts = {
  pressure: '6 MPa',
  tube: { outsideDiameter: '76 mm', wall: '3 mm', material: material('6061-T6 drawn tube') },
  closureMaterial: material('6061-T6 bar'),
  boltClass: '8.8',
} as const;
const thread = threadGeometry('M6');
const hand: HandJoint = {
  p: 6e6,
  seal: 0.07,
  od: 0.076,
  t: 0.003,
  n: 12,
  e: 0.012,
  d: 0.006,
  As: thread.tensileStressArea.si,
  P: thread.pitch.si,
  Ds: thread.limits.externalMajorMin.si,
  En: thread.limits.internalPitchMax.si,
  L: 0.009,
};
const ksi = 6.894757293168361e6;
// 6061-T6 drawn tube and bar (MIL-HDBK-5J minimums) and class 8.8 as the library has them.
const strengths: HandStrengths = {
  su: 480e6,
  sy: 640e6 / Math.sqrt(3),
  by: 640e6,
  bru: 88 * ksi,
  bry: 56 * ksi,
  cbru: 88 * ksi,
  cbry: 56 * ksi,
  fsu: 27 * ksi,
  ftu: 42 * ksi,
  fty: 35 * ksi,
  cfsu: 27 * ksi,
};
const joint = {
  pressure: hand.p,
  sealDiameter: hand.seal,
  outsideDiameter: hand.od,
  wall: hand.t,
  count: hand.n,
  rows: 1,
  rowSpacing: 0,
  edgeDistance: hand.e,
  holeDiameter: hand.d,
  boltDiameter: hand.d,
  shearArea: hand.As,
  rootDiameter: thread.rootDiameter.si,
  pitch: hand.P,
  externalMajorMin: hand.Ds,
  internalPitchMax: hand.En,
  engagement: hand.L,
  bendingArm: 0,
  preload: 0,
  shareFactor: 1,
  positionTolerance: 0,
  moduli: [200e9, 68.9e9, 68.9e9],
  bearingYieldStress: strengths.bry,
  sealToHoles: undefined,
  poissonRatio: 0.33,
} as const;
const bolts = { thread: 'M6', count: 12, edgeDistance: '12 mm', engagement: '9 mm' } as const;

const least = reviewJoint({ ...parts, ...bolts }).governing.marginOfSafety;
const byHand = handWritten(hand, strengths);
if (Math.abs(least - byHand) > 1e-9) throw new Error(`the two disagree: ${least} against ${byHand}`);

let kept = 0; // so that nothing is optimised away

/** Nanoseconds a call, the least of several rounds. */
function time(calls: number, run: (i: number) => number): number {
  for (let i = 0; i < calls / 4; i++) kept += run(i);
  let best = Number.POSITIVE_INFINITY;
  for (let round = 0; round < 7; round++) {
    const start = process.hrtime.bigint();
    for (let i = 0; i < calls; i++) kept += run(i);
    best = Math.min(best, Number(process.hrtime.bigint() - start) / calls);
  }
  return best;
}

const vary = (i: number): number => 6e6 + (i % 1000);
const handOne = time(400_000, (i) => handWritten({ ...hand, p: vary(i) }, strengths));
const kernel = time(400_000, (i) => reviewJoint.si({ ...joint, pressure: vary(i) }).boltShear);
const review = time(
  3_000,
  (i) =>
    reviewJoint({ ...parts, ...bolts, pressure: `${6 + (i % 100) / 1000} MPa` }).governing.marginOfSafety,
);
const printed = time(1_000, () => String(reviewJoint({ ...parts, ...bolts })).length);
const search = designJoint(parts);
const design = time(
  30,
  (i) => designJoint({ ...parts, pressure: `${6 + (i % 100) / 1000} MPa` }).feasible.length,
);
const handDesign = time(300, (i) => {
  let passes = 0;
  for (let k = 0; k < search.evaluatedCount; k++)
    if (handWritten({ ...hand, p: vary(i), n: 4 + (k % 20), e: 0.009 + 0.003 * (k % 3) }, strengths) >= 0)
      passes++;
  return passes;
});

const us = (ns: number): string => `${(ns / 1000).toPrecision(3)} µs`;
console.log('| call | time | over the hand-written |');
console.log('|---|---|---|');
console.log(`| hand-written, sixteen modes | ${us(handOne)} | 1 |`);
console.log(`| reviewJoint.si, plain SI | ${us(kernel)} | ${(kernel / handOne).toPrecision(2)} |`);
console.log(
  `| reviewJoint, units, sources, cautions, holes | ${us(review)} | ${(review / handOne).toPrecision(2)} |`,
);
console.log(`| reviewJoint, printed | ${us(printed)} | ${(printed / handOne).toPrecision(2)} |`);
console.log(`| hand-written over ${search.evaluatedCount} combinations | ${us(handDesign)} | 1 |`);
console.log(
  `| designJoint over ${search.evaluatedCount} combinations | ${us(design)} | ${(design / handDesign).toPrecision(2)} |`,
);
if (Number.isNaN(kept)) throw new Error('not a number');
