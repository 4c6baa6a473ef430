import { formula, length, temperature, time } from '../units';
import { coefficient, initialTemperature, solid } from './heat-inputs';

const incropera = 'Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, 6th ed. (2007), section 5.1';

/**
 * Time constant of a thin body in a gas, whose temperature is the same throughout. Solved for `thickness` it sizes
 * a thermocouple junction (a third of the radius) or a wall.
 *
 * Valid while the Biot number of that thickness is below 0.1: see {@link biotNumber}.
 *
 * @example lumpedTimeConstant({ density: '2700 kg/m^3', specificHeat: '896 J/(kg*K)', thickness: '3 mm', coefficient: '900 W/(m^2*K)' }).in('s') // => 8.064
 */
export const lumpedTimeConstant = /* @__PURE__ */ formula({
  name: 'lumpedTimeConstant',
  title: 'Time constant of lumped heating',
  equation: 'τ = ρ·c·L / h',
  source: incropera,
  inputs: {
    density: solid.density,
    specificHeat: solid.specificHeat,
    thickness: length('L', 'volume/wetted area: wall heated from one side t, cylinder r/2, sphere r/3'),
    coefficient,
  },
  output: time('τ', 'time constant'),
  example: {
    density: '2700 kg/m^3',
    specificHeat: '896 J/(kg*K)',
    thickness: '3 mm',
    coefficient: '900 W/(m^2*K)',
  },
  si: ({ density, specificHeat, thickness, coefficient }) =>
    (density * specificHeat * thickness) / coefficient,
});

/**
 * Temperature of a thin body after a time in a gas of constant temperature. Solved for `time` it gives the time at
 * which a temperature is reached.
 *
 * @example lumpedTemperature({ initialTemperature: '300 K', gasTemperature: '1550 K', time: '2 s', timeConstant: '8.064 s' }).in('K') // => 574.56555
 */
export const lumpedTemperature = /* @__PURE__ */ formula({
  name: 'lumpedTemperature',
  title: 'Temperature in lumped heating',
  equation: 'T = T_g + (T_i − T_g)·exp(−t / τ)',
  source: incropera,
  inputs: {
    initialTemperature,
    gasTemperature: temperature('T_g', 'temperature of the gas'),
    time: time('t', 'time', { min: 0 }),
    timeConstant: time('τ', 'time constant, see lumpedTimeConstant'),
  },
  output: temperature('T', 'temperature'),
  example: { initialTemperature: '300 K', gasTemperature: '1550 K', time: '2 s', timeConstant: '8.064 s' },
  si: ({ initialTemperature, gasTemperature, time, timeConstant }) =>
    initialTemperature - (gasTemperature - initialTemperature) * Math.expm1(-time / timeConstant),
});
