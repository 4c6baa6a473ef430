import { type IgnitionBand, ignitionBand } from '../../ballistics';
import type { Motor } from '../document';
import { motorRegression } from '../motor-grain';
import type { RegressionCache } from '../regression-cache';
import { simulationInput } from '../simulation-input';

/** Ignition of the motor at nominal values over the usual times of flame spread. */
export const ignitionReview = (motor: Motor, cache: RegressionCache): IgnitionBand =>
  ignitionBand({ motor: simulationInput(motor, motorRegression(motor, 'as documented', cache)) });

// Below this rise an ignition peak is within the uncertainty of the burn law.
const notable = 1.02;

/** Cautions of the nominal motor, and one where a flame that spreads faster than specified raises the peak pressure. */
export function ignitionCautions(
  { spreads, peakPressure, cautions }: IgnitionBand,
  nominal: number,
): readonly string[] {
  const [, high] = peakPressure;
  const worst = spreads.find((one) => one.peakPressure.si === high.si);
  const own = cautions.map((text) => `Nominal motor: ${text}.`);
  return high.si > notable * nominal && worst !== undefined
    ? [
        ...own,
        `Ignition: with a flame spread of ${worst.flameSpreadTime} the peak pressure is ${high}, ${(100 * (high.si / nominal - 1)).toFixed(1)} % above that of the specified ignition. MEOP contains the specified ignition. Specify the shortest time that is possible.`,
      ]
    : own;
}

/** The ignition in one line. */
export const ignitionText = ({ spreads, ignitionPeak }: IgnitionBand): string =>
  `ignition over a flame spread of ${spreads[0].flameSpreadTime} to ${spreads[spreads.length - 1].flameSpreadTime}: peak ${ignitionPeak[0]} to ${ignitionPeak[1]}, rise from 10 % to 90 % in ${spreads[0].riseTime} to ${spreads[spreads.length - 1].riseTime}.`;
