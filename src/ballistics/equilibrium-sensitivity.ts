import {
  absolutePressure,
  formula,
  optional,
  ratio,
  temperatureDifference,
  temperatureSensitivity,
} from '../units';
import { powerLaw } from './burn-law-inputs';
import { nearOne } from './equilibrium-inputs';

const exponent = powerLaw.exponent;

/**
 * Relative change of the equilibrium pressure per relative change of burning area, rate, c* or density.
 *
 * @example pressureAmplification({ exponent: 0.5 }) // => 2
 */
export const pressureAmplification = /* @__PURE__ */ formula({
  name: 'pressureAmplification',
  title: 'Amplification of changes by the pressure exponent',
  equation: 'k = 1 / (1 − n)',
  source:
    'differentiation of the equilibrium pressure p ~ (ρ·a·c*·K)^(1/(1−n)), Sutton & Biblarz 7th ed., ch. 11',
  inputs: { exponent },
  output: ratio('k', 'relative change of pressure per relative change of burning area'),
  example: { exponent: 0.32 },
  valid: [nearOne],
  si: ({ exponent: n }) => 1 / (1 - n),
});

const rateSensitivity = temperatureSensitivity('σ_p', 'relative change of burning rate by grain temperature');
const factor = (symbol: string, meaning: string) => optional(ratio(symbol, meaning, { above: 0 }), 1);

/**
 * Factor on the equilibrium pressure when burning area, throat, burning rate, c* or density change by a factor each;
 * omitted factors are 1. The same equation applies to a crack that adds area, and to a limit on pressure.
 *
 * @example equilibriumPressureRatio({ burningAreaFactor: 1.05, exponent: 0.5 }) // => 1.1025
 */
export const equilibriumPressureRatio = /* @__PURE__ */ formula({
  name: 'equilibriumPressureRatio',
  title: 'Ratio of two equilibrium pressures',
  equation: 'f_p = (f_A·f_r·f_c·f_ρ / f_d²)^(1 / (1 − n))',
  source:
    'ratio of two equilibrium pressures p ~ (ρ·a·c*·A_b / A_t)^(1/(1−n)), Sutton & Biblarz 7th ed., ch. 11',
  inputs: {
    burningAreaFactor: factor('f_A', 'factor on the burning area'),
    throatDiameterFactor: factor('f_d', 'factor on the throat diameter'),
    burnRateFactor: factor('f_r', 'factor on the burning rate at constant pressure'),
    characteristicVelocityFactor: factor('f_c', 'factor on the characteristic velocity'),
    densityFactor: factor('f_ρ', 'factor on the propellant density'),
    exponent,
  },
  output: ratio('f_p', 'factor on the equilibrium pressure'),
  example: {
    burningAreaFactor: 1.1,
    throatDiameterFactor: 1.02,
    burnRateFactor: 1.03,
    characteristicVelocityFactor: 0.98,
    densityFactor: 0.99,
    exponent: 0.32,
  },
  valid: [nearOne],
  si: ({
    burningAreaFactor: fA = 1,
    throatDiameterFactor: fd = 1,
    burnRateFactor: fr = 1,
    characteristicVelocityFactor: fc = 1,
    densityFactor: fRho = 1,
    exponent: n,
  }) => ((fA * fr * fc * fRho) / fd ** 2) ** (1 / (1 - n)),
});

/** @example pressureTemperatureSensitivity({ rateSensitivity: '0.0025 1/K', exponent: 0.35 }).in('1/K') // => 0.003846153846 */
export const pressureTemperatureSensitivity = /* @__PURE__ */ formula({
  name: 'pressureTemperatureSensitivity',
  title: 'Temperature sensitivity of pressure at constant burning-area ratio',
  equation: 'π_K = σ_p / (1 − n)',
  source:
    'Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), ch. 11; for one power law and constant c* and density',
  inputs: {
    rateSensitivity,
    exponent,
  },
  output: temperatureSensitivity('π_K', 'relative change of pressure by grain temperature'),
  example: { rateSensitivity: '0.0025 1/K', exponent: 0.35 },
  valid: [nearOne],
  si: ({ rateSensitivity, exponent: n }) => rateSensitivity / (1 - n),
});

/**
 * Pressure at another grain temperature and the same burning-area ratio. The exponential form: the linear one,
 * Δp = π_K·p·ΔT, is low by 0.6 % already at 30 K.
 *
 * @example pressureAtGrainTemperature({ pressure: '5 MPa', pressureSensitivity: '0.00384615385 1/K', temperatureChange: '30 delta_K' }).in('MPa') // => 5.611525052
 */
export const pressureAtGrainTemperature = /* @__PURE__ */ formula({
  name: 'pressureAtGrainTemperature',
  title: 'Chamber pressure at another grain temperature',
  equation: 'p_2 = p_1·exp(π_K·ΔT)',
  source:
    'Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), ch. 11, definition of π_K, integrated',
  inputs: {
    pressure: absolutePressure('p_1', 'pressure at the reference grain temperature'),
    pressureSensitivity: temperatureSensitivity('π_K', 'relative change of pressure by grain temperature'),
    temperatureChange: temperatureDifference('ΔT', 'grain temperature above the reference'),
  },
  output: absolutePressure('p_2', 'pressure at the other grain temperature'),
  example: { pressure: '5 MPa', pressureSensitivity: '0.0038 1/K', temperatureChange: '30 delta_K' },
  si: ({ pressure, pressureSensitivity, temperatureChange }) =>
    pressure * Math.exp(pressureSensitivity * temperatureChange),
});

/** @example burnRateTemperatureFactor({ rateSensitivity: '0.0025 1/K', temperatureChange: '30 delta_K' }) // => 1.077884151 */
export const burnRateTemperatureFactor = /* @__PURE__ */ formula({
  name: 'burnRateTemperatureFactor',
  title: 'Burning-rate factor of the grain temperature at constant pressure',
  equation: 'f_r = exp(σ_p·ΔT)',
  source:
    'Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), ch. 11, definition of σ_p, integrated',
  inputs: {
    rateSensitivity,
    temperatureChange: temperatureDifference('ΔT', 'grain temperature above the reference'),
  },
  output: ratio('f_r', 'factor on the burning rate'),
  example: { rateSensitivity: '0.0025 1/K', temperatureChange: '30 delta_K' },
  si: ({ rateSensitivity, temperatureChange }) => Math.exp(rateSensitivity * temperatureChange),
});
