import { force, formula, length, stress } from '../../units';

/**
 * Bending stress in a bolt whose load is applied at an arm from where it is held: a gap between case and closure, or
 * a soft washer that lets the head turn. Elastic, without credit for plastic bending.
 *
 * @example boltBendingStress({ load: '1 kN', arm: '0.5 mm', diameter: '5 mm' }).in('MPa') // => 40.74366543
 */
export const boltBendingStress = /* @__PURE__ */ formula({
  name: 'boltBendingStress',
  title: 'Bending stress in a bolt across a gap',
  equation: 'σ = 32·F·a / (π·d³)',
  source:
    "Shigley's Mechanical Engineering Design, 9th ed., section 8-12, bending of the fastener (arm by the caller)",
  inputs: {
    load: force('F', 'load on one bolt'),
    arm: length('a', 'arm of the load', { min: 0 }),
    diameter: length('d', 'diameter of the bolt where it bends; the root where it is threaded'),
  },
  output: stress('σ', 'bending stress'),
  example: { load: '2.6 kN', arm: '0.1 mm', diameter: '5 mm' },
  si: ({ load, arm, diameter }) => (32 * load * arm) / (Math.PI * diameter ** 3),
});

/**
 * Bending and shear of a bolt taken together, by the distortion-energy theory; compare with a tensile strength.
 *
 * @example combinedBoltStress({ bending: '300 MPa', shear: '0 MPa' }).in('MPa') // => 300
 */
export const combinedBoltStress = /* @__PURE__ */ formula({
  name: 'combinedBoltStress',
  title: 'Bending with shear in a bolt',
  equation: 'σ_e = √(σ² + 3·τ²)',
  source: "Shigley's Mechanical Engineering Design, 9th ed., section 5-5, distortion-energy theory",
  inputs: {
    bending: stress('σ', 'bending stress'),
    shear: stress('τ', 'shear stress'),
  },
  output: stress('σ_e', 'equivalent tensile stress'),
  example: { bending: '21 MPa', shear: '90 MPa' },
  si: ({ bending, shear }) => Math.sqrt(bending * bending + 3 * shear * shear),
});
