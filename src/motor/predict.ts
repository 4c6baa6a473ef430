import { type SimulatedFiring, simulate } from '../ballistics';
import { type MotorInput, motorOf } from './document';
import { motorRegression } from './motor-grain';
import { simulationInput } from './simulation-input';

/**
 * Predicts the firing of a motor at nominal values and at the ambient temperature of its document, with the known
 * flaws of its grain. The assumed flaw is not included; see {@link meop}.
 *
 * @throws MeopError `motor-document` for a document with errors, and the errors of {@link simulate}
 * @example predict(demoMotor()).end // => 'burned out'
 */
export function predict(input: MotorInput): SimulatedFiring {
  const motor = motorOf(input);
  return simulate(simulationInput(motor, motorRegression(motor)));
}
