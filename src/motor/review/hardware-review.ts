import type { Quantity } from '../../units';
import type { Motor } from '../document';
import type { MotorSettings } from '../settings';
import { atWorstCaseTolerances } from '../worst-case-tolerances';
import { closureReviews } from './closure-reviews';
import { nozzleRetention } from './nozzle-retention';
import { type PartConditions, together } from './part-review';
import { partReviewers } from './part-reviewers';
import { type Attempt, orThrow, refusals } from './refusals';
import { faceSealReviews, sealReviews } from './seal-review';
import { standMargins } from './stand-margins';

/** The hardware of a motor at a pressure and a thrust, with the worst-case limits of its tolerances, and what its calculations refuse. */
export function hardwareReview(
  motor: Motor,
  pressure: Quantity<'gauge pressure'>,
  thrust: Quantity<'force'>,
  settings: MotorSettings,
) {
  const worst = atWorstCaseTolerances(motor);
  const { attempt, problems } = refusals(motor.document);
  const structure = structureMargins(worst, pressure, thrust, settings, attempt);
  return {
    worst,
    structure,
    seals: sealReviews(motor, worst, pressure, attempt),
    faceSeals: faceSealReviews(motor, worst, pressure, attempt, {
      head: structure.axialBolts.head?.faceOpening,
      aft: structure.axialBolts.aft?.faceOpening,
    }),
    problems,
  };
}

/** The findings on all parts of a motor, as it is given, at a pressure above ambient and a thrust. */
export function structureMargins(
  motor: Motor,
  pressure: Quantity<'gauge pressure'>,
  thrust: Quantity<'force'>,
  settings: MotorSettings,
  attempt: Attempt = orThrow,
) {
  const conditions = { motor, pressure, thrust, settings, attempt };
  const { found, closures, nozzle } = pressureParts(conditions);
  const stand = standMargins(conditions);
  const { joints, retainingRings, threads, axialBolts } = closures;
  return {
    ...together([found, stand]),
    joints,
    retainingRings,
    threads,
    retention: nozzle.blowOut,
    axialBolts,
    restraint: stand.restraint,
  };
}

/** The findings on the parts that bear pressure, in a firing or in a proof test. */
export function pressureParts(conditions: PartConditions) {
  const closures = closureReviews(conditions);
  const nozzle = nozzleRetention(conditions);
  const others = partReviewers.map((reviewer) => reviewer(conditions));
  return { found: together([...others, closures, nozzle]), closures, nozzle };
}
