// Inputs that the equations of equilibrium share.
import { ratio } from '../units';

/** Burning-area ratio K. */
export const burningToThroat = ratio('K', 'burning area/throat area', { above: 0, example: 210 });

/** The caution for an exponent close to 1, where every change is amplified. */
export const nearOne = ({ exponent }: { readonly exponent: number }): true | string =>
  exponent <= 0.7 ||
  `an exponent of ${Number(exponent.toPrecision(3))} multiplies every change by ${(1 / (1 - exponent)).toPrecision(3)}; the pressure is only marginally stable`;
