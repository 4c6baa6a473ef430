import { absolutePressure, area, formula, length, speed } from '../units';
import { powerLaw } from './burn-law-inputs';
import { burningToThroat, nearOne } from './equilibrium-inputs';
import { castDensity, deliveredVelocity } from './propellant-inputs';

const source =
  'steady mass balance ρ·r·A_b = p·A_t / c*: Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), ch. 11';
const lawExample = { referenceRate: '7 mm/s', referencePressure: '1 MPa', exponent: 0.32 } as const;
const burningArea = area('A_b', 'burning area', { example: '8000 mm^2' });

/** @example burningAreaRatio({ burningArea: '8000 mm^2', throatArea: '40 mm^2' }) // => 200 */
export const burningAreaRatio = /* @__PURE__ */ formula({
  name: 'burningAreaRatio',
  title: 'Burning-area ratio',
  equation: 'K = A_b / A_t',
  source: 'Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), ch. 11',
  inputs: {
    burningArea,
    throatArea: area('A_t', 'throat area'),
  },
  output: burningToThroat,
  example: { burningArea: '8000 mm^2', throatArea: '40 mm^2' },
  si: ({ burningArea, throatArea }) => burningArea / throatArea,
});

/**
 * Chamber pressure at which the flow through the throat equals the gas generation, for one power law.
 * For laws of several bands, and with the gas stored in the growing chamber volume, see `equilibriumPressures`.
 *
 * @example equilibriumPressure({ density: '1780 kg/m^3', characteristicVelocity: '905.88 m/s', burningAreaRatio: 210, referenceRate: '7 mm/s', referencePressure: '1 MPa', exponent: 0.32 }).in('MPa') // => 3.557855027
 */
export const equilibriumPressure = /* @__PURE__ */ formula({
  name: 'equilibriumPressure',
  title: 'Equilibrium chamber pressure',
  equation: 'p = p_ref·(ρ·r_ref·c*·K / p_ref)^(1 / (1 − n))',
  source,
  inputs: {
    density: castDensity,
    characteristicVelocity: deliveredVelocity,
    burningAreaRatio: burningToThroat,
    ...powerLaw,
  },
  output: absolutePressure('p', 'equilibrium chamber pressure'),
  example: {
    density: '1780 kg/m^3',
    characteristicVelocity: '906 m/s',
    burningAreaRatio: 210,
    ...lawExample,
  },
  valid: [nearOne],
  si: (v) =>
    v.referencePressure *
    ((v.density * v.referenceRate * v.characteristicVelocity * v.burningAreaRatio) / v.referencePressure) **
      (1 / (1 - v.exponent)),
});

// ρ·r_ref·c*·K of the equilibrium at p.
const balance = (pressure: number, referencePressure: number, exponent: number): number =>
  referencePressure * (pressure / referencePressure) ** (1 - exponent);

/** @example burningAreaRatioForPressure({ pressure: '600 psi', density: '1841 kg/m^3', characteristicVelocity: '885 m/s', referenceRate: '5.13 mm/s', referencePressure: '1 MPa', exponent: 0.222 }) // => 361.1228899 */
export const burningAreaRatioForPressure = /* @__PURE__ */ formula({
  name: 'burningAreaRatioForPressure',
  title: 'Burning-area ratio for a chamber pressure',
  equation: 'K = p_ref·(p / p_ref)^(1 − n) / (ρ·r_ref·c*)',
  source,
  inputs: {
    pressure: absolutePressure('p', 'required chamber pressure'),
    density: castDensity,
    characteristicVelocity: deliveredVelocity,
    ...powerLaw,
  },
  output: burningToThroat,
  example: {
    pressure: '4 MPa',
    density: '1780 kg/m^3',
    characteristicVelocity: '906 m/s',
    ...lawExample,
  },
  valid: [nearOne],
  si: (v) =>
    balance(v.pressure, v.referencePressure, v.exponent) /
    (v.density * v.referenceRate * v.characteristicVelocity),
});

/**
 * Throat diameter required for a chamber pressure at a burning area.
 *
 * @example throatForPressure({ pressure: '50 bar', burningArea: '0.314 m^2', burnRate: '6.87635 mm/s', density: '1800 kg/m^3', characteristicVelocity: '1450 m/s' }).in('mm') // => 37.8821066
 */
export const throatForPressure = /* @__PURE__ */ formula({
  name: 'throatForPressure',
  title: 'Throat diameter for a chamber pressure',
  equation: 'd_t = √(4·ρ·r·A_b·c* / (π·p))',
  source,
  inputs: {
    pressure: absolutePressure('p', 'required chamber pressure'),
    burningArea,
    burnRate: speed('r', 'burning rate at that pressure', { above: 0 }),
    density: castDensity,
    characteristicVelocity: deliveredVelocity,
  },
  output: length('d_t', 'throat diameter'),
  example: {
    pressure: '4 MPa',
    burningArea: '8000 mm^2',
    burnRate: '10.9 mm/s',
    density: '1780 kg/m^3',
    characteristicVelocity: '906 m/s',
  },
  si: (v) =>
    Math.sqrt(
      (4 * v.density * v.burnRate * v.burningArea * v.characteristicVelocity) / (Math.PI * v.pressure),
    ),
});
