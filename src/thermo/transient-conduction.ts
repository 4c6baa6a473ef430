import { besselJ0, besselJ1, findRoot } from '../numerics';
import { choice, optional, procedure, ratio } from '../units';

const shapeOfBody = /* @__PURE__ */ choice(
  'shape: a wall of half thickness L (or of thickness L, insulated behind), a long cylinder or a sphere',
  ['wall', 'cylinder', 'sphere'],
);
type HeatedShape = (typeof shapeOfBody.options)[number];

/** Temperatures as shares of the step: 1 is the temperature at the start, 0 that of the gas. */
export interface TransientConduction {
  /** (T − T_g)/(T_i − T_g) at the place. */
  readonly theta: number;
  /** The same, averaged over the volume: 1 − average is the fraction of the heat that the body has absorbed. */
  readonly averageTheta: number;
  /** First root ζ1 of the shape's equation in the Biot number. */
  readonly firstRoot: number;
  /** Coefficient C1 of the first term, at the centre. */
  readonly firstCoefficient: number;
  /** Number of terms of the series that were summed. */
  readonly terms: number;
}

interface Shape {
  /** Between the bounds the equation in ζ has one root, the n-th. */
  readonly bounds: (n: number) => readonly [lower: number, upper: number];
  readonly equation: (zeta: number, biot: number) => number;
  readonly coefficient: (zeta: number) => number;
  readonly mode: (zeta: number, position: number) => number;
  /** The volume average of the mode. */
  readonly average: (zeta: number) => number;
}

const zeroOf = (f: (x: number) => number, lower: number): number =>
  findRoot(f, { lower, upper: lower + Math.PI / 2 }).root;
const sinc = (x: number): number => (x === 0 ? 1 : Math.sin(x) / x);
// 1 − sinc(x), as its series where the difference cancels.
const sincDrop = (x: number): number =>
  x < 0.1 ? ((x * x) / 6) * (1 - ((x * x) / 20) * (1 - (x * x) / 42)) : 1 - sinc(x);
// 3·(sin ζ − ζ·cos ζ)/ζ³, as its series where the difference cancels.
const ballAverage = (z: number): number =>
  z < 0.05 ? 1 - (z * z) / 10 + z ** 4 / 280 : (3 * (Math.sin(z) - z * Math.cos(z))) / z ** 3;

const shapes: Readonly<Record<HeatedShape, Shape>> = {
  wall: {
    bounds: (n) => [(n - 1) * Math.PI, (n - 0.5) * Math.PI],
    equation: (z, biot) => z * Math.sin(z) - biot * Math.cos(z),
    coefficient: (z) => (2 * sinc(z)) / (1 + sinc(2 * z)),
    mode: (z, x) => Math.cos(z * x),
    average: sinc,
  },
  cylinder: {
    bounds: (n) => [n === 1 ? 0 : zeroOf(besselJ1, (n - 1) * Math.PI), zeroOf(besselJ0, (n - 0.5) * Math.PI)],
    equation: (z, biot) => z * besselJ1(z) - biot * besselJ0(z),
    coefficient: (z) => (2 * besselJ1(z)) / (z * (besselJ0(z) ** 2 + besselJ1(z) ** 2)),
    mode: (z, r) => besselJ0(z * r),
    average: (z) => (2 * besselJ1(z)) / z,
  },
  sphere: {
    bounds: (n) => [(n - 1) * Math.PI, n * Math.PI],
    // Divided by ζ, so that ζ = 0, which is no root of interest, is none.
    equation: (z, biot) => (1 - biot) * sinc(z) - Math.cos(z),
    coefficient: (z) => ((2 / 3) * z * z * ballAverage(z)) / sincDrop(2 * z),
    mode: (z, r) => sinc(z * r),
    average: ballAverage,
  },
};

/**
 * Temperature inside a body of uniform temperature that is suddenly in a gas of another: the exact series, summed
 * until its terms are negligible. From a Fourier number of 0.2 on, its first term alone is accurate to 2 %.
 *
 * @example transientConduction({ shape: 'wall', biot: 1, fourier: 0.5 }).theta // => 0.77252638
 */
export const transientConduction = /* @__PURE__ */ procedure({
  name: 'transientConduction',
  title: 'Transient conduction in a wall, a long cylinder or a sphere',
  source: 'Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, 6th ed. (2007), section 5.5 and 5.6',
  inputs: {
    shape: shapeOfBody,
    biot: ratio('Bi', 'Biot number on the half thickness or the radius', { min: 0 }),
    fourier: ratio('Fo', 'Fourier number on the same length', { min: 0 }),
    position: optional(
      ratio('x/L', 'place over that length, from 0 (centre or insulated side) to 1 (surface)', {
        min: 0,
        max: 1,
      }),
      0,
    ),
  },
  gives: 'temperature at the place and averaged over the volume, as fractions of the step',
  example: { shape: 'wall', biot: 1, fourier: 0.5 },
  checks: [
    ({ biot }) =>
      biot >= 1e-6
        ? undefined
        : {
            path: 'biot',
            given: biot,
            expected: 'at least 1e-6',
            remedy: 'Use lumpedTemperature: the temperature of the body is uniform',
          },
    ({ fourier }) =>
      fourier >= 1e-4
        ? undefined
        : {
            path: 'fourier',
            given: fourier,
            expected: 'at least 1e-4',
            remedy: 'Use convectionStepTemperature: the body acts as an infinitely thick one',
          },
  ],
  run: ({ shape, biot, fourier, position }): TransientConduction => {
    const body = shapes[shape];
    let theta = 0;
    let averageTheta = 0;
    let firstRoot = 0;
    let firstCoefficient = 0;
    let terms = 0;
    for (let decay = 1; decay > 1e-17; ) {
      terms++;
      const [lower, upper] = body.bounds(terms);
      const zeta = findRoot((z) => body.equation(z, biot), { lower, upper }).root;
      const coefficient = body.coefficient(zeta);
      if (terms === 1) {
        firstRoot = zeta;
        firstCoefficient = coefficient;
      }
      decay = Math.exp(-zeta * zeta * fourier);
      theta += coefficient * decay * body.mode(zeta, position);
      averageTheta += coefficient * decay * body.average(zeta);
    }
    return { theta, averageTheta, firstRoot, firstCoefficient, terms };
  },
});
