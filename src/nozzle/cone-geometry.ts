import { area, formula, length } from '../units';
import { exitDiameter, expansionRatio, halfAngle, throatDiameter } from './nozzle-inputs';

/**
 * Length of a straight cone between two diameters.
 *
 * @example coneLength({ smallDiameter: '10 mm', largeDiameter: '30 mm', halfAngle: '12 deg' }).in('mm') // => 47.0463
 */
export const coneLength = /* @__PURE__ */ formula({
  name: 'coneLength',
  title: 'Length of a cone',
  equation: 'L = (D_2 − D_1) / (2·tan(α))',
  source: 'Geometry of the frustum',
  inputs: {
    smallDiameter: length('D_1', 'diameter of the small end'),
    largeDiameter: length('D_2', 'diameter of the large end'),
    halfAngle,
  },
  output: length('L', 'length along the axis', { min: 0 }),
  example: { smallDiameter: '10 mm', largeDiameter: '30 mm', halfAngle: '12 deg' },
  requires: [
    ({ smallDiameter, largeDiameter }) =>
      largeDiameter >= smallDiameter || 'the large end must not be smaller than the small end',
  ],
  si: ({ smallDiameter, largeDiameter, halfAngle }) =>
    (largeDiameter - smallDiameter) / (2 * Math.tan(halfAngle)),
});

/**
 * Area of a round section.
 *
 * @example throatAreaOf({ diameter: '12 mm' }).in('mm^2') // => 113.0973355
 */
export const throatAreaOf = /* @__PURE__ */ formula({
  name: 'throatAreaOf',
  title: 'Area of a round throat',
  equation: 'A = π / 4·D²',
  source: 'Geometry',
  inputs: { diameter: length('D', 'diameter', { example: '12 mm' }) },
  output: area('A', 'area'),
  si: ({ diameter }) => (Math.PI / 4) * diameter * diameter,
});

/** @example expansionRatioOf({ throatDiameter: '10 mm', exitDiameter: '30 mm' }) // => 9 */
export const expansionRatioOf = /* @__PURE__ */ formula({
  name: 'expansionRatioOf',
  title: 'Expansion ratio from diameters',
  equation: 'ε = (D_e / D_t)²',
  source: 'Geometry; definition of the expansion ratio',
  inputs: { throatDiameter, exitDiameter },
  output: expansionRatio,
  example: { throatDiameter: '10 mm', exitDiameter: '30 mm' },
  requires: [
    ({ throatDiameter, exitDiameter }) =>
      exitDiameter >= throatDiameter ||
      'the exit must not be smaller than the throat: are the two exchanged?',
  ],
  si: ({ throatDiameter, exitDiameter }) => (exitDiameter / throatDiameter) ** 2,
});
