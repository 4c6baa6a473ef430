import { findMinimum } from '../../numerics';
import type { ProductsProblem } from './gibbs-minimum';
import { type ProductsState, stateWith } from './products-state';

// Flow of the products through a throat with shifting equilibrium; plain numbers.

const isentropic = (problem: ProductsProblem, from: ProductsState, pressure: number): ProductsState =>
  stateWith(problem, pressure, 'entropy', from.entropy, {
    guess: from.temperature,
    stride: 0.97,
    start: from.composition,
  });

// Per kilogram, neglecting the volume of condensed matter: R cancels where only ratios count.
const volume = ({ gasMoles, temperature, pressure }: ProductsState): number =>
  (gasMoles * temperature) / pressure;

/**
 * −(∂ln p/∂ln V) at constant entropy with the composition at equilibrium, by a central difference over 0.2 % of
 * pressure.
 */
export function equilibriumGammaOf(problem: ProductsProblem, state: ProductsState): number {
  const step = 1e-3;
  const high = volume(isentropic(problem, state, state.pressure * (1 + step)));
  const low = volume(isentropic(problem, state, state.pressure * (1 - step)));
  return -(Math.log1p(step) - Math.log1p(-step)) / Math.log(high / low);
}

/**
 * p0 over the mass flux at the throat: the characteristic velocity with shifting equilibrium. The throat is at the
 * first maximum of the flux on the isentrope; where condensed products freeze upstream there may be a second,
 * which the flow does not reach.
 */
export function equilibriumCharacteristicVelocityOf(
  problem: ProductsProblem,
  state: ProductsState,
  gasConstant: number,
): number {
  const flux = (logRatio: number): number => {
    const at = isentropic(problem, state, state.pressure * Math.exp(logRatio));
    return Math.sqrt(Math.max(0, 2 * (state.enthalpy - at.enthalpy))) / (volume(at) * gasConstant);
  };
  const stride = 0.06;
  let place = -stride;
  let best = flux(place);
  for (let next = flux(place - stride); next > best; next = flux(place - stride)) {
    best = next;
    place -= stride;
  }
  const { value } = findMinimum((x) => -flux(x), {
    lower: place - stride,
    upper: place + stride,
    relativeTolerance: 1e-5,
  });
  return state.pressure / Math.max(best, -value);
}
