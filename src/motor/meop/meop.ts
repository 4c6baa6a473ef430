import { type SimulatedFiring, simulate } from '../../ballistics';
import { mean, standardDeviation } from '../../numerics';
import { fromSiArray, fromSiValue, type Quantity, unitOf } from '../../units';
import { type Motor, type MotorInput, motorOf } from '../document';
import { type FlawSet, flawAccuracy, motorRegression } from '../motor-grain';
import type { RegressionCache } from '../regression-cache';
import { settingsOf } from '../settings';
import { simulationInput } from '../simulation-input';
import { withValues } from '../varied-motor';
import { worstCaseFiringValues } from '../worst-case-tolerances';
import { type Meop, type MeopCase, type MeopScatter, meopText } from './meop-result';
import { indexAtPercentile, percentileBand, type SampledMotors, sampleMotors } from './monte-carlo';
import { lnPeakAt, type PeakResponse, peakResponse, workState } from './peak-response';
import { peakSensitivities } from './sensitivity';
import { worstCorner } from './worst-corner';

/**
 * The maximum expected operating pressure (MEOP): the peak at nominal values; at the worst case, every toleranced value at
 * its worse end, the grain at its worse temperature, with the assumed flaw; and a percentile of motors drawn within
 * tolerances and temperatures, that flaw in each. Nominal, worst case and the motor at the percentile are simulated in
 * full. The others are drawn on their greatest equilibrium pressure, scaled to the simulation.
 *
 * The definition is that of MIL-STD-1522A and AIAA S-080 (from memory): the highest pressure expected in service, scatter
 * and temperature included. An ignition peak beyond the simulation's is for `meop.allowance`.
 *
 * @throws MeopError `motor-document` for a document with problems, and all that `simulate` throws
 * @example meop(demoMotor()).basis // => 'worst case'
 */
export function meop(input: MotorInput): Meop {
  return meopOf(motorOf(input), new Map());
}

/** {@link meop} with regressions shared; `flawsVary` where the caller adds flaws itself. */
export function meopOf(motor: Motor, cache: RegressionCache, flawsVary = false): Meop {
  const { meop: options, meopAssumptions } = settingsOf(motor);
  const temperature = grainTemperatures(motor);
  const nominal = simulated(motor, { flaws: 'as documented', cache, temperature: temperature.nominal });
  const { flaws, response, worstCase, cautions } = worstOf(motor, cache, temperature);
  const flawed =
    flaws === 'as documented'
      ? nominal
      : simulated(motor, { flaws, cache, temperature: temperature.nominal });
  const drawn = sampleMotors(response, {
    ...options,
    temperatures: [temperature.coldest, temperature.hottest],
  });
  const work = workState(response);
  const middle = lnPeakAt(response, new Float64Array(response.inputs.length), temperature.nominal, work);
  const percentile = scatterOf({
    motor,
    cache,
    flaws,
    response,
    drawn,
    options,
    scale: absoluteAtHead(flawed, motor) / Math.exp(middle),
  });
  const { allowance } = options;
  const basis = { nominal, percentile, 'worst case': worstCase }[options.basis].pressure;
  const found = {
    pressure: fromSiValue<'gauge pressure'>(basis.si * allowance, 'gauge pressure', unitOf('MPa')),
    basis: options.basis,
    allowance,
    thrust: raisedThrust(motor, worstCase, allowance),
    nominal,
    worstCase,
    percentile,
    sensitivity: peakSensitivities(response, drawn, temperature),
    assumptions: meopAssumptions,
    cautions: [
      ...new Set([
        ...response.cautions,
        ...cautions,
        ...worstCase.firing.cautions,
        ...(response.inputs.length === 0
          ? [
              'no value that bears on the pressure has a tolerance: the worst case is the nominal motor, and a real one scatters about that',
            ]
          : []),
        ...doubts(motor, percentile, worstCase, flawsVary),
      ]),
    ],
  };
  return {
    ...found,
    toString: () => meopText(found),
    ...{ [Symbol.for('nodejs.util.inspect.custom')]: () => meopText(found) },
  };
}

/** Grain temperatures [K]: the range, at the ends of its tolerance; without one that of the surroundings. */
function grainTemperatures({ ambient, temperatureRange }: Motor) {
  const coldest = temperatureRange?.coldest ?? ambient.temperature;
  const hottest = temperatureRange?.hottest ?? ambient.temperature;
  return {
    nominal: ambient.temperature.value.si,
    coldest: coldest.value.si - coldest.plusMinus,
    hottest: hottest.value.si + hottest.plusMinus,
  };
}

interface Worst {
  readonly flaws: FlawSet;
  readonly response: PeakResponse;
  readonly worstCase: MeopCase;
  readonly cautions: readonly string[];
}

/** The worst case with the assumed flaw, or without it where that is worse: what a flaw burns early is gone later. */
function worstOf(
  motor: Motor,
  cache: RegressionCache,
  { coldest, hottest }: ReturnType<typeof grainTemperatures>,
): Worst {
  const sensitivity = motor.propellant.burnLaw.temperatureSensitivity?.value.si ?? 0;
  const temperature = sensitivity < 0 ? coldest : hottest;
  const worst = (flaws: FlawSet): Omit<Worst, 'cautions'> => {
    const response = peakResponse(motor, flaws, cache);
    const shares = worstCorner(response, temperature);
    return {
      flaws,
      response,
      worstCase: simulated(motor, { flaws, cache, temperature, response, shares, atCorner: true }),
    };
  };
  const known = worst('as documented');
  if (motor.grain.assumedFlaw === undefined) return { ...known, cautions: [] };
  const assumed = worst('with the assumed flaw');
  return assumed.worstCase.pressure.si >= known.worstCase.pressure.si
    ? { ...assumed, cautions: [] }
    : {
        ...known,
        cautions: [
          'the assumed flaw lowers the peak, since what it burns early is gone later: the worst case is without it',
        ],
      };
}

/** The pressure at the head end [Pa], absolute. */
const absoluteAtHead = ({ pressure }: MeopCase, motor: Motor): number =>
  pressure.si + motor.ambient.pressure.value.si;

/** The thrust where the pressure above ambient is raised: in vacuum it would go with the absolute pressure. */
function raisedThrust(
  motor: Motor,
  { peakThrust, peakPressure }: MeopCase,
  allowance: number,
): Quantity<'force'> {
  if (allowance === 1) return peakThrust;
  const ambient = motor.ambient.pressure.value.si;
  const exit = motor.nozzle.exitDiameter;
  const onExit = ambient * (Math.PI / 4) * (exit.value.si + exit.plusMinus) ** 2;
  const ratio = (allowance * (peakPressure.si - ambient) + ambient) / peakPressure.si;
  return fromSiValue((peakThrust.si + onExit) * ratio - onExit, 'force', unitOf('N'));
}

function doubts(
  motor: Motor,
  percentile: MeopScatter,
  worstCase: MeopCase,
  flawsVary: boolean,
): readonly string[] {
  return [
    ...(motor.grain.assumedFlaw === undefined && !flawsVary
      ? ['no flaw is assumed: a grain that cracks unseen goes above this pressure; see flawEnvelope']
      : []),
    ...(motor.temperatureRange === undefined
      ? ['no temperature range is given: a hotter grain goes above this pressure']
      : []),
    ...(Math.abs(percentile.checkDifference) > 0.02
      ? [
          `the quick pressure of the motor at the percentile differs by ${(percentile.checkDifference * 100).toFixed(1)} % from its simulation: trust the worst case rather than the percentile`,
        ]
      : []),
    ...(worstCase.pressure.si < percentile.pressure.si
      ? ['the worst case lies below the percentile: a peak in time, not a stack of tolerances, governs']
      : []),
  ];
}

interface Wanted {
  readonly flaws: FlawSet;
  readonly cache: RegressionCache;
  /** [K] */
  readonly temperature: number;
  readonly response?: PeakResponse;
  readonly shares?: Float64Array;
  /** Whether what has no share is at its worse end, too. */
  readonly atCorner?: boolean;
}

/** A motor simulated in full, with values at shares of their tolerances. */
function simulated(
  motor: Motor,
  { flaws, cache, temperature, response, shares, atCorner }: Wanted,
): MeopCase {
  const moved = (response?.inputs ?? []).flatMap((one, i) => {
    const share = shares?.[i] ?? 0;
    return share === 0 ? [] : [{ ...one, si: one.value.si + share * one.plusMinus }];
  });
  const changes = [...moved, ...(atCorner ? worstCaseFiringValues(motor) : [])];
  const varied = withValues(motor, changes);
  const kelvin: Quantity<'temperature'> = fromSiValue(temperature, 'temperature', unitOf('K'));
  const firing = simulate(
    simulationInput(
      varied,
      motorRegression(
        varied,
        flaws,
        cache,
        changes.length > 0 ? flawAccuracy.variation : flawAccuracy.prediction,
      ),
      kelvin,
    ),
  );
  return {
    pressure: fromSiValue(
      headPeak(firing) - motor.ambient.pressure.value.si,
      'gauge pressure',
      unitOf('MPa'),
    ),
    peakPressure: firing.peakPressure,
    peakThrust: firing.thrust.max(),
    grainTemperature: kelvin,
    flaws,
    values: changes.map(({ name, value, si }) => ({
      input: name,
      value: fromSiValue(si, value.kind, unitOf(value.unit)),
    })),
    firing,
  };
}

/** The greatest pressure at the head end [Pa]. */
function headPeak({ pressure, portFlow, peakPressure }: SimulatedFiring): number {
  if (portFlow === undefined) return peakPressure.si;
  return pressure.si.reduce(
    (most, p, i) => Math.max(most, p * portFlow.headPressureRatio[i]),
    peakPressure.si,
  );
}

interface Scattered {
  readonly motor: Motor;
  readonly cache: RegressionCache;
  readonly flaws: FlawSet;
  readonly response: PeakResponse;
  readonly drawn: SampledMotors;
  readonly options: ReturnType<typeof settingsOf>['meop'];
  /** Simulated pressure at the head end over quick pressure, of the nominal motor. */
  readonly scale: number;
}

function scatterOf({ motor, cache, flaws, response, drawn, options, scale }: Scattered): MeopScatter {
  const { percentile: share, samples, seed, distribution } = options;
  const peaks = drawn.lnPeak.map((lnP) => scale * Math.exp(lnP));
  const k = indexAtPercentile(peaks, share);
  const width = response.inputs.length;
  const checked = simulated(motor, {
    flaws,
    cache,
    temperature: drawn.temperature[k],
    response,
    shares: drawn.shares.slice(k * width, (k + 1) * width),
  });
  const ratio = absoluteAtHead(checked, motor) / peaks[k];
  const ambient = motor.ambient.pressure.value.si;
  const above = (si: number): Quantity<'gauge pressure'> =>
    fromSiValue(si - ambient, 'gauge pressure', unitOf('MPa'));
  const [low, high] = percentileBand(peaks.slice().sort(), share);
  return {
    share,
    pressure: checked.pressure,
    band: [above(low * ratio), above(high * ratio)],
    mean: above(mean(peaks)),
    relativeDeviation: standardDeviation(peaks) / mean(peaks),
    samples,
    seed,
    distribution,
    peakPressure: fromSiArray('absolute pressure', peaks),
    checked,
    checkDifference: ratio - 1,
  };
}
