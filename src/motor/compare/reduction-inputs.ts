import type { SimulatedFiring } from '../../ballistics';
import type { ReductionInputs } from '../../firing';
import { absolute, procedure } from '../../units';
import type { Motor } from '../document';
import { motorSubject } from '../document/motor-subject';
import { propellantOf } from '../document/propellant-of';
import { predict } from '../predict';

/**
 * Use them as `reduceFiring(log, reductionInputs(motor))`.
 *
 * @example reductionInputs(demoMotor()).title // => 'Tern-54'
 */
export const reductionInputs = /* @__PURE__ */ procedure({
  name: 'reductionInputs',
  title: 'Values of a motor document that the reduction of its log requires',
  source: 'the motor document, and its prediction',
  subject: motorSubject,
  inputs: {},
  gives: 'the options of reduceFiring',
  example: 'reductionInputs(demoMotor())',
  run: (motor) => factsOf(motor, predict(motor)),
});

/** {@link reductionInputs} with a given prediction. */
export function factsOf(motor: Motor, prediction: SimulatedFiring): ReductionInputs {
  const { nozzle, ambient, instruments = [], stand, name } = motor;
  const throat = nozzle.throatDiameter.value;
  const pressure = instruments.find((one) => one.measures === 'pressure');
  const thrust = instruments.find((one) => one.measures === 'thrust');
  return {
    ambientPressure: ambient.pressure.value,
    title: name,
    throatDiameter: throat,
    expansionRatio: (nozzle.exitDiameter.value.si / throat.si) ** 2,
    ...(prediction.loadedMass && { propellantMass: prediction.loadedMass }),
    idealCharacteristicVelocity: propellantOf(motor.propellant).idealCharacteristicVelocity,
    // The document does not specify the direction of the nozzle on a vertical stand, so the caller must specify it to correct the weight.
    ...(stand?.axis === 'horizontal' && { stand: 'horizontal' as const }),
    ranges: {
      ...(pressure?.measures === 'pressure' && {
        pressure: absolute(pressure.range.value, ambient.pressure.value),
      }),
      ...(thrust?.measures === 'thrust' && { thrust: thrust.range.value }),
    },
    prediction,
  };
}
