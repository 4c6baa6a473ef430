import { formula, length, ratio, stress } from '../../units';

/** @example middleLineShift({ grooveDepth: '1.5 mm' }).in('mm') // => 0.75 */
export const middleLineShift = /* @__PURE__ */ formula({
  name: 'middleLineShift',
  title: 'Shift of the middle line of a wall at a groove',
  equation: 'e = h / 2',
  source: 'Geometry: middle of the wall under the groove against middle of the full wall',
  inputs: { grooveDepth: length('h', 'depth of the groove, radially') },
  output: length('e', 'shift of the middle line'),
  example: { grooveDepth: '1.5 mm' },
  si: ({ grooveDepth }) => grooveDepth / 2,
});

/**
 * Bending stress in the wall under a groove whose tension acts off its middle line, as if the shell did not resist: an upper
 * bound for that arm.
 *
 * @example grooveBendingStress({ tension: '20 MPa', arm: '0.75 mm', wall: '3 mm' }).in('MPa') // => 30
 */
export const grooveBendingStress = /* @__PURE__ */ formula({
  name: 'grooveBendingStress',
  title: 'Bending stress in the wall under a groove',
  equation: 'σ_b = 6·σ_t·a / t',
  source: 'Statics: moment per length N·a with N = σ_t·t, on a section modulus of t²/6',
  inputs: {
    tension: stress('σ_t', 'tension in the wall under the groove'),
    arm: length('a', 'from the middle of that wall to the line of the load', { min: 0 }),
    wall: length('t', 'wall under the groove'),
  },
  output: stress('σ_b', 'bending stress at the surfaces of the wall'),
  example: { tension: '19 MPa', arm: '0.75 mm', wall: '3.5 mm' },
  si: ({ tension, arm, wall }) => (6 * tension * arm) / wall,
});

/** @example grooveRootStress({ concentration: 4, tension: '20 MPa', bending: '30 MPa' }).in('MPa') // => 200 */
export const grooveRootStress = /* @__PURE__ */ formula({
  name: 'grooveRootStress',
  title: 'Elastic stress at the root of a groove',
  equation: 'σ_p = K_g·(σ_t + σ_b)',
  source:
    'Definition of the stress-concentration factor; tension and bending add at the root of an internal groove',
  inputs: {
    concentration: ratio('K_g', 'stress concentration of the groove', { min: 1 }),
    tension: stress('σ_t', 'tension in the wall under the groove'),
    bending: stress('σ_b', 'bending stress in that wall', { min: 0 }),
  },
  output: stress('σ_p', 'elastic peak stress at the root'),
  example: { concentration: 4.2, tension: '19 MPa', bending: '24 MPa' },
  si: ({ concentration, tension, bending }) => concentration * (tension + bending),
});
