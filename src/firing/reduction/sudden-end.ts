import type { AnalysedRecord } from '../analysis/analysed-record';
import type { AnalysedTrace } from '../analysis/analysed-trace';
import { integralBetween } from '../analysis/trace-values';
import type { ReductionInputsSi } from './reduction-inputs';

const high = 0.6;
const low = 0.1;
// Usual upper limits of sugar-class and composite propellants. Both shorten the time below, so that the criterion is
// conservative.
const densest = 1900; // kg/m³
const fastest = 1600; // m/s
const maxThrustCoefficient = 1.9;
const highestPressure = 40e6; // Pa: above this thrust is in another unit than stated
const gamma = 1.2;
const vandenkerckhoveSquared = gamma * (2 / (gamma + 1)) ** ((gamma + 1) / (gamma - 1));

/** Channels whose signal ended faster than a chamber can empty, and why each is not usable. */
export interface SuddenEnds {
  /** True where no channel shows continued burning: the motor burst, or all channels were cut off at once. */
  readonly burst: boolean;
  readonly reasons: { readonly pressure?: string; readonly thrust?: string };
}

/**
 * Kernel: whether a firing ended as a burst does. The volume vacated by the burned propellant, V = ∫p dt·A_t/(ρ·c*),
 * empties through the throat with a time constant of at least V/(γ·Γ²·c*·A_t) (adiabatic), that is ∫p dt/(ρ·γ·(Γ·c*)²),
 * and pressure needs ln(0.6/0.1) time constants from 60 % of its peak to 10 %. A channel that needs less lost its
 * pressure by another path than the throat, or lost its connection.
 *
 * Source: mass balance of a chamber with choked outflow, Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001),
 * ch. 3 (quoted from memory, not verified).
 */
export function suddenEnds(record: AnalysedRecord, facts: ReductionInputsSi): SuddenEnds | undefined {
  const { pressure, thrust } = record.traces;
  const velocity = facts.idealCharacteristicVelocity ?? fastest;
  const fall = {
    pressure:
      pressure && fallOf(pressure, { rest: facts.ambient, perPascal: 1, velocity, ratio: high / low }),
    // Thrust ends while some pressure remains, hence the smaller pressure ratio.
    thrust:
      thrust &&
      facts.throatArea &&
      fallOf(thrust, {
        rest: 0,
        perPascal: maxThrustCoefficient * facts.throatArea,
        velocity,
        ratio: 2,
      }),
  };
  if (!fall.pressure && !fall.thrust) return undefined;
  const text = (f: Fall): string =>
    `the signal falls from above 60 % to below 10 % of its peak within ${ms(f.fall)}. ${f.reason}`;
  const goesOn = (f: Fall, other: AnalysedTrace | undefined, rest: number): boolean =>
    other !== undefined && other.values[f.last + 1] - rest > 0.4 * other.highest() - 0.4 * rest;
  if (fall.pressure && goesOn(fall.pressure, thrust, 0))
    return {
      burst: false,
      reasons: {
        pressure: `${text(fall.pressure)} Thrust continues, so the pressure line or its wiring failed.`,
      },
    };
  if (!fall.pressure && fall.thrust && pressure)
    return goesOn(fall.thrust, pressure, facts.ambient)
      ? {
          burst: false,
          reasons: { thrust: `${text(fall.thrust)} Pressure continues, so the wiring of thrust failed.` },
        }
      : undefined;
  return {
    burst: true,
    reasons: {
      ...(fall.pressure && {
        pressure: `${text(fall.pressure)} The motor burst, or all channels were cut off at once.`,
      }),
      ...(fall.thrust && {
        thrust: `${text(fall.thrust)} The motor burst, or all channels were cut off at once.`,
      }),
    },
  };
}

interface Fall {
  /** Upper limit of the time of fall, s. */
  readonly fall: number;
  /** Why this is not burnout. */
  readonly reason: string;
  /** Last sample not below 10 % of the peak. */
  readonly last: number;
}

const ms = (seconds: number): string => `${(1000 * seconds).toFixed(1)} ms`;

function fallOf(
  trace: AnalysedTrace,
  of: {
    readonly rest: number;
    readonly perPascal: number;
    readonly velocity: number;
    readonly ratio: number;
  },
): Fall | undefined {
  const { rest, perPascal, velocity, ratio } = of;
  const { time, values } = trace;
  if (!(trace.highest() > rest)) return undefined;
  const { peak, peakIndex, start, first, last, endCut } = trace.edges(low, rest);
  if (endCut) return undefined;
  let above = last;
  while (above > peakIndex && values[above] < rest + high * peak) above--;
  const integral = integralBetween(time, values, start, time[above], rest) / perPascal;
  const least = (Math.log(ratio) * integral) / (densest * gamma * vandenkerckhoveSquared * velocity ** 2);
  const fall = time[last + 1] - time[above];
  if (peak / perPascal > highestPressure) return undefined;
  if (fall < least)
    return {
      fall,
      last,
      reason: `A chamber with that burned volume needs at least ${ms(least)} to empty through its throat.`,
    };
  // The logger is too slow for a criterion on time, but the zero of a sensor that was destroyed does not return.
  const { before, after } = trace.baseline();
  const shift = after === undefined ? 0 : Math.abs(after - before) / peak;
  return last + 1 - above <= 2 && last - first > 50 && shift > 0.05
    ? {
        fall,
        last,
        reason: `Its zero does not return: it differs by ${(100 * shift).toFixed(0)} % of the peak.`,
      }
    : undefined;
}
