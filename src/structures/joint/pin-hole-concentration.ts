import { formula, length, ratio } from '../../units';

/**
 * Stress concentration of a hole that a closely fitting pin loads, on the NET section; in a row of bolts the strip is
 * one pitch wide. A pin with clearance concentrates 35 to 50 % more.
 *
 * @example pinHoleStressConcentration({ holeDiameter: '5 mm', width: '10 mm' }) // => 2.507125
 */
export const pinHoleStressConcentration = /* @__PURE__ */ formula({
  name: 'pinHoleStressConcentration',
  title: 'Stress concentration of a hole loaded by a closely fitting pin, on the net section',
  equation: 'K_t = max(12.882 − 52.714·d / w + 89.762·(d / w)² − 51.667·(d / w)³, 1.2·(w / d − 1))',
  source:
    "Roark's Formulas for Stress and Strain, table 17.1, round pin joint (coefficients from memory), after Frocht and Hill, Journal of Applied Mechanics 7 (1940); below d/w of 0.15 the peak is assumed to be the same multiple of the bearing stress as there (engineering practice, no published source)",
  inputs: {
    holeDiameter: length('d', 'diameter of the hole', { example: '5.3 mm' }),
    width: length('w', 'width of the strip; the pitch in a row of holes', { example: '20.6 mm' }),
  },
  output: ratio('K_t', 'peak over average stress of the net section'),
  requires: [({ holeDiameter, width }) => holeDiameter < width || 'the hole is as wide as the strip'],
  valid: [
    ({ holeDiameter, width }) =>
      holeDiameter <= 0.75 * width || 'the hole takes more than 0.75 of the width, where the fit ends',
  ],
  si: ({ holeDiameter, width }) => {
    const x = holeDiameter / width;
    return Math.max(12.882 + x * (-52.714 + x * (89.762 - 51.667 * x)), 1.2 * (1 / x - 1));
  },
});
