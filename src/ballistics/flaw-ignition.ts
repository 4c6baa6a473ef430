// Ignition of a narrow flaw: whether the flame enters, and how long it takes to the tip.
import { absolutePressure, formula, length, speed, time } from '../units';

/**
 * Gap width above which hot gas ignites the faces of a crack or debond at a pressure. The constant varies between propellants:
 * 0.1 mm to 0.3 mm at several MPa and about 1 mm at 0.1 MPa (quoted from memory, not verified). Below it a flaw ignites later, when pressure or
 * burning has opened it: evaluate both.
 *
 * @example ignitedGapWidth({ referenceGap: '0.2 mm', referencePressure: '4 MPa', pressure: '1 MPa' }).in('mm') // => 0.4
 */
export const ignitedGapWidth = /* @__PURE__ */ formula({
  name: 'ignitedGapWidth',
  title: 'Gap width that a flame enters',
  equation: 'w_q = w_ref·√(p_ref / p)',
  source:
    'flame entry into a gap where p·w² exceeds a limit, after work on cracks and porous charges of the 1970s (quoted from memory, not verified)',
  inputs: {
    referenceGap: length('w_ref', 'gap width that a flame enters at the reference pressure', {
      example: '0.2 mm',
    }),
    referencePressure: absolutePressure('p_ref', 'reference pressure', { example: '4 MPaa' }),
    pressure: absolutePressure('p', 'pressure at the mouth of the flaw', { example: '1 MPaa' }),
  },
  output: length('w_q', 'gap width that a flame enters'),
  si: (v) => v.referenceGap * Math.sqrt(v.referencePressure / v.pressure),
});

/** @example flameSpreadDuration({ distance: '40 mm', spreadSpeed: '20 m/s' }).in('ms') // => 2 */
export const flameSpreadDuration = /* @__PURE__ */ formula({
  name: 'flameSpreadDuration',
  title: 'Time of flame spread over a distance',
  equation: 't_f = l / v_f',
  source:
    'definition of a mean speed; 10 m/s to 100 m/s with hot gas along the surface, 0.1 m/s to 1 m/s without (quoted from memory, not verified)',
  inputs: {
    distance: length('l', 'distance along the port or into a flaw', { example: '40 mm' }),
    spreadSpeed: speed('v_f', 'speed of flame spread', { above: 0, example: '20 m/s' }),
  },
  output: time('t_f', 'time of flame spread'),
  si: ({ distance, spreadSpeed }) => distance / spreadSpeed,
});
