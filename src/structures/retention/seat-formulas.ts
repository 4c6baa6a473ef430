import { force, formula, length, ratio, stress } from '../../units';

const load = force('F', 'force that pushes the insert onto its seat', { example: '4 kN' });
const insertDiameter = length('D_o', 'outside diameter of the insert', { example: '30 mm' });
const opening = length('D_i', 'diameter of the opening in the seat', { example: '22 mm' });
const statics = 'Statics (engineering practice, no published source)';

const isRing = (of: { readonly insertDiameter: number; readonly opening: number }): true | string =>
  of.opening < of.insertDiameter || 'the opening must be narrower than the insert, which falls through it';

/**
 * Compressive stress between an insert and its seat. A seat turned in metal and a block of graphite never touch all round:
 * by engineering practice only a third of the area is assumed to be in contact.
 *
 * @example seatBearingStress({ load: '4 kN', insertDiameter: '30 mm', opening: '22 mm', contactShare: 1 }).in('MPa') // => 12.24268793
 */
export const seatBearingStress = /* @__PURE__ */ formula({
  name: 'seatBearingStress',
  title: 'Bearing stress of an insert on its seat',
  equation: 'σ_s = 4·F / (π·(D_o² − D_i²)·κ)',
  source: `${statics}; contact on a third of the area is assumed`,
  inputs: {
    load,
    insertDiameter,
    opening,
    contactShare: ratio('κ', 'fraction of the area that is in contact', { above: 0, max: 1 }),
  },
  output: stress('σ_s', 'compressive stress'),
  example: { load: '4 kN', insertDiameter: '30 mm', opening: '22 mm', contactShare: 0.3333 },
  requires: [isRing],
  si: ({ load: f, insertDiameter: o, opening: i, contactShare }) =>
    (4 * f) / (Math.PI * (o - i) * (o + i) * contactShare),
});

/**
 * Shear stress in the lip that an insert bears on. The lip shears on the cylinder of the outside diameter of the insert.
 *
 * @example lipShearStress({ load: '4 kN', insertDiameter: '30 mm', lipThickness: '6 mm' }).in('MPa') // => 7.073553026
 */
export const lipShearStress = /* @__PURE__ */ formula({
  name: 'lipShearStress',
  title: 'Shear stress in the lip of a seat',
  equation: 'τ_l = F / (π·D_o·t_l)',
  source: statics,
  inputs: {
    load,
    insertDiameter,
    lipThickness: length('t_l', 'thickness of the lip', { example: '6 mm' }),
  },
  output: stress('τ_l', 'mean shear stress'),
  example: { load: '4 kN', insertDiameter: '30 mm', lipThickness: '6 mm' },
  si: ({ load: f, insertDiameter, lipThickness }) => f / (Math.PI * insertDiameter * lipThickness),
});

/**
 * Shear stress in an insert whose middle is pushed out through the opening of its seat. The insert shears on the cylinder
 * of the opening.
 *
 * @example insertShearStress({ load: '4 kN', opening: '22 mm', insertThickness: '12 mm' }).in('MPa') // => 4.822877063
 */
export const insertShearStress = /* @__PURE__ */ formula({
  name: 'insertShearStress',
  title: 'Shear stress in an insert at the opening of its seat',
  equation: 'τ_i = F / (π·D_i·t_i)',
  source: `${statics}. The maximum principal stress of pure shear equals the shear stress`,
  inputs: {
    load,
    opening,
    insertThickness: length('t_i', 'axial thickness of the insert at the diameter of the opening', {
      example: '12 mm',
    }),
  },
  output: stress('τ_i', 'mean shear stress'),
  example: { load: '4 kN', opening: '22 mm', insertThickness: '12 mm' },
  si: ({ load: f, opening: i, insertThickness }) => f / (Math.PI * i * insertThickness),
});

/**
 * Bending stress at the root of a lip that is wider than it is thick, as a cantilever of the width of the lip that is loaded
 * at its free edge. The hoop stiffness of the ring is neglected.
 *
 * @example lipBendingStress({ load: '4 kN', pocketDiameter: '30.2 mm', opening: '22 mm', lipThickness: '3 mm' }).in('MPa') // => 115.2380162
 */
export const lipBendingStress = /* @__PURE__ */ formula({
  name: 'lipBendingStress',
  title: 'Bending stress at the root of the lip of a seat',
  equation: 'σ_l = 3·F·(D_p − D_i) / (π·D_p·t_l²)',
  source:
    'Bending of a cantilever, per unit of the circumference of its root (engineering practice, no published source)',
  inputs: {
    load,
    pocketDiameter: length('D_p', 'diameter of the pocket, the root of the lip', { example: '30.2 mm' }),
    opening,
    lipThickness: length('t_l', 'thickness of the lip', { example: '3 mm' }),
  },
  output: stress('σ_l', 'bending stress'),
  example: { load: '4 kN', pocketDiameter: '30.2 mm', opening: '22 mm', lipThickness: '3 mm' },
  requires: [
    ({ pocketDiameter, opening: i }) => i < pocketDiameter || 'the opening must be narrower than the pocket',
  ],
  si: ({ load: f, pocketDiameter: p, opening: i, lipThickness: t }) =>
    (3 * f * (p - i)) / (Math.PI * p * t * t),
});

/**
 * Width by which a seat supports an insert that has moved to one side of its pocket, after the opening has grown and its
 * edge has eroded. Zero or less means that the insert can fall through.
 *
 * @example seatOverlap({ insertDiameter: '30 mm', pocketDiameter: '30.2 mm', opening: '26 mm', growth: '0.1 mm', erosion: '0.3 mm' }).in('mm') // => 1.55
 */
export const seatOverlap = /* @__PURE__ */ formula({
  name: 'seatOverlap',
  title: 'Least overlap of an insert and its seat',
  equation: 'c = (D_o − D_i) / 2 − (D_p − D_o) / 2 − g / 2 − e',
  source: `Geometry. ${statics}`,
  inputs: {
    insertDiameter,
    pocketDiameter: length('D_p', 'diameter of the pocket', { example: '30.2 mm' }),
    opening,
    growth: length('g', 'thermal growth of the opening in diameter, relative to the insert', { min: 0 }),
    erosion: length('e', 'radial erosion of the edge of the opening', { min: 0 }),
  },
  output: length('c', 'width of the overlap', { whole: false }),
  example: {
    insertDiameter: '30 mm',
    pocketDiameter: '30.2 mm',
    opening: '26 mm',
    growth: '0.1 mm',
    erosion: '0.3 mm',
  },
  si: ({ insertDiameter: o, pocketDiameter: p, opening: i, growth, erosion }) =>
    (o - i) / 2 - (p - o) / 2 - growth / 2 - erosion,
});
