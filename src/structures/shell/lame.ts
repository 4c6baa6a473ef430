import { formula, gaugePressure, length, optional, stress } from '../../units';

/** What the three Lamé stresses are made of. */
interface Cylinder {
  readonly pressure: number;
  readonly externalPressure?: number;
  readonly insideRadius: number;
  readonly outsideRadius: number;
}

const source =
  "Lamé, as in Shigley's Mechanical Engineering Design, 9th ed., equations 3-49 and 3-51, and Roark's Formulas for Stress and Strain, thick-walled cylinders";

const inputs = {
  pressure: gaugePressure('p_i', 'pressure inside'),
  externalPressure: optional(gaugePressure('p_o', 'pressure outside'), 0),
  insideRadius: length('r_i', 'inside radius'),
  outsideRadius: length('r_o', 'outside radius'),
  radius: length('r', 'radius of interest'),
};

const example = {
  pressure: '1000 psi',
  insideRadius: '1.5 in',
  outsideRadius: '1.75 in',
  radius: '1.5 in',
} as const;

const isWall = ({
  insideRadius,
  outsideRadius,
}: Pick<Cylinder, 'insideRadius' | 'outsideRadius'>): true | string =>
  outsideRadius > insideRadius || 'the outside radius must be more than the inside radius';
const inWall = ({
  radius,
  insideRadius,
  outsideRadius,
}: Pick<Cylinder, 'insideRadius' | 'outsideRadius'> & { readonly radius: number }): true | string =>
  (radius >= insideRadius * (1 - 1e-12) && radius <= outsideRadius * (1 + 1e-12)) ||
  'the radius must lie in the wall, between the inside and the outside radius';

// Differences of squares are factored: r_o² − r_i² loses figures in a thin wall.
const squares = ({
  insideRadius: a,
  outsideRadius: b,
}: Pick<Cylinder, 'insideRadius' | 'outsideRadius'>): number => (b - a) * (b + a);

/** The constant of Lamé's solution, which is also the longitudinal stress with closed ends. */
const constant = ({ pressure, externalPressure = 0, insideRadius, outsideRadius }: Cylinder): number =>
  (pressure * insideRadius * insideRadius - externalPressure * outsideRadius * outsideRadius) /
  squares({ insideRadius, outsideRadius });

/** The part that falls with the square of the radius, at a radius. */
const falling = (cylinder: Cylinder & { readonly radius: number }): number => {
  const { pressure, externalPressure = 0, insideRadius, outsideRadius, radius } = cylinder;
  const squared = (insideRadius / radius) * (outsideRadius / radius);
  return ((pressure - externalPressure) * insideRadius * outsideRadius * squared) / squares(cylinder);
};

/**
 * Hoop stress in a thick cylinder at any radius; maximum at the bore.
 *
 * @example lameHoopStress({ pressure: '1000 psi', insideRadius: '1 in', outsideRadius: '2 in', radius: '1 in' }).in('psi') // => 1666.666667
 */
export const lameHoopStress = /* @__PURE__ */ formula({
  name: 'lameHoopStress',
  title: 'Hoop stress in a thick cylinder',
  equation: 'σ_h = (p_i·r_i² − p_o·r_o²) / (r_o² − r_i²) + (p_i − p_o)·r_i²·r_o² / ((r_o² − r_i²)·r²)',
  source,
  inputs,
  output: stress('σ_h', 'hoop stress, tension positive'),
  example,
  requires: [isWall, inWall],
  si: (cylinder) => constant(cylinder) + falling(cylinder),
  solve: {
    pressure: (sigma, { externalPressure, insideRadius: a, outsideRadius: b, radius: r }) =>
      (sigma * squares({ insideRadius: a, outsideRadius: b }) +
        externalPressure * b * b * (1 + (a / r) ** 2)) /
      (a * a * (1 + (b / r) ** 2)),
    externalPressure: (sigma, { pressure, insideRadius: a, outsideRadius: b, radius: r }) =>
      (pressure * a * a * (1 + (b / r) ** 2) - sigma * squares({ insideRadius: a, outsideRadius: b })) /
      (b * b * (1 + (a / r) ** 2)),
  },
});

/**
 * Radial stress in a thick cylinder at any radius; minus the pressure at the bore.
 *
 * @example lameRadialStress({ pressure: '1000 psi', insideRadius: '1 in', outsideRadius: '2 in', radius: '1 in' }).in('psi') // => -1000
 */
export const lameRadialStress = /* @__PURE__ */ formula({
  name: 'lameRadialStress',
  title: 'Radial stress in a thick cylinder',
  equation: 'σ_r = (p_i·r_i² − p_o·r_o²) / (r_o² − r_i²) − (p_i − p_o)·r_i²·r_o² / ((r_o² − r_i²)·r²)',
  source,
  inputs,
  output: stress('σ_r', 'radial stress, tension positive'),
  example,
  requires: [isWall, inWall],
  si: ({ pressure, externalPressure = 0, insideRadius: a, outsideRadius: b, radius: r }) => {
    // Written as the two surface terms, so that −p at the bore is exact.
    const all = squares({ insideRadius: a, outsideRadius: b });
    const fromInside = (a * a * (r - b) * (r + b)) / (r * r * all);
    const fromOutside = (b * b * (r - a) * (r + a)) / (r * r * all);
    return pressure * fromInside - externalPressure * fromOutside;
  },
});

/**
 * Longitudinal stress in a thick cylinder whose ends are closed, so that the wall carries the end force.
 *
 * @example lameLongitudinalStress({ pressure: '1000 psi', insideRadius: '1 in', outsideRadius: '2 in' }).in('psi') // => 333.3333333
 */
export const lameLongitudinalStress = /* @__PURE__ */ formula({
  name: 'lameLongitudinalStress',
  title: 'Longitudinal stress in a closed thick cylinder',
  equation: 'σ_l = (p_i·r_i² − p_o·r_o²) / (r_o² − r_i²)',
  source,
  inputs: {
    pressure: inputs.pressure,
    externalPressure: inputs.externalPressure,
    insideRadius: inputs.insideRadius,
    outsideRadius: inputs.outsideRadius,
  },
  output: stress('σ_l', 'longitudinal stress, tension positive'),
  example: { pressure: '1000 psi', insideRadius: '1.5 in', outsideRadius: '1.75 in' },
  requires: [isWall],
  si: constant,
});

/**
 * Von Mises stress of three principal stresses.
 *
 * @example vonMisesStress({ first: '100 MPa', second: '50 MPa', third: '0 MPa' }).in('MPa') // => 86.60254038
 */
export const vonMisesStress = /* @__PURE__ */ formula({
  name: 'vonMisesStress',
  title: 'Von Mises stress',
  equation: 'σ_v = √(((σ_1 − σ_2)² + (σ_2 − σ_3)² + (σ_3 − σ_1)²) / 2)',
  source: "Distortion energy, Shigley's Mechanical Engineering Design, 9th ed., equation 5-12",
  inputs: {
    first: stress('σ_1', 'first principal stress'),
    second: stress('σ_2', 'second principal stress'),
    third: stress('σ_3', 'third principal stress'),
  },
  output: stress('σ_v', 'von Mises stress'),
  example: { first: '100 MPa', second: '50 MPa', third: '-7 MPa' },
  si: ({ first, second, third }) =>
    Math.sqrt(((first - second) ** 2 + (second - third) ** 2 + (third - first) ** 2) / 2),
});
