import {
  formula,
  fromSiValue,
  length,
  massFlux,
  procedure,
  type Quantity,
  ratio,
  speed,
  unitOf,
} from '../../units';
import { augmentationFactor, mukundaPaulInputs } from '../erosive-inputs';
import { castDensity } from '../propellant-inputs';

const source =
  'H. S. Mukunda and P. J. Paul, Universal behaviour in erosive burning of solid propellants, Combustion and Flame 109 (1997) 224; constants and definition of g quoted from memory, not verified';

const { gain, reducedThreshold, viscosity } = mukundaPaulInputs;
const baseRate = speed('r_0', 'burning rate without cross-flow at the local pressure', {
  above: 0,
  example: '7 mm/s',
});
const flux = massFlux('G', 'mass flux in the port', { min: 0, example: '1200 kg/(m^2*s)' });
const hydraulicDiameter = length('d_h', 'hydraulic diameter of the port, 4·area/perimeter', {
  above: 0,
  example: '20 mm',
});
const surface = { baseRate, hydraulicDiameter, density: castDensity, viscosity };

/** @example reducedMassFlux({ massFlux: '1200 kg/(m^2*s)', baseRate: '7 mm/s', hydraulicDiameter: '20 mm', density: '1780 kg/m^3' }) // => 78.7890655 */
export const reducedMassFlux = /* @__PURE__ */ formula({
  name: 'reducedMassFlux',
  title: 'Reduced mass flux of the Mukunda-Paul law',
  equation: 'g = G / (ρ·r_0)·(ρ·r_0·d_h / (1000·μ))^(−1 / 8)',
  source,
  inputs: { massFlux: flux, ...surface },
  output: ratio('g', 'mass flux in the port/mass flux from the surface, reduced by its Reynolds number'),
  si: ({ massFlux: G, baseRate: r, hydraulicDiameter: d, density, viscosity: mu = 5e-5 }) =>
    (G / (density * r)) * ((density * r * d) / (1000 * mu)) ** (-1 / 8),
});

/**
 * Mass flux at which erosive burning begins by the Mukunda-Paul law. It is proportional to the mass flux from the surface, so that a slow
 * propellant has the lower threshold.
 *
 * @example erosiveThresholdFlux({ baseRate: '7 mm/s', hydraulicDiameter: '20 mm', density: '1780 kg/m^3' }).in('kg/(m^2*s)') // => 533.0688937
 */
export const erosiveThresholdFlux = /* @__PURE__ */ formula({
  name: 'erosiveThresholdFlux',
  title: 'Mass flux at which erosive burning begins, Mukunda-Paul',
  equation: 'G_th = g_th·ρ·r_0·(ρ·r_0·d_h / (1000·μ))^(1 / 8)',
  source,
  inputs: { ...surface, reducedThreshold },
  output: massFlux('G_th', 'mass flux at which augmentation begins'),
  si: ({ baseRate: r, hydraulicDiameter: d, density, viscosity: mu = 5e-5, reducedThreshold: g = 35 }) =>
    g * density * r * ((density * r * d) / (1000 * mu)) ** (1 / 8),
});

/** @example mukundaPaulAugmentation({ reducedFlux: 78.7890655 }) // => 1.3613092 */
export const mukundaPaulAugmentation = /* @__PURE__ */ formula({
  name: 'mukundaPaulAugmentation',
  title: 'Erosive augmentation, Mukunda-Paul',
  equation: 'r/r_0 = 1 + f_e·K·(g^0.8 − g_th^0.8)',
  source: `${source}; 1 below the threshold`,
  inputs: {
    reducedFlux: ratio('g', 'reduced mass flux', { min: 0, example: 80 }),
    gain,
    reducedThreshold,
    augmentationFactor,
  },
  output: ratio('r/r_0', 'burning rate/burning rate without cross-flow'),
  si: ({ reducedFlux: g, gain: K = 0.023, reducedThreshold: limit = 35, augmentationFactor: f = 1 }) =>
    1 + f * K * Math.max(0, g ** 0.8 - limit ** 0.8),
});

/**
 * Burning rate with erosive burning by the Mukunda-Paul law, which holds for composite and double-base propellants within about 10 %
 * (from memory, not verified); no measurement on a sugar-class propellant was found.
 *
 * @example mukundaPaulRate({ baseRate: '7 mm/s', massFlux: '1200 kg/(m^2*s)', hydraulicDiameter: '20 mm', density: '1780 kg/m^3' }).in('mm/s') // => 9.5291644
 */
export const mukundaPaulRate = /* @__PURE__ */ procedure({
  name: 'mukundaPaulRate',
  title: 'Burning rate with erosive burning, Mukunda-Paul',
  source,
  inputs: { ...surface, massFlux: flux, gain, reducedThreshold, augmentationFactor },
  gives: 'the total burning rate',
  example: {
    baseRate: '7 mm/s',
    massFlux: '1200 kg/(m^2*s)',
    hydraulicDiameter: '20 mm',
    density: '1780 kg/m^3',
  },
  working: (v) => {
    const { gain: K, reducedThreshold: limit, augmentationFactor: f, ...rest } = v;
    const reducedFlux = reducedMassFlux(rest);
    return [
      reducedMassFlux.explain(rest),
      mukundaPaulAugmentation.explain({
        reducedFlux,
        gain: K,
        reducedThreshold: limit,
        augmentationFactor: f,
      }),
    ];
  },
  run: (v): Quantity<'speed'> => {
    const reducedFlux = reducedMassFlux.si({
      massFlux: v.massFlux.si,
      baseRate: v.baseRate.si,
      hydraulicDiameter: v.hydraulicDiameter.si,
      density: v.density.si,
      viscosity: v.viscosity.si,
    });
    const by = mukundaPaulAugmentation.si({ ...v, reducedFlux });
    return fromSiValue<'speed'>(v.baseRate.si * by, 'speed', unitOf('mm/s'));
  },
});
