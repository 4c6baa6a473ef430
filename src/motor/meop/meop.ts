import { simulate } from '../../ballistics';
import { mean, standardDeviation } from '../../numerics';
import { fromSiArray, fromSiValue, printable, procedure, type Quantity, unitOf } from '../../units';
import { withAssumedBlockage } from '../assumed-blockage';
import type { Motor } from '../document';
import { motorSubject } from '../document/motor-subject';
import { assumedErosion, withAssumedErosion } from '../erosion-of';
import { type FlawSet, flawAccuracy, motorRegression } from '../motor-grain';
import type { RegressionCache } from '../regression-cache';
import { settingsOf } from '../settings';
import { simulationInput } from '../simulation-input';
import { withValues } from '../varied-motor';
import { worstCaseFiringValues } from '../worst-case-tolerances';
import { lawAboutMiddle } from './burn-law-middle';
import { fullSamples, type SampledMotor } from './full-samples';
import { type Meop, type MeopCase, type MeopScatter, meopText } from './meop-result';
import { indexAtPercentile, sampleMotors } from './monte-carlo';
import { notIncluded } from './not-included';
import { type PeakResponse, peakResponse } from './peak-response';
import { percentileRanks } from './percentile-ranks';
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
export function meopOf(document: Motor, cache: RegressionCache): Meop {
  const given = withAssumedErosion(document);
  const { meop: options, meopAssumptions } = settingsOf(given);
  const temperature = grainTemperatures(given);
  const nominal = simulated(given, { flaws: 'as documented', cache, temperature: temperature.nominal });
  const { motor, assumptions } = lawAboutMiddle(given, nominal.peakPressure.si);
  const { flaws, response, worstCase, cautions } = worstOf(motor, cache, temperature);
  const drawn = sampleMotors(response, {
    ...options,
    temperatures: [temperature.coldest, temperature.hottest],
  });
  let scatter: MeopScatter | undefined;
  /** Computed when it is first read: it takes some hundred simulations. */
  const percentile = (): MeopScatter => {
    scatter ??= scatterOf({ motor, cache, flaws, response, drawn, options });
    return scatter;
  };
  const { allowance } = options;
  const basis = (
    options.basis === 'percentile' ? percentile() : options.basis === 'nominal' ? nominal : worstCase
  ).pressure;
  const found = {
    pressure: fromSiValue<'gauge pressure'>(basis.si * allowance, 'gauge pressure', unitOf('MPa')),
    basis: options.basis,
    allowance,
    thrust: raisedThrust(motor, worstCase, allowance),
    nominal,
    worstCase,
    sensitivity: peakSensitivities(response, drawn, temperature),
    notIncluded: notIncluded(motor, {
      basis: options.basis,
      hasTolerances: response.inputs.length > 0,
      hasUncertainLaw: response.inputs.some(({ path }) => path.includes('burnLaw')),
      hasErosion: worstCase.firing.portFlow === undefined || given.propellant.erosiveBurning?.law !== 'none',
    }),
    assumptions: [
      ...meopAssumptions,
      ...assumptions,
      ...(document === given || worstCase.firing.portFlow === undefined ? [] : [assumedErosion]),
    ],
    cautions: [...new Set([...response.cautions, ...cautions, ...worstCase.firing.cautions])],
  };
  const text = (): string => meopText({ ...found, percentile: percentile() });
  return {
    ...printable(found, text),
    get percentile() {
      return percentile();
    },
  };
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
  const counted = new Set(moved.map(({ name }) => name));
  const others = atCorner ? worstCaseFiringValues(motor).filter(({ name }) => !counted.has(name)) : [];
  const changes = [...moved, ...others];
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
      firing.peakHeadPressure.si - motor.ambient.pressure.value.si,
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

interface Scattered extends SampledMotor {
  readonly options: ReturnType<typeof settingsOf>['meop'];
}

function scatterOf({ options, ...sampled }: Scattered): MeopScatter {
  const { motor, cache, flaws, response, drawn } = sampled;
  const { percentile: share, samples, seed, distribution } = options;
  const full = fullSamples(sampled, share);
  const peaks = full.lnPeak.map(Math.exp);
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
  const sorted = peaks.slice().sort();
  const ranks = percentileRanks(samples, share);
  const atRank = (rank: number): number => sorted[Math.max(1, Math.min(samples, rank)) - 1] * ratio;
  return {
    share,
    pressure: checked.pressure,
    band: [above(atRank(ranks.low)), above(atRank(ranks.high))],
    mean: above(mean(peaks)),
    relativeDeviation: standardDeviation(peaks) / mean(peaks),
    samples,
    seed,
    distribution,
    peakPressure: fromSiArray('absolute pressure', peaks),
    checked,
    checkDifference: ratio - 1,
    fullRuns: full.fullRuns,
    remarks: [
      `${full.fullRuns} of ${samples} samples were simulated in full: those that can reach the percentile, and some at random, by which full and approximate pressures differ by ${(100 * full.spread).toPrecision(2)} % (standard deviation).`,
      ...(full.isComplete
        ? []
        : [
            'More samples can reach the percentile than were simulated in full. Use the worst case instead of the percentile.',
          ]),
      ...(full.failedRuns === 0
        ? []
        : [`${full.failedRuns} simulations of samples failed; their approximate pressure is used.`]),
      ...(ranks.high > samples
        ? [
            `${samples} samples are too few for an upper limit of the percentile; the maximum of the samples is given.`,
          ]
        : []),
      ...(Math.abs(ratio - 1) > 0.02
        ? [
            `The pressure of the sample at the percentile differs by ${((ratio - 1) * 100).toFixed(1)} % from the simulation with its grain, by which percentile and interval are scaled.`,
          ]
        : []),
    ],
  };
}
