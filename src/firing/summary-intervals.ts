import { fromSiValue, type Quantity, unitOf } from '../units';
import { aftTangentBurnout } from './aft-tangent';
import type { AnalysedTrace } from './analysis/analysed-trace';
import type { Firing } from './firing';
import { integral } from './trace-integral';

/** The part of a firing between the two points of one definition. */
export interface BurnInterval {
  readonly start: Quantity<'time'>;
  readonly end: Quantity<'time'>;
  readonly duration: Quantity<'time'>;
  readonly impulse: Quantity<'impulse'> | undefined;
  /** Impulse of the interval divided by its duration. */
  readonly averageThrust: Quantity<'force'> | undefined;
  readonly averagePressure: Quantity<'absolute pressure'> | undefined;
}

export interface BurnTimes {
  /** Start of the record, s. */
  readonly start: number;
  readonly end: number;
  readonly ignitionDelay: Quantity<'time'>;
  readonly tenPercent: BurnInterval;
  readonly fivePercent: BurnInterval;
  readonly burnTime: Quantity<'time'> | undefined;
  readonly definitions: Readonly<Record<string, string>>;
  readonly cautions: readonly string[];
}

const seconds = (si: number): Quantity<'time'> => fromSiValue<'time'>(si, 'time', unitOf('s'));

/** Computes the characteristic times of a firing by the published definitions, on the trace `shape`. */
export function burnIntervals(
  record: Firing,
  shape: AnalysedTrace,
  thrust: AnalysedTrace | undefined,
  pressure: AnalysedTrace | undefined,
): BurnTimes {
  const { time, values } = shape;
  const start = time[0];
  const end = time[time.length - 1];
  const peak = shape.highest();
  const stretch = (share: number): BurnInterval => {
    const { start: rise, end: fall } = shape.edges(share, 0);
    const length = fall - rise;
    const impulse = thrust && integral(thrust, rise, fall);
    return {
      start: seconds(rise),
      end: seconds(fall),
      duration: seconds(length),
      impulse: impulse === undefined ? undefined : fromSiValue<'impulse'>(impulse, 'impulse', unitOf('N*s')),
      averageThrust:
        impulse === undefined ? undefined : fromSiValue<'force'>(impulse / length, 'force', unitOf('N')),
      averagePressure:
        pressure &&
        fromSiValue<'absolute pressure'>(
          integral(pressure, rise, fall) / length,
          'absolute pressure',
          unitOf('MPa'),
        ),
    };
  };
  const tenPercent = stretch(0.1);
  const fivePercent = stretch(0.05);
  const signal = record.events.find(({ name }) => name === 'ignition signal')?.time.si ?? start;
  const timeOf = (wanted: string): number | undefined =>
    record.events.find(({ name }) => name === wanted)?.time.si;
  // Where slivers remain, web burnout precedes burnout of the propellant.
  const known = timeOf('web burnout') ?? timeOf('burnout');
  const burnout = known ?? aftTangentBurnout(shape);
  const trace =
    shape === thrust
      ? 'thrust'
      : record.ambientPressure === undefined
        ? 'absolute pressure (ambient pressure unknown)'
        : 'pressure above ambient';
  return {
    start,
    end,
    ignitionDelay: seconds(tenPercent.start.si - signal),
    tenPercent,
    fivePercent,
    burnTime: burnout === undefined ? undefined : seconds(burnout - tenPercent.start.si),
    definitions: {
      trace,
      ignitionDelay:
        signal === start
          ? 'start of the record to the first 10 % point'
          : 'ignition signal to the first 10 % point',
      actionTime:
        'between the 10 % points of the peak (Sutton & Biblarz 7th ed., fig. 11-13, quoted from memory, not verified)',
      burnTime:
        known === undefined
          ? 'first 10 % point to web burnout by the aft tangent bisector, axes scaled by peak and action time (same figure, quoted from memory, not verified)'
          : 'first 10 % point to web burnout, as computed by the simulation',
      burnTimeFivePercent: 'between the 5 % points of the peak (NFPA 1125)',
      totalImpulse: 'over the whole record (NFPA 1125)',
      averageThrust: 'total impulse over the time between the 5 % points (NFPA 1125)',
    },
    cautions: [
      ...(values[0] > 0.05 * peak ? ['The record begins above 5 % of its peak. Its start is missing.'] : []),
      ...(values[values.length - 1] > 0.05 * peak
        ? ['The record ends above 5 % of its peak. Its end is missing.']
        : []),
    ],
  };
}
