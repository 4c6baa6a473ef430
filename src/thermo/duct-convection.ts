import {
  dynamicViscosity,
  formula,
  heatTransferCoefficient,
  length,
  massFlow,
  optional,
  ratio,
  thermalConductivity,
} from '../units';
import { prandtl } from './heat-inputs';

const incropera = 'Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, 6th ed. (2007), section 8.5';
const reynolds = /* @__PURE__ */ ratio('Re', 'Reynolds number on the diameter', { above: 0 });

/**
 * Reynolds number of the flow in a round duct or a port, from its mass flow.
 *
 * @example ductReynolds({ massFlow: '0.050 kg/s', diameter: '0.15 m', viscosity: '208.2e-7 Pa*s' }) // => 20384.8
 */
export const ductReynolds = /* @__PURE__ */ formula({
  name: 'ductReynolds',
  title: 'Reynolds number in a round duct',
  equation: 'Re = 4·ṁ / (π·D·μ)',
  source: incropera,
  inputs: {
    massFlow: massFlow('ṁ', 'mass flow', { above: 0 }),
    diameter: length('D', 'diameter'),
    viscosity: dynamicViscosity('μ', 'viscosity'),
  },
  output: ratio('Re', 'Reynolds number'),
  example: { massFlow: '0.05 kg/s', diameter: '0.15 m', viscosity: '2.08e-5 Pa*s' },
  si: ({ massFlow, diameter, viscosity }) => (4 * massFlow) / (Math.PI * diameter * viscosity),
});

/**
 * Nusselt number of turbulent flow in a duct by Dittus and Boelter, with the exponent of a gas that heats the wall.
 *
 * @example dittusBoelterNusselt({ reynolds: 379734.32, prandtl: 0.8058813 }) // => 626.8924
 */
export const dittusBoelterNusselt = /* @__PURE__ */ formula({
  name: 'dittusBoelterNusselt',
  title: 'Nusselt number in a duct, Dittus and Boelter',
  equation: 'Nu = 0.023·Re^0.8·Pr^n',
  source: `${incropera}, eq. 8.60`,
  inputs: {
    reynolds,
    prandtl,
    exponent: optional(
      ratio('n', '0.3 where the gas is cooled by the wall, 0.4 where it is heated', { above: 0 }),
      0.3,
    ),
  },
  output: ratio('Nu', 'Nusselt number'),
  example: { reynolds: 379734, prandtl: 0.8 },
  valid: [
    ({ reynolds }) => reynolds >= 1e4 || 'below a Reynolds number of 10⁴ the flow is not fully turbulent',
    ({ prandtl }) => (prandtl >= 0.6 && prandtl <= 160) || 'the fit covers Prandtl numbers from 0.6 to 160',
  ],
  si: ({ reynolds, prandtl, exponent = 0.3 }) => 0.023 * reynolds ** 0.8 * prandtl ** exponent,
});

/**
 * Nusselt number of turbulent flow in a smooth duct by Gnielinski: at the Prandtl number of combustion gas some 20 % below
 * {@link dittusBoelterNusselt}.
 *
 * @example gnielinskiNusselt({ reynolds: 20384, prandtl: 0.7 }) // => 52.132192
 */
export const gnielinskiNusselt = /* @__PURE__ */ formula({
  name: 'gnielinskiNusselt',
  title: 'Nusselt number in a duct, Gnielinski',
  equation: 'Nu = f / 8·(Re − 1000)·Pr / (1 + 12.7·√(f / 8)·(Pr^(2 / 3) − 1)), f = (0.79·ln(Re) − 1.64)^(−2)',
  source: `${incropera}, eq. 8.21 and 8.62 (quoted from memory, not verified)`,
  inputs: { reynolds: ratio('Re', 'Reynolds number on the diameter', { above: 1000 }), prandtl },
  output: ratio('Nu', 'Nusselt number'),
  example: { reynolds: 20384, prandtl: 0.7 },
  valid: [
    ({ reynolds }) =>
      (reynolds >= 3000 && reynolds <= 5e6) || 'the fit covers Reynolds numbers from 3000 to 5·10⁶',
    ({ prandtl }) => (prandtl >= 0.5 && prandtl <= 2000) || 'the fit covers Prandtl numbers from 0.5 to 2000',
  ],
  si: ({ reynolds, prandtl }) => {
    const f = (0.79 * Math.log(reynolds) - 1.64) ** -2;
    return (
      ((f / 8) * (reynolds - 1000) * prandtl) / (1 + 12.7 * Math.sqrt(f / 8) * (Math.cbrt(prandtl) ** 2 - 1))
    );
  },
});

/** @example coefficientFromNusselt({ nusselt: 57.9, conductivity: '0.030 W/(m*K)', diameter: '0.15 m' }).in('W/(m^2*K)') // => 11.58 */
export const coefficientFromNusselt = /* @__PURE__ */ formula({
  name: 'coefficientFromNusselt',
  title: 'Heat-transfer coefficient from the Nusselt number',
  equation: 'h = Nu·k / D',
  source: 'Definition of the Nusselt number',
  inputs: {
    nusselt: ratio('Nu', 'Nusselt number', { above: 0 }),
    conductivity: thermalConductivity('k', 'conductivity of the gas'),
    diameter: length('D', 'diameter'),
  },
  output: heatTransferCoefficient('h', 'heat-transfer coefficient'),
  example: { nusselt: 57.9, conductivity: '0.03 W/(m*K)', diameter: '0.15 m' },
  si: ({ nusselt, conductivity, diameter }) => (nusselt * conductivity) / diameter,
});
