import { erf, erfcx } from '../numerics';
import { formula, heatFlux, length, temperature, temperatureDifference, time } from '../units';
import { coefficient, diffusivity, hotGas, initialTemperature, solid } from './heat-inputs';

const incropera = 'Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, 6th ed. (2007), section 5.7';
const depth = /* @__PURE__ */ length('x', 'depth below the surface', { min: 0 });
const { conductivity } = solid;
const elapsed = /* @__PURE__ */ time('t', 'time');

/**
 * Temperature in a thick body whose surface is suddenly at a constant temperature. Solved for `depth` it gives the
 * depth of a temperature. A wall is thick while 4·√(α·t) is within it.
 *
 * @example surfaceStepTemperature({ initialTemperature: '300 K', surfaceTemperature: '1500 K', depth: '10 mm', diffusivity: '83.0827 mm^2/s', time: '1 s' }).in('K') // => 825.466
 */
export const surfaceStepTemperature = /* @__PURE__ */ formula({
  name: 'surfaceStepTemperature',
  title: 'Temperature below a surface at constant temperature',
  equation: 'T = T_s + (T_i − T_s)·erf(x / (2·√(α·t)))',
  source: `${incropera}, case 1`,
  inputs: {
    initialTemperature,
    surfaceTemperature: temperature('T_s', 'constant temperature of the surface'),
    depth,
    diffusivity,
    time: elapsed,
  },
  output: temperature('T', 'temperature'),
  example: {
    initialTemperature: '300 K',
    surfaceTemperature: '1500 K',
    depth: '10 mm',
    diffusivity: '83 mm^2/s',
    time: '1 s',
  },
  si: ({ initialTemperature, surfaceTemperature, depth, diffusivity, time }) =>
    surfaceTemperature +
    (initialTemperature - surfaceTemperature) * erf(depth / (2 * Math.sqrt(diffusivity * time))),
});

/**
 * Heat flux into a thick body whose surface is suddenly at a constant temperature.
 *
 * @example surfaceStepFlux({ conductivity: '105 W/(m*K)', surfaceRise: '1200 delta_K', diffusivity: '83.0827 mm^2/s', time: '1 s' }).in('MW/m^2') // => 7.79902
 */
export const surfaceStepFlux = /* @__PURE__ */ formula({
  name: 'surfaceStepFlux',
  title: 'Heat flux into a surface at constant temperature',
  equation: 'q = k·ΔT / √(π·α·t)',
  source: `${incropera}, case 1`,
  inputs: {
    conductivity,
    surfaceRise: temperatureDifference('ΔT', 'surface temperature above that at the start'),
    diffusivity,
    time: elapsed,
  },
  output: heatFlux('q', 'heat flux'),
  example: {
    conductivity: '105 W/(m*K)',
    surfaceRise: '1200 delta_K',
    diffusivity: '83 mm^2/s',
    time: '1 s',
  },
  si: ({ conductivity, surfaceRise, diffusivity, time }) =>
    (conductivity * surfaceRise) / Math.sqrt(Math.PI * diffusivity * time),
});

/**
 * Temperature in a thick body under a constant heat flux into its surface. At the surface it is the inverse of
 * `wallHeatingTime` of the nozzle.
 *
 * @example constantFluxTemperature({ initialTemperature: '300 K', heatFlux: '2 MW/m^2', conductivity: '105 W/(m*K)', depth: '0 mm', diffusivity: '83.0827 mm^2/s', time: '1 s' }).in('K') // => 495.9072
 */
export const constantFluxTemperature = /* @__PURE__ */ formula({
  name: 'constantFluxTemperature',
  title: 'Temperature below a surface under constant heat flux',
  equation: 'T = T_i + 2·q / k·√(α·t / π)·exp(−x² / (4·α·t)) − q·x / k·erfc(x / (2·√(α·t)))',
  source: `${incropera}, case 2`,
  inputs: {
    initialTemperature,
    heatFlux: heatFlux('q', 'heat flux into the surface'),
    conductivity,
    depth,
    diffusivity,
    time: elapsed,
  },
  output: temperature('T', 'temperature'),
  example: {
    initialTemperature: '300 K',
    heatFlux: '2 MW/m^2',
    conductivity: '105 W/(m*K)',
    depth: '1 mm',
    diffusivity: '83 mm^2/s',
    time: '1 s',
  },
  si: ({ initialTemperature, heatFlux, conductivity, depth, diffusivity, time }) =>
    initialTemperature + heatFlux * fluxRise(conductivity, depth, diffusivity, time),
});

// 2·√(α·t)/k·(exp(−w²)/√π − w·erfc(w)), with the exponential taken out of both terms.
function fluxRise(conductivity: number, depth: number, diffusivity: number, time: number): number {
  const reach = 2 * Math.sqrt(diffusivity * time);
  const w = depth / reach;
  return (reach / conductivity) * Math.exp(-w * w) * (1 / Math.sqrt(Math.PI) - w * erfcx(w));
}

/**
 * Temperature in a thick body whose surface is suddenly in a gas: a throat insert, while the heat has not reached
 * its back.
 *
 * @example convectionStepTemperature({ initialTemperature: '300 K', gasTemperature: '1300 K', coefficient: '6000 W/(m^2*K)', conductivity: '105 W/(m*K)', depth: '5 mm', diffusivity: '83.0827 mm^2/s', time: '1 s' }).in('K') // => 542.8793
 */
export const convectionStepTemperature = /* @__PURE__ */ formula({
  name: 'convectionStepTemperature',
  title: 'Temperature below a surface in hot gas',
  equation:
    'T = T_i + (T_g − T_i)·(erfc(x / (2·√(α·t))) − exp(h·x / k + h²·α·t / k²)·erfc(x / (2·√(α·t)) + h·√(α·t) / k))',
  source: `${incropera}, case 3`,
  inputs: {
    initialTemperature,
    gasTemperature: hotGas.gasTemperature,
    coefficient,
    conductivity,
    depth,
    diffusivity,
    time: elapsed,
  },
  output: temperature('T', 'temperature'),
  example: {
    initialTemperature: '300 K',
    gasTemperature: '1300 K',
    coefficient: '6000 W/(m^2*K)',
    conductivity: '105 W/(m*K)',
    depth: '5 mm',
    diffusivity: '83 mm^2/s',
    time: '1 s',
  },
  si: ({ initialTemperature, gasTemperature, coefficient, conductivity, depth, diffusivity, time }) => {
    const root = Math.sqrt(diffusivity * time);
    const w = depth / (2 * root);
    // The growing exponential times the vanishing erfc is the scaled function times exp(−w²), which neither overflows.
    const share = Math.exp(-w * w) * (erfcx(w) - erfcx(w + (coefficient * root) / conductivity));
    return initialTemperature + (gasTemperature - initialTemperature) * share;
  },
});
