import type { AnalysedRecord } from '../analysis/analysed-record';
import type { AnalysedTrace } from '../analysis/analysed-trace';
import { integralBetween } from '../analysis/trace-values';
import type { ReductionInputsSi } from './reduction-inputs';

const high = 0.6;
const low = 0.1;
// Usual upper ends of sugar-class and composite propellants: both shorten the time below, so that the finding is safe.
const densest = 1900; // kg/m³
const fastest = 1600; // m/s
const mostThrustCoefficient = 1.9;
const highestPressure = 40e6; // Pa: above it thrust is in another unit than it says
const gamma = 1.2;
const vandenkerckhoveSquared = gamma * (2 / (gamma + 1)) ** ((gamma + 1) / (gamma - 1));

/** Channels whose firing ended faster than a chamber can empty, and why each cannot be used. */
export interface SuddenEnds {
  /** True where no channel shows that the motor went on: it burst, or everything was cut off at once. */
  readonly burst: boolean;
  readonly reasons: { readonly pressure?: string; readonly thrust?: string };
}

/**
 * Kernel: whether a firing ended as a burst does. The room that the burned propellant left, V = ∫p dt·A_t/(ρ·c*), empties
 * through the throat with the time constant V/(γ·Γ²·c*·A_t) at the fastest (adiabatic), that is ∫p dt/(ρ·γ·(Γ·c*)²), and
 * pressure needs ln(0.6/0.1) of it from 60 % of its peak to 10 %. A channel that needs less lost its pressure by
 * another way than the throat, or its wire.
 *
 * Source: mass balance of a chamber with choked outflow, Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001),
 * ch. 3 (from memory).
 */
export function suddenEnds(record: AnalysedRecord, facts: ReductionInputsSi): SuddenEnds | undefined {
  const { pressure, thrust } = record.traces;
  const velocity = facts.idealCharacteristicVelocity ?? fastest;
  const fall = {
    pressure:
      pressure && fallOf(pressure, { rest: facts.ambient, perPascal: 1, velocity, ratio: high / low }),
    // Thrust is gone where some pressure is left, hence the smaller ratio of pressures.
    thrust:
      thrust &&
      facts.throatArea &&
      fallOf(thrust, {
        rest: 0,
        perPascal: mostThrustCoefficient * facts.throatArea,
        velocity,
        ratio: 2,
      }),
  };
  if (!fall.pressure && !fall.thrust) return undefined;
  const text = (f: Fall): string =>
    `it falls from over 60 to under 10 % of its peak within ${ms(f.fall)}, and ${f.reason}`;
  const goesOn = (f: Fall, other: AnalysedTrace | undefined, rest: number): boolean =>
    other !== undefined && other.values[f.last + 1] - rest > 0.4 * other.highest() - 0.4 * rest;
  if (fall.pressure && goesOn(fall.pressure, thrust, 0))
    return {
      burst: false,
      reasons: { pressure: `${text(fall.pressure)}, while thrust goes on: its line or wire` },
    };
  if (!fall.pressure && fall.thrust && pressure)
    return goesOn(fall.thrust, pressure, facts.ambient)
      ? { burst: false, reasons: { thrust: `${text(fall.thrust)}, while pressure goes on: its wire` } }
      : undefined;
  return {
    burst: true,
    reasons: {
      ...(fall.pressure && { pressure: `${text(fall.pressure)}: a burst, or everything cut off at once` }),
      ...(fall.thrust && { thrust: `${text(fall.thrust)}: a burst, or everything cut off at once` }),
    },
  };
}

interface Fall {
  /** At most so long, s. */
  readonly fall: number;
  /** Why that is no burnout. */
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
      reason: `no chamber that burned so much empties through its throat in less than ${ms(least)}`,
    };
  // Too slow a logger to tell by time: but a sensor that went with the pressure does not come back to its zero.
  const { before, after } = trace.baseline();
  const shift = after === undefined ? 0 : Math.abs(after - before) / peak;
  return last + 1 - above <= 2 && last - first > 50 && shift > 0.05
    ? { fall, last, reason: `it does not come back to its zero by ${(100 * shift).toFixed(0)} % of the peak` }
    : undefined;
}
