import {
  formula,
  fromSiValue,
  heatFlux,
  heatTransferCoefficient,
  length,
  optional,
  procedure,
  type Quantity,
  ratio,
  temperature,
  unitOf,
} from '../units';
import { blackBody, blackFluxSi, hotGas, solid } from './heat-inputs';

const gasEmissivity = /* @__PURE__ */ ratio('ε', 'effective emissivity of the gas', { min: 0, max: 1 });

/**
 * Heat flux that a gas radiates to a wall; radiation of the wall is neglected.
 *
 * @example gasRadiationFlux({ emissivity: 0.05, temperature: '2750 K' }).in('kW/m^2') // => 162.149
 */
export const gasRadiationFlux = /* @__PURE__ */ formula({
  name: 'gasRadiationFlux',
  title: 'Radiation of a gas to a wall',
  equation: 'q_r = ε·q_K·(T / T_K)⁴',
  source: 'Stefan-Boltzmann law, constant of the SI Brochure, 9th ed. (2019)',
  inputs: {
    emissivity: gasEmissivity,
    temperature: temperature('T', 'gas temperature'),
    ...blackBody,
  },
  output: heatFlux('q_r', 'radiated heat flux'),
  example: { emissivity: 0.05, temperature: '2750 K' },
  si: ({ emissivity, temperature, blackFlux = blackFluxSi, blackTemperature = 1000 }) =>
    emissivity * blackFlux * (temperature / blackTemperature) ** 4,
});

/** Steady heat through a flat wall. */
export interface SteadyWallHeat {
  readonly radiationFlux: Quantity<'heat flux'>;
  readonly convectionFlux: Quantity<'heat flux'>;
  readonly totalFlux: Quantity<'heat flux'>;
  readonly gasSideWall: Quantity<'temperature'>;
  readonly coolantSideWall: Quantity<'temperature'>;
  readonly cautions: readonly string[];
}

/**
 * Steady heat flux and temperatures of a flat wall between hot gas, with its radiation, and a coolant. A short firing does not
 * reach the steady state, which is the upper bound.
 *
 * @example steadyWallHeat({ gasTemperature: '2750 K', gasCoefficient: '657 W/(m^2*K)', coolantTemperature: '300 K', coolantCoefficient: '26000 W/(m^2*K)', wallThickness: '2 mm', wallConductivity: '43 W/(m*K)', gasEmissivity: 0.05 }).gasSideWall.in('K') // => 442.59
 */
export const steadyWallHeat = /* @__PURE__ */ procedure({
  name: 'steadyWallHeat',
  title: 'Steady heat through a flat wall between hot gas and coolant',
  source:
    'Series resistances, Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, one-dimensional steady conduction',
  inputs: {
    ...hotGas,
    coolantTemperature: temperature('T_c', 'temperature of the coolant'),
    coolantCoefficient: heatTransferCoefficient('h_c', 'heat-transfer coefficient of the coolant'),
    wallThickness: length('L', 'thickness of the wall'),
    wallConductivity: solid.conductivity,
    gasEmissivity: optional(gasEmissivity, 0),
  },
  gives: 'heat fluxes by radiation and convection, and the temperatures of both faces',
  example: {
    gasTemperature: '2750 K',
    gasCoefficient: '657 W/(m^2*K)',
    coolantTemperature: '300 K',
    coolantCoefficient: '26000 W/(m^2*K)',
    wallThickness: '2 mm',
    wallConductivity: '43 W/(m*K)',
    gasEmissivity: 0.05,
  },
  run: (values): SteadyWallHeat => {
    const { gasTemperature, gasCoefficient, coolantTemperature, coolantCoefficient, gasEmissivity } = values;
    const [gas, hot] = [gasTemperature.si, gasCoefficient.si];
    const [coolant, cold] = [coolantTemperature.si, coolantCoefficient.si];
    const wall = values.wallThickness.si / values.wallConductivity.si;
    const radiation = gasRadiationFlux.si({ emissivity: gasEmissivity, temperature: gas });
    const total = (gas + radiation / hot - coolant) / (1 / hot + wall + 1 / cold);
    const flux = (si: number): Quantity<'heat flux'> => fromSiValue(si, 'heat flux', unitOf('kW/m^2'));
    const kelvin = (si: number): Quantity<'temperature'> => fromSiValue(si, 'temperature', unitOf('K'));
    return {
      radiationFlux: flux(radiation),
      convectionFlux: flux(total - radiation),
      totalFlux: flux(total),
      gasSideWall: kelvin(coolant + total * (1 / cold + wall)),
      coolantSideWall: kelvin(coolant + total / cold),
      cautions: gasEmissivity > 0 ? ['radiation from the wall back to the gas is neglected'] : [],
    };
  },
});
