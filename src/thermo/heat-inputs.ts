import {
  constants,
  density,
  heatFlux,
  heatTransferCoefficient,
  optional,
  ratio,
  specificHeat,
  temperature,
  thermalConductivity,
  thermalDiffusivity,
} from '../units';

// Inputs of heat transfer. Each is declared here once and imported by every calculation that takes it.

/** Thermal properties of a solid. */
export const solid = {
  conductivity: /* @__PURE__ */ thermalConductivity('k', 'conductivity', { example: '167 W/(m*K)' }),
  density: /* @__PURE__ */ density('ρ', 'density', { example: '2700 kg/m^3' }),
  specificHeat: /* @__PURE__ */ specificHeat('c', 'specific heat', { example: '896 J/(kg*K)' }),
};

/** Thermal diffusivity of a solid. */
export const diffusivity = /* @__PURE__ */ thermalDiffusivity('α', 'thermal diffusivity', {
  example: '69 mm^2/s',
});

/** Heat-transfer coefficient between a fluid and a wall. */
export const coefficient = /* @__PURE__ */ heatTransferCoefficient('h', 'heat-transfer coefficient', {
  example: '900 W/(m^2*K)',
  synonyms: ['film coefficient'],
});

/** Temperature before the heating starts. */
export const initialTemperature = /* @__PURE__ */ temperature('T_i', 'temperature at the start', {
  example: '300 K',
});

/** Hot gas at the heated face of a wall. */
export const hotGas = {
  gasTemperature: /* @__PURE__ */ temperature(
    'T_g',
    'driving gas temperature: the adiabatic wall temperature',
    {
      example: '1550 K',
    },
  ),
  gasCoefficient: /* @__PURE__ */ heatTransferCoefficient('h_g', 'heat-transfer coefficient of the gas', {
    example: '900 W/(m^2*K)',
  }),
};

/** Prandtl number of a gas. */
export const prandtl = /* @__PURE__ */ ratio('Pr', 'Prandtl number', { above: 0, example: 0.7 });

/** Black-body flux at 1000 K in W/m²: the Stefan-Boltzmann constant times 10¹² K⁴. */
export const blackFluxSi = constants.stefanBoltzmann.value * 1e12;

/** The Stefan-Boltzmann law as a flux at a temperature, so that its dimensions can be checked. */
export const blackBody = {
  blackFlux: /* @__PURE__ */ optional(/* @__PURE__ */ heatFlux('q_K', 'black-body flux at T_K'), blackFluxSi),
  blackTemperature: /* @__PURE__ */ optional(
    /* @__PURE__ */ temperature('T_K', 'temperature of that flux, 1000 K'),
    1000,
  ),
};
