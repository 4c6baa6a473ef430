import {
  absolutePressure,
  dynamicViscosity,
  formula,
  heatTransferCoefficient,
  length,
  molarMass,
  optional,
  ratio,
  specificHeat,
  speed,
  temperature,
} from '../units';
import { gamma, mach, molarMassOfGas } from './gas-inputs';
import { prandtl } from './heat-inputs';

const bartz =
  'D. R. Bartz, "A simple equation for rapid estimation of rocket nozzle convective heat transfer coefficients", Jet Propulsion 27 (1957), 49-51';

/**
 * Bartz's correction for the change of properties across the boundary layer.
 *
 * @example bartzSigma({ wallOverStagnation: 0.4, mach: 1, gamma: 1.2 }) // => 1.236080
 */
export const bartzSigma = /* @__PURE__ */ formula({
  name: 'bartzSigma',
  title: 'Property-variation factor of Bartz',
  equation: 'σ = (1 / 2·T_w/T_0·(1 + (γ − 1) / 2·M²) + 1 / 2)^(−(0.8 − ω / 5))·(1 + (γ − 1) / 2·M²)^(−ω / 5)',
  source: bartz,
  inputs: {
    wallOverStagnation: ratio('T_w/T_0', 'wall/stagnation temperature ratio', { above: 0 }),
    mach,
    gamma,
    viscosityExponent: optional(ratio('ω', 'exponent of viscosity against temperature', { min: 0 }), 0.6),
  },
  output: ratio('σ', 'property-variation factor'),
  example: { wallOverStagnation: 0.4, mach: 1, gamma: 1.2 },
  si: ({ wallOverStagnation, mach, gamma, viscosityExponent = 0.6 }) => {
    const b = 1 + ((gamma - 1) / 2) * mach * mach;
    return (
      (0.5 * wallOverStagnation * b + 0.5) ** -(0.8 - viscosityExponent / 5) * b ** (-viscosityExponent / 5)
    );
  },
});

/**
 * Heat-transfer coefficient from the gas to a nozzle wall by Bartz's equation, in coherent units (no g). The heat
 * flux is this times the difference of adiabatic wall temperature and wall temperature, not of stagnation and wall
 * temperature.
 *
 * It is valid for particle-free turbulent flow; for an exhaust with some 40 % condensed mass the result is an
 * order of magnitude.
 *
 * @example bartzCoefficient({ throatDiameter: '12 mm', throatCurvatureRadius: '9 mm', viscosity: '6e-5 Pa*s', specificHeat: '1900 J/(kg*K)', prandtl: 0.65, chamberPressure: '5 MPa', characteristicVelocity: '900 m/s', sigma: 1.0816 }).in('W/(m^2*K)') // => 24440.8
 */
export const bartzCoefficient = /* @__PURE__ */ formula({
  name: 'bartzCoefficient',
  title: 'Heat-transfer coefficient in a nozzle by Bartz',
  equation: 'h = 0.026 / D_t^0.2·(μ^0.2·c_p / Pr^0.6)·(p_c / c*)^0.8·(D_t / r_c)^0.1·(1 / (A/A_t))^0.9·σ',
  source: bartz,
  inputs: {
    throatDiameter: length('D_t', 'throat diameter'),
    throatCurvatureRadius: length('r_c', 'radius of curvature of the wall at the throat'),
    viscosity: dynamicViscosity('μ', 'viscosity at the stagnation temperature'),
    specificHeat: specificHeat('c_p', 'specific heat at constant pressure'),
    prandtl,
    chamberPressure: absolutePressure('p_c', 'chamber stagnation pressure'),
    characteristicVelocity: speed('c*', 'characteristic velocity', { above: 0 }),
    areaRatio: optional(ratio('A/A_t', 'local/throat area ratio', { min: 1 }), 1),
    sigma: optional(ratio('σ', 'property-variation factor, see bartzSigma', { above: 0 }), 1),
  },
  output: heatTransferCoefficient('h', 'heat-transfer coefficient'),
  example: {
    throatDiameter: '12 mm',
    throatCurvatureRadius: '9 mm',
    viscosity: '6e-5 Pa*s',
    specificHeat: '1900 J/(kg*K)',
    prandtl: 0.65,
    chamberPressure: '5 MPa',
    characteristicVelocity: '900 m/s',
  },
  si: ({
    throatDiameter,
    throatCurvatureRadius,
    viscosity,
    specificHeat,
    prandtl,
    chamberPressure,
    characteristicVelocity,
    areaRatio = 1,
    sigma = 1,
  }) =>
    (0.026 / throatDiameter ** 0.2) *
    ((viscosity ** 0.2 * specificHeat) / prandtl ** 0.6) *
    (chamberPressure / characteristicVelocity) ** 0.8 *
    (throatDiameter / throatCurvatureRadius) ** 0.1 *
    areaRatio ** -0.9 *
    sigma,
});

/**
 * Temperature of an adiabatic wall: the stagnation temperature minus the part that the boundary layer does not
 * recover.
 *
 * @example adiabaticWallTemperature({ stagnationTemperature: '1600 K', gamma: 1.1359, mach: 1, prandtl: 0.82 }).in('K') // => 1593.4836
 */
export const adiabaticWallTemperature = /* @__PURE__ */ formula({
  name: 'adiabaticWallTemperature',
  title: 'Adiabatic wall temperature',
  equation: 'T_aw = T_0·(1 + Pr^(1 / 3)·(γ − 1) / 2·M²) / (1 + (γ − 1) / 2·M²)',
  source:
    'Huzel & Huang, Design of Liquid Propellant Rocket Engines, NASA SP-125, section 4.4 (quoted from memory, not verified)',
  inputs: {
    stagnationTemperature: temperature('T_0', 'stagnation temperature'),
    gamma,
    mach,
    prandtl,
  },
  output: temperature('T_aw', 'adiabatic wall temperature'),
  example: { stagnationTemperature: '1600 K', gamma: 1.136, mach: 1, prandtl: 0.82 },
  si: ({ stagnationTemperature, gamma, mach, prandtl }) => {
    const heating = ((gamma - 1) / 2) * mach * mach;
    return (stagnationTemperature * (1 + Math.cbrt(prandtl) * heating)) / (1 + heating);
  },
});

/**
 * Prandtl number of a combustion gas estimated from γ; accurate to about 20 %.
 *
 * @example prandtlEstimate({ gamma: 1.2387 }) // => 0.8058813
 */
export const prandtlEstimate = /* @__PURE__ */ formula({
  name: 'prandtlEstimate',
  title: 'Prandtl number estimated from γ',
  equation: 'Pr = 4·γ / (9·γ − 5)',
  source: 'Huzel & Huang, NASA SP-125, eq. 4-15 (quoted from memory, not verified; Eucken)',
  inputs: { gamma },
  output: ratio('Pr', 'Prandtl number'),
  example: { gamma: 1.2 },
  si: ({ gamma }) => (4 * gamma) / (9 * gamma - 5),
});

/** 46.6e-10 lb/(in·s), the viscosity that the estimate gives at 1 g/mol and 1 °R, in Pa·s. */
const estimateViscosity = (46.6e-10 * 0.45359237) / 0.0254;

/**
 * Viscosity of a combustion gas estimated from its molar mass and temperature; accurate to about 20 %.
 *
 * @example combustionGasViscosity({ molarMass: '22.46 g/mol', temperature: '1600 K' }).in('Pa*s') // => 4.6941645e-5
 */
export const combustionGasViscosity = /* @__PURE__ */ formula({
  name: 'combustionGasViscosity',
  title: 'Viscosity of combustion gas, estimated',
  equation: 'μ = μ_1·√(M / M_1)·(T / T_1)^0.6',
  source:
    'Huzel & Huang, NASA SP-125, eq. 4-16: 46.6e-10·√M·T^0.6 in lb/(in·s), g/mol and °R (quoted from memory, not verified)',
  inputs: {
    molarMass: molarMassOfGas,
    temperature: temperature('T', 'temperature'),
    viscosityAtOne: optional(dynamicViscosity('μ_1', 'viscosity at M_1 and T_1'), estimateViscosity),
    oneMolarMass: optional(molarMass('M_1', 'molar mass of the fit, 1 g/mol'), 0.001),
    oneTemperature: optional(temperature('T_1', 'temperature of the fit, 1 °R'), 5 / 9),
  },
  output: dynamicViscosity('μ', 'viscosity'),
  example: { molarMass: '22.46 g/mol', temperature: '1600 K' },
  si: ({
    molarMass,
    temperature,
    viscosityAtOne = estimateViscosity,
    oneMolarMass = 0.001,
    oneTemperature = 5 / 9,
  }) => viscosityAtOne * Math.sqrt(molarMass / oneMolarMass) * (temperature / oneTemperature) ** 0.6,
});
