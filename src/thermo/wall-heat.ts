import {
  constants,
  formula,
  fromSiValue,
  heatFlux,
  type NamedKind,
  optional,
  type Quantity,
  type QuantityInput,
  ratio,
  readInput,
  temperature,
  unitOf,
} from '../units';
import { type FieldsOf, requireFields } from '../units/known-fields';
import { readPositive, refusal } from '../units/refusal';

const procedure = 'steadyWallHeat';

/**
 * Heat that a gas of a given emissivity radiates to a wall; what the wall sends back is neglected.
 *
 * @example gasRadiationFlux({ emissivity: 0.05, temperature: '2750 K' }).in('kW/m^2') // => 162.149
 */
export const gasRadiationFlux = /* @__PURE__ */ formula({
  name: 'gasRadiationFlux',
  title: 'Radiation of a gas to a wall',
  equation: 'q_r = ε·q_K·(T / T_K)⁴',
  source: 'Stefan-Boltzmann law, constant of the SI Brochure, 9th ed. (2019)',
  inputs: {
    emissivity: ratio('ε', 'effective emissivity of the gas', { min: 0, max: 1 }),
    temperature: temperature('T', 'gas temperature'),
    blackFlux: optional(heatFlux('q_K', 'black-body flux at T_K'), constants.stefanBoltzmann.value * 1e12),
    blackTemperature: optional(temperature('T_K', 'temperature of that flux, 1000 K'), 1000),
  },
  output: heatFlux('q_r', 'radiated heat flux'),
  example: { emissivity: 0.05, temperature: '2750 K' },
  si: ({
    emissivity,
    temperature,
    blackFlux = constants.stefanBoltzmann.value * 1e12,
    blackTemperature = 1000,
  }) => emissivity * blackFlux * (temperature / blackTemperature) ** 4,
});

/** What {@link steadyWallHeat} needs. */
export interface SteadyWallHeatOptions {
  /** Driving temperature of the gas: the adiabatic wall temperature. */
  readonly gasTemperature: QuantityInput<'temperature'>;
  readonly gasCoefficient: QuantityInput<'heat-transfer coefficient'>;
  /** Temperature on the other side. */
  readonly coolantTemperature: QuantityInput<'temperature'>;
  readonly coolantCoefficient: QuantityInput<'heat-transfer coefficient'>;
  readonly wallThickness: QuantityInput<'length'>;
  readonly wallConductivity: QuantityInput<'thermal conductivity'>;
  /** Effective emissivity of the gas; default 0, no radiation. */
  readonly gasEmissivity?: number;
}

/** Steady heat through a flat wall. */
export interface SteadyWallHeat {
  readonly radiationFlux: Quantity<'heat flux'>;
  readonly convectionFlux: Quantity<'heat flux'>;
  readonly totalFlux: Quantity<'heat flux'>;
  readonly gasSideWall: Quantity<'temperature'>;
  readonly coolantSideWall: Quantity<'temperature'>;
  readonly cautions: readonly string[];
}

const steadyWallHeatFields: FieldsOf<SteadyWallHeatOptions> = {
  gasTemperature: 'required',
  gasCoefficient: 'required',
  coolantTemperature: 'required',
  coolantCoefficient: 'required',
  wallThickness: 'required',
  wallConductivity: 'required',
  gasEmissivity: 'optional',
};

/**
 * Steady heat flux and temperatures of a flat wall between hot gas, with radiation added, and a coolant. A short firing never
 * gets there: it is the bound for a wall that is given time.
 *
 * Source: series resistances, Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, one-dimensional steady conduction.
 *
 * @throws MeopError `out-of-domain` for values that are not above 0 or an emissivity outside 0 to 1
 * @example steadyWallHeat({ gasTemperature: '2750 K', gasCoefficient: '657 W/(m^2*K)', coolantTemperature: '300 K', coolantCoefficient: '26000 W/(m^2*K)', wallThickness: '2 mm', wallConductivity: '43 W/(m*K)', gasEmissivity: 0.05 }).gasSideWall.in('K') // => 442.59
 */
export function steadyWallHeat(options: SteadyWallHeatOptions): SteadyWallHeat {
  requireFields(procedure, options, steadyWallHeatFields);
  const read = (kind: NamedKind, field: keyof SteadyWallHeatOptions): number =>
    readPositive(kind, field, options[field], procedure).si;
  const gas = read('temperature', 'gasTemperature');
  const hot = read('heat-transfer coefficient', 'gasCoefficient');
  const coolant = read('temperature', 'coolantTemperature');
  const cold = read('heat-transfer coefficient', 'coolantCoefficient');
  const wall = read('length', 'wallThickness') / read('thermal conductivity', 'wallConductivity');
  const emissivity = readInput('dimensionless', 'gasEmissivity', options.gasEmissivity ?? 0, procedure).si;
  if (!(emissivity >= 0 && emissivity <= 1))
    throw refusal(procedure, 'gasEmissivity', options.gasEmissivity, 'from 0 to 1');
  const radiation = gasRadiationFlux.si({ emissivity, temperature: gas });
  const total = (gas + radiation / hot - coolant) / (1 / hot + wall + 1 / cold);
  const flux = (si: number): Quantity<'heat flux'> => fromSiValue(si, 'heat flux', unitOf('kW/m^2'));
  const kelvin = (si: number): Quantity<'temperature'> => fromSiValue(si, 'temperature', unitOf('K'));
  return {
    radiationFlux: flux(radiation),
    convectionFlux: flux(total - radiation),
    totalFlux: flux(total),
    gasSideWall: kelvin(coolant + total * (1 / cold + wall)),
    coolantSideWall: kelvin(coolant + total / cold),
    cautions: emissivity > 0 ? ['what the wall radiates back to the gas is neglected'] : [],
  };
}
