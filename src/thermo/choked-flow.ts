import { area, formula, massFlow, massFlux, ratio } from '../units';
import { gamma, stagnation } from './gas-inputs';
import { isentropicDensityRatioSi, isentropicPressureRatioSi, vandenkerckhoveSi } from './isentropic-kernels';

const report1135 = 'NACA Report 1135 (1953), isentropic flow at Mach 1';

/**
 * Pressure at Mach 1 over stagnation pressure: a nozzle is choked when the back pressure is below this fraction.
 *
 * @example criticalPressureRatio({ gamma: 1.4 }) // => 0.528281788
 */
export const criticalPressureRatio = /* @__PURE__ */ formula({
  name: 'criticalPressureRatio',
  title: 'Critical pressure ratio',
  equation: 'p*/p0 = (2 / (γ + 1))^(γ / (γ − 1))',
  source: report1135,
  inputs: { gamma },
  output: ratio('p*/p0', 'sonic/stagnation pressure ratio'),
  example: { gamma: 1.4 },
  si: ({ gamma }) => isentropicPressureRatioSi(1, gamma),
});

/**
 * Temperature at Mach 1 over stagnation temperature.
 *
 * @example criticalTemperatureRatio({ gamma: 1.2 }) // => 0.909090909
 */
export const criticalTemperatureRatio = /* @__PURE__ */ formula({
  name: 'criticalTemperatureRatio',
  title: 'Critical temperature ratio',
  equation: 'T*/T0 = 2 / (γ + 1)',
  source: report1135,
  inputs: { gamma },
  output: ratio('T*/T0', 'sonic/stagnation temperature ratio'),
  example: { gamma: 1.2 },
  si: ({ gamma }) => 2 / (gamma + 1),
});

/**
 * Density at Mach 1 over stagnation density.
 *
 * @example criticalDensityRatio({ gamma: 1.4 }) // => 0.633938145
 */
export const criticalDensityRatio = /* @__PURE__ */ formula({
  name: 'criticalDensityRatio',
  title: 'Critical density ratio',
  equation: 'ρ*/ρ0 = (2 / (γ + 1))^(1 / (γ − 1))',
  source: report1135,
  inputs: { gamma },
  output: ratio('ρ*/ρ0', 'sonic/stagnation density ratio'),
  example: { gamma: 1.4 },
  si: ({ gamma }) => isentropicDensityRatioSi(1, gamma),
});

/**
 * Vandenkerckhove function Γ(γ): the dimensionless choked mass flow.
 *
 * @example vandenkerckhove({ gamma: 1.2 }) // => 0.648532
 */
export const vandenkerckhove = /* @__PURE__ */ formula({
  name: 'vandenkerckhove',
  title: 'Vandenkerckhove function',
  equation: 'Γ = √γ·(2 / (γ + 1))^((γ + 1) / (2·(γ − 1)))',
  source:
    'Cornelisse, Schöyer & Wakker, Rocket Propulsion and Spaceflight Dynamics (1979), ideal rocket motor',
  inputs: { gamma },
  output: ratio('Γ', 'Vandenkerckhove function'),
  example: { gamma: 1.2 },
  si: ({ gamma }) => vandenkerckhoveSi(gamma),
});

/**
 * Mass flow for each unit of throat area when the throat is choked.
 *
 * @example chokedMassFlux({ stagnationPressure: '1 MPa', stagnationTemperature: '800 K', gamma: 1.4, gasConstant: '287 J/(kg*K)' }).in('kg/(m^2*s)') // => 1429.007
 */
export const chokedMassFlux = /* @__PURE__ */ formula({
  name: 'chokedMassFlux',
  title: 'Choked mass flux',
  equation: 'G = p0·√(γ / (R·T0))·(2 / (γ + 1))^((γ + 1) / (2·(γ − 1)))',
  source: report1135,
  inputs: stagnation,
  output: massFlux('G', 'mass flow through unit throat area'),
  example: {
    stagnationPressure: '1 MPa',
    stagnationTemperature: '800 K',
    gamma: 1.4,
    gasConstant: '287 J/(kg*K)',
  },
  si: ({ stagnationPressure, stagnationTemperature, gamma, gasConstant }) =>
    (stagnationPressure * vandenkerckhoveSi(gamma)) / Math.sqrt(gasConstant * stagnationTemperature),
});

/**
 * Valid only while the back pressure is below the critical one: see {@link orificeFlow}
 * for a flow that may not be choked. Solved for `area` it sizes the throat for a mass flow, for
 * `stagnationPressure` the chamber.
 *
 * @example chokedMassFlow({ stagnationPressure: '1 MPa', stagnationTemperature: '800 K', area: '20 cm^2', gamma: 1.4, gasConstant: '287 J/(kg*K)' }).in('kg/s') // => 2.858014
 */
export const chokedMassFlow = /* @__PURE__ */ formula({
  name: 'chokedMassFlow',
  title: 'Mass flow through a choked throat',
  equation: 'ṁ = p0·A·√(γ / (R·T0))·(2 / (γ + 1))^((γ + 1) / (2·(γ − 1)))',
  source:
    'Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), ch. 3 (quoted from memory, not verified)',
  inputs: { ...stagnation, area: area('A', 'throat area') },
  output: massFlow('ṁ', 'mass flow'),
  example: {
    stagnationPressure: '1 MPa',
    stagnationTemperature: '800 K',
    area: '20 cm^2',
    gamma: 1.4,
    gasConstant: '287 J/(kg*K)',
  },
  si: ({ stagnationPressure, stagnationTemperature, area, gamma, gasConstant }) =>
    (stagnationPressure * area * vandenkerckhoveSi(gamma)) / Math.sqrt(gasConstant * stagnationTemperature),
});
