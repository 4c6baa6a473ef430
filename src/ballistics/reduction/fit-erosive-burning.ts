import { linearFit } from '../../numerics';
import { choice, inputs, MeopError, optional, printable, procedure, ratio, type Values } from '../../units';
import type { BurnLaw } from '../burn-law';
import type { ErosiveBurning } from '../erosive-inputs';
import { simulate } from '../simulate';
import { type SimulateInput, simulateInputs } from '../simulate-inputs';
import { ambientAt, pressureOf, pressureRecord } from './firing-inputs';
import { pressureProfile, profileBins } from './pressure-profile';

/** The augmentation factor of a law of erosive burning that a firing shows. */
export interface ErosiveBurningFit {
  /** The law with the factor found, as `simulate` and the motor document take it. */
  readonly erosiveBurning: ErosiveBurning;
  /** Multiplier of the rate that the law adds; 1 is the law as published, 0 no erosion. */
  readonly augmentationFactor: number;
  /** Standard error of the factor. */
  readonly standardError: number;
  /** Interval of the factor that covers it with 95 % probability; not below 0. */
  readonly interval: readonly [low: number, high: number];
  /** Measured pressure/pressure of the motor with this factor, over the whole burn: burn rate, c* and throat of this firing. */
  readonly levelRatio: number;
  /** Exponent of the burn law less that given, within its error. */
  readonly exponentChange: number;
  /** Maximum of measured pressure/pressure without erosion, level and exponent removed. */
  readonly startRatio: number;
  /** Relative change of pressure for a change of the factor by 1, where it is at its maximum. */
  readonly sensitivity: number;
  /** Root mean square of what is left, relative to the pressure. */
  readonly residual: number;
  readonly cautions: readonly string[];
  toString(): string;
}

const at = { procedure: 'fitErosiveBurning', path: '' };

// Below this change of pressure per unit of the factor a record tells nothing: transducers and grains differ by more.
const leastSensitivity = 0.01;
// Errors of transducer and geometry that a smooth record does not show (engineering practice, no published source).
const modelError = 0.004;
const iterations = 8;

const fitInputs = {
  ...pressureRecord,
  motor: inputs(simulateInputs, {
    meaning: 'the motor as it was fired, as for simulate, with the law of erosive burning to be fitted',
  }),
  measuredAt: optional(
    choice('place of the transducer: the head end, or the stagnation pressure ahead of the nozzle', [
      'head end',
      'nozzle',
    ]),
    'head end',
  ),
  exponentError: optional(
    ratio('σ_n', 'standard error of the pressure exponent of the burn law', {
      min: 0,
      max: 0.5,
      example: 0.02,
    }),
    // Engineering practice, no published source.
    0.02,
  ),
  from: optional(
    ratio('x_1', 'fraction of the pressure integral at which the comparison begins, after ignition', {
      min: 0,
      below: 0.5,
    }),
    0.02,
  ),
};
type Given = Values<typeof fitInputs>;

/**
 * Fits the augmentation factor of a law of erosive burning to a recorded firing. The port is narrow at the start and wide later, so that
 * erosion raises the first part of the pressure over the rest: the rest determines the level of this firing (burn rate, c*, throat), the first part
 * the factor. Level and exponent are fitted too, the exponent within its error, since a wrong exponent looks like
 * erosion. Both pressures are compared at equal fractions of their integral, which needs no common time.
 *
 * Use a burn law from firings without erosion or from a strand burner: a law that was fitted to firings with erosion contains it already.
 *
 * @throws MeopError `not-determined` where erosion would hardly change the pressure, `missing-field`, `no-pulse`
 * @example ((motor) => fitErosiveBurning({ record: simulate(motor), motor, measuredAt: 'nozzle' }))({ propellant: publishedPropellant('potassium nitrate/sucrose'), grain: tubularSegment({ outerDiameter: '50 mm', boreDiameter: '20 mm', length: '400 mm', burningEnds: 'none' }), nozzle: { throatDiameter: '15 mm', expansionRatio: 4 }, chamber: { innerDiameter: '50.01 mm', length: '400.1 mm' }, ambient: '1 atm', ignition: { initialPressure: '1 MPa' }, erosiveBurning: { law: 'mukunda-paul' }, stations: 20 }).augmentationFactor.toFixed(1) // => '1.0'
 */
export const fitErosiveBurning = /* @__PURE__ */ procedure({
  name: at.procedure,
  title: 'Erosive burning from a firing',
  source:
    'least squares of the logarithm of pressure against the simulation (engineering practice, no published source)',
  inputs: fitInputs,
  gives: 'the augmentation factor with its standard error and interval',
  example:
    "((motor) => fitErosiveBurning({ record: simulate(motor), motor, measuredAt: 'nozzle' }))({ propellant: publishedPropellant('potassium nitrate/sucrose'), grain: tubularSegment({ outerDiameter: '50 mm', boreDiameter: '20 mm', length: '400 mm', burningEnds: 'none' }), nozzle: { throatDiameter: '15 mm', expansionRatio: 4 }, chamber: { innerDiameter: '50.01 mm', length: '400.1 mm' }, ambient: '1 atm', ignition: { initialPressure: '1 MPa' }, erosiveBurning: { law: 'mukunda-paul' }, stations: 20 })",
  run: fitted,
});

interface Point {
  readonly factor: number;
  readonly level: number;
  readonly exponent: number;
}

function fitted(given: Given): ErosiveBurningFit {
  const { record, motor, exponentError } = given;
  const law = motor.erosiveBurning;
  if (law === undefined || law.law === 'none')
    throw new MeopError({
      code: 'missing-field',
      procedure: at.procedure,
      path: 'motor.erosiveBurning',
      expected: "the law to be fitted, such as { law: 'mukunda-paul' }",
    });
  const ambient = ambientAt(record, given.ambientPressure, at);
  const trace = pressureOf(record, at);
  const measured = pressureProfile(trace, ambient);
  const bins = profileBins(given.from);
  const observed = bins.map((x) => measured.logAt(x));
  const n = meanExponent(motor);
  // The middle of the pressures, where rate and exponent of a burn law are independent.
  const middle = Math.exp(observed.reduce((sum, value) => sum + value, 0) / bins.length);
  const predicted = ({ factor, level, exponent }: Point): readonly number[] => {
    const input: SimulateInput = {
      ...motor,
      propellant: {
        ...motor.propellant,
        law: shiftedLaw(motor.propellant.law, Math.exp(level * (1 - n)), exponent, middle),
      },
      erosiveBurning: withFactor(law, factor),
      portModel: 'coupled',
    };
    const run = simulate(input);
    const pressure = given.measuredAt === 'nozzle' ? run.pressure : run.headPressure;
    const made = pressureProfile(pressureOf({ ...run, pressure }, at), run.ambientPressure.si);
    return bins.map((x) => made.logAt(x));
  };
  let found: Point = { factor: 1, level: 0, exponent: 0 };
  let without = predicted({ ...found, factor: 0 });
  let model = predicted(found);
  const average = model.reduce((sum, value, i) => sum + value - without[i], 0) / bins.length;
  const sensitivity = Math.max(...model.map((value, i) => Math.abs(value - without[i] - average)));
  if (!(sensitivity >= leastSensitivity))
    throw new MeopError({
      code: 'not-determined',
      procedure: at.procedure,
      path: 'motor.erosiveBurning',
      problem: `erosive burning by this law changes the shape of the pressure by ${(100 * sensitivity).toPrecision(2)} % only, less than the ${100 * leastSensitivity} % that a record shows: the port is too wide, or the mass flux below the threshold`,
      remedy: 'Fit it to a firing with a narrower or longer port',
    });
  let settled = false;
  let slope = model.map((value, i) => value - without[i]);
  let fit = solved(observed, model, found, { slope, byExponent: byExponentOf(model, n), exponentError });
  for (let k = 0; k < iterations && !settled; k++) {
    found = { factor: Math.max(0, fit.factor), level: fit.level, exponent: fit.exponent };
    model = predicted(found);
    const step = 0.25;
    const beside = predicted({ ...found, factor: found.factor + step });
    slope = beside.map((value, i) => (value - model[i]) / step);
    fit = solved(observed, model, found, { slope, byExponent: byExponentOf(model, n), exponentError });
    settled =
      Math.abs(Math.max(0, fit.factor) - found.factor) < Math.max(2e-3, 0.1 * fit.error) &&
      Math.abs(fit.level - found.level) < 2e-3;
  }
  if (!settled)
    throw new MeopError({
      code: 'not-converged',
      procedure: at.procedure,
      path: 'record',
      problem: `the factor does not settle (last ${fit.factor.toPrecision(3)})`,
      remedy: 'Check that motor and record belong together',
    });
  without = predicted({ ...found, factor: 0 });
  const left = observed.map((value, i) => value - model[i]);
  const error = fit.error * Math.sqrt(sharedErrors(left));
  const { factor, level } = found;
  const interval = [Math.max(0, factor - 1.96 * error), Math.max(0, factor + 1.96 * error)] as const;
  const startRatio = Math.exp(Math.max(...observed.map((value, i) => value - without[i])));
  const cautions = [
    'a burn law that was fitted to firings with erosive burning contains it already; this factor would count it twice',
    ...(interval[0] <= 0
      ? ['the record does not show erosive burning: a factor of 0 is within the interval']
      : []),
    ...(error > 0.5
      ? [
          `the factor is uncertain by ±${(1.96 * error).toPrecision(2)}: the pressure changes by ${(100 * sensitivity).toPrecision(2)} % for a change by 1`,
        ]
      : []),
    ...(measured.samplesUntil(0.1) < 10
      ? [`the first tenth of the burn has ${measured.samplesUntil(0.1)} samples only`]
      : []),
    ...(motor.ignition === undefined
      ? ['no ignition was specified: igniter gas and a slow flame change the first part of the pressure, too']
      : []),
  ];
  const made = {
    erosiveBurning: withFactor(law, factor),
    augmentationFactor: factor,
    standardError: error,
    interval,
    levelRatio: Math.exp(level),
    exponentChange: found.exponent,
    startRatio,
    sensitivity,
    residual: rms(left),
    cautions,
  };
  return printable(made, () =>
    [
      `augmentation factor ${factor.toPrecision(3)} ± ${(1.96 * error).toPrecision(2)} (95 %), law ${law.law}`,
      `  start ${(100 * (startRatio - 1)).toPrecision(2)} % above the pressure without erosion; level ${made.levelRatio.toPrecision(4)}; residual ${(100 * made.residual).toPrecision(2)} %`,
      ...cautions.map((caution) => `  caution: ${caution}`),
    ].join('\n'),
  );
}

const withFactor = (law: ErosiveBurning, augmentationFactor: number): ErosiveBurning =>
  law.law === 'none' ? law : { ...law, augmentationFactor };

const meanExponent = ({ propellant: { law } }: Given['motor']): number =>
  law.bands.reduce((sum, band) => sum + band.exponent, 0) / law.bands.length;

interface Slopes {
  readonly slope: readonly number[];
  readonly byExponent: readonly number[];
  readonly exponentError: number;
}

/** One step of the fit: level, factor and exponent, the last with its error as one more observation. */
function solved(
  observed: readonly number[],
  model: readonly number[],
  { factor, level, exponent }: Point,
  { slope, byExponent, exponentError }: Slopes,
): Point & { readonly error: number } {
  const free = exponentError > 0;
  const difference = observed.map((value, i) => value - model[i]);
  const columns = [
    [...observed.map(() => 1), ...(free ? [0] : [])],
    [...slope, ...(free ? [0] : [])],
    ...(free ? [[...byExponent, 1]] : []),
  ];
  const within = (scatter: number) =>
    linearFit({
      columns,
      observations: [...difference, ...(free ? [-exponent] : [])],
      weights: [...observed.map(() => scatter ** -2), ...(free ? [exponentError ** -2] : [])],
      scatter: 'known',
    });
  const left = within(modelError).residuals.subarray(0, observed.length);
  const { coefficients, standardErrors } = within(Math.max(modelError, rms([...left])));
  return {
    level: level + coefficients[0],
    factor: factor + coefficients[1],
    exponent: free ? exponent + coefficients[2] : 0,
    error: standardErrors[1],
  };
}

/** d ln p/dn of a burn law that turns about the middle of the pressures. */
function byExponentOf(model: readonly number[], n: number): readonly number[] {
  const middle = model.reduce((sum, value) => sum + value, 0) / model.length;
  return model.map((value) => (value - middle) / (1 - n));
}

/** The law with a rate higher by a factor, and turned about a pressure. */
const shiftedLaw = (law: BurnLaw, factor: number, exponent: number, about: number): BurnLaw => ({
  ...law,
  bands: law.bands.map((band) => ({
    ...band,
    referenceRate: band.referenceRate * factor * (band.referencePressure / about) ** exponent,
    exponent: band.exponent + exponent,
  })),
});

const rms = (values: readonly number[]): number =>
  Math.sqrt(values.reduce((sum, value) => sum + value * value, 0) / values.length);

/** Neighbours share their errors: how many of them are equivalent to one independent point. */
function sharedErrors(left: readonly number[]): number {
  let own = 0;
  let shared = 0;
  for (let i = 0; i < left.length; i++) {
    own += left[i] ** 2;
    if (i > 0) shared += left[i] * left[i - 1];
  }
  const correlation = own > 0 ? Math.max(0, Math.min(0.9, shared / own)) : 0;
  return (1 + correlation) / (1 - correlation);
}
