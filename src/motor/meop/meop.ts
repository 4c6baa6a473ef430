import { type SimulatedFiring, simulate } from '../../ballistics';
import { mean, standardDeviation } from '../../numerics';
import { fromSiArray, fromSiValue, printable, procedure, type Quantity, unitOf } from '../../units';
import { withAssumedBlockage } from '../assumed-blockage';
import type { Motor } from '../document';
import { motorSubject } from '../document/motor-subject';
import { type FlawSet, flawAccuracy, motorRegression } from '../motor-grain';
import type { RegressionCache } from '../regression-cache';
import { settingsOf } from '../settings';
import { simulationInput } from '../simulation-input';
import { withValues } from '../varied-motor';
import { worstCaseFiringValues } from '../worst-case-tolerances';
import { lawAboutMiddle } from './burn-law-middle';
import { type Meop, type MeopCase, type MeopScatter, meopText } from './meop-result';
import { indexAtPercentile, percentileBand, type SampledMotors, sampleMotors } from './monte-carlo';
import { notIncluded } from './not-included';
import { lnPeakAt, type PeakResponse, peakResponse, workState } from './peak-response';
import { peakSensitivities } from './sensitivity';
import { worstCorner } from './worst-corner';

/**
 * The worst case has every toleranced value at its worst-case limit, the grain at its worst-case temperature and the
 * assumed flaw and blockage of the throat; each sample of the Monte Carlo has the assumed flaw. Nominal, worst case and the motor at the percentile
 * are simulated in full. For the other samples the maximum equilibrium pressure is scaled to the simulation. Use
 * `meop.allowance` for an ignition peak beyond that of the simulation.
 *
 * @example meop(demoMotor()).basis // => 'worst case'
 */
export const meop = /* @__PURE__ */ procedure({
  name: 'meop',
  title: 'Maximum expected operating pressure (MEOP)',
  source:
    'MIL-STD-1522A and AIAA S-080 (quoted from memory, not verified): the maximum pressure expected in service, including dispersion and temperature',
  subject: motorSubject,
  inputs: {},
  gives:
    'the peak pressure at nominal values, in the worst case, and at a percentile of a Monte Carlo over tolerances and temperatures',
  example: 'meop(demoMotor())',
  run: (motor) => meopOf(motor, new Map()),
});

/** {@link meop} with a shared cache of regressions. */
export function meopOf(given: Motor, cache: RegressionCache): Meop {
  const { meop: options, meopAssumptions } = settingsOf(given);
  const temperature = grainTemperatures(given);
  const nominal = simulated(given, { flaws: 'as documented', cache, temperature: temperature.nominal });
  const { motor, assumptions } = lawAboutMiddle(given, nominal.peakPressure.si);
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
    notIncluded: notIncluded(motor, {
      basis: options.basis,
      hasTolerances: response.inputs.length > 0,
      hasUncertainLaw: response.inputs.some(({ path }) => path.includes('burnLaw')),
      hasPort: worstCase.firing.portFlow !== undefined,
    }),
    assumptions: [...meopAssumptions, ...assumptions],
    cautions: [
      ...new Set([
        ...response.cautions,
        ...cautions,
        ...worstCase.firing.cautions,
        ...doubts(percentile, worstCase),
      ]),
    ],
  };
  return printable(found, () => meopText(found));
}

/** Grain temperatures [K]: the range including its tolerance, or ambient temperature without one. */
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

/**
 * The worst case with the assumed flaw, or without it where that is more severe; propellant that burns early on a
 * flaw is not available at the peak.
 */
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
          'The assumed flaw lowers the peak, because propellant burns early on it. The worst case is computed without the flaw.',
        ],
      };
}

/** Absolute pressure at the head end [Pa]. */
const absoluteAtHead = ({ pressure }: MeopCase, motor: Motor): number =>
  pressure.si + motor.ambient.pressure.value.si;

/** The thrust for a scaled gauge pressure; in vacuum thrust is proportional to absolute pressure. */
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

function doubts(percentile: MeopScatter, worstCase: MeopCase): readonly string[] {
  return [
    ...(Math.abs(percentile.checkDifference) > 0.02
      ? [
          `The approximate pressure at the percentile differs by ${(percentile.checkDifference * 100).toFixed(1)} % from its simulation. Use the worst case instead of the percentile.`,
        ]
      : []),
    ...(worstCase.pressure.si < percentile.pressure.si
      ? [
          'The worst case is lower than the percentile: a transient peak governs, not the combination of tolerances.',
        ]
      : []),
  ];
}

interface Wanted {
  readonly flaws: FlawSet;
  readonly cache: RegressionCache;
  /** Grain temperature [K]. */
  readonly temperature: number;
  readonly response?: PeakResponse;
  readonly shares?: Float64Array;
  /** True where inputs without a share are also at their worst-case limit. */
  readonly atCorner?: boolean;
}

/** A motor simulated in full, with values at given fractions of their tolerances. */
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
  const input = simulationInput(
    varied,
    motorRegression(
      varied,
      flaws,
      cache,
      changes.length > 0 ? flawAccuracy.variation : flawAccuracy.prediction,
    ),
    kelvin,
  );
  const free = simulate(input);
  const blocked = atCorner ? withAssumedBlockage(varied, input, free) : undefined;
  const firing = blocked?.firing ?? free;
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
    ...(blocked && { blockage: blocked.blockage }),
  };
}

/** Maximum pressure at the head end [Pa]. */
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
  /** Ratio of simulated to approximate pressure at the head end, for the nominal motor. */
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
