// Constants of the laws of erosive burning, shared by the equations, the simulation and the motor document.
import {
  type Arguments,
  choice,
  dynamicViscosity,
  inputs,
  length,
  optional,
  ratio,
  speed,
  type Values,
  variants,
} from '../units';
import type { ErosionLaw } from './port/erosion-law';

/** Multiplier of the added rate. */
export const augmentationFactor = optional(
  ratio(
    'f_e',
    'multiplier of the rate that erosion adds: the uncertainty of the law, or the value of a fit',
    {
      min: 0,
      example: 1,
      worse: 'firing high',
    },
  ),
  1,
);

/** Constants of the Mukunda-Paul law; all quoted from memory, not verified, and the viscosity an assumption. */
export const mukundaPaulInputs = {
  gain: optional(ratio('K', 'gain of the law', { min: 0, example: 0.023 }), 0.023),
  reducedThreshold: optional(
    ratio('g_th', 'reduced mass flux at which augmentation begins', { min: 0, example: 35 }),
    35,
  ),
  // Assumption; it enters with the power 0.1.
  viscosity: optional(dynamicViscosity('μ', 'viscosity of the gas', { example: '5e-5 Pa*s' }), 5e-5),
};

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

/** A law of erosive burning with its constants. */
export const erosiveBurning = variants('law', 'law of erosive burning', {
  none: inputs({}, { meaning: 'no erosive burning' }),
  'mukunda-paul': inputs(
    { ...mukundaPaulInputs, augmentationFactor },
    { meaning: 'threshold in the reduced mass flux, with a size effect' },
  ),
  'lenoir-robillard': inputs(
    {
      ...lenoirRobillardInputs,
      length: optional(lenoirRobillardInputs.length),
      lengthOf: optional(
        choice('length of the law where none is given', ['distance from the head', 'hydraulic diameter']),
        'hydraulic diameter',
      ),
      augmentationFactor,
    },
    { meaning: 'heat transfer to the surface, with blowing' },
  ),
  'threshold-velocity': inputs(
    { ...thresholdInputs, augmentationFactor },
    { meaning: 'linear above a gas velocity' },
  ),
});

/** A law of erosive burning as it is given. */
export type ErosiveBurningInput = Arguments<{ readonly law: typeof erosiveBurning }>['law'];

/** A law of erosive burning as it is read. */
export type ErosiveBurning = Values<{ readonly law: typeof erosiveBurning }>['law'];

/** The law in the plain numbers of the port. */
export function erosionLawOf(given: ErosiveBurning): ErosionLaw {
  switch (given.law) {
    case 'none':
      return given;
    case 'mukunda-paul':
      return {
        law: given.law,
        gain: given.gain,
        threshold: given.reducedThreshold,
        viscosity: given.viscosity.si,
        augmentationFactor: given.augmentationFactor,
      };
    case 'lenoir-robillard':
      return {
        law: given.law,
        coefficient: given.coefficient,
        decay: given.decay,
        length: given.length?.si,
        lengthOf: given.lengthOf,
        augmentationFactor: given.augmentationFactor,
      };
    default:
      return {
        law: given.law,
        threshold: given.threshold.si,
        gain: given.gain,
        augmentationFactor: given.augmentationFactor,
      };
  }
}

/** The law with its standard constants that is used where none is given: Mukunda and Paul. */
export const defaultErosion: ErosionLaw = {
  law: 'mukunda-paul',
  gain: 0.023,
  threshold: 35,
  viscosity: 5e-5,
  augmentationFactor: 1,
};
