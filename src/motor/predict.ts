import { simulate } from '../ballistics';
import { procedure } from '../units';
import { motorSubject } from './document/motor-subject';
import { motorRegression } from './motor-grain';
import { simulationInput } from './simulation-input';

/**
 * The assumed flaw is not included; see {@link meop}.
 *
 * @example predict(demoMotor()).end // => 'burned out'
 */
export const predict = /* @__PURE__ */ procedure({
  name: 'predict',
  title: 'Prediction of the firing of a motor',
  source: 'simulate: mass balance of the chamber with the burnback of the grain',
  subject: motorSubject,
  inputs: {},
  gives:
    'the simulated firing at nominal values and at the ambient temperature of the document, with the known flaws of its grain',
  example: 'predict(demoMotor())',
  run: (motor) => simulate(simulationInput(motor, motorRegression(motor))),
});
