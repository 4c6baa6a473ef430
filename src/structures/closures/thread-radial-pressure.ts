import { angle, force, formula, length, optional, stress } from '../../units';

/**
 * Pressure with which the flanks of a loaded thread push the tapped part open and the screw together.
 *
 * @example threadRadialPressure({ load: '20 kN', pitchDiameter: '68.7 mm', engagement: '12 mm' }).in('MPa').toFixed(3) // => '4.458'
 */
export const threadRadialPressure = /* @__PURE__ */ formula({
  name: 'threadRadialPressure',
  title: 'Pressure of the flanks of a thread',
  equation: 'p_w = F·tan(α) / (π·d_2·L)',
  source: 'Statics of an inclined flank, friction left out (engineering practice, no published source)',
  inputs: {
    load: force('F', 'load along the thread'),
    pitchDiameter: length('d_2', 'pitch diameter'),
    engagement: length('L', 'length of engaged full thread'),
    flankAngle: optional(
      angle('α', 'of the flanks from the plane across the axis; 30° for 60° threads', {
        min: 0,
        below: Math.PI / 2,
      }),
      Math.PI / 6,
    ),
  },
  output: stress('p_w', 'radial pressure over the engaged length'),
  example: { load: '20 kN', pitchDiameter: '68.7 mm', engagement: '12 mm', flankAngle: '30 deg' },
  si: ({ load, pitchDiameter, engagement, flankAngle = Math.PI / 6 }) =>
    (load * Math.tan(flankAngle)) / (Math.PI * pitchDiameter * engagement),
});
