import {
  formula,
  gaugePressure,
  length,
  pressureDifference,
  procedure,
  type Quantity,
  stress,
} from '../../units';
import { cylinder } from './cylinder';
import { elasticModulus, poissonRatio } from './elastic-inputs';
import { thickWallStress } from './thick-wall';

/**
 * Growth of a cylinder's radius from the stresses there (Hooke's law).
 *
 * @example radialDisplacement({ radius: '50 mm', elasticModulus: '70 GPa', poissonRatio: 0.33, hoop: '140 MPa', radial: '0 MPa', longitudinal: '0 MPa' }).in('mm') // => 0.1
 */
export const radialDisplacement = /* @__PURE__ */ formula({
  name: 'radialDisplacement',
  title: 'Radial growth from the stresses',
  equation: 'u = r / E·(σ_h − ν·(σ_r + σ_l))',
  source: "Hooke's law in a cylinder, as in Roark's Formulas for Stress and Strain, thick-walled cylinders",
  inputs: {
    radius: length('r', 'radius of interest'),
    elasticModulus,
    poissonRatio,
    hoop: stress('σ_h', 'hoop stress'),
    radial: stress('σ_r', 'radial stress'),
    longitudinal: stress('σ_l', 'longitudinal stress'),
  },
  output: length('u', 'growth of the radius', {}),
  example: {
    radius: '50 mm',
    elasticModulus: '70 GPa',
    poissonRatio: 0.33,
    hoop: '140 MPa',
    radial: '-7 MPa',
    longitudinal: '66 MPa',
  },
  si: ({ radius, elasticModulus, poissonRatio, hoop, radial, longitudinal }) =>
    (radius / elasticModulus) * (hoop - poissonRatio * (radial + longitudinal)),
});

/**
 * Radial growth of a thin closed cylinder, to check a hand calculation; {@link radialGrowth} holds for any wall.
 *
 * @example thinRadialGrowth({ pressure: '7 MPa', radius: '40 mm', wall: '4 mm', elasticModulus: '70 GPa', poissonRatio: 0.3 }).in('mm') // => 0.034
 */
export const thinRadialGrowth = /* @__PURE__ */ formula({
  name: 'thinRadialGrowth',
  title: 'Radial growth of a thin closed cylinder',
  equation: 'u = p·r² / (E·t)·(1 − ν / 2)',
  source: "Roark's Formulas for Stress and Strain, thin-walled pressure vessels, cylindrical, capped ends",
  inputs: {
    pressure: gaugePressure('p', 'internal pressure above ambient'),
    radius: length('r', 'mean radius of the wall'),
    wall: length('t', 'wall thickness'),
    elasticModulus,
    poissonRatio,
  },
  output: length('u', 'growth of the radius', {}),
  example: { pressure: '7 MPa', radius: '40 mm', wall: '3 mm', elasticModulus: '70 GPa', poissonRatio: 0.33 },
  valid: [({ radius, wall }) => radius / wall >= 10 || 'the wall is not thin (r/t < 10): use radialGrowth'],
  si: ({ pressure, radius, wall, elasticModulus, poissonRatio }) =>
    ((pressure * radius * radius) / (elasticModulus * wall)) * (1 - poissonRatio / 2),
});

/**
 * Radial growth of a thin open cylinder, whose wall carries no end force.
 *
 * @example thinRadialGrowthOpen({ pressure: '7 MPa', radius: '40 mm', wall: '4 mm', elasticModulus: '70 GPa' }).in('mm') // => 0.04
 */
export const thinRadialGrowthOpen = /* @__PURE__ */ formula({
  name: 'thinRadialGrowthOpen',
  title: 'Radial growth of a thin open cylinder',
  equation: 'u = p·r² / (E·t)',
  source:
    "Roark's Formulas for Stress and Strain, thin-walled pressure vessels, cylindrical, ends not capped",
  inputs: {
    pressure: gaugePressure('p', 'internal pressure above ambient'),
    radius: length('r', 'mean radius of the wall'),
    wall: length('t', 'wall thickness'),
    elasticModulus,
  },
  output: length('u', 'growth of the radius', {}),
  example: { pressure: '7 MPa', radius: '40 mm', wall: '3 mm', elasticModulus: '70 GPa' },
  valid: [({ radius, wall }) => radius / wall >= 10 || 'the wall is not thin (r/t < 10): use radialGrowth'],
  si: ({ pressure, radius, wall, elasticModulus }) => (pressure * radius * radius) / (elasticModulus * wall),
});

/**
 * Axial growth of a closed cylinder of any wall: the end force stretches it, the hoop stress shortens it.
 *
 * @example axialGrowth({ pressure: '10 MPa', insideRadius: '40 mm', outsideRadius: '50 mm', length: '500 mm', elasticModulus: '70 GPa', poissonRatio: 0.5 }).si // => 0
 */
export const axialGrowth = /* @__PURE__ */ formula({
  name: 'axialGrowth',
  title: 'Axial growth of a closed cylinder',
  equation: 'ΔL = L·p·r_i²·(1 − 2·ν) / (E·(r_o² − r_i²))',
  source:
    "Roark's Formulas for Stress and Strain, thick-walled cylinders, internal pressure in all directions",
  inputs: {
    pressure: pressureDifference('p', 'pressure inside above that outside'),
    insideRadius: length('r_i', 'inside radius'),
    outsideRadius: length('r_o', 'outside radius'),
    length: length('L', 'length of the cylinder'),
    elasticModulus,
    poissonRatio,
  },
  output: length('ΔL', 'growth of the length', {}),
  example: {
    pressure: '7 MPa',
    insideRadius: '40 mm',
    outsideRadius: '44 mm',
    length: '500 mm',
    elasticModulus: '70 GPa',
    poissonRatio: 0.33,
  },
  requires: [
    ({ insideRadius, outsideRadius }) =>
      outsideRadius > insideRadius || 'the outside radius must be more than the inside radius',
  ],
  si: ({ pressure, insideRadius: a, outsideRadius: b, length: whole, elasticModulus, poissonRatio }) =>
    (whole * pressure * a * a * (1 - 2 * poissonRatio)) / (elasticModulus * (b - a) * (b + a)),
});

/**
 * Growth of the radius of a cylinder under pressure, by Lamé, any wall; open ends grow 15 to 20 % more than closed ones.
 *
 * @example radialGrowth({ pressure: '6.894757 MPa', insideRadius: '38.1 mm', outsideRadius: '44.45 mm', elasticModulus: '68.9 GPa', poissonRatio: 0.33 }).in('µm').toFixed(3) // => '22.703'
 */
export const radialGrowth = /* @__PURE__ */ procedure({
  name: 'radialGrowth',
  title: 'Radial growth of a thick cylinder under pressure',
  source: radialDisplacement.source,
  inputs: { ...cylinder, elasticModulus, poissonRatio },
  gives: 'the growth of the radius',
  example: {
    pressure: '6.894757 MPa',
    insideRadius: '38.1 mm',
    outsideRadius: '44.45 mm',
    elasticModulus: '68.9 GPa',
    poissonRatio: 0.33,
  },
  run: ({ elasticModulus, poissonRatio, ...tube }): Quantity<'length'> => {
    const { hoop, radial, longitudinal } = thickWallStress(tube);
    const radius = tube.radius ?? tube.insideRadius;
    return radialDisplacement({ radius, elasticModulus, poissonRatio, hoop, radial, longitudinal });
  },
});
