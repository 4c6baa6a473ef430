import { type Regression, type SimulatedFiring, simulate } from '../../ballistics';
import { fromSiValue, unitOf } from '../../units';
import type { Motor } from '../document';
import { simulationInput } from '../simulation-input';

// Peaks of these agree with those of 60 stations and a tolerance of 1e-6 to about 1e-3, alike for all samples of a motor.
const quicker = { stations: 12, tolerance: 1e-5 } as const;

const run = (motor: Motor, grain: Regression, kelvin: number): SimulatedFiring =>
  simulate({
    ...simulationInput(motor, grain, fromSiValue(kelvin, 'temperature', unitOf('K'))),
    ...quicker,
  });

/** Peak pressure at the head end [Pa, absolute] of a full simulation, at a grain temperature [K]. */
export const fullPeak = (motor: Motor, grain: Regression, kelvin: number): number =>
  run(motor, grain, kelvin).peakHeadPressure.si;

/** Whether the full simulation of a motor solves the flow along its port. */
export const hasCoupledPort = (motor: Motor, grain: Regression, kelvin: number): boolean =>
  run(motor, grain, kelvin).portModel === 'coupled';
