import { ambientPressure } from '../firing/motor-inputs';
import {
  type Arguments,
  absolutePressure,
  choice,
  instance,
  optional,
  ratio,
  time,
  variants,
  words,
} from '../units';
import { lenoirRobillardInputs, thresholdInputs } from './erosive-inputs';
import { chamber, grainTemperature, ignition, nozzle } from './motor-inputs';
import { propellantValue } from './propellant';
import { isBurnable } from './read-grain';
import { tailOff, throatBlockage, wallHeatLoss } from './transient-inputs';

const flux = optional(
  choice(
    'mass flux that acts on the whole surface: the mean over the port (half of that at its aft end), or that of the aft end',
    ['mean', 'aft'],
  ),
  'mean',
);

/** Erosive burning of a simulated motor. */
export const erosiveBurning = variants('law', 'law of erosive burning', {
  'lenoir-robillard': { ...lenoirRobillardInputs, flux },
  'threshold-velocity': { ...thresholdInputs, flux },
});

/** A grain, a column of grains or a regression of either. */
export const burnable = instance(
  'grain or column of grains, regressed at standard accuracy, or its regression',
  'a grain, a column of grains or a regression',
  isBurnable,
);

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
