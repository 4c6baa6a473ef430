import {
  formula,
  heatTransferCoefficient,
  ratio,
  temperature,
  temperatureDifference,
  temperatureRate,
  time,
} from '../units';
import { blackBody, blackFluxSi } from './heat-inputs';

/**
 * Lag of a thermocouple behind a temperature that rises steadily, after a few time constants. The time constant is
 * that of {@link lumpedTimeConstant}.
 *
 * @example rampLag({ timeConstant: '0.4 s', rate: '60 K/s' }).in('delta_K') // => 24
 */
export const rampLag = /* @__PURE__ */ formula({
  name: 'rampLag',
  title: 'Lag of a thermocouple on a ramp',
  equation: 'ΔT = τ·r',
  source: 'first-order lag τ·y′ + y = T with T = r·t, after the initial transient',
  inputs: {
    timeConstant: time('τ', 'time constant'),
    rate: temperatureRate('r', 'rate of temperature rise'),
  },
  output: temperatureDifference('ΔT', 'true temperature minus reading'),
  example: { timeConstant: '0.4 s', rate: '60 K/s' },
  si: ({ timeConstant, rate }) => timeConstant * rate,
});

/**
 * Gas temperature from a junction that loses heat by radiation to cooler walls: a bare junction in hot gas reads
 * low.
 *
 * @example radiationCorrectedTemperature({ reading: '1000 K', wallTemperature: '500 K', emissivity: 0.3, coefficient: '400 W/(m^2*K)' }).in('K') // => 1039.8698
 */
export const radiationCorrectedTemperature = /* @__PURE__ */ formula({
  name: 'radiationCorrectedTemperature',
  title: 'Gas temperature from a radiating junction',
  equation: 'T_g = T + ε·q_K / h·((T / T_K)⁴ − (T_w / T_K)⁴)',
  source:
    'Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, 6th ed. (2007), chapter 13: h·(T_g − T) = ε·σ·(T⁴ − T_w⁴) for a small body in a large enclosure; constant of the SI Brochure, 9th ed. (2019)',
  inputs: {
    reading: temperature('T', 'temperature of the junction'),
    wallTemperature: temperature('T_w', 'temperature of the surrounding walls'),
    emissivity: ratio('ε', 'emissivity of the junction', { min: 0, max: 1 }),
    coefficient: heatTransferCoefficient('h', 'heat-transfer coefficient from gas to junction'),
    ...blackBody,
  },
  output: temperature('T_g', 'gas temperature'),
  example: { reading: '1000 K', wallTemperature: '500 K', emissivity: 0.3, coefficient: '400 W/(m^2*K)' },
  si: ({
    reading,
    wallTemperature,
    emissivity,
    coefficient,
    blackFlux = blackFluxSi,
    blackTemperature = 1000,
  }) => {
    const hot = (reading / blackTemperature) ** 2;
    const cold = (wallTemperature / blackTemperature) ** 2;
    return reading + ((emissivity * blackFlux) / coefficient) * (hot - cold) * (hot + cold);
  },
});
