import { formula, length, ratio } from '../../units';
import { type ConcentrationFit, fittedConcentration } from './concentration-fit';

const source =
  "Roark's Formulas for Stress and Strain, table 17.1, U notch in a circular shaft in axial tension (polynomials as printed on eng-calculations.com)";

const inputs = {
  diameter: length('D', 'diameter of the bar next to the groove', { example: '30 mm' }),
  depth: length('h', 'depth of the groove', { example: '2 mm' }),
  rootRadius: length('r', 'radius of the root of the groove', { example: '2 mm' }),
};
const output = ratio('K_t', 'peak stress/average stress of the net section');

type Sizes = { readonly diameter: number; readonly depth: number; readonly rootRadius: number };
const leavesCore = ({ diameter, depth }: Sizes): true | string =>
  2 * depth < diameter || 'the groove is deeper than the radius of the bar';

const wide: ConcentrationFit = [
  [0.455, 3.354, -0.769],
  [3.129, -15.955, 7.404],
  [-6.909, 29.286, -16.104],
  [4.325, -16.685, 9.469],
];
const sharp: ConcentrationFit = [
  [0.935, 1.922, 0.004],
  [0.537, -3.708, 0.04],
  [-2.538, 3.438, -0.012],
  [2.066, -1.652, -0.031],
];
const at =
  (fit: ConcentrationFit) =>
  ({ diameter, depth, rootRadius }: Sizes): number =>
    fittedConcentration(fit, depth / rootRadius, (2 * depth) / diameter);

/**
 * Stress concentration of a groove around a bar in tension whose depth is at most twice its root radius.
 *
 * @example wideGrooveConcentration({ diameter: '30 mm', depth: '2 mm', rootRadius: '2 mm' }) // => 2.421733926
 */
export const wideGrooveConcentration = /* @__PURE__ */ formula({
  name: 'wideGrooveConcentration',
  title: 'Stress concentration of a groove around a bar, depth to 2 root radii',
  equation:
    'K_t = 0.455 + 3.354·√(h / r) − 0.769·h / r + (3.129 − 15.955·√(h / r) + 7.404·h / r)·2·h / D + (−6.909 + 29.286·√(h / r) − 16.104·h / r)·(2·h / D)² + (4.325 − 16.685·√(h / r) + 9.469·h / r)·(2·h / D)³',
  source,
  inputs,
  output,
  requires: [leavesCore],
  valid: [
    ({ depth, rootRadius }) =>
      (depth >= 0.25 * rootRadius && depth <= 2 * rootRadius) ||
      'The fit is valid for a depth of 0.25 to 2 root radii. Use sharpGrooveConcentration for a deeper groove.',
  ],
  si: at(wide),
});

/**
 * Stress concentration of a groove around a bar in tension whose depth is 2 to 50 times its root radius.
 *
 * @example sharpGrooveConcentration({ diameter: '30 mm', depth: '2 mm', rootRadius: '0.2 mm' }) // => 5.752205358
 */
export const sharpGrooveConcentration = /* @__PURE__ */ formula({
  name: 'sharpGrooveConcentration',
  title: 'Stress concentration of a groove around a bar, depth of 2 to 50 root radii',
  equation:
    'K_t = 0.935 + 1.922·√(h / r) + 0.004·h / r + (0.537 − 3.708·√(h / r) + 0.04·h / r)·2·h / D + (−2.538 + 3.438·√(h / r) − 0.012·h / r)·(2·h / D)² + (2.066 − 1.652·√(h / r) − 0.031·h / r)·(2·h / D)³',
  source,
  inputs,
  output,
  example: { diameter: '30 mm', depth: '2 mm', rootRadius: '0.2 mm' },
  requires: [leavesCore],
  valid: [
    ({ depth, rootRadius }) =>
      (depth >= 2 * rootRadius && depth <= 50 * rootRadius) ||
      'The fit is valid for a depth of 2 to 50 root radii.',
  ],
  si: at(sharp),
});
