// The blockage of the throat that a document assumes, as an event of a firing.
import { blockedThroatPressure, type SimulatedFiring, type SimulateInput, simulate } from '../ballistics';
import { fromSiValue, type Quantity, unitOf } from '../units';
import type { Motor } from './document';
import { nominal } from './document/nominal';

/** A blockage of the throat and its pulse. */
export interface AssumedBlockage {
  /** Blocked fraction of the throat area. */
  readonly fraction: number;
  readonly from: Quantity<'time'>;
  readonly duration: Quantity<'time'>;
  /** Peak pressure of the firing without it. */
  readonly without: Quantity<'absolute pressure'>;
  /** Peak pressure of the firing with it. */
  readonly peak: Quantity<'absolute pressure'>;
  /** Pressure that a lasting blockage leads to from the peak, for the exponent of the burn law there and without gas storage. */
  readonly lasting: Quantity<'absolute pressure'>;
}

/** A firing with the assumed blockage of its motor. */
export interface BlockedFiring {
  readonly firing: SimulatedFiring;
  readonly blockage: AssumedBlockage;
}

/** The firing again with the assumed blockage; `undefined` where the document assumes none. */
export function withAssumedBlockage(
  motor: Motor,
  input: SimulateInput,
  free: SimulatedFiring,
): BlockedFiring | undefined {
  const assumed = motor.nozzle.assumedBlockage;
  if (assumed === undefined) return undefined;
  const { fraction, duration, from = free.timeOfPeakPressure } = nominal(assumed);
  const firing = simulate({ ...input, throatBlockage: { fraction, from, duration } });
  const { bands } = input.propellant.law;
  const band = bands.find(({ to }) => to > free.peakPressure.si) ?? bands[bands.length - 1];
  const lasting = blockedThroatPressure.si({
    pressure: free.peakPressure.si,
    fraction,
    exponent: band.exponent,
  });
  return {
    firing,
    blockage: {
      fraction,
      from,
      duration,
      without: free.peakPressure,
      peak: firing.peakPressure,
      lasting: fromSiValue(lasting, 'absolute pressure', unitOf('MPa')),
    },
  };
}

/** The pulse in one sentence. */
export const blockageText = ({ fraction, from, duration, without, peak, lasting }: AssumedBlockage): string =>
  `Assumed throat blockage: ${(100 * fraction).toPrecision(3)} % of the throat area from ${from} for ${duration.to('ms')} raises the peak pressure from ${without} to ${peak}; a lasting blockage leads to ${lasting} at constant burning area.`;
