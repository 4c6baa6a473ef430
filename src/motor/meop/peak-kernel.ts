// The maximum equilibrium pressure of a motor in plain SI numbers, evaluated for ten thousand Monte Carlo samples.
import type { Propellant, Regression } from '../../ballistics';

/** Inputs of the equilibrium pressure of a motor. */
export interface PeakState {
  lnDensity: number;
  lnCharacteristicVelocity: number;
  lnThroatArea: number;
  /** σ_p [1/K] */
  sensitivity: number;
  /** Reference grain temperature of the law [K]. */
  referenceTemperature: number;
  /** For each band: ln a of r = a·pⁿ (m/s, Pa), then n. */
  readonly law: Float64Array;
  /** Burning area [m²] by fraction of burnout depth, so that the peak of a thicker web is later, not truncated. */
  readonly area: Float64Array;
}

/** Values common to all samples. */
export interface PeakFrame {
  /** ln of the pressures at which bands of the law meet. */
  readonly lnBoundaries: Float64Array;
  /** Fractions of the burnout depth at which the areas are given. */
  readonly share: Float64Array;
  /** The same depths of the nominal grain [m]. */
  readonly depth: Float64Array;
}

/** The state of a motor with this propellant, throat and grain. */
export function peakState(
  { density, characteristicVelocity, law }: Propellant,
  throatDiameter: number,
  grain: Regression,
  share: Float64Array,
): PeakState {
  const numbers = new Float64Array(2 * law.bands.length);
  law.bands.forEach(({ referenceRate, referencePressure, exponent }, k) => {
    numbers[2 * k] = Math.log(referenceRate) - exponent * Math.log(referencePressure);
    numbers[2 * k + 1] = exponent;
  });
  return {
    lnDensity: Math.log(density.si),
    lnCharacteristicVelocity: Math.log(characteristicVelocity.si),
    lnThroatArea: Math.log((Math.PI / 4) * throatDiameter ** 2),
    sensitivity: law.temperatureSensitivity?.si ?? 0,
    referenceTemperature: law.referenceTemperature.si,
    law: numbers,
    area: share.map((part) => grain.si.areaAt(part * grain.si.burnout)),
  };
}

/**
 * ln of the maximum equilibrium pressure [Pa] at a grain temperature [K], at the maximum burning area. Source:
 * steady mass balance ρ·r·A_b = p·A_t/c*, Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), ch. 11.
 */
export function lnPeakPressure(state: PeakState, frame: PeakFrame, temperature: number): number {
  const { area, law } = state;
  let most = 0;
  for (let k = 0; k < area.length; k++) if (area[k] > most) most = area[k];
  const lnFlow =
    state.lnDensity +
    state.lnCharacteristicVelocity -
    state.lnThroatArea +
    Math.log(most) +
    state.sensitivity * (temperature - state.referenceTemperature);
  const { lnBoundaries } = frame;
  const last = lnBoundaries.length;
  // The lowest equilibrium, which an igniting motor reaches first. A downward jump of the law keeps the pressure at the jump.
  for (let band = 0; band < last; band++) {
    const lnP = (lnFlow + law[2 * band]) / (1 - law[2 * band + 1]);
    if (lnP < lnBoundaries[band]) return Math.max(lnP, band === 0 ? lnP : lnBoundaries[band - 1]);
  }
  const lnP = (lnFlow + law[2 * last]) / (1 - law[2 * last + 1]);
  return last === 0 ? lnP : Math.max(lnP, lnBoundaries[last - 1]);
}

/** Difference of two states. */
export function stateDifference(state: PeakState, from: PeakState): PeakState {
  return {
    lnDensity: state.lnDensity - from.lnDensity,
    lnCharacteristicVelocity: state.lnCharacteristicVelocity - from.lnCharacteristicVelocity,
    lnThroatArea: state.lnThroatArea - from.lnThroatArea,
    sensitivity: state.sensitivity - from.sensitivity,
    referenceTemperature: state.referenceTemperature - from.referenceTemperature,
    law: state.law.map((value, k) => value - from.law[k]),
    area: state.area.map((value, k) => value - from.area[k]),
  };
}

/** Copies a state into another of the same size. */
export function copyState(from: PeakState, into: PeakState): void {
  into.lnDensity = from.lnDensity;
  into.lnCharacteristicVelocity = from.lnCharacteristicVelocity;
  into.lnThroatArea = from.lnThroatArea;
  into.sensitivity = from.sensitivity;
  into.referenceTemperature = from.referenceTemperature;
  into.law.set(from.law);
  into.area.set(from.area);
}

/** Adds a fraction of a difference. */
export function addDifference(
  into: PeakState,
  difference: PeakState,
  share: number,
  withArea: boolean,
): void {
  into.lnDensity += share * difference.lnDensity;
  into.lnCharacteristicVelocity += share * difference.lnCharacteristicVelocity;
  into.lnThroatArea += share * difference.lnThroatArea;
  into.sensitivity += share * difference.sensitivity;
  into.referenceTemperature += share * difference.referenceTemperature;
  for (let k = 0; k < into.law.length; k++) into.law[k] += share * difference.law[k];
  if (withArea) for (let k = 0; k < into.area.length; k++) into.area[k] += share * difference.area[k];
}
