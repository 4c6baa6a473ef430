import {
  fromSiValue,
  MeopError,
  type NamedKind,
  optional,
  printable,
  procedure,
  type Quantity,
  unitFor,
  unitOf,
} from '../units';
import { type AnalysedRecord, analysedRecord } from './analysis/analysed-record';
import type { AnalysedTrace } from './analysis/analysed-trace';
import { exampleFiring, type Firing, firingInput } from './firing';
import { type MotorClass, motorClass } from './motor-class';
import { propellantMass, throatDiameter } from './motor-inputs';
import { type BurnInterval, burnIntervals } from './summary-intervals';
import { summaryText } from './summary-text';
import { integral } from './trace-integral';

/** The characteristic figures of a firing. A figure is `undefined` where the record does not contain it. */
export interface FiringSummary {
  readonly origin: Firing['origin'];
  /** Time from the start of the record (or its event 'ignition signal') to the first 10 % point. */
  readonly ignitionDelay: Quantity<'time'>;
  /** Action time: between the 10 % points of the trace. */
  readonly actionTime: Quantity<'time'>;
  /** Burn time: from the first 10 % point to web burnout; `undefined` where the trace shows none. */
  readonly burnTime: Quantity<'time'> | undefined;
  /** Burn time of NFPA 1125: between the 5 % points. */
  readonly burnTimeFivePercent: Quantity<'time'>;
  readonly tenPercent: BurnInterval;
  readonly fivePercent: BurnInterval;
  /** Total impulse over the whole record. */
  readonly totalImpulse: Quantity<'impulse'> | undefined;
  readonly specificImpulse: Quantity<'specific impulse'> | undefined;
  readonly peakThrust: Quantity<'force'> | undefined;
  readonly timeOfPeakThrust: Quantity<'time'> | undefined;
  /** Total impulse divided by the 5 % burn time, as on motor labels. */
  readonly averageThrust: Quantity<'force'> | undefined;
  readonly peakPressure: Quantity<'absolute pressure'> | undefined;
  readonly timeOfPeakPressure: Quantity<'time'> | undefined;
  /** Burned depth at peak pressure. */
  readonly depthAtPeakPressure: Quantity<'length'> | undefined;
  /** Mean pressure over the action time. */
  readonly averagePressure: Quantity<'absolute pressure'> | undefined;
  readonly pressureIntegral: Quantity<'pressure integral'> | undefined;
  /**
   * ∫p·A_t dt divided by the mass burned, with absolute pressure while gas flows: see `definitions.pressureIntegral`.
   */
  readonly characteristicVelocity: Quantity<'speed'> | undefined;
  /** Impulse divided by ∫p·A_t dt. */
  readonly thrustCoefficient: number | undefined;
  readonly motorClass: MotorClass | undefined;
  /** Class letter and average thrust: `'I 232'`. */
  readonly designation: string | undefined;
  /** The definition used for each figure that has several. */
  readonly definitions: Readonly<Record<string, string>>;
  readonly cautions: readonly string[];
  toString(): string;
}

/**
 * Computes the summary of a firing, predicted or measured, by the same definitions.
 *
 * Times are determined on the thrust trace, or on pressure above ambient where thrust is missing or never above zero.
 * The search goes outward from the peak. Action time: between the 10 % points of the peak. Burn time: from the first of
 * them to web burnout by the aft tangent bisector, or to the burnout of a simulation (Sutton & Biblarz, Rocket
 * Propulsion Elements, 7th ed. (2001), fig. 11-13, quoted from memory, not verified). Label values: 5 % points and
 * impulse of the whole record (NFPA 1125).
 *
 * @example summarize(firing({ origin: 'measured', time: series([0, 0.1, 1.9, 2.1], 's'), thrust: series([0, 500, 500, 0], 'N') })).totalImpulse.in('N*s') // => 975
 */
export const summarize = /* @__PURE__ */ procedure({
  name: 'summarize',
  title: 'Characteristic figures of a firing',
  source:
    'Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), fig. 11-13 (quoted from memory, not verified); NFPA 1125 for label values',
  subject: firingInput,
  inputs: { propellantMass: optional(propellantMass), throatDiameter: optional(throatDiameter) },
  gives:
    'impulse, class, peaks, averages, times and characteristic velocity, as far as the record contains them',
  example: `summarize(${exampleFiring})`,
  run: (given, options): FiringSummary => {
    const record = analysedRecord(given);
    const { thrust, pressure } = record.traces;
    const shape = shapeOf(record);
    const times = burnIntervals(record, shape, thrust, pressure);
    const { start, end } = times;
    const impulse = thrust && integral(thrust, start, end);
    const flowing = pressure && flowSpan(record, pressure);
    const pressureIntegral = pressure && flowing && integral(pressure, flowing.from, flowing.to);
    const mass = options.propellantMass?.si ?? massBurned(record);
    const throatForce =
      pressure && flowing && throatForceIntegral(record, pressure, flowing, options.throatDiameter?.si);
    const positiveImpulse = impulse !== undefined && impulse > 0 ? impulse : undefined;
    const letter =
      positiveImpulse === undefined
        ? undefined
        : motorClass(fromSiValue<'impulse'>(positiveImpulse, 'impulse', unitOf('N*s')));
    const average =
      positiveImpulse === undefined ? undefined : positiveImpulse / times.fivePercent.duration.si;
    const pressurePeak = pressure?.peakIndex();
    const thrustPeak = thrust?.peakIndex();
    const coefficient = impulse !== undefined && throatForce ? impulse / throatForce : undefined;
    const made = {
      origin: record.origin,
      ignitionDelay: times.ignitionDelay,
      actionTime: times.tenPercent.duration,
      burnTime: times.burnTime,
      burnTimeFivePercent: times.fivePercent.duration,
      tenPercent: times.tenPercent,
      fivePercent: times.fivePercent,
      totalImpulse: maybe(impulse, 'impulse', 'N*s'),
      specificImpulse: maybe(
        positiveImpulse === undefined || mass === undefined ? undefined : positiveImpulse / mass,
        'specific impulse',
        's',
      ),
      peakThrust: maybe(thrust?.highest(), 'force', 'N'),
      timeOfPeakThrust: maybe(thrustPeak === undefined ? undefined : record.time.si[thrustPeak], 'time', 's'),
      averageThrust: maybe(average, 'force', 'N'),
      peakPressure: maybe(pressure?.highest(), 'absolute pressure', 'MPa'),
      timeOfPeakPressure: maybe(
        pressurePeak === undefined ? undefined : record.time.si[pressurePeak],
        'time',
        's',
      ),
      depthAtPeakPressure: maybe(
        pressurePeak === undefined ? undefined : record.web?.si[pressurePeak],
        'length',
        'mm',
      ),
      averagePressure: times.tenPercent.averagePressure,
      pressureIntegral: maybe(pressureIntegral, 'pressure integral', 'MPa*s'),
      characteristicVelocity: maybe(
        throatForce === undefined || mass === undefined ? undefined : throatForce / mass,
        'speed',
        'm/s',
      ),
      thrustCoefficient: coefficient,
      motorClass: letter,
      designation:
        letter === undefined || average === undefined ? undefined : `${letter.letter} ${Math.round(average)}`,
      definitions: {
        ...times.definitions,
        ...(flowing && { pressureIntegral: flowing.definition }),
      },
      cautions: [
        ...record.cautions,
        ...times.cautions,
        ...(coefficient !== undefined && (coefficient < 0.9 || coefficient > 1.8)
          ? [
              `The thrust coefficient of ${coefficient.toPrecision(3)} is outside the usual range of 0.9 to 1.8. Check calibrations and units.`,
            ]
          : []),
      ],
    };
    return printable(made, () => summaryText(made, record.title));
  },
});

const maybe = <K extends NamedKind>(
  si: number | undefined,
  kind: K,
  unit: string,
): Quantity<K> | undefined => (si === undefined ? undefined : fromSiValue<K>(si, kind, unitFor(kind, unit)));

/** The timing trace: thrust, or pressure where thrust is missing or never above zero, as with a closed nozzle. */
function shapeOf(record: AnalysedRecord): AnalysedTrace {
  const { thrust, pressure } = record.traces;
  if (thrust !== undefined && thrust.highest() > 0) return thrust;
  const gauge = pressure?.above(record.ambientPressure?.si ?? 0);
  if (gauge !== undefined && gauge.highest() > 0) return gauge;
  const silent = thrust === undefined && pressure === undefined;
  throw new MeopError({
    code: 'nothing-to-sum-up',
    procedure: 'summarize',
    path: thrust === undefined && pressure !== undefined ? 'pressure' : 'thrust',
    problem: silent
      ? 'the firing has neither thrust nor pressure'
      : 'thrust or gauge pressure must exceed zero at some time',
    remedy: silent
      ? 'Give one of them'
      : 'Check for a load cell with its sign reversed, or a zero taken under load',
  });
}

function massBurned(record: Firing): number | undefined {
  const left = record.propellantMass?.si;
  if (left !== undefined) {
    const burned = left[0] - left[left.length - 1];
    return burned > 0 ? burned : undefined;
  }
  return record.loadedMass?.si;
}

/** The interval over which absolute pressure is integrated. */
interface FlowSpan {
  readonly from: number;
  readonly to: number;
  readonly definition: string;
}

/**
 * A log continues while no gas flows, and ambient pressure would then add to the integral. The integral therefore
 * covers only the time of flow.
 */
function flowSpan({ origin, ambientPressure }: Firing, pressure: AnalysedTrace): FlowSpan {
  const { time } = pressure;
  const gauge = pressure.above(ambientPressure?.si ?? 0);
  if (origin === 'predicted' || ambientPressure === undefined || !(gauge.highest() > 0))
    return {
      from: time[0],
      to: time[time.length - 1],
      definition: `absolute pressure over the whole record${ambientPressure === undefined ? ' (ambient pressure unknown, so the end of flow is not known)' : ''}`,
    };
  const { start, end } = gauge.edges(0.01, 0);
  return {
    from: start,
    to: end,
    definition: 'absolute pressure, while it exceeds ambient by at least 1 % of its peak above ambient',
  };
}

/** ∫p·A_t dt with the throat area of each moment. */
function throatForceIntegral(
  record: Firing,
  pressure: AnalysedTrace,
  { from, to }: FlowSpan,
  given: number | undefined,
): number | undefined {
  const fixed = given ?? record.initialThroatDiameter?.si;
  const diameters = given === undefined ? record.throatDiameter?.si : undefined;
  if (diameters === undefined && fixed === undefined) return undefined;
  const values = pressure.values.map((p, i) => p * (Math.PI / 4) * (diameters?.[i] ?? fixed ?? 0) ** 2);
  return integral({ time: pressure.time, values }, from, to);
}
