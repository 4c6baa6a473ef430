import { area, formula, length } from '../../units';

/**
 * Ring on which the head of a bolt or its washer bears.
 *
 * @example headBearingArea({ faceDiameter: '9 mm', holeDiameter: '6.6 mm' }).in('mm^2').toFixed(2) // => '29.41'
 */
export const headBearingArea = /* @__PURE__ */ formula({
  name: 'headBearingArea',
  title: 'Area under the head of a bolt',
  equation: 'A_h = π/4·(d_w² − d_h²)',
  source: 'Geometry',
  inputs: {
    faceDiameter: length('d_w', 'diameter of the face under the head or washer'),
    holeDiameter: length('d_h', 'diameter of the clearance hole'),
  },
  output: area('A_h', 'area of contact'),
  example: { faceDiameter: '9.4 mm', holeDiameter: '6.6 mm' },
  requires: [
    ({ faceDiameter, holeDiameter }) =>
      faceDiameter > holeDiameter || 'the face must be wider than the clearance hole',
  ],
  si: ({ faceDiameter, holeDiameter }) => (Math.PI / 4) * (faceDiameter ** 2 - holeDiameter ** 2),
});
