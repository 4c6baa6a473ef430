// The chamber before its closure opens: all gas stays in it.
import {
  absolutePressure,
  area,
  formula,
  mass,
  pressureRate,
  specificGasConstant,
  speed,
  temperature,
  time,
  volume,
} from '../units';
import { powerLaw } from './burn-law-inputs';
import { castDensity } from './propellant-inputs';

const source =
  'mass balance of a closed chamber at constant temperature and volume, gas density neglected against that of the propellant (derived)';

const chamberGas = {
  gasConstant: specificGasConstant('R', 'specific gas constant', { example: '207.9 J/(kg*K)' }),
  temperature: temperature('T', 'gas temperature', { example: '1600 K' }),
  freeVolume: volume('V', 'free volume of the chamber', { example: '80 cm^3' }),
  burningArea: area('A_b', 'burning area', { example: '165 cm^2' }),
  density: castDensity,
};

/**
 * Rate of rise of the pressure in a closed chamber. A small free volume makes a hard start.
 *
 * @example chamberRiseRate({ gasConstant: '207.8615654 J/(kg*K)', temperature: '1600 K', freeVolume: '80 cm^3', burningArea: '165 cm^2', density: '1780 kg/m^3', burnRate: '8.7383 mm/s' }).in('MPa/s') // => 1066.927936
 */
export const chamberRiseRate = /* @__PURE__ */ formula({
  name: 'chamberRiseRate',
  title: 'Rate of rise of the pressure in a closed chamber',
  equation: 'ṗ = R·T·ρ·A_b·r / V',
  source,
  inputs: { ...chamberGas, burnRate: speed('r', 'burning rate', { above: 0, example: '8.7 mm/s' }) },
  output: pressureRate('ṗ', 'rate of rise of the pressure'),
  si: (v) => (v.gasConstant * v.temperature * v.density * v.burningArea * v.burnRate) / v.freeVolume,
});

/**
 * Time in which the pressure of a closed chamber rises from one value to another with the whole surface burning.
 *
 * @example closedChamberTime({ gasConstant: '207.8615654 J/(kg*K)', temperature: '1600 K', freeVolume: '80 cm^3', burningArea: '165 cm^2', density: '1780 kg/m^3', referenceRate: '7 mm/s', referencePressure: '1 MPa', exponent: 0.32, startPressure: '0.2 MPa', endPressure: '2 MPa' }).in('ms') // => 2.180722656
 */
export const closedChamberTime = /* @__PURE__ */ formula({
  name: 'closedChamberTime',
  title: 'Time of a pressure rise in a closed chamber',
  equation: 't = V·p_ref / ((1 − n)·R·T·ρ·A_b·r_ref)·((p_2 / p_ref)^(1 − n) − (p_1 / p_ref)^(1 − n))',
  source,
  inputs: {
    ...chamberGas,
    ...powerLaw,
    startPressure: absolutePressure('p_1', 'pressure at the start', { example: '0.2 MPaa' }),
    endPressure: absolutePressure('p_2', 'pressure at the end', { example: '2 MPaa' }),
  },
  output: time('t', 'time'),
  requires: [
    ({ startPressure, endPressure }) =>
      endPressure > startPressure || 'endPressure must be above startPressure',
  ],
  si: (v) => {
    const m = 1 - v.exponent;
    const scale =
      (v.freeVolume * v.referencePressure) /
      (m * v.gasConstant * v.temperature * v.density * v.burningArea * v.referenceRate);
    const low = (v.startPressure / v.referencePressure) ** m;
    // The difference of two near powers without loss of digits.
    return scale * low * Math.expm1(m * Math.log(v.endPressure / v.startPressure));
  },
});

/** @example storedGasMass({ pressure: '2 MPa', freeVolume: '80 cm^3', gasConstant: '207.8615654 J/(kg*K)', temperature: '1600 K' }).in('g') // => 0.4810894203 */
export const storedGasMass = /* @__PURE__ */ formula({
  name: 'storedGasMass',
  title: 'Mass of gas in the chamber',
  equation: 'm = p·V / (R·T)',
  source: 'equation of state of a perfect gas',
  inputs: {
    pressure: absolutePressure('p', 'chamber pressure', { example: '2 MPaa' }),
    freeVolume: chamberGas.freeVolume,
    gasConstant: chamberGas.gasConstant,
    temperature: chamberGas.temperature,
  },
  output: mass('m', 'mass of gas'),
  si: (v) => (v.pressure * v.freeVolume) / (v.gasConstant * v.temperature),
});
