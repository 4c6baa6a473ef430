import { formula, length, ratio } from '../../units';
import { type ConcentrationFit, fittedConcentration } from './concentration-fit';

const source =
  "Roark's Formulas for Stress and Strain, table 17.1, square shoulder with fillet in a circular shaft in axial tension (polynomials as printed on amesweb.info)";

const inputs = {
  largeDiameter: length('D', 'larger diameter of the bar', { example: '30 mm' }),
  smallDiameter: length('d', 'smaller diameter of the bar', { example: '24 mm' }),
  filletRadius: length('r', 'radius of the fillet', { example: '3 mm' }),
};
const output = ratio('K_t', 'peak stress/average stress of the smaller diameter');

type Sizes = {
  readonly largeDiameter: number;
  readonly smallDiameter: number;
  readonly filletRadius: number;
};
const isStep = ({ largeDiameter, smallDiameter }: Sizes): true | string =>
  smallDiameter < largeDiameter || 'the smaller diameter is not less than the larger one';
const stepRatio = ({ largeDiameter, smallDiameter, filletRadius }: Sizes): number =>
  (largeDiameter - smallDiameter) / 2 / filletRadius;

const wide: ConcentrationFit = [
  [0.926, 1.157, -0.099],
  [0.012, -3.036, 0.961],
  [-0.302, 3.977, -1.744],
  [0.365, -2.098, 0.878],
];
const sharp: ConcentrationFit = [
  [1.2, 0.86, -0.022],
  [-1.805, -0.346, -0.038],
  [2.198, -0.486, 0.165],
  [-0.593, -0.028, -0.106],
];
const at =
  (fit: ConcentrationFit) =>
  (sizes: Sizes): number =>
    fittedConcentration(fit, stepRatio(sizes), 1 - sizes.smallDiameter / sizes.largeDiameter);

/**
 * Stress concentration of a shoulder in a bar in tension whose step is at most twice the radius of its fillet.
 *
 * @example wideShoulderConcentration({ largeDiameter: '30 mm', smallDiameter: '24 mm', filletRadius: '3 mm' }) // => 1.6418
 */
export const wideShoulderConcentration = /* @__PURE__ */ formula({
  name: 'wideShoulderConcentration',
  title: 'Stress concentration of a shoulder in a bar, step to 2 fillet radii',
  equation:
    'K_t = 0.926 + 1.157·√((D − d) / (2·r)) − 0.099·(D − d) / (2·r) + (0.012 − 3.036·√((D − d) / (2·r)) + 0.961·(D − d) / (2·r))·(1 − d / D) + (−0.302 + 3.977·√((D − d) / (2·r)) − 1.744·(D − d) / (2·r))·(1 − d / D)² + (0.365 − 2.098·√((D − d) / (2·r)) + 0.878·(D − d) / (2·r))·(1 − d / D)³',
  source,
  inputs,
  output,
  requires: [isStep],
  valid: [
    (sizes) =>
      (stepRatio(sizes) >= 0.1 && stepRatio(sizes) <= 2) ||
      'The fit is valid for a step of 0.1 to 2 fillet radii. Use sharpShoulderConcentration for a smaller fillet.',
  ],
  si: at(wide),
});

/**
 * Stress concentration of a shoulder in a bar in tension whose step is 2 to 20 times the radius of its fillet.
 *
 * @example sharpShoulderConcentration({ largeDiameter: '30 mm', smallDiameter: '24 mm', filletRadius: '0.5 mm' }) // => 2.667977722
 */
export const sharpShoulderConcentration = /* @__PURE__ */ formula({
  name: 'sharpShoulderConcentration',
  title: 'Stress concentration of a shoulder in a bar, step of 2 to 20 fillet radii',
  equation:
    'K_t = 1.2 + 0.86·√((D − d) / (2·r)) − 0.022·(D − d) / (2·r) + (−1.805 − 0.346·√((D − d) / (2·r)) − 0.038·(D − d) / (2·r))·(1 − d / D) + (2.198 − 0.486·√((D − d) / (2·r)) + 0.165·(D − d) / (2·r))·(1 − d / D)² + (−0.593 − 0.028·√((D − d) / (2·r)) − 0.106·(D − d) / (2·r))·(1 − d / D)³',
  source,
  inputs,
  output,
  example: { largeDiameter: '30 mm', smallDiameter: '24 mm', filletRadius: '0.5 mm' },
  requires: [isStep],
  valid: [
    (sizes) =>
      (stepRatio(sizes) >= 2 && stepRatio(sizes) <= 20) ||
      'The fit is valid for a step of 2 to 20 fillet radii.',
  ],
  si: at(sharp),
});
