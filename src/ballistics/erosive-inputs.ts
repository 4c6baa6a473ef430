// Constants of the laws of erosive burning, shared by the equations and the simulation.
import { length, optional, ratio, speed } from '../units';

/** Constants of the Lenoir-Robillard law. */
export const lenoirRobillardInputs = {
  coefficient: ratio('α', 'coefficient of the law in SI, m^2.8·kg^−0.8·s^−0.2', { min: 0, example: 1.7e-5 }),
  // Quoted from memory, not verified: fits many propellants.
  decay: optional(ratio('β', 'decay constant of the law', { above: 0 }), 53),
  length: length('L', 'distance from the head end, or hydraulic diameter in later use', { example: '0.3 m' }),
};

/** Constants of the threshold law. */
export const thresholdInputs = {
  threshold: speed('u_th', 'gas velocity at which augmentation begins', { above: 0, example: '200 m/s' }),
  gain: ratio('k', 'augmentation at twice the threshold, less one', { min: 0, example: 0.2 }),
};
