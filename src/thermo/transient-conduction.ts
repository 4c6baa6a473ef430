import { besselJ0, besselJ1, findRoot } from '../numerics';
import { readInput } from '../units';
import { type FieldsOf, requireFields } from '../units/known-fields';
import { refusal } from '../units/refusal';

const procedure = 'transientConduction';

/** A body that is heated on its surface: a wall of half thickness L (or one of thickness L, insulated behind), a long cylinder, a sphere. */
export type HeatedShape = 'wall' | 'cylinder' | 'sphere';

/** What {@link transientConduction} needs. */
export interface TransientConductionOptions {
  readonly shape: HeatedShape;
  /** On the half thickness or the radius, see `biotNumber`. */
  readonly biot: number;
  /** On the same length, see `fourierNumber`; at least 1e-4. */
  readonly fourier: number;
  /** Place over that length, from 0 (middle, or insulated side) to 1 (surface); default 0. */
  readonly position?: number;
}

/** Temperatures as shares of the step: 1 is the temperature at the start, 0 that of the gas. */
export interface TransientConduction {
  /** (T − T_g)/(T_i − T_g) at the place. */
  readonly theta: number;
  /** The same, averaged over the volume: 1 − average is the share of the heat that the body has taken up. */
  readonly averageTheta: number;
  /** First root ζ1 of the shape's equation in the Biot number. */
  readonly firstRoot: number;
  /** Coefficient C1 of the first term, at the middle. */
  readonly firstCoefficient: number;
  /** How many terms of the series were summed. */
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

const transientConductionFields: FieldsOf<TransientConductionOptions> = {
  shape: 'required',
  biot: 'required',
  fourier: 'required',
  position: 'optional',
};

/**
 * Temperature inside a wall, a long cylinder or a sphere that was at one temperature and is suddenly in a gas of another: the
 * exact series, summed until its terms no longer count. From a Fourier number of 0.2 on its first term alone is good to 2 %.
 *
 * Source: Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, 6th ed. (2007), section 5.5 and 5.6.
 *
 * @throws MeopError `out-of-domain` for a Biot number below 1e-6 (lumped heating is exact there), a Fourier number below 1e-4 (there the body is as good as
 * infinitely thick: `convectionStepTemperature`), or a place outside 0 to 1
 * @example transientConduction({ shape: 'wall', biot: 1, fourier: 0.5 }).theta // => 0.77252638
 */
export function transientConduction(options: TransientConductionOptions): TransientConduction {
  requireFields(procedure, options, transientConductionFields);
  const read = (field: 'biot' | 'fourier' | 'position', value: number): number =>
    readInput('dimensionless', field, value, procedure).si;
  const biot = read('biot', options.biot);
  const fourier = read('fourier', options.fourier);
  const position = read('position', options.position ?? 0);
  if (!Object.keys(shapes).includes(options.shape))
    throw refusal(procedure, 'shape', options.shape, "'wall', 'cylinder' or 'sphere'");
  if (!(biot >= 1e-6))
    throw refusal(
      procedure,
      'biot',
      options.biot,
      'at least 1e-6',
      'below it the body is of one temperature: lumpedTemperature',
    );
  if (!(fourier >= 1e-4))
    throw refusal(
      procedure,
      'fourier',
      options.fourier,
      'at least 1e-4',
      'convectionStepTemperature serves below it',
    );
  if (!(position >= 0 && position <= 1))
    throw refusal(procedure, 'position', options.position, 'from 0 to 1');

  const shape = shapes[options.shape];
  let theta = 0;
  let averageTheta = 0;
  let firstRoot = 0;
  let firstCoefficient = 0;
  let terms = 0;
  for (let decay = 1; decay > 1e-17; ) {
    terms++;
    const [lower, upper] = shape.bounds(terms);
    const zeta = findRoot((z) => shape.equation(z, biot), { lower, upper }).root;
    const coefficient = shape.coefficient(zeta);
    if (terms === 1) {
      firstRoot = zeta;
      firstCoefficient = coefficient;
    }
    decay = Math.exp(-zeta * zeta * fourier);
    theta += coefficient * decay * shape.mode(zeta, position);
    averageTheta += coefficient * decay * shape.average(zeta);
  }
  return { theta, averageTheta, firstRoot, firstCoefficient, terms };
}
