import type { Regression } from '../../ballistics';
import { MeopError } from '../../units';
import type { Motor } from '../document';
import { propellantOf } from '../document/propellant-of';
import { type FlawSet, motorRegression } from '../motor-grain';
import type { RegressionCache } from '../regression-cache';
import { type PlacedValue, placedValues, withValues } from '../varied-motor';
import { fullPeak, hasCoupledPort } from './full-peak';
import {
  addDifference,
  copyState,
  lnPeakPressure,
  type PeakFrame,
  type PeakState,
  peakFrame,
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
  /** Number of segments that each have a different value. */
  readonly copies: number;
  /** Change of ln of the peak pressure at the upper and at the lower limit, where only the full simulation knows it. */
  readonly lnUp: number;
  readonly lnDown: number;
}

/** The peak pressure as a function of all toleranced inputs. */
export interface PeakResponse {
  readonly frame: PeakFrame;
  readonly base: PeakState;
  readonly inputs: readonly PeakInput[];
  readonly cautions: readonly string[];
}

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
  const lnBoundaries = Float64Array.from(law.bands.slice(0, -1), (band) => Math.log(band.to));
  const frame = peakFrame(lnBoundaries, grain);

  const throat = motor.nozzle.throatDiameter.value.si;
  const base = peakState(propellant, throat, grain, frame);
  const soundState = peakState(propellant, throat, sound, frame);
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
        frame,
        ofFlaw ? grain : sound,
      );
      return stateDifference(state, ofFlaw ? base : soundState);
    };
    try {
      return [
        {
          ...input,
          up: moved(1),
          down: moved(-1),
          shapesGrain: part === 'grain',
          copies: copiesOf(motor, input),
          lnUp: 0,
          lnDown: 0,
        },
      ];
    } catch (error) {
      if (!(error instanceof MeopError)) throw error;
      cautions.push(
        `The tolerance of ${input.name} is excluded from worst case and dispersion: ${error.statement}`,
      );
      return [];
    }
  });
  const plain: PeakResponse = { frame, base, inputs, cautions };
  const shaped = withPortEffect(motor, grain, plain, cache);
  return { ...plain, inputs: [...shaped, ...firingInputs(motor, grain, base, inputs)] };
}

/**
 * The inputs, with what the dimensions of the grain do to the flow along the port beyond their effect on the burning area,
 * where the port is solved along its axis: the difference of full and approximate effect at both limits.
 */
function withPortEffect(
  motor: Motor,
  grain: Regression,
  plain: PeakResponse,
  cache: RegressionCache,
): readonly PeakInput[] {
  const { inputs } = plain;
  const isShape = ({ path, shapesGrain }: PeakInput): boolean =>
    shapesGrain && !path.includes('flaws') && !path.includes('assumedFlaw');
  const kelvin = motor.ambient.temperature.value.si;
  if (!inputs.some(isShape) || !hasCoupledPort(motor, grain, kelvin)) return inputs;
  const sound = motorRegression(motor, 'none', cache);
  const nominal = fullPeak(motor, sound, kelvin);
  const work = workState(plain);
  const shares = new Float64Array(inputs.length);
  const approximate = (i: number, sign: number): number => {
    shares.fill(0);
    shares[i] = sign;
    return lnPeakAt(plain, shares, kelvin, work);
  };
  return inputs.map((input, i): PeakInput => {
    if (!isShape(input)) return input;
    const beyond = (sign: 1 | -1): number => {
      const si = input.value.si + sign * input.plusMinus;
      const varied = withValues(motor, [{ path: input.path, si }]);
      const full = fullPeak(varied, motorRegression(varied, 'none', cache), kelvin);
      return Math.log(full / nominal) - (approximate(i, sign) - approximate(i, 0));
    };
    return { ...input, lnUp: beyond(1), lnDown: beyond(-1) };
  });
}

/**
 * Toleranced inputs of which only the full simulation takes account, such as the augmentation by erosive burning: the
 * peak is simulated at both limits.
 */
function firingInputs(
  motor: Motor,
  grain: Regression,
  base: PeakState,
  known: readonly PeakInput[],
): readonly PeakInput[] {
  const names = new Set(known.map(({ name }) => name));
  const found = placedValues(motor, ['propellant', 'nozzle', 'ignition', 'heatLoss']).filter(
    ({ name, plusMinus, worse }) =>
      plusMinus > 0 && (worse === 'firing high' || worse === 'firing low') && !names.has(name),
  );
  if (found.length === 0) return [];
  const kelvin = motor.ambient.temperature.value.si;
  const nominal = fullPeak(motor, grain, kelvin);
  const none = stateDifference(base, base);
  return found.flatMap((input): PeakInput[] => {
    const at = (sign: 1 | -1): number => {
      const si = input.value.si + sign * input.plusMinus;
      return Math.log(fullPeak(withValues(motor, [{ path: input.path, si }]), grain, kelvin) / nominal);
    };
    const [lnUp, lnDown] = [at(1), at(-1)];
    // Others act on thrust, or on an event that is not simulated here.
    return lnUp === 0 && lnDown === 0
      ? []
      : [{ ...input, up: none, down: none, shapesGrain: false, copies: 1, lnUp, lnDown }];
  });
}

/** Number of segments of the kind to which an input belongs; a flaw is in the first only. */
function copiesOf(motor: Motor, { path: [part, list, index, field] }: PlacedValue): number {
  if (part !== 'grain' || list !== 'segments' || typeof index !== 'number' || field === 'flaws') return 1;
  return motor.grain.segments[index]?.count ?? 1;
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
      !['erosiveBurning', 'idealDensity', 'condensedFraction', 'characterisedFrom', 'characterisedTo'].some(
        (field) => path.includes(field),
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
  let lnAdded = 0;
  for (let i = 0; i < inputs.length; i++) {
    const share = shares[i];
    const { up, down, shapesGrain, lnUp, lnDown } = inputs[i];
    lnAdded += Math.abs(share) * (share > 0 ? lnUp : lnDown);
    addDifference(work, share > 0 ? up : down, Math.abs(share), shapesGrain);
  }
  return lnPeakPressure(work, frame, temperature) + lnAdded;
}
