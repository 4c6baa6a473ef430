import { formula, length, ratio, time } from '../units';
import { recessionRate, throatDiameter } from './nozzle-inputs';

/**
 * Throat diameter after a time at a radial recession rate: the diameter grows at twice the rate.
 *
 * @example erodedThroatDiameter({ throatDiameter: '12 mm', recessionRate: '0.1 mm/s', time: '3 s' }).in('mm') // => 12.6
 */
export const erodedThroatDiameter = /* @__PURE__ */ formula({
  name: 'erodedThroatDiameter',
  title: 'Throat diameter after erosion',
  equation: 'D = D_t + 2·v·t',
  source: 'Geometry: recession is measured normal to the wall, so the diameter grows at twice the rate',
  inputs: {
    throatDiameter,
    recessionRate,
    time: time('t', 'time', { min: 0 }),
  },
  output: length('D', 'throat diameter'),
  example: { throatDiameter: '12 mm', recessionRate: '0.1 mm/s', time: '3 s' },
  requires: [
    ({ throatDiameter, recessionRate, time }) =>
      throatDiameter + 2 * recessionRate * time > 0 || 'the deposit would close the throat within this time',
  ],
  si: ({ throatDiameter, recessionRate, time }) => throatDiameter + 2 * recessionRate * time,
});

/**
 * Growth of the throat area as a fraction of the area at the start; negative where slag has narrowed it.
 *
 * @example throatAreaGrowth({ throatDiameter: '12 mm', erodedDiameter: '12.6 mm' }) // => 0.1025
 */
export const throatAreaGrowth = /* @__PURE__ */ formula({
  name: 'throatAreaGrowth',
  title: 'Growth of the throat area',
  equation: 'ΔA/A = (D / D_t)² − 1',
  source: 'Geometry',
  inputs: {
    throatDiameter,
    erodedDiameter: length('D', 'throat diameter later'),
  },
  output: ratio('ΔA/A', 'growth of the throat area/area at the start'),
  example: { throatDiameter: '12 mm', erodedDiameter: '12.6 mm' },
  si: ({ throatDiameter, erodedDiameter }) =>
    ((erodedDiameter - throatDiameter) * (erodedDiameter + throatDiameter)) /
    (throatDiameter * throatDiameter),
});
