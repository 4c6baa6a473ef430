import { formula, length, optional, ratio, stress } from '../../units';

/**
 * Offset of the load in single shear: from the middle of the wall to the middle of the gap between wall and closure, where a bolt
 * held in both has no moment.
 *
 * @example singleShearOffset({ wall: '3 mm', gap: '0.1 mm' }).in('mm') // => 1.55
 */
export const singleShearOffset = /* @__PURE__ */ formula({
  name: 'singleShearOffset',
  title: 'Offset of the load of a bolt in single shear',
  equation: 'a = (t + g) / 2',
  source: 'Statics (engineering practice, no published source)',
  inputs: {
    wall: length('t', 'thickness of the wall'),
    gap: optional(length('g', 'radial gap between wall and closure', { min: 0 }), 0),
  },
  output: length('a', 'offset of the load from the middle of the wall'),
  example: { wall: '3 mm', gap: '0.1 mm' },
  si: ({ wall, gap = 0 }) => (wall + gap) / 2,
});

/**
 * Part of the moment of an offset load that the wall on the side of the pressure takes: all of it where the load is applied at the
 * free end of a long tube, half of it far from the end.
 *
 * @example offsetMomentShare({ distance: '0 mm', edgeLength: '8 mm' }) // => 1
 */
export const offsetMomentShare = /* @__PURE__ */ formula({
  name: 'offsetMomentShare',
  title: 'Part of the moment of an offset load on the side of the pressure',
  equation: 'f = (1 + exp(−2·c / λ)·(1 + sin(2·c / λ))) / 2',
  source:
    'Beam on an elastic foundation with a free end, a moment at the distance c from it (Hetényi, Beams on Elastic Foundation, from memory; agrees with a numerical solution of the boundary-value problem by SciPy to nine digits)',
  inputs: {
    distance: length('c', 'distance from the load to the free end of the tube', { min: 0 }),
    edgeLength: length('λ', 'length of the edge zone'),
  },
  output: ratio('f', 'part of the moment', { min: 0.5, max: 1 }),
  example: { distance: '12 mm', edgeLength: '8 mm' },
  si: ({ distance, edgeLength: zone }) => {
    const x = (2 * distance) / zone;
    return (1 + Math.exp(-x) * (1 + Math.sin(x))) / 2;
  },
});

/**
 * Tension with the bending of an offset load in the wall of a tube, elastic, at the surface where they add up.
 *
 * @example offsetWallStress({ tension: '20 MPa', offset: '1.5 mm', wall: '3 mm', momentShare: 0.5 }).in('MPa') // => 50
 */
export const offsetWallStress = /* @__PURE__ */ formula({
  name: 'offsetWallStress',
  title: 'Tension in a wall with the bending of an offset load',
  equation: 'σ = σ_n·(1 + 6·f·a / t)',
  source: 'Bending of a strip: 6·M/t² with M = f·N·a and N = σ_n·t for a unit of width',
  inputs: {
    tension: stress('σ_n', 'average tension in the wall'),
    offset: length('a', 'offset of the load from the middle of the wall', { min: 0 }),
    wall: length('t', 'thickness of the wall'),
    momentShare: ratio('f', 'part of the moment that the wall takes', { min: 0, max: 1 }),
  },
  output: stress('σ', 'tension at the surface'),
  example: { tension: '20 MPa', offset: '1.5 mm', wall: '3 mm', momentShare: 0.5 },
  si: ({ tension, offset, wall, momentShare }) => tension * (1 + (6 * momentShare * offset) / wall),
});

/**
 * Equivalent tension of a wall with the bending of an offset load: it reaches the yield strength as the section becomes plastic
 * throughout and the wall folds. The surface yields earlier, see {@link offsetWallStress}.
 *
 * @example offsetFoldingStress({ tension: '20 MPa', offset: '1.5 mm', wall: '3 mm', momentShare: 0.75 }).in('MPa') // => 40
 */
export const offsetFoldingStress = /* @__PURE__ */ formula({
  name: 'offsetFoldingStress',
  title: 'Equivalent tension of a wall that an offset load folds',
  equation: 'σ_e = σ_n·(√(1 + (2·f·a / t)²) + 2·f·a / t)',
  source:
    'Limit analysis of a rectangular section, M/M_p + (N/N_p)² = 1 with M = f·N·a (Hodge, Plastic Analysis of Structures, from memory)',
  inputs: offsetWallStress.inputs,
  output: stress('σ_e', 'tension of equal use of the section'),
  example: { tension: '20 MPa', offset: '1.5 mm', wall: '3 mm', momentShare: 0.5 },
  si: ({ tension, offset, wall, momentShare }) => {
    const x = (2 * momentShare * offset) / wall;
    return tension * (Math.sqrt(1 + x * x) + x);
  },
});
