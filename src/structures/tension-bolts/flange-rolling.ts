import { angle, force, formula, length, ratio, stress } from '../../units';

const ring = {
  load: force('F', 'force on the closure'),
  boltCircle: length('D_c', 'diameter of the bolt circle'),
  meanDiameter: length('D_m', 'mean diameter of the wall that the flange is on'),
  outsideDiameter: length('D_o', 'outside diameter of the flange'),
  bore: length('D_i', 'inside diameter of the flange'),
  thickness: length('h', 'thickness of the flange'),
};
const example = {
  load: '10 kN',
  boltCircle: '66 mm',
  meanDiameter: '53 mm',
  outsideDiameter: '78 mm',
  bore: '50 mm',
  thickness: '8 mm',
} as const;
const beyond = ({ outsideDiameter, bore }: { outsideDiameter: number; bore: number }): true | string =>
  outsideDiameter > bore || 'the flange must be wider than its bore';
const source =
  'Equilibrium of a ring that rolls without distortion of its section (Timoshenko, Strength of Materials, from memory)';

/**
 * Hoop stress at the corner of a flange that its bolts roll about its middle line: they pull outside the wall that the flange is
 * on.
 *
 * @example flangeRollingStress({ load: '10 kN', boltCircle: '66 mm', meanDiameter: '53 mm', outsideDiameter: '78 mm', bore: '50 mm', thickness: '8 mm' }).in('MPa').toFixed(2) // => '87.24'
 */
export const flangeRollingStress = /* @__PURE__ */ formula({
  name: 'flangeRollingStress',
  title: 'Stress of a flange that rolls',
  equation: 'σ = 3·F·(D_c − D_m) / (π·h²·D_i·ln(D_o / D_i))',
  source,
  inputs: ring,
  output: stress('σ', 'hoop stress at the inner corner'),
  example,
  requires: [beyond],
  si: ({ load, boltCircle, meanDiameter, outsideDiameter, bore, thickness }) =>
    (3 * load * (boltCircle - meanDiameter)) /
    (Math.PI * thickness ** 2 * bore * Math.log(outsideDiameter / bore)),
});

/** @example flangeRotation({ load: '10 kN', boltCircle: '66 mm', meanDiameter: '53 mm', outsideDiameter: '78 mm', bore: '50 mm', thickness: '8 mm', elasticModulus: '70 GPa' }).in('deg').toFixed(4) // => '0.4463' */
export const flangeRotation = /* @__PURE__ */ formula({
  name: 'flangeRotation',
  title: 'Rotation of a flange that rolls',
  equation: 'θ = 3·F·(D_c − D_m) / (π·E·h³·ln(D_o / D_i))',
  source,
  inputs: { ...ring, elasticModulus: stress('E', "Young's modulus of the flange", { above: 0 }) },
  output: angle('θ', 'rotation'),
  example: { ...example, elasticModulus: '68.9 GPa' },
  requires: [beyond],
  si: ({ load, boltCircle, meanDiameter, outsideDiameter, bore, thickness, elasticModulus }) =>
    (3 * load * (boltCircle - meanDiameter)) /
    (Math.PI * elasticModulus * thickness ** 3 * Math.log(outsideDiameter / bore)),
});

/**
 * Axial stress of the wall next to a flange that rolls: the force on the closure, and the bending of a long tube whose end is turned
 * and pushed outwards by the back of the flange.
 *
 * @example rolledWallStress({ load: '0.001 N', meanDiameter: '53 mm', wall: '3 mm', rotation: '0.1 deg', thickness: '8 mm', edgeLength: '7 mm', elasticModulus: '70 GPa', poissonRatio: 0.33 }).in('MPa').toFixed(2) // => '92.34'
 */
export const rolledWallStress = /* @__PURE__ */ formula({
  name: 'rolledWallStress',
  title: 'Axial stress of a wall next to a flange that rolls',
  equation: 'σ_x = F / (π·D_m·t) + E·t·max(θ, 0 − θ)·(2 + h / λ) / (2·λ·(1 − ν²))',
  source: 'Edge bending of a long cylinder, moment 2·D·θ/λ·(1 + h/(2·λ)) (thin-shell theory)',
  inputs: {
    load: force('F', 'force on the closure'),
    meanDiameter: length('D_m', 'mean diameter of the wall'),
    wall: length('t', 'thickness of the wall'),
    rotation: angle('θ', 'rotation of the flange'),
    thickness: length('h', 'thickness of the flange'),
    edgeLength: length('λ', 'edge length of the wall'),
    elasticModulus: stress('E', "Young's modulus of the wall", { above: 0 }),
    poissonRatio: ratio('ν', "Poisson's ratio", { min: 0, below: 0.5 }),
  },
  output: stress('σ_x', 'maximum axial stress'),
  example: {
    load: '10 kN',
    meanDiameter: '53 mm',
    wall: '3 mm',
    rotation: '0.1 deg',
    thickness: '8 mm',
    edgeLength: '6.9 mm',
    elasticModulus: '68.9 GPa',
    poissonRatio: 0.33,
  },
  si: ({ load, meanDiameter, wall, rotation, thickness, edgeLength, elasticModulus, poissonRatio }) =>
    load / (Math.PI * meanDiameter * wall) +
    (elasticModulus * wall * Math.abs(rotation) * (2 + thickness / edgeLength)) /
      (2 * edgeLength * (1 - poissonRatio ** 2)),
});
