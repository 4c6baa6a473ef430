import { formula, MeopError, optional, procedure, ratio } from '../units';
import { gamma, machAhead } from './gas-inputs';
import {
  machBehindShockSi,
  machFromShockStagnationPressureRatioSi,
  pitotPressureRatioSi,
  shockDensityRatioSi,
  shockEntropyRiseSi,
  shockPressureRatioSi,
  shockStagnationPressureRatioSi,
} from './normal-shock-kernels';

const report1135 = 'NACA Report 1135 (1953), normal shock in a perfect gas';
const inputs = { mach: machAhead, gamma };
const staticRatio = /* @__PURE__ */ ratio('p2/p1', 'static pressure ratio, downstream/upstream', { min: 1 });
const stagnationRatio = /* @__PURE__ */ ratio('p02/p01', 'stagnation pressure ratio, downstream/upstream', {
  above: 0,
  max: 1,
});

/**
 * Static pressure ratio across a normal shock (downstream/upstream).
 *
 * @example normalShockPressureRatio({ mach: 2, gamma: 1.4 }) // => 4.5
 */
export const normalShockPressureRatio = /* @__PURE__ */ formula({
  name: 'normalShockPressureRatio',
  title: 'Pressure ratio of a normal shock',
  equation: 'p2/p1 = 1 + 2·γ / (γ + 1)·(M1² − 1)',
  source: report1135,
  inputs,
  output: staticRatio,
  example: { mach: 2, gamma: 1.4 },
  si: ({ mach, gamma }) => shockPressureRatioSi(mach, gamma),
});

/**
 * Density ratio across a normal shock (downstream/upstream); below (γ + 1)/(γ − 1) for any shock strength.
 *
 * @example normalShockDensityRatio({ mach: 2, gamma: 1.4 }) // => 2.666666667
 */
export const normalShockDensityRatio = /* @__PURE__ */ formula({
  name: 'normalShockDensityRatio',
  title: 'Density ratio of a normal shock',
  equation: 'ρ2/ρ1 = (γ + 1)·M1² / ((γ − 1)·M1² + 2)',
  source: report1135,
  inputs,
  output: ratio('ρ2/ρ1', 'density ratio, downstream/upstream', { min: 1 }),
  example: { mach: 2, gamma: 1.4 },
  si: ({ mach, gamma }) => shockDensityRatioSi(mach, gamma),
});

/**
 * Static temperature ratio across a normal shock (downstream/upstream).
 *
 * @example normalShockTemperatureRatio({ mach: 2, gamma: 1.4 }) // => 1.6875
 */
export const normalShockTemperatureRatio = /* @__PURE__ */ formula({
  name: 'normalShockTemperatureRatio',
  title: 'Temperature ratio of a normal shock',
  equation: 'T2/T1 = 1 + 2·(γ − 1) / (γ + 1)²·(M1² − 1) / M1²·(γ·M1² + 1)',
  source: report1135,
  inputs,
  output: ratio('T2/T1', 'static temperature ratio, downstream/upstream', { min: 1 }),
  example: { mach: 2, gamma: 1.4 },
  si: ({ mach, gamma }) => shockPressureRatioSi(mach, gamma) / shockDensityRatioSi(mach, gamma),
});

/** @example machBehindNormalShock({ mach: 2, gamma: 1.4 }) // => 0.577350269 */
export const machBehindNormalShock = /* @__PURE__ */ formula({
  name: 'machBehindNormalShock',
  title: 'Mach number behind a normal shock',
  equation: 'M2 = √((1 + (γ − 1) / 2·M1²) / (γ·M1² − (γ − 1) / 2))',
  source: report1135,
  inputs,
  output: ratio('M2', 'Mach number behind the shock'),
  example: { mach: 2, gamma: 1.4 },
  si: ({ mach, gamma }) => machBehindShockSi(mach, gamma),
});

/**
 * Stagnation pressure ratio across a normal shock (downstream/upstream): the loss across the shock.
 *
 * @example normalShockStagnationPressureRatio({ mach: 2, gamma: 1.4 }) // => 0.720873861
 */
export const normalShockStagnationPressureRatio = /* @__PURE__ */ formula({
  name: 'normalShockStagnationPressureRatio',
  title: 'Stagnation-pressure ratio of a normal shock',
  equation:
    'p02/p01 = ((γ + 1)·M1² / ((γ − 1)·M1² + 2))^(γ / (γ − 1))·((γ + 1) / (2·γ·M1² − (γ − 1)))^(1 / (γ − 1))',
  source: report1135,
  inputs,
  output: stagnationRatio,
  example: { mach: 2, gamma: 1.4 },
  si: ({ mach, gamma }) => shockStagnationPressureRatioSi(mach, gamma),
});

/**
 * Mach number ahead of a normal shock from the static pressures on its two sides.
 *
 * @example machFromNormalShockPressureRatio({ pressureRatio: 4.5, gamma: 1.4 }) // => 2
 */
export const machFromNormalShockPressureRatio = /* @__PURE__ */ formula({
  name: 'machFromNormalShockPressureRatio',
  title: 'Mach number from the pressure ratio of a normal shock',
  equation: 'M1 = √(1 + (γ + 1) / (2·γ)·(p2/p1 − 1))',
  source: report1135,
  inputs: { pressureRatio: staticRatio, gamma },
  output: machAhead,
  example: { pressureRatio: 4.5, gamma: 1.4 },
  si: ({ pressureRatio, gamma }) => Math.sqrt(1 + ((gamma + 1) / (2 * gamma)) * (pressureRatio - 1)),
});

/** A normal shock: every ratio is downstream/upstream. */
export interface NormalShock {
  /** Mach number ahead. */
  readonly mach: number;
  readonly machBehind: number;
  readonly pressureRatio: number;
  readonly temperatureRatio: number;
  readonly densityRatio: number;
  readonly stagnationPressureRatio: number;
  /** Stagnation pressure downstream/static pressure upstream: the reading of a Pitot tube. */
  readonly pitotPressureRatio: number;
  /** Rise of entropy divided by the specific gas constant; never negative. */
  readonly entropyRise: number;
}

const waysToGive = ['mach', 'pressureRatio', 'stagnationPressureRatio'] as const;

/**
 * All ratios across a normal shock.
 *
 * @example normalShock({ mach: 2, gamma: 1.4 }).pressureRatio // => 4.5
 */
export const normalShock = /* @__PURE__ */ procedure({
  name: 'normalShock',
  title: 'Normal shock',
  source: report1135,
  inputs: {
    gamma,
    mach: optional(machAhead),
    pressureRatio: optional(staticRatio),
    stagnationPressureRatio: optional(stagnationRatio),
  },
  gives: 'all ratios across the shock, from exactly one of mach, pressureRatio, stagnationPressureRatio',
  example: { mach: 2, gamma: 1.4 },
  checks: [
    (values) => {
      const given = waysToGive.filter((field) => values[field] !== undefined);
      if (given.length === 1) return undefined;
      const problem = `exactly one of ${waysToGive.join(', ')} is required, got ${given.length}`;
      return { code: 'missing-field', path: 'mach', problem };
    },
  ],
  run: (values): NormalShock => {
    const { gamma, mach, pressureRatio, stagnationPressureRatio } = values;
    const ahead =
      mach ??
      (pressureRatio === undefined
        ? machFromShockStagnationPressureRatioSi(stagnationPressureRatio ?? 1, gamma)
        : machFromNormalShockPressureRatio.si({ pressureRatio, gamma }));
    const shock = shockAt({ mach: ahead, gamma });
    if (Number.isFinite(shock.pressureRatio)) return shock;
    const path = waysToGive.find((field) => values[field] !== undefined);
    throw new MeopError({
      code: 'out-of-domain',
      procedure: 'normalShock',
      path,
      given: path && values[path],
      expected: 'small enough for finite ratios',
    });
  },
  si: shockAt,
});

function shockAt({ mach, gamma }: { readonly mach: number; readonly gamma: number }): NormalShock {
  const pressureRatio = shockPressureRatioSi(mach, gamma);
  const densityRatio = shockDensityRatioSi(mach, gamma);
  return {
    mach,
    machBehind: machBehindShockSi(mach, gamma),
    pressureRatio,
    temperatureRatio: pressureRatio / densityRatio,
    densityRatio,
    stagnationPressureRatio: shockStagnationPressureRatioSi(mach, gamma),
    pitotPressureRatio: pitotPressureRatioSi(mach, gamma),
    entropyRise: shockEntropyRiseSi(mach, gamma),
  };
}
