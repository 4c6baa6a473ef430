import { angle, count, force, formula, length, optional, stress } from '../../units';

/**
 * Shear stress on the two planes along which a bolt tears out of the end of the case. The planes start where the
 * radius at the angle meets the hole: 0° (the default) starts them at the edge of the hole, which is the conservative
 * construction; 40° is the practice for lugs. Never use the whole edge distance.
 *
 * @example tearOutStress({ load: '1200 lbf', edgeDistance: '0.5 in', holeDiameter: '0.25 in', thickness: '0.25 in' }).in('psi') // => 6400
 */
export const tearOutStress = /* @__PURE__ */ formula({
  name: 'tearOutStress',
  title: 'Shear tear-out of the bolts through the end of the case',
  equation: 'τ = F / (2·n·t·(e − d·cos(φ) / 2))',
  source:
    "Shigley's Mechanical Engineering Design, 9th ed., section 8-12, edge shearing (φ = 0); 40° planes of aircraft lug analysis (from memory)",
  inputs: {
    load: force('F', 'load across the joint'),
    count: optional(count('n', 'bolts that share it'), 1),
    edgeDistance: length('e', 'distance from the centre of the holes to the end'),
    holeDiameter: length('d', 'diameter of a hole'),
    thickness: length('t', 'thickness of the wall'),
    planeAngle: optional(
      angle('φ', 'angle of the planes on the hole, from the line of load', { min: 0, below: Math.PI / 2 }),
      0,
    ),
  },
  output: stress('τ', 'shear stress'),
  example: {
    load: '31.4 kN',
    count: 12,
    edgeDistance: '12 mm',
    holeDiameter: '6.4 mm',
    thickness: '6 mm',
    planeAngle: '40 deg',
  },
  requires: [
    ({ edgeDistance, holeDiameter }) =>
      edgeDistance > holeDiameter / 2 || 'the edge distance does not exceed the radius of the hole',
  ],
  valid: [
    ({ edgeDistance, holeDiameter }) =>
      edgeDistance >= 1.5 * holeDiameter ||
      'the edge distance is below 1.5 hole diameters: move the holes in',
  ],
  si: ({ load, count: n = 1, edgeDistance, holeDiameter, thickness, planeAngle = 0 }) =>
    load / (2 * n * thickness * (edgeDistance - (holeDiameter * Math.cos(planeAngle)) / 2)),
  solve: {
    load: (tau, { count: n, edgeDistance, holeDiameter, thickness, planeAngle }) =>
      tau * 2 * n * thickness * (edgeDistance - (holeDiameter * Math.cos(planeAngle)) / 2),
    edgeDistance: (tau, { load, count: n, holeDiameter, thickness, planeAngle }) =>
      load / (2 * n * thickness * tau) + (holeDiameter * Math.cos(planeAngle)) / 2,
    thickness: (tau, { load, count: n, edgeDistance, holeDiameter, planeAngle }) =>
      load / (2 * n * tau * (edgeDistance - (holeDiameter * Math.cos(planeAngle)) / 2)),
  },
});
