import { simulate } from '../../ballistics';
import { mean, standardDeviation } from '../../numerics';
import { fromSiArray, fromSiValue, gauge, type Quantity, unitOf } from '../../units';
import { type Motor, type MotorInput, motorOf } from '../document';
import { type FlawChoice, flawAccuracy, motorRegression } from '../motor-grain';
import type { RegressionCache } from '../regression-cache';
import { settingsOf } from '../settings';
import { simulationInput } from '../simulation-input';
import { withValues } from '../varied-motor';
import { type Meop, type MeopCase, type MeopScatter, meopText } from './meop-result';
import { type DrawnMotors, drawMotors, motorOfRank, percentileBand } from './monte-carlo';
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

/** {@link meop} with regressions shared. */
export function meopOf(motor: Motor, cache: RegressionCache): Meop {
  const { meop: options, assumptions } = settingsOf(motor);
  const { ambient, temperatureRange, grain, propellant } = motor;
  const temperature = {
    nominal: ambient.temperature.value.si,
    coldest: temperatureRange?.coldest.value.si ?? ambient.temperature.value.si,
    hottest: temperatureRange?.hottest.value.si ?? ambient.temperature.value.si,
  };
  const flaws: FlawChoice = grain.assumedFlaw === undefined ? 'as documented' : 'with the assumed flaw';
  const response = peakResponse(motor, flaws, cache);
  const nominal = simulated(motor, { flaws: 'as documented', cache, temperature: temperature.nominal });
  const flawed =
    flaws === 'as documented'
      ? nominal
      : simulated(motor, { flaws, cache, temperature: temperature.nominal });

  const sensitivity = propellant.burnLaw.temperatureSensitivity?.value.si ?? 0;
  const worse = sensitivity < 0 ? temperature.coldest : temperature.hottest;
  const corner = worstCorner(response, worse);
  const worstCase = simulated(motor, { flaws, cache, temperature: worse, response, shares: corner });

  const drawn = drawMotors(response, {
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
    scale: flawed.peakPressure.si / Math.exp(middle),
  });
  const basis = { nominal, percentile, 'worst case': worstCase }[options.basis].pressure;
  const found = {
    pressure: fromSiValue<'gauge pressure'>(basis.si * options.allowance, 'gauge pressure', unitOf('MPa')),
    basis: options.basis,
    allowance: options.allowance,
    nominal,
    worstCase,
    percentile,
    sensitivity: peakSensitivities(response, drawn, temperature),
    assumptions: assumptions.filter((line) => line.startsWith('meop.')),
    cautions: [
      ...new Set([
        ...response.cautions,
        ...worstCase.firing.cautions,
        ...doubts(motor, percentile, worstCase),
      ]),
    ],
  };
  return {
    ...found,
    toString: () => meopText(found),
    ...{ [Symbol.for('nodejs.util.inspect.custom')]: () => meopText(found) },
  };
}

function doubts(motor: Motor, percentile: MeopScatter, worstCase: MeopCase): readonly string[] {
  return [
    ...(motor.grain.assumedFlaw === undefined
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
  readonly flaws: FlawChoice;
  readonly cache: RegressionCache;
  /** [K] */
  readonly temperature: number;
  readonly response?: PeakResponse;
  readonly shares?: Float64Array;
}

/** A motor simulated in full, with values at shares of their tolerances. */
function simulated(motor: Motor, { flaws, cache, temperature, response, shares }: Wanted): MeopCase {
  const changes = (response?.inputs ?? []).flatMap((one, i) => {
    const share = shares?.[i] ?? 0;
    return share === 0 ? [] : [{ ...one, si: one.value.si + share * one.plusMinus }];
  });
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
    pressure: gauge(firing.peakPressure, motor.ambient.pressure.value).to('MPa'),
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

interface Scattered {
  readonly motor: Motor;
  readonly cache: RegressionCache;
  readonly flaws: FlawChoice;
  readonly response: PeakResponse;
  readonly drawn: DrawnMotors;
  readonly options: ReturnType<typeof settingsOf>['meop'];
  /** Simulated over quick pressure of the nominal motor. */
  readonly scale: number;
}

function scatterOf({ motor, cache, flaws, response, drawn, options, scale }: Scattered): MeopScatter {
  const { percentile: share, samples, seed, distribution } = options;
  const peaks = drawn.lnPeak.map((lnP) => scale * Math.exp(lnP));
  const k = motorOfRank(peaks, share);
  const width = response.inputs.length;
  const checked = simulated(motor, {
    flaws,
    cache,
    temperature: drawn.temperature[k],
    response,
    shares: drawn.shares.slice(k * width, (k + 1) * width),
  });
  const ratio = checked.peakPressure.si / peaks[k];
  const ambient = motor.ambient.pressure.value.si;
  const above = (si: number): Quantity<'gauge pressure'> =>
    fromSiValue(si - ambient, 'gauge pressure', unitOf('MPa'));
  const [low, high] = percentileBand(peaks.slice().sort(), share);
  return {
    share,
    pressure: above(checked.peakPressure.si),
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
