import { type MotorHeatLoss, motorHeatLoss } from '../ballistics';
import type { Motor } from './document';
import { motorRegression } from './motor-grain';
import type { RegressionCache } from './regression-cache';
import { simulationInput } from './simulation-input';

/** Heat loss of a motor at nominal values; `undefined` where the document specifies none. */
export const heatLossOf = (motor: Motor, cache: RegressionCache): MotorHeatLoss | undefined =>
  motor.heatLoss === undefined
    ? undefined
    : motorHeatLoss({ motor: simulationInput(motor, motorRegression(motor, 'as documented', cache)) });

/** The heat loss in one sentence. */
export const heatLossText = ({ efficiency, wallArea, pressure, gasTemperature }: MotorHeatLoss): string =>
  `Heat loss to ${wallArea} of wall lowers the characteristic velocity by ${(100 * (1 - efficiency)).toFixed(2)} %, at the mean pressure of ${pressure} (gas at ${gasTemperature}); at equal shape and pressure the loss is proportional to size^−0.2.`;
