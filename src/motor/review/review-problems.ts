import { fromSiValue, procedure, type Quantity, unitOf } from '../../units';
import { type DocumentProblem, strengthProblems } from '../document';
import { motorSubject } from '../document/motor-subject';
import { settingsOf } from '../settings';
import { hardwareReview } from './hardware-review';

/**
 * A prediction does not need what is reported here.
 *
 * @example reviewProblems(demoMotor()).length // => 0
 */
export const reviewProblems = /* @__PURE__ */ procedure({
  name: 'reviewProblems',
  title: 'Problems that prevent the review of a motor',
  source: 'The calculations of the review, at the worst-case limits of the tolerances',
  subject: motorSubject,
  inputs: {},
  gives:
    'one entry for each strength that a material lacks, and for each dimension that a calculation of the review rejects',
  example: 'reviewProblems(demoMotor())',
  run: (motor): readonly DocumentProblem[] => {
    const lacking = strengthProblems(motor);
    if (lacking.length > 0) return lacking;
    // Errors do not depend on the load: a thread that separates at some pressure is evaluated, not rejected.
    const pressure: Quantity<'gauge pressure'> = fromSiValue(1e6, 'gauge pressure', unitOf('MPa'));
    const thrust: Quantity<'force'> = fromSiValue(100, 'force', unitOf('N'));
    return hardwareReview(motor, pressure, thrust, settingsOf(motor)).problems;
  },
});
