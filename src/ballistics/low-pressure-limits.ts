// Times of the chamber and of the burning surface, whose ratio limits steady burning. They warn; they do not predict.
import { gamma } from '../thermo/gas-inputs';
import { vandenkerckhoveSi } from '../thermo/isentropic-kernels';
import {
  area,
  formula,
  frequency,
  length,
  optional,
  ratio,
  speed,
  thermalDiffusivity,
  time,
  volume,
} from '../units';
import { deliveredVelocity } from './propellant-inputs';

const sehgal =
  'low-frequency instability of solid rockets, Sehgal & Strand (1964): form quoted from memory, not verified';

const burnRate = speed('r', 'burning rate', { above: 0, example: '8 mm/s' });

/** Thermal diffusivity of a solid propellant (engineering practice, no published source). */
export const usualDiffusivity = 1e-7;

const diffusivity = optional(
  thermalDiffusivity(
    'α_s',
    'thermal diffusivity of the propellant (engineering practice, no published source)',
    {
      example: '0.1 mm^2/s',
    },
  ),
  usualDiffusivity,
);

const lStar = length('L*', 'characteristic length of the chamber', { example: '1.4 m' });

/** @example characteristicLength({ freeVolume: '80 cm^3', throatArea: '56.745 mm^2' }).in('m') // => 1.409815843 */
export const characteristicLength = /* @__PURE__ */ formula({
  name: 'characteristicLength',
  title: 'Characteristic length of the chamber',
  equation: 'L* = V / A_t',
  source: 'Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), ch. 8 (definition)',
  inputs: {
    freeVolume: volume('V', 'free volume of the chamber', { example: '80 cm^3' }),
    throatArea: area('A_t', 'throat area', { example: '57 mm^2' }),
  },
  output: lStar,
  si: ({ freeVolume, throatArea }) => freeVolume / throatArea,
});

/**
 * Mean time that gas spends in the chamber. Burning of droplets and surface products takes 1 to 5 ms (quoted from memory, not verified).
 *
 * @example chamberResidenceTime({ characteristicLength: '1.40981541 m', characteristicVelocity: '902.717 m/s', gamma: 1.14 }).in('ms') // => 3.853523
 */
export const chamberResidenceTime = /* @__PURE__ */ formula({
  name: 'chamberResidenceTime',
  title: 'Residence time of the gas in the chamber',
  equation: 't_r = L* / (c*·γ·(2 / (γ + 1))^((γ + 1) / (γ − 1)))',
  source: 'gas mass in the chamber/mass flow of a choked throat (derived)',
  inputs: { characteristicLength: lStar, characteristicVelocity: deliveredVelocity, gamma },
  output: time('t_r', 'residence time'),
  si: (v) => v.characteristicLength / (v.characteristicVelocity * vandenkerckhoveSi(v.gamma) ** 2),
});

/** @example thermalWaveTime({ burnRate: '10 mm/s' }).in('ms') // => 1 */
export const thermalWaveTime = /* @__PURE__ */ formula({
  name: 'thermalWaveTime',
  title: 'Time of the thermal wave in the burning surface',
  equation: 't_w = α_s / r²',
  source:
    'thickness of the heated layer α/r divided by the burning rate; as in textbooks on solid propellants',
  inputs: { burnRate, diffusivity },
  output: time('t_w', 'time of the thermal wave'),
  si: ({ burnRate: r, diffusivity: alpha = usualDiffusivity }) => alpha / (r * r),
});

/**
 * Characteristic length below which a chamber can burn in pulses (chuffing) or oscillate: where the residence time is that of the
 * thermal wave. The factor is of order one; 0.2 to 3 are quoted.
 *
 * @example criticalCharacteristicLength({ burnRate: '10 mm/s', characteristicVelocity: '905.88 m/s', gamma: 1.14 }).in('m') // => 0.3671330586
 */
export const criticalCharacteristicLength = /* @__PURE__ */ formula({
  name: 'criticalCharacteristicLength',
  title: 'Critical characteristic length',
  equation: 'L*_c = k·c*·γ·(2 / (γ + 1))^((γ + 1) / (γ − 1))·α_s / r²',
  source: sehgal,
  inputs: {
    burnRate,
    characteristicVelocity: deliveredVelocity,
    gamma,
    diffusivity,
    factor: optional(
      ratio('k', 'factor of order one: 0.2 to 3 (quoted from memory, not verified)', { above: 0 }),
      1,
    ),
  },
  output: length('L*_c', 'critical characteristic length'),
  si: (v) =>
    ((v.factor ?? 1) *
      v.characteristicVelocity *
      vandenkerckhoveSi(v.gamma) ** 2 *
      (v.diffusivity ?? usualDiffusivity)) /
    v.burnRate ** 2,
});

/**
 * Relative rate of pressure fall, −ṗ/p, above which venting can extinguish a burning surface.
 *
 * @example extinctionVentingRate({ burnRate: '10 mm/s' }).in('1/s') // => 1000
 */
export const extinctionVentingRate = /* @__PURE__ */ formula({
  name: 'extinctionVentingRate',
  title: 'Venting rate that can extinguish a burning surface',
  equation: 'f_e = r² / α_s',
  source: 'extinction by fast depressurisation: criterion of order one (quoted from memory, not verified)',
  inputs: { burnRate, diffusivity },
  output: frequency('f_e', 'relative rate of pressure fall'),
  si: ({ burnRate: r, diffusivity: alpha = usualDiffusivity }) => (r * r) / alpha,
});
