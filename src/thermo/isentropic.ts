import { formula, ratio } from '../units';
import { gamma, mach } from './gas-inputs';
import {
  isentropicDensityRatioSi,
  isentropicPressureRatioSi,
  isentropicTemperatureRatioSi,
  machFromPressureRatioSi,
} from './isentropic-kernels';

const report1135 = 'NACA Report 1135 (1953), equations for isentropic flow of a perfect gas';

/**
 * Static/stagnation temperature ratio at a Mach number; no dimension.
 *
 * @example isentropicTemperatureRatio({ mach: 1, gamma: 1.2 }) // => 0.909090909
 */
export const isentropicTemperatureRatio = /* @__PURE__ */ formula({
  name: 'isentropicTemperatureRatio',
  title: 'Static/stagnation temperature ratio in isentropic flow',
  equation: 'T/T0 = 1 / (1 + (γ − 1)·M² / 2)',
  source: report1135,
  inputs: { mach, gamma },
  output: ratio('T/T0', 'static/stagnation temperature ratio'),
  example: { mach: 2, gamma: 1.4 },
  si: ({ mach, gamma }) => isentropicTemperatureRatioSi(mach, gamma),
});

/**
 * Static/stagnation pressure ratio at a Mach number; no dimension.
 *
 * @example isentropicPressureRatio({ mach: 1, gamma: 1.4 }) // => 0.528281788
 */
export const isentropicPressureRatio = /* @__PURE__ */ formula({
  name: 'isentropicPressureRatio',
  title: 'Static/stagnation pressure ratio in isentropic flow',
  equation: 'p/p0 = (1 + (γ − 1)·M² / 2)^(−γ / (γ − 1))',
  source: report1135,
  inputs: { mach, gamma },
  output: ratio('p/p0', 'static/stagnation pressure ratio'),
  example: { mach: 2, gamma: 1.4 },
  si: ({ mach, gamma }) => isentropicPressureRatioSi(mach, gamma),
});

/**
 * Static/stagnation density ratio at a Mach number; no dimension.
 *
 * @example isentropicDensityRatio({ mach: 1, gamma: 1.4 }) // => 0.633938145
 */
export const isentropicDensityRatio = /* @__PURE__ */ formula({
  name: 'isentropicDensityRatio',
  title: 'Static/stagnation density ratio in isentropic flow',
  equation: 'ρ/ρ0 = (1 + (γ − 1)·M² / 2)^(−1 / (γ − 1))',
  source: report1135,
  inputs: { mach, gamma },
  output: ratio('ρ/ρ0', 'static/stagnation density ratio'),
  example: { mach: 2, gamma: 1.4 },
  si: ({ mach, gamma }) => isentropicDensityRatioSi(mach, gamma),
});

/** @example machFromPressureRatio({ pressureRatio: 0.5, gamma: 1.4 }) // => 1.046455 */
export const machFromPressureRatio = /* @__PURE__ */ formula({
  name: 'machFromPressureRatio',
  title: 'Mach number from static/stagnation pressure ratio',
  equation: 'M = √((p/p0^(−(γ − 1) / γ) − 1)·2 / (γ − 1))',
  source: report1135,
  inputs: { pressureRatio: ratio('p/p0', 'static/stagnation pressure ratio', { above: 0, max: 1 }), gamma },
  output: ratio('M', 'Mach number', { min: 0 }),
  example: { pressureRatio: 0.1278, gamma: 1.4 },
  si: ({ pressureRatio, gamma }) => machFromPressureRatioSi(pressureRatio, gamma),
});

/** @example machFromTemperatureRatio({ temperatureRatio: 0.5, gamma: 1.4 }) // => 2.236067977 */
export const machFromTemperatureRatio = /* @__PURE__ */ formula({
  name: 'machFromTemperatureRatio',
  title: 'Mach number from static/stagnation temperature ratio',
  equation: 'M = √((1 / (T/T0) − 1)·2 / (γ − 1))',
  source: report1135,
  inputs: {
    temperatureRatio: ratio('T/T0', 'static/stagnation temperature ratio', { above: 0, max: 1 }),
    gamma,
  },
  output: ratio('M', 'Mach number', { min: 0 }),
  example: { temperatureRatio: 0.5556, gamma: 1.4 },
  si: ({ temperatureRatio, gamma }) =>
    Math.sqrt((2 * (1 - temperatureRatio)) / (temperatureRatio * (gamma - 1))),
});

/** @example machFromDensityRatio({ densityRatio: 0.633938145, gamma: 1.4 }) // => 1 */
export const machFromDensityRatio = /* @__PURE__ */ formula({
  name: 'machFromDensityRatio',
  title: 'Mach number from static/stagnation density ratio',
  equation: 'M = √((ρ/ρ0^(1 − γ) − 1)·2 / (γ − 1))',
  source: report1135,
  inputs: { densityRatio: ratio('ρ/ρ0', 'static/stagnation density ratio', { above: 0, max: 1 }), gamma },
  output: ratio('M', 'Mach number', { min: 0 }),
  example: { densityRatio: 0.23, gamma: 1.4 },
  si: ({ densityRatio, gamma }) =>
    Math.sqrt((2 * Math.expm1(0 - (gamma - 1) * Math.log(densityRatio))) / (gamma - 1)),
});
