import { MeopError } from '../../units';
import type { Motor } from '../document';
import { propellantOf } from '../document/propellant-of';
import { type FlawSet, motorRegression } from '../motor-grain';
import type { RegressionCache } from '../regression-cache';
import { type PlacedValue, placedValues, withValues } from '../varied-motor';
import {
  addDifference,
  copyState,
  lnPeakPressure,
  type PeakFrame,
  type PeakState,
  peakState,
  stateDifference,
} from './peak-kernel';

/** A toleranced input of the peak pressure, with the effect of its limits. */
export interface PeakInput extends PlacedValue {
  /** Change of state at the upper and at the lower limit of the tolerance. */
  readonly up: PeakState;
  readonly down: PeakState;
  /** True where the burning area depends on the input. */
  readonly shapesGrain: boolean;
}

/** The peak pressure as a function of all toleranced inputs. */
export interface PeakResponse {
  readonly frame: PeakFrame;
  readonly base: PeakState;
  readonly inputs: readonly PeakInput[];
  readonly cautions: readonly string[];
}

const depthCount = 240;

/**
 * Computes the response of the motor state to each toleranced input. Each input is varied to both limits of its
 * tolerance; between them and the nominal value the response is linear, and the responses of several inputs are
 * added. This is valid for small tolerances. The additional area of a flaw is that of the nominal grain.
 */
export function peakResponse(motor: Motor, flaws: FlawSet, cache: RegressionCache): PeakResponse {
  const grain = motorRegression(motor, flaws, cache);
  const sound = motorRegression(motor, 'none', cache);
  const propellant = propellantOf(motor.propellant);
  const { law } = propellant;
  const burnout = grain.si.burnout;
  const share = Float64Array.from({ length: depthCount }, (_, k) => ((1 - 1e-6) * k) / (depthCount - 1));
  const frame: PeakFrame = {
    lnBoundaries: Float64Array.from(law.bands.slice(0, -1), (band) => Math.log(band.to)),
    share,
    depth: share.map((part) => part * burnout),
  };
  const throat = motor.nozzle.throatDiameter.value.si;
  const base = peakState(propellant, throat, grain, share);
  const soundState = peakState(propellant, throat, sound, share);
  const cautions: string[] = [];
  const inputs = tolerancedInputs(motor, flaws).flatMap((input): PeakInput[] => {
    const [part] = input.path;
    const ofFlaw = input.path.includes('flaws') || input.path.includes('assumedFlaw');
    const moved = (sign: 1 | -1): PeakState => {
      const varied = withValues(motor, [{ path: input.path, si: input.value.si + sign * input.plusMinus }]);
      const state = peakState(
        part === 'propellant' ? propellantOf(varied.propellant) : propellant,
        varied.nozzle.throatDiameter.value.si,
        part !== 'grain' ? sound : motorRegression(varied, ofFlaw ? flaws : 'none', cache),
        share,
      );
      return stateDifference(state, ofFlaw ? base : soundState);
    };
    try {
      return [{ ...input, up: moved(1), down: moved(-1), shapesGrain: part === 'grain' }];
    } catch (error) {
      if (!(error instanceof MeopError)) throw error;
      cautions.push(
        `The tolerance of ${input.name} is excluded from worst case and dispersion: ${error.statement}`,
      );
      return [];
    }
  });
  return { frame, base, inputs, cautions };
}

/** Toleranced inputs that affect the pressure. */
function tolerancedInputs(motor: Motor, flaws: FlawSet): readonly PlacedValue[] {
  return placedValues(motor, ['propellant', 'nozzle', 'grain']).filter(
    ({ path, plusMinus }) =>
      plusMinus > 0 &&
      (path[0] === 'propellant' ||
        path[1] === 'throatDiameter' ||
        path[1] === 'segments' ||
        (path[1] === 'assumedFlaw' && flaws === 'with the assumed flaw')) &&
      !['idealDensity', 'condensedFraction', 'characterisedFrom', 'characterisedTo'].some((field) =>
        path.includes(field),
      ),
  );
}

/** A working state of the size of the response. */
export const workState = ({ base }: PeakResponse): PeakState => ({
  ...base,
  law: new Float64Array(base.law),
  area: new Float64Array(base.area),
});

/**
 * ln of the peak pressure with each input at a fraction of its tolerance, −1 to 1, at a grain temperature [K].
 * `work` is overwritten.
 */
export function lnPeakAt(
  response: PeakResponse,
  shares: ArrayLike<number>,
  temperature: number,
  work: PeakState,
): number {
  const { base, inputs, frame } = response;
  copyState(base, work);
  for (let i = 0; i < inputs.length; i++) {
    const share = shares[i];
    const { up, down, shapesGrain } = inputs[i];
    addDifference(work, share > 0 ? up : down, Math.abs(share), shapesGrain);
  }
  return lnPeakPressure(work, frame, temperature);
}
