import { angle, area, force, formula, length, optional, ratio, stress, torque } from '../../units';

/**
 * The part of the tightening torque that the thread takes, which twists the bolt.
 *
 * @example threadTorque({ preload: '5 kN', pitch: '0.8 mm', pitchDiameter: '4.48 mm' }).in('N*m').toFixed(2) // => '2.60'
 */
export const threadTorque = /* @__PURE__ */ formula({
  name: 'threadTorque',
  title: 'Torque in the thread of a bolt as it is tightened',
  equation: 'T_t = F·d_2 / 2·(P / (π·d_2) + f / cos(α)) / (1 − f·P / (π·d_2·cos(α)))',
  source: "Shigley's Mechanical Engineering Design, 9th ed., equation 8-26, term of the thread",
  inputs: {
    preload: force('F', 'preload', { min: 0 }),
    pitch: length('P', 'pitch'),
    pitchDiameter: length('d_2', 'pitch diameter'),
    friction: optional(ratio('f', 'coefficient of friction in the thread', { min: 0, max: 1 }), 0.15),
    flankAngle: optional(
      angle('α', 'of the flanks from the plane across the axis; 30° for 60° threads', {
        min: 0,
        below: Math.PI / 3,
      }),
      Math.PI / 6,
    ),
  },
  output: torque('T_t', 'torque in the thread', { min: 0 }),
  example: { preload: '5 kN', pitch: '0.8 mm', pitchDiameter: '4.48 mm' },
  si: ({ preload, pitch, pitchDiameter, friction = 0.15, flankAngle = Math.PI / 6 }) => {
    const lead = pitch / (Math.PI * pitchDiameter);
    const onFlank = friction / Math.cos(flankAngle);
    return (((preload * pitchDiameter) / 2) * (lead + onFlank)) / (1 - onFlank * lead);
  },
});

/**
 * Torsion that tightening leaves in a bolt; about half of the torque stays.
 *
 * @example threadTorsionStress({ torque: '2.6 N*m', rootDiameter: '4.0185048 mm' }).in('MPa').toFixed(2) // => '102.03'
 */
export const threadTorsionStress = /* @__PURE__ */ formula({
  name: 'threadTorsionStress',
  title: 'Torsion that tightening leaves in a bolt',
  equation: 'τ_t = 16·κ·T_t / (π·d_3³)',
  source: 'Torsion of a round bar (half of the torque kept: VDI 2230, from memory)',
  inputs: {
    torque: torque('T_t', 'torque in the thread', { min: 0 }),
    kept: optional(ratio('κ', 'fraction of the torque that stays after tightening', { min: 0, max: 1 }), 0.5),
    rootDiameter: length('d_3', 'root diameter of the thread'),
  },
  output: stress('τ_t', 'torsional stress', { min: 0 }),
  example: { torque: '2.6 N*m', rootDiameter: '4.02 mm' },
  si: ({ torque: t, kept = 0.5, rootDiameter }) => (16 * kept * t) / (Math.PI * rootDiameter ** 3),
});

/** @example boltTension({ load: '5 kN', area: '20 mm^2' }).in('MPa') // => 250 */
export const boltTension = /* @__PURE__ */ formula({
  name: 'boltTension',
  title: 'Tension in a bolt',
  equation: 'σ = F / A_t',
  source: 'Definition of stress, on the tensile stress area',
  inputs: { load: force('F', 'force in the bolt', { min: 0 }), area: area('A_t', 'tensile stress area') },
  output: stress('σ', 'tensile stress', { min: 0 }),
  example: { load: '5 kN', area: '14.2 mm^2' },
  si: ({ load, area: a }) => load / a,
});

/**
 * Preload, torsion of tightening, bending and shear of a bolt taken together; compare with the yield strength.
 *
 * @example tightenedBoltStress({ tension: '300 MPa', shear: '0 MPa' }).in('MPa') // => 300
 */
export const tightenedBoltStress = /* @__PURE__ */ formula({
  name: 'tightenedBoltStress',
  title: 'Tension, torsion, bending and shear in a bolt',
  equation: 'σ_e = √((σ + σ_b)² + 3·(τ_t + τ)²)',
  source: "Shigley's Mechanical Engineering Design, 9th ed., section 5-5, distortion-energy theory",
  inputs: {
    tension: stress('σ', 'tension of the preload', { min: 0 }),
    bending: optional(stress('σ_b', 'bending stress', { min: 0 }), 0),
    torsion: optional(stress('τ_t', 'torsional stress', { min: 0 }), 0),
    shear: stress('τ', 'shear stress', { min: 0 }),
  },
  output: stress('σ_e', 'equivalent tensile stress', { min: 0 }),
  example: { tension: '353 MPa', torsion: '102 MPa', shear: '176 MPa' },
  si: ({ tension, bending = 0, torsion = 0, shear }) =>
    Math.sqrt((tension + bending) ** 2 + 3 * (torsion + shear) ** 2),
});

/**
 * The tension at which a bolt yields while tightening leaves torsion in it.
 *
 * @example yieldTensionWithTorsion({ yieldStrength: '500 MPa', torsion: '0 MPa' }).in('MPa') // => 500
 */
export const yieldTensionWithTorsion = /* @__PURE__ */ formula({
  name: 'yieldTensionWithTorsion',
  title: 'Tension at which a bolt under torsion yields',
  equation: 'σ_y = √(max(0, S_y² − 3·τ_t²))',
  source: "Shigley's Mechanical Engineering Design, 9th ed., section 5-5, distortion-energy theory",
  inputs: {
    yieldStrength: stress('S_y', 'yield strength of the bolt', { above: 0 }),
    torsion: stress('τ_t', 'torsional stress', { min: 0 }),
  },
  output: stress('σ_y', 'tension at yield', { min: 0 }),
  example: { yieldStrength: '640 MPa', torsion: '102 MPa' },
  si: ({ yieldStrength, torsion }) => Math.sqrt(Math.max(0, yieldStrength ** 2 - 3 * torsion ** 2)),
});

/**
 * Bending stress of a bolt over its shear stress, where the shear load has an arm.
 *
 * @example bendingOverShear({ arm: '0.05 mm', area: '14.2 mm^2', rootDiameter: '4.02 mm' }).toFixed(4) // => '0.1113'
 */
export const bendingOverShear = /* @__PURE__ */ formula({
  name: 'bendingOverShear',
  title: 'Bending stress over shear stress of a bolt across a gap',
  equation: 'r = 32·a·A / (π·d_3³)',
  source: "Shigley's Mechanical Engineering Design, 9th ed., section 8-12, bending and shear of the fastener",
  inputs: {
    arm: length('a', 'arm of the load', { min: 0 }),
    area: area('A', 'area of the bolt in the shear plane'),
    rootDiameter: length('d_3', 'root diameter of the thread'),
  },
  output: ratio('r', 'bending stress/shear stress', { min: 0 }),
  example: { arm: '0.05 mm', area: '14.2 mm^2', rootDiameter: '4.02 mm' },
  si: ({ arm, area: a, rootDiameter }) => (32 * arm * a) / (Math.PI * rootDiameter ** 3),
});

/**
 * Shear load at which a tightened bolt yields; zero where tightening alone makes it yield.
 *
 * @example tightenedShearLoad({ tension: '0 MPa', torsion: '0 MPa', yieldStrength: '600 MPa', area: '20 mm^2' }).in('N').toFixed(2) // => '6928.20'
 */
export const tightenedShearLoad = /* @__PURE__ */ formula({
  name: 'tightenedShearLoad',
  title: 'Shear load at which a tightened bolt yields',
  equation:
    'V = A·max(0, √(max(0, (r·σ + 3·τ_t)² + (r² + 3)·(S_y² − σ² − 3·τ_t²))) − r·σ − 3·τ_t) / (r² + 3)',
  source:
    "Shigley's Mechanical Engineering Design, 9th ed., section 5-5, distortion-energy theory, solved for the shear load",
  inputs: {
    tension: stress('σ', 'tension of the preload', { min: 0 }),
    torsion: stress('τ_t', 'torsional stress', { min: 0 }),
    yieldStrength: stress('S_y', 'yield strength of the bolt', { above: 0 }),
    area: area('A', 'area of the bolt in the shear plane'),
    bendingRatio: optional(ratio('r', 'bending stress/shear stress', { min: 0 }), 0),
  },
  output: force('V', 'shear load', { min: 0 }),
  example: { tension: '353 MPa', torsion: '102 MPa', yieldStrength: '1100 MPa', area: '14.2 mm^2' },
  si: ({ tension, torsion, yieldStrength, area: a, bendingRatio: r = 0 }) => {
    const start = r * tension + 3 * torsion;
    const left = yieldStrength ** 2 - tension ** 2 - 3 * torsion ** 2;
    return (a * Math.max(0, Math.sqrt(Math.max(0, start ** 2 + (r * r + 3) * left)) - start)) / (r * r + 3);
  },
});
