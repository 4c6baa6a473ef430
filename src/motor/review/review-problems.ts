import { fromSiValue, type Quantity, unitOf } from '../../units';
import { type DocumentProblem, type MotorInput, motorOf, strengthProblems } from '../document';
import { settingsOf } from '../settings';
import { hardwareReview } from './hardware-review';

/**
 * What prevents a sound document from being reviewed: strengths that its materials lack, sizes that the calculations of a
 * part refuse at the worst-case limits of their tolerances. A prediction does not require them.
 *
 * @throws MeopError `motor-document` for an invalid document
 * @example reviewProblems(demoMotor()).length // => 0
 */
export function reviewProblems(input: MotorInput): readonly DocumentProblem[] {
  const motor = motorOf(input);
  const lacking = strengthProblems(motor);
  if (lacking.length > 0) return lacking;
  // What is refused does not depend on the pressure: a thread that parts at some pressure is reviewed, not refused.
  const pressure: Quantity<'gauge pressure'> = fromSiValue(1e6, 'gauge pressure', unitOf('MPa'));
  const thrust: Quantity<'force'> = fromSiValue(100, 'force', unitOf('N'));
  return hardwareReview(motor, pressure, thrust, settingsOf(motor)).problems;
}
