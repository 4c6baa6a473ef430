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
  /** Burning area [m²] at the places of the frame, so that the peak of a thicker web is later, not truncated. */
  readonly area: Float64Array;
}

/** Values common to all samples. */
export interface PeakFrame {
  /** ln of the pressures at which bands of the law meet. */
  readonly lnBoundaries: Float64Array;
  /** Depths of the nominal grain at which the areas are given [m]: even between its breaks, on both sides of each. */
  readonly depth: Float64Array;
}

const placeCount = 240;
const leastPlaces = 12;
// A jump has a value on either side.
const beside = 1e-5;

/** The frame of a grain and its variations. */
export function peakFrame(lnBoundaries: Float64Array, { si: { breaks, burnout } }: Regression): PeakFrame {
  const depth: number[] = [];
  breaks.forEach((to, i) => {
    const from = i === 0 ? 0 : breaks[i - 1];
    const count = Math.max(leastPlaces, Math.round((placeCount * (to - from)) / burnout));
    for (let k = 0; k <= count; k++) {
      const u = Math.min(1 - beside, Math.max(i === 0 ? 0 : beside, k / count));
      depth.push(from + u * (to - from));
    }
  });
  return { lnBoundaries, depth: Float64Array.from(depth) };
}

/**
 * Areas of a variation of a grain where the grain has burned to the depths of the frame: between the same breaks, so that
 * the kink of one is compared with the kink of the other. A variation with other breaks is compared by the fraction of
 * its burnout depth.
 */
function areasAt({ si }: Regression, { depth }: PeakFrame, { si: from }: Regression): Float64Array {
  if (si === from) return depth.map(si.areaAt);
  const aligned = si.breaks.length === from.breaks.length;
  let i = 0;
  return depth.map((w) => {
    if (!aligned) return si.areaAt((w / from.burnout) * si.burnout);
    while (i < from.breaks.length - 1 && w > from.breaks[i]) i++;
    const [low, high] = [i === 0 ? 0 : from.breaks[i - 1], from.breaks[i]];
    const [to0, to1] = [i === 0 ? 0 : si.breaks[i - 1], si.breaks[i]];
    return si.areaAt(to0 + ((w - low) / (high - low)) * (to1 - to0));
  });
}

/** The state of a motor with this propellant, throat and grain, which is a variation of `reference`. */
export function peakState(
  { density, characteristicVelocity, law }: Propellant,
  throatDiameter: number,
  grain: Regression,
  frame: PeakFrame,
  reference: Regression = grain,
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
    area: areasAt(grain, frame, reference),
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
