import {
  constants,
  fromSiValue,
  MeopError,
  type NamedKind,
  type Quantity,
  type QuantityInput,
  readInput,
  unitOf,
} from '../units';
import { type FieldsOf, requireFields } from '../units/known-fields';
import { readPositive, refusal } from '../units/refusal';
import { type BurnLaw, saintRobert } from './burn-law';
import type { SaintRobertInput } from './burn-law-input';

/** A propellant as analysis sees it: how dense, how fast it burns, and what gas it makes. */
export interface Propellant {
  readonly name: string;
  /** Density as cast: what is in the motor. */
  readonly density: Quantity<'density'>;
  /** Density without voids, where it is known. */
  readonly idealDensity: Quantity<'density'> | undefined;
  readonly law: BurnLaw;
  /** Ratio of specific heats in chamber and throat. */
  readonly gamma: number;
  /** Specific gas constant of all products, condensed ones counted in the mass. */
  readonly gasConstant: Quantity<'specific gas constant'>;
  /** Flame temperature without losses. */
  readonly flameTemperature: Quantity<'temperature'>;
  /** Characteristic velocity without losses. */
  readonly idealCharacteristicVelocity: Quantity<'speed'>;
  /** Delivered over ideal characteristic velocity. */
  readonly characteristicVelocityEfficiency: number;
  /** Characteristic velocity delivered. */
  readonly characteristicVelocity: Quantity<'speed'>;
  /** Flame temperature that gives the characteristic velocity delivered: η²·T. */
  readonly effectiveTemperature: Quantity<'temperature'>;
  /** Mass fraction of products that are liquid or solid; `undefined` where it is not known. */
  readonly condensedFraction: number | undefined;
  /** Where each value comes from and where it holds, by field. */
  readonly sources: Readonly<Record<string, string>>;
  readonly cautions: readonly string[];
  toString(): string;
}

/** What {@link propellant} is made of. Two of gas constant (or molar mass), temperature and c* fix the third. */
export interface PropellantInput {
  readonly name?: string;
  /** Density as cast. Weigh a grain: theoretical density is seldom reached. */
  readonly density?: QuantityInput<'density'>;
  readonly idealDensity?: QuantityInput<'density'>;
  /** Cast over ideal density, where only the ideal density is known. */
  readonly densityRatio?: number;
  readonly law: BurnLaw | SaintRobertInput;
  readonly gamma: number;
  readonly molarMass?: QuantityInput<'molar mass'>;
  readonly gasConstant?: QuantityInput<'specific gas constant'>;
  readonly flameTemperature?: QuantityInput<'temperature'>;
  /** Ideal c*, where it is known better than molar mass or temperature. */
  readonly idealCharacteristicVelocity?: QuantityInput<'speed'>;
  /** Default 1. */
  readonly characteristicVelocityEfficiency?: number;
  readonly condensedFraction?: number;
  readonly sources?: Readonly<Record<string, string>>;
}

const context = 'propellant';

const fields: FieldsOf<PropellantInput> = {
  name: 'optional',
  density: 'optional',
  idealDensity: 'optional',
  densityRatio: 'optional',
  law: 'required',
  gamma: 'required',
  molarMass: 'optional',
  gasConstant: 'optional',
  flameTemperature: 'optional',
  idealCharacteristicVelocity: 'optional',
  characteristicVelocityEfficiency: 'optional',
  condensedFraction: 'optional',
  sources: 'optional',
};

/**
 * Makes a propellant. Characteristic velocity, gas constant, temperature and γ hang together
 * (c* = √(R·T) / Γ(γ)): give two of the first three, or all of them where they agree within 0.5 %.
 *
 * Source: Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), ch. 3 (from memory); the losses are carried into the
 * temperature, T·η², so that the mass balance closes.
 *
 * @throws MeopError `missing-field`, `out-of-domain`, `inconsistent`
 * @example propellant({ density: '1820 kg/m^3', law: { referenceRate: '7 mm/s', referencePressure: '4 MPa', exponent: 0.3 }, gamma: 1.14, molarMass: '40 g/mol', flameTemperature: '1600 K' }).characteristicVelocity.in('m/s') // => 905.8798
 */
export function propellant(input: PropellantInput): Propellant {
  requireFields(context, input, fields);
  const { name = 'propellant', sources = {}, condensedFraction } = input;
  const gamma = within('gamma', input.gamma, 1, Number.POSITIVE_INFINITY, 'above 1');
  const efficiency = within(
    'characteristicVelocityEfficiency',
    input.characteristicVelocityEfficiency ?? 1,
    0,
    1.1,
    'above 0 and below 1.1',
  );
  if (condensedFraction !== undefined && condensedFraction !== 0)
    within('condensedFraction', condensedFraction, 0, 1, 'at least 0 and below 1');
  const { gasConstant, temperature, velocity } = readGas(input, gamma);
  const { density, idealDensity } = readDensity(input);
  const law = isLaw(input.law) ? input.law : saintRobert(input.law);
  const cautions = [
    ...(efficiency > 1
      ? ['a characteristic velocity above the ideal one: check throat, mass and pressure']
      : []),
    ...(idealDensity !== undefined && density > idealDensity * 1.0005
      ? ['the density as cast is above the ideal density: check mass and dimensions']
      : []),
  ];
  const made: Propellant = {
    name,
    density: fromSiValue<'density'>(density, 'density', unitOf('kg/m^3')),
    idealDensity:
      idealDensity === undefined
        ? undefined
        : fromSiValue<'density'>(idealDensity, 'density', unitOf('kg/m^3')),
    law,
    gamma,
    gasConstant: fromSiValue<'specific gas constant'>(
      gasConstant,
      'specific gas constant',
      unitOf('J/(kg*K)'),
    ),
    flameTemperature: fromSiValue<'temperature'>(temperature, 'temperature', unitOf('K')),
    idealCharacteristicVelocity: fromSiValue<'speed'>(velocity, 'speed', unitOf('m/s')),
    characteristicVelocityEfficiency: efficiency,
    characteristicVelocity: fromSiValue<'speed'>(efficiency * velocity, 'speed', unitOf('m/s')),
    effectiveTemperature: fromSiValue<'temperature'>(
      efficiency ** 2 * temperature,
      'temperature',
      unitOf('K'),
    ),
    condensedFraction,
    sources: { ...sources },
    cautions,
    toString: () => propellantText(made),
    ...{ [Symbol.for('nodejs.util.inspect.custom')]: () => propellantText(made) },
  };
  return made;
}

const isLaw = (law: BurnLaw | SaintRobertInput): law is BurnLaw => 'characterised' in law;

// Γ² = γ·(2 / (γ + 1))^((γ + 1) / (γ − 1)) and R·T = (Γ·c*)² (Sutton & Biblarz 7th ed., ch. 3 (from memory)).
function vandenkerckhoveSquared(gamma: number): number {
  return gamma * (2 / (gamma + 1)) ** ((gamma + 1) / (gamma - 1));
}

interface Gas {
  readonly gasConstant: number;
  readonly temperature: number;
  readonly velocity: number;
}

function readGas(input: PropellantInput, gamma: number): Gas {
  const squared = vandenkerckhoveSquared(gamma);
  const given = readGasConstant(input);
  const temperature = maybe('temperature', 'flameTemperature', input.flameTemperature);
  const velocity = maybe('speed', 'idealCharacteristicVelocity', input.idealCharacteristicVelocity);
  if (given !== undefined && temperature !== undefined) {
    const fromGas = Math.sqrt((given * temperature) / squared);
    if (velocity !== undefined && Math.abs(velocity / fromGas - 1) > 0.005)
      throw new MeopError(
        'inconsistent',
        `${context}: idealCharacteristicVelocity: ${velocity} m/s given, but the gas constant, temperature and gamma given make it ${fromGas.toPrecision(6)} m/s; they are not independent: leave one out`,
        'idealCharacteristicVelocity',
        { value: velocity, expected: String(fromGas) },
      );
    return { gasConstant: given, temperature, velocity: fromGas };
  }
  if (velocity !== undefined && temperature !== undefined)
    return { gasConstant: (squared * velocity ** 2) / temperature, temperature, velocity };
  if (velocity !== undefined && given !== undefined)
    return { gasConstant: given, temperature: (squared * velocity ** 2) / given, velocity };
  throw new MeopError(
    'missing-field',
    `${context}: two of molarMass (or gasConstant), flameTemperature and idealCharacteristicVelocity are expected; the third follows from them`,
    given === undefined ? 'molarMass' : 'flameTemperature',
  );
}

function readGasConstant({ molarMass, gasConstant }: PropellantInput): number | undefined {
  if (molarMass !== undefined && gasConstant !== undefined)
    throw new MeopError(
      'inconsistent',
      `${context}: molarMass and gasConstant are the same fact: give one`,
      'gasConstant',
    );
  if (molarMass === undefined) return maybe('specific gas constant', 'gasConstant', gasConstant);
  return constants.molarGasConstant.value / positive('molar mass', 'molarMass', molarMass);
}

function readDensity(input: PropellantInput): { density: number; idealDensity: number | undefined } {
  const idealDensity = maybe('density', 'idealDensity', input.idealDensity);
  const density = maybe('density', 'density', input.density);
  const { densityRatio } = input;
  if (density !== undefined && densityRatio !== undefined)
    throw new MeopError(
      'inconsistent',
      `${context}: density and densityRatio both fix the density as cast: give one`,
      'densityRatio',
    );
  if (density !== undefined) return { density, idealDensity };
  if (idealDensity === undefined)
    throw new MeopError(
      'missing-field',
      `${context}: density (as cast) is missing; or give idealDensity with densityRatio`,
      'density',
    );
  const share = within('densityRatio', densityRatio ?? 1, 0, 1.0001, 'above 0 and at most 1');
  return { density: share * idealDensity, idealDensity };
}

function maybe(kind: NamedKind, field: string, value: unknown): number | undefined {
  return value === undefined ? undefined : positive(kind, field, value);
}

const positive = (kind: NamedKind, field: string, value: unknown): number =>
  readPositive(kind, field, value, context).si;

function within(field: string, value: number, above: number, below: number, words: string): number {
  const { si } = readInput('dimensionless', field, value, context);
  if (si > above && si < below) return si;
  throw refusal(context, field, value, words);
}

function propellantText(made: Propellant): string {
  return [
    made.name,
    `  density ${made.density}, γ ${made.gamma}, R ${made.gasConstant}, T ${made.flameTemperature}`,
    `  c* ${made.characteristicVelocity} delivered, ${made.idealCharacteristicVelocity} ideal`,
    ...made.law
      .toString()
      .split('\n')
      .map((line) => `  ${line}`),
    ...Object.entries(made.sources).map(([field, source]) => `  source of ${field}: ${source}`),
    ...made.cautions.map((caution) => `  caution: ${caution}`),
  ].join('\n');
}
