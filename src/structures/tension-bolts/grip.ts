import { formula, length, optional } from '../../units';

/**
 * Grip of a cap screw in a tapped hole: the clamped parts and half of what the screw engages, up to half a diameter.
 *
 * @example tappedHoleGrip({ clampedThickness: '10 mm', tappedThickness: '12 mm', diameter: '6 mm' }).in('mm') // => 13
 */
export const tappedHoleGrip = /* @__PURE__ */ formula({
  name: 'tappedHoleGrip',
  title: 'Effective grip of a cap screw in a tapped hole',
  equation: 'l = h + min(t_2, d) / 2',
  source: "Shigley's Mechanical Engineering Design, 9th ed., table 8-7",
  inputs: {
    clampedThickness: length('h', 'thickness of all that is clamped, with the washer', { above: 0 }),
    tappedThickness: length('t_2', 'thickness of the tapped part', { above: 0 }),
    diameter: length('d', 'diameter of the screw'),
  },
  output: length('l', 'effective grip'),
  example: { clampedThickness: '10 mm', tappedThickness: '12 mm', diameter: '6 mm' },
  si: ({ clampedThickness, tappedThickness, diameter }) =>
    clampedThickness + Math.min(tappedThickness, diameter) / 2,
});

/**
 * Threaded length of a bolt of usual length.
 *
 * @example boltThreadLength({ diameter: '8 mm' }).in('mm') // => 22
 */
export const boltThreadLength = /* @__PURE__ */ formula({
  name: 'boltThreadLength',
  title: 'Threaded length of a bolt',
  equation: 'L_T = 2·d + c',
  source: "Shigley's Mechanical Engineering Design, 9th ed., equations 8-13 and 8-14",
  inputs: {
    diameter: length('d', 'nominal diameter'),
    allowance: optional(
      length('c', '6 mm to a length of 125 mm, 12 mm to 200 mm; 1/4 in to a length of 6 in', { min: 0 }),
      0.006,
    ),
  },
  output: length('L_T', 'threaded length'),
  example: { diameter: '8 mm' },
  si: ({ diameter, allowance = 0.006 }) => 2 * diameter + allowance,
});
