import { type SimulatedFiring, simulate } from '../ballistics';
import { type MotorInput, motorOf } from './document';
import { motorRegression } from './motor-grain';
import { simulationInput } from './simulation-input';

/**
 * Predicts the firing of a motor at its nominal values, at the ambient temperature of its document, with the flaws that
 * its grain is known to have (not the assumed one: that is for {@link meop}).
 *
 * @throws MeopError `motor-document` for a document with problems, and all that {@link simulate} throws
 * @example predict(demoMotor()).end // => 'burned out'
 */
export function predict(input: MotorInput): SimulatedFiring {
  const motor = motorOf(input);
  return simulate(simulationInput(motor, motorRegression(motor)));
}
