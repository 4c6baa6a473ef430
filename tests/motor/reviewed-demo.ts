import { readFileSync } from 'node:fs';
import {
  compare,
  demoMotor,
  flawEnvelope,
  readLog,
  reduceFiring,
  reductionInputs,
  review,
} from '../../src/index';

/** The demo motor reviewed and compared with its log; each is worked out once. */
export const reviewed = review(demoMotor());
export const measured = reduceFiring(
  readLog(readFileSync('examples/motors/tern-54-firing.csv', 'utf8')),
  reductionInputs(demoMotor()),
);
export const comparison = compare(demoMotor(), { firing: measured });
export const flaws = flawEnvelope(demoMotor());
export const matter = { comparison, flaws };
