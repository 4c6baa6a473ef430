// Reviews the forward joint of a small motor, writes out every mode as a hand calculation, and lists lighter bolts.
//   node scripts/run-ts.mjs examples/joint-review.ts
import { checkSealOverHoles, designFactors, designJoint, oRingGland, reviewJoint } from '../src/index';

// The demo motor is our own invention: 6061-T6 tube of 3 in by 1/8 in, closures turned from bar.
const parts = {
  pressure: '800 psi',
  tube: {
    outsideDiameter: '3 in',
    wall: '1/8 in',
    material: '6061-T6 drawn tube',
    wallTemperature: '100 degC',
  },
  closureMaterial: '6061-T6 bar',
  gap: '0.001 in',
  closureThickness: '0.7 in',
  boltClass: 'A574',
  closureTemperature: '100 degC',
  sealToHoles: '0.6 in',
  factors: designFactors({ set: 'ground test' }),
} as const;

const review = reviewJoint({
  ...parts,
  thread: '1/4-20',
  count: 10,
  holeDiameter: '0.252 in',
  edgeDistance: '0.55 in',
  engagement: '0.45 in',
});
console.log(String(review));

for (const mode of review.modes) console.log(`\n${mode.explain()}`);

console.log(`\n${designJoint(parts)}`);

// The seal that makes the pressure act there, and whether it survives the holes on the way in.
const gland = oRingGland({
  ring: '230',
  bore: { nominal: '2.750 in', plus: '0.002 in' },
  grooveDiameter: { nominal: '2.526 in', minus: '0.002 in' },
  grooveWidth: { nominal: '0.187 in', plus: '0.005 in' },
  closureDiameter: { nominal: '2.748 in', minus: '0.001 in' },
  pressure: parts.pressure,
  caseWall: parts.tube.wall,
  caseMaterial: parts.tube.material,
  hottest: '120 degC',
});
console.log(`\n${gland}`);
console.log(
  `\n${checkSealOverHoles({ gland, holeDiameter: '0.252 in', edgeBreak: '0.8 mm', holeToGroove: '0.5 in' })}`,
);
