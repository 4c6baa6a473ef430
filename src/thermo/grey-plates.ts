import { formula, heatFlux, ratio, temperature } from '../units';
import { blackBody, blackFluxSi } from './heat-inputs';

const emissivity = (symbol: string, meaning: string): ReturnType<typeof ratio> =>
  ratio(symbol, meaning, { above: 0, max: 1 });

/**
 * Net radiation between two large parallel grey walls: a hot liner or insert and the case around it.
 *
 * @example greyPlatesFlux({ hotTemperature: '1400 K', coldTemperature: '500 K', hotEmissivity: 0.8, coldEmissivity: 0.3 }).in('kW/m^2') // => 59.8016
 */
export const greyPlatesFlux = /* @__PURE__ */ formula({
  name: 'greyPlatesFlux',
  title: 'Radiation between parallel grey walls',
  equation: 'q = q_K·((T_1 / T_K)⁴ − (T_2 / T_K)⁴) / (1 / ε_1 + 1 / ε_2 − 1)',
  source:
    'Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, 6th ed. (2007), eq. 13.19; constant of the SI Brochure, 9th ed. (2019)',
  inputs: {
    hotTemperature: temperature('T_1', 'temperature of the one wall'),
    coldTemperature: temperature('T_2', 'temperature of the other'),
    hotEmissivity: emissivity('ε_1', 'emissivity of the one wall'),
    coldEmissivity: emissivity('ε_2', 'emissivity of the other'),
    ...blackBody,
  },
  output: heatFlux('q', 'net heat flux from the one to the other'),
  example: { hotTemperature: '1400 K', coldTemperature: '500 K', hotEmissivity: 0.8, coldEmissivity: 0.3 },
  si: ({
    hotTemperature,
    coldTemperature,
    hotEmissivity,
    coldEmissivity,
    blackFlux = blackFluxSi,
    blackTemperature = 1000,
  }) => {
    const hot = (hotTemperature / blackTemperature) ** 2;
    const cold = (coldTemperature / blackTemperature) ** 2;
    return (blackFlux * (hot - cold) * (hot + cold)) / (1 / hotEmissivity + 1 / coldEmissivity - 1);
  },
});
