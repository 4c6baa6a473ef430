import { formula, MeopError, ratio, readInput } from '../units';
import { type FieldsOf, requireFields } from '../units/known-fields';
import { refusal } from '../units/refusal';
import {
  machBehindShockSi,
  machFromShockStagnationPressureRatioSi,
  shockDensityRatioSi,
  shockPressureRatioSi,
  shockStagnationPressureRatioSi,
} from './normal-shock-kernels';
import { pitotPressureRatioSi } from './pitot-pressure';

const procedure = 'normalShock';

const report1135 = 'NACA Report 1135 (1953), normal shock in a perfect gas';
const inputs = {
  mach: /* @__PURE__ */ ratio('M1', 'Mach number ahead of the shock', { min: 1 }),
  gamma: /* @__PURE__ */ ratio('γ', 'ratio of specific heats', { above: 1 }),
};

/**
 * Static pressure behind over ahead of a normal shock.
 *
 * @throws MeopError `out-of-domain` for a Mach number below 1
 * @example normalShockPressureRatio({ mach: 2, gamma: 1.4 }) // => 4.5
 */
export const normalShockPressureRatio = /* @__PURE__ */ formula({
  name: 'normalShockPressureRatio',
  title: 'Pressure ratio of a normal shock',
  equation: 'p2/p1 = 1 + 2·γ / (γ + 1)·(M1² − 1)',
  source: report1135,
  inputs,
  output: ratio('p2/p1', 'static pressure behind over ahead', { min: 1 }),
  example: { mach: 2, gamma: 1.4 },
  si: ({ mach, gamma }) => shockPressureRatioSi(mach, gamma),
  solve: { mach: (value, { gamma }) => Math.sqrt(1 + ((gamma + 1) / (2 * gamma)) * (value - 1)) },
});

/**
 * Density behind over ahead of a normal shock; below (γ + 1)/(γ − 1) however strong the shock.
 *
 * @throws MeopError `out-of-domain` for a Mach number below 1
 * @example normalShockDensityRatio({ mach: 2, gamma: 1.4 }) // => 2.666666667
 */
export const normalShockDensityRatio = /* @__PURE__ */ formula({
  name: 'normalShockDensityRatio',
  title: 'Density ratio of a normal shock',
  equation: 'ρ2/ρ1 = (γ + 1)·M1² / ((γ − 1)·M1² + 2)',
  source: report1135,
  inputs,
  output: ratio('ρ2/ρ1', 'density behind over ahead', { min: 1 }),
  example: { mach: 2, gamma: 1.4 },
  si: ({ mach, gamma }) => shockDensityRatioSi(mach, gamma),
  solve: { mach: (value, { gamma }) => Math.sqrt((2 * value) / (gamma + 1 - value * (gamma - 1))) },
});

/**
 * Static temperature behind over ahead of a normal shock.
 *
 * @throws MeopError `out-of-domain` for a Mach number below 1
 * @example normalShockTemperatureRatio({ mach: 2, gamma: 1.4 }) // => 1.6875
 */
export const normalShockTemperatureRatio = /* @__PURE__ */ formula({
  name: 'normalShockTemperatureRatio',
  title: 'Temperature ratio of a normal shock',
  equation: 'T2/T1 = 1 + 2·(γ − 1) / (γ + 1)²·(M1² − 1) / M1²·(γ·M1² + 1)',
  source: report1135,
  inputs,
  output: ratio('T2/T1', 'static temperature behind over ahead', { min: 1 }),
  example: { mach: 2, gamma: 1.4 },
  si: ({ mach, gamma }) => shockPressureRatioSi(mach, gamma) / shockDensityRatioSi(mach, gamma),
  solve: {
    // A quadratic in M1², whose terms without T2/T1 − 1 are gathered so that nothing cancels near Mach 1.
    mach: (value, { gamma }) => {
      const b = 2 * (gamma - 1) + ((value - 1) * (gamma + 1) ** 2) / (gamma - 1);
      return value >= 1 ? Math.sqrt((b + Math.sqrt(b * b + 16 * gamma)) / (4 * gamma)) : Number.NaN;
    },
  },
});

/**
 * Mach number behind a normal shock.
 *
 * @throws MeopError `out-of-domain` for a Mach number below 1
 * @example machBehindNormalShock({ mach: 2, gamma: 1.4 }) // => 0.577350269
 */
export const machBehindNormalShock = /* @__PURE__ */ formula({
  name: 'machBehindNormalShock',
  title: 'Mach number behind a normal shock',
  equation: 'M2 = √((1 + (γ − 1) / 2·M1²) / (γ·M1² − (γ − 1) / 2))',
  source: report1135,
  inputs,
  output: ratio('M2', 'Mach number behind the shock'),
  example: { mach: 2, gamma: 1.4 },
  si: ({ mach, gamma }) => machBehindShockSi(mach, gamma),
  solve: { mach: (value, { gamma }) => machBehindShockSi(value, gamma) },
});

/**
 * Stagnation pressure behind over ahead of a normal shock: the loss that the shock makes.
 *
 * @throws MeopError `out-of-domain` for a Mach number below 1
 * @example normalShockStagnationPressureRatio({ mach: 2, gamma: 1.4 }) // => 0.720873861
 */
export const normalShockStagnationPressureRatio = /* @__PURE__ */ formula({
  name: 'normalShockStagnationPressureRatio',
  title: 'Stagnation-pressure ratio of a normal shock',
  equation:
    'p02/p01 = ((γ + 1)·M1² / ((γ − 1)·M1² + 2))^(γ / (γ − 1))·((γ + 1) / (2·γ·M1² − (γ − 1)))^(1 / (γ − 1))',
  source: report1135,
  inputs,
  output: ratio('p02/p01', 'stagnation pressure behind over ahead'),
  example: { mach: 2, gamma: 1.4 },
  si: ({ mach, gamma }) => shockStagnationPressureRatioSi(mach, gamma),
  solve: {
    mach: (value, { gamma }) =>
      value > 0 && value <= 1 ? machFromShockStagnationPressureRatioSi(value, gamma) : Number.NaN,
  },
});

/**
 * Mach number ahead of a normal shock from the static pressures on its two sides.
 *
 * @throws MeopError `out-of-domain` for a ratio below 1: a shock never lowers the pressure
 * @example machFromNormalShockPressureRatio({ pressureRatio: 4.5, gamma: 1.4 }) // => 2
 */
export const machFromNormalShockPressureRatio = /* @__PURE__ */ formula({
  name: 'machFromNormalShockPressureRatio',
  title: 'Mach number from the pressure ratio of a normal shock',
  equation: 'M1 = √(1 + (γ + 1) / (2·γ)·(p2/p1 − 1))',
  source: report1135,
  inputs: {
    pressureRatio: ratio('p2/p1', 'static pressure behind over ahead', { min: 1 }),
    gamma: inputs.gamma,
  },
  output: ratio('M1', 'Mach number ahead of the shock', { min: 1 }),
  example: { pressureRatio: 4.5, gamma: 1.4 },
  si: ({ pressureRatio, gamma }) => Math.sqrt(1 + ((gamma + 1) / (2 * gamma)) * (pressureRatio - 1)),
  solve: { pressureRatio: (mach, { gamma }) => shockPressureRatioSi(mach, gamma) },
});

/** A normal shock: every ratio is behind over ahead. */
export interface NormalShock {
  /** Mach number ahead. */
  readonly mach: number;
  readonly machBehind: number;
  readonly pressureRatio: number;
  readonly temperatureRatio: number;
  readonly densityRatio: number;
  readonly stagnationPressureRatio: number;
  /** Stagnation pressure behind over static pressure ahead: what a Pitot tube reads. */
  readonly pitotPressureRatio: number;
  /** Rise of entropy over the specific gas constant; never negative. */
  readonly entropyRise: number;
}

/** What {@link normalShock} needs: the Mach number, or one of the ratios it can be found from. */
export interface NormalShockOptions {
  /** Ratio of specific heats, above 1. */
  readonly gamma: number;
  /** Mach number ahead, at least 1. */
  readonly mach?: number;
  /** Static pressure behind over ahead, at least 1. */
  readonly pressureRatio?: number;
  /** Stagnation pressure behind over ahead, above 0 and at most 1. */
  readonly stagnationPressureRatio?: number;
}

const normalShockFields: FieldsOf<NormalShockOptions> = {
  gamma: 'required',
  mach: 'optional',
  pressureRatio: 'optional',
  stagnationPressureRatio: 'optional',
};

/**
 * All ratios across a normal shock, from the Mach number ahead of it or from a pressure ratio.
 *
 * Source: NACA Report 1135 (1953), normal shock in a perfect gas.
 *
 * @throws MeopError `out-of-domain`; `missing-field` unless exactly one of mach, pressureRatio, stagnationPressureRatio is given
 * @example normalShock({ mach: 2, gamma: 1.4 }).pressureRatio // => 4.5
 */
export function normalShock(options: NormalShockOptions): NormalShock {
  requireFields(procedure, options, normalShockFields);
  const given = (['mach', 'pressureRatio', 'stagnationPressureRatio'] as const).filter(
    (field) => options[field] !== undefined,
  );
  const field = given[0];
  if (given.length !== 1 || field === undefined)
    throw new MeopError(
      'missing-field',
      `normalShock: ${given.length} of mach, pressureRatio, stagnationPressureRatio given; exactly one is expected`,
      'mach',
    );
  const gamma = readInput('dimensionless', 'gamma', options.gamma, procedure).si;
  if (!(gamma > 1)) throw refusal(procedure, 'gamma', options.gamma, 'above 1');
  const value = readInput('dimensionless', field, options[field], procedure).si;
  if (field === 'stagnationPressureRatio' ? !(value > 0 && value <= 1) : value < 1)
    throw refusal(
      procedure,
      field,
      value,
      field === 'stagnationPressureRatio' ? 'above 0 and at most 1' : 'at least 1',
    );
  const mach =
    field === 'mach'
      ? value
      : field === 'pressureRatio'
        ? machFromNormalShockPressureRatio.si({ pressureRatio: value, gamma })
        : machFromShockStagnationPressureRatioSi(value, gamma);
  const pressureRatio = shockPressureRatioSi(mach, gamma);
  if (!Number.isFinite(pressureRatio))
    throw refusal(procedure, field, value, 'small enough for finite ratios');
  const machBehind = machBehindShockSi(mach, gamma);
  return {
    mach,
    machBehind,
    pressureRatio,
    temperatureRatio: pressureRatio / shockDensityRatioSi(mach, gamma),
    densityRatio: shockDensityRatioSi(mach, gamma),
    stagnationPressureRatio: shockStagnationPressureRatioSi(mach, gamma),
    pitotPressureRatio: pitotPressureRatioSi(mach, gamma),
    entropyRise: shockEntropyRiseSi(mach, gamma),
  };
}

/**
 * Entropy rise over the specific gas constant across a normal shock; plain numbers, unchecked. It starts as the cube of
 * M² − 1, so for weak shocks the three logarithms are taken without their first two terms, which cancel.
 *
 * @example shockEntropyRiseSi(2, 1.4) // => 0.327291
 */
export function shockEntropyRiseSi(mach: number, gamma: number): number {
  const x = (mach - 1) * (mach + 1);
  if (x > 0.05) return -Math.log(shockStagnationPressureRatioSi(mach, gamma));
  const a = (2 * gamma) / (gamma + 1);
  const b = (gamma - 1) / (gamma + 1);
  // Σ (−1)ⁿ⁺¹·xⁿ/n·(aⁿ − γ + γ·bⁿ)/(γ − 1); with d = a − 1 = b the bracket is ((1+b)ⁿ − 1 − n·b)… written free of cancellation.
  let sum = 0;
  for (let n = 14; n >= 3; n--) sum = sum * -x + coefficient(n, a, b) / n;
  return sum * x * x * x;
}

// (aⁿ − γ + γ·bⁿ)/(γ − 1) where a = 1 + b and γ = (1 + b)/(1 − b): aⁿ⁻¹·(1 − b) = 1 − b² + Σ…, so
// the numerator is a/(1 − b)·[(1 − b)·aⁿ⁻¹ − 1 + bⁿ] and γ − 1 = 2b/(1 − b). The bracket is a polynomial in b
// that begins with b: divided by b it is Σ_{k=1}^{n−1} (C(n−1,k) − C(n−1,k−1))·b^{k−1}, since the b^n terms cancel.
function coefficient(n: number, a: number, b: number): number {
  let sum = 0;
  let power = 1;
  let choose = 1;
  for (let k = 1; k < n; k++) {
    const next = (choose * (n - k)) / k;
    sum += (next - choose) * power;
    power *= b;
    choose = next;
  }
  return (a * sum) / 2;
}
