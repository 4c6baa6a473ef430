import type { Regression, SimulateInput } from '../ballistics';
import { conicalDivergenceFactor } from '../nozzle';
import { fromSiValue, type Quantity, unitOf } from '../units';
import type { Motor } from './document';
import { nominal } from './document/nominal';
import { propellantOf } from './document/propellant-of';
import { erosionOf } from './erosion-of';

/** Inside of case and liner, which contains the grain. */
export function chamberDiameter(motor: Motor): Quantity<'length'> {
  const { outsideDiameter, wall } = motor.case;
  const liner = motor.liner?.thickness.value.si ?? 0;
  return fromSiValue(outsideDiameter.value.si - 2 * wall.value.si - 2 * liner, 'length', unitOf('mm'));
}

/** Input of the simulation for a motor at nominal values. */
export function simulationInput(
  motor: Motor,
  grain: Regression,
  grainTemperature: Quantity<'temperature'> = motor.ambient.temperature.value,
): SimulateInput {
  const { nozzle, ignition, heatLoss, ambient } = motor;
  const divergence =
    nozzle.divergenceHalfAngle === undefined
      ? 1
      : conicalDivergenceFactor.si({ halfAngle: nozzle.divergenceHalfAngle.value.si });
  const efficiency = (nozzle.efficiency?.value.si ?? 1) * divergence;
  return {
    title: motor.name,
    propellant: propellantOf(motor.propellant),
    grain,
    ...erosionOf(motor, grain),
    nozzle: {
      throatDiameter: nozzle.throatDiameter.value,
      exitDiameter: nozzle.exitDiameter.value,
      efficiency,
      ...(nozzle.throatErosion && { throatErosion: { referenceRate: nozzle.throatErosion.value } }),
    },
    chamber: { innerDiameter: chamberDiameter(motor), length: motor.case.chamberLength.value },
    ambient: ambient.pressure.value,
    grainTemperature,
    ...(ignition && { ignition: nominal(ignition) }),
    ...(heatLoss && {
      heatLoss: nominal(heatLoss),
      tailOff: { law: 'heat-loss', ...nominal(heatLoss) },
    }),
  };
}
