// Writes the unrolled step of the chamber from the tableau of the stiff integrator:
// node scripts/run-ts.mjs scripts/write-chamber-step.ts
import { writeFileSync } from 'node:fs';
import { chamberStepSource, stepFile } from './chamber/step-source';

writeFileSync(stepFile, chamberStepSource());
