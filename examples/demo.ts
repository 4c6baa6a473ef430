// The demo motor, Tern-54: a small club motor of our own invention. Every number in its document is made up.
// Run with `npm run demo`: reviews the motor, reduces the log of its firing, and writes demo/report.html.
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import process from 'node:process';
import {
  closureForce,
  compare,
  flawEnvelope,
  hoopStress,
  parseMotor,
  readLog,
  reduceFiring,
  reductionInputs,
  report,
  reportPage,
  review,
} from '../src/index';

const here = join(dirname(dirname(process.argv[1] ?? '')), 'examples', 'motors');
const read = (name: string): string => readFileSync(join(here, name), 'utf8');

const motor = parseMotor(read('tern-54.json'));
const judged = review(motor);

// The two calculations that someone would check by hand first.
const { outsideDiameter, wall } = motor.case;
const radius = outsideDiameter.value.minus(wall.value).per(2);
console.log(`${hoopStress.explain({ pressure: judged.meop.pressure, radius, wall: wall.value })}\n`);
const sealDiameter = outsideDiameter.value.minus(wall.value.times(2));
console.log(`${closureForce.explain({ pressure: judged.meop.pressure, sealDiameter })}\n`);

console.log(report(judged));

const measured = reduceFiring(readLog(read('tern-54-firing.csv')), reductionInputs(motor));
const comparison = compare(motor, { firing: measured });
console.log(report(comparison));

const page = await reportPage(judged, { comparison, flaws: flawEnvelope(motor) });
mkdirSync('demo', { recursive: true });
writeFileSync(join('demo', 'report.html'), page);
console.log('The same with plots: demo/report.html');
