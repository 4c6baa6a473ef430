import { ambientPressure } from '../firing/motor-inputs';
import {
  type Arguments,
  absolutePressure,
  choice,
  count,
  instance,
  optional,
  ratio,
  time,
  words,
} from '../units';
import { erosiveBurning } from './erosive-inputs';
import { chamber, grainTemperature, ignition, nozzle } from './motor-inputs';
import { entranceLoss, momentumFactor } from './port/port-inputs';
import { propellantValue } from './propellant';
import { isBurnable } from './read-grain';
import { tailOff, throatBlockage, wallHeatLoss } from './transient-inputs';

/** A grain, a column of grains or a regression of either. */
export const burnable = instance(
  'grain or column of grains, regressed at standard accuracy, or its regression',
  'a grain, a column of grains or a regression',
  isBurnable,
);

/** Models of the flow along the port. */
export const portModels = ['automatic', 'lumped', 'coupled'] as const;

/** Numbers of the coupled model. */
export const portInputs = {
  momentumFactor,
  entranceLoss,
  stations: optional(count('n_s', 'number of stations along the column', { min: 4, max: 1000 }), 60),
};

/** What {@link simulate} takes. */
export const simulateInputs = {
  propellant: propellantValue,
  grain: burnable,
  nozzle,
  chamber,
  ambient: ambientPressure,
  ignition: optional(ignition),
  grainTemperature: optional(grainTemperature),
  erosiveBurning: optional(erosiveBurning),
  portModel: optional(
    choice(
      "model of the flow along the port: 'lumped', one pressure for the chamber; 'coupled', pressure, flow and burned depth station by station; 'automatic', coupled where a port area is below 3 throat areas or erosive burning begins",
      portModels,
    ),
    'automatic',
  ),
  ...portInputs,
  heatLoss: optional(wallHeatLoss),
  tailOff: optional(tailOff),
  throatBlockage: optional(throatBlockage),
  stopPressure: optional(
    absolutePressure(
      'p_s',
      'pressure at which the simulation ends, propellant left or not; if omitted, 0.2 % above ambient and at least 1 kPa, after burnout',
    ),
  ),
  timeLimit: optional(
    time(
      't_max',
      'time at which the simulation ends in any case; three times the burn at ambient pressure if omitted',
    ),
  ),
  tolerance: optional(ratio('ε', 'relative error allowed in each step', { min: 1e-12, max: 1e-3 }), 1e-6),
  title: optional(words('title of the firing')),
};

/** The argument of {@link simulate}. */
export type SimulateInput = Arguments<typeof simulateInputs>;
