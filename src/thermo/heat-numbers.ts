import { formula, length, ratio, thermalDiffusivity, time } from '../units';
import { coefficient, diffusivity, solid } from './heat-inputs';

const incropera = 'Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, 6th ed. (2007), ch. 5';
const crossed = /* @__PURE__ */ length('L', 'length that the heat crosses');

/**
 * Thermal diffusivity: the rate at which a temperature change spreads in a material.
 *
 * @example thermalDiffusivityOf({ conductivity: '167 W/(m*K)', density: '2700 kg/m^3', specificHeat: '896 J/(kg*K)' }).in('mm^2/s') // => 69.0311
 */
export const thermalDiffusivityOf = /* @__PURE__ */ formula({
  name: 'thermalDiffusivityOf',
  title: 'Thermal diffusivity',
  equation: 'α = k / (ρ·c)',
  source: incropera,
  inputs: solid,
  output: thermalDiffusivity('α', 'thermal diffusivity'),
  example: { conductivity: '167 W/(m*K)', density: '2700 kg/m^3', specificHeat: '896 J/(kg*K)' },
  si: ({ conductivity, density, specificHeat }) => conductivity / (density * specificHeat),
});

/**
 * Biot number: the ratio of the resistance inside a body to that of the film on it. The length depends on the
 * application: volume over wetted area for lumped heating, half the thickness of a wall heated from both sides,
 * its thickness where one side is insulated, the radius of a cylinder or a sphere.
 *
 * @example biotNumber({ coefficient: '900 W/(m^2*K)', length: '3 mm', conductivity: '167 W/(m*K)' }) // => 0.016167665
 */
export const biotNumber = /* @__PURE__ */ formula({
  name: 'biotNumber',
  title: 'Biot number',
  equation: 'Bi = h·L / k',
  source: incropera,
  inputs: {
    coefficient,
    length: crossed,
    conductivity: solid.conductivity,
  },
  output: ratio('Bi', 'Biot number'),
  example: { coefficient: '900 W/(m^2*K)', length: '3 mm', conductivity: '167 W/(m*K)' },
  si: ({ coefficient, length, conductivity }) => (coefficient * length) / conductivity,
});

/**
 * Fourier number: ratio of time to the time in which heat crosses a length.
 *
 * @example fourierNumber({ diffusivity: '18.8e-6 m^2/s', time: '480 s', length: '40 mm' }) // => 5.64
 */
export const fourierNumber = /* @__PURE__ */ formula({
  name: 'fourierNumber',
  title: 'Fourier number',
  equation: 'Fo = α·t / L²',
  source: incropera,
  inputs: {
    diffusivity,
    time: time('t', 'time', { min: 0 }),
    length: crossed,
  },
  output: ratio('Fo', 'Fourier number'),
  example: { diffusivity: '18.8e-6 m^2/s', time: '480 s', length: '40 mm' },
  si: ({ diffusivity, time, length }) => (diffusivity * time) / (length * length),
});
