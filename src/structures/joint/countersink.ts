import { angle, formula, length } from '../../units';

const wall = /* @__PURE__ */ length('t', 'thickness of the wall', { example: '5 mm' });
const holeDiameter = /* @__PURE__ */ length('d_h', 'diameter of the hole', { example: '5.5 mm' });
const depth = /* @__PURE__ */ length('h', 'depth of the cone or counterbore', {
  min: 0,
  example: '2.285 mm',
});

/**
 * Depth of the cone of a countersunk hole.
 *
 * @example countersinkDepth({ headDiameter: '10.07 mm', holeDiameter: '5.5 mm', headAngle: '90 deg' }).in('mm') // => 2.285
 */
export const countersinkDepth = /* @__PURE__ */ formula({
  name: 'countersinkDepth',
  title: 'Depth of the cone of a countersunk hole',
  equation: 'h = (d_k − d_h) / (2·tan(α / 2))',
  source: 'Geometry of a cone',
  inputs: {
    headDiameter: length('d_k', 'diameter of the head at the surface', { example: '10.07 mm' }),
    holeDiameter,
    headAngle: angle('α', 'included angle of the head', { above: 0, below: Math.PI, example: '90 deg' }),
  },
  output: length('h', 'depth of the cone'),
  requires: [
    ({ headDiameter, holeDiameter: hole }) => headDiameter > hole || 'the head is not wider than the hole',
  ],
  si: ({ headDiameter, holeDiameter: hole, headAngle }) =>
    (headDiameter - hole) / (2 * Math.tan(headAngle / 2)),
});

/**
 * Straight part of a hole under its cone or counterbore.
 *
 * @example landThickness({ wall: '5 mm', depth: '2.285 mm' }).in('mm') // => 2.715
 */
export const landThickness = /* @__PURE__ */ formula({
  name: 'landThickness',
  title: 'Wall left under a countersink or counterbore',
  equation: 't_l = t − h',
  source: 'Geometry',
  inputs: { wall, depth },
  output: length('t_l', 'wall left'),
  requires: [(given) => given.depth < given.wall || 'the depth is not less than the wall'],
  si: (given) => given.wall - given.depth,
});

/**
 * Thickness on which a countersunk screw bears: half of the cone counts.
 *
 * @example countersunkBearingThickness({ wall: '5 mm', depth: '2.285 mm' }).in('mm') // => 3.8575
 */
export const countersunkBearingThickness = /* @__PURE__ */ formula({
  name: 'countersunkBearingThickness',
  title: 'Thickness on which a countersunk screw bears',
  equation: 't_b = t − h / 2',
  source: 'EN 1993-1-8, bearing of countersunk bolts (from memory)',
  inputs: { wall, depth },
  output: length('t_b', 'thickness credited in bearing'),
  requires: [(given) => given.depth < given.wall || 'the depth is not less than the wall'],
  si: (given) => given.wall - given.depth / 2,
});

/**
 * Width that a countersunk hole takes from the section of the wall, on average over its thickness.
 *
 * @example countersunkHoleWidth({ wall: '5 mm', depth: '2 mm', holeDiameter: '5 mm', headDiameter: '9 mm' }).in('mm') // => 5.8
 */
export const countersunkHoleWidth = /* @__PURE__ */ formula({
  name: 'countersunkHoleWidth',
  title: 'Mean width of a countersunk hole',
  equation: 'd_m = d_h + (d_k − d_h)·h / (2·t)',
  source: 'Geometry: area of the section of the hole over the thickness',
  inputs: {
    wall,
    depth,
    holeDiameter,
    headDiameter: length('d_k', 'diameter of the head at the surface', { example: '10.07 mm' }),
  },
  output: length('d_m', 'mean width of the hole'),
  si: (given) =>
    given.holeDiameter + ((given.headDiameter - given.holeDiameter) * given.depth) / (2 * given.wall),
});

/**
 * Width that a counterbored hole takes from the section of the wall, on average over its thickness.
 *
 * @example counterboredHoleWidth({ wall: '5 mm', depth: '2 mm', holeDiameter: '5.5 mm', counterbore: '10.5 mm' }).in('mm') // => 7.5
 */
export const counterboredHoleWidth = /* @__PURE__ */ formula({
  name: 'counterboredHoleWidth',
  title: 'Mean width of a counterbored hole',
  equation: 'd_m = d_h + (d_c − d_h)·h / t',
  source: 'Geometry: area of the section of the hole over the thickness',
  inputs: {
    wall,
    depth,
    holeDiameter,
    counterbore: length('d_c', 'diameter of the counterbore', { example: '10.5 mm' }),
  },
  output: length('d_m', 'mean width of the hole'),
  si: (given) => given.holeDiameter + ((given.counterbore - given.holeDiameter) * given.depth) / given.wall,
});
