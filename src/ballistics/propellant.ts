import {
  constants,
  fromSiValue,
  instance,
  MeopError,
  printable,
  procedure,
  type Quantity,
  unitOf,
  type Values,
} from '../units';
import type { BurnLaw } from './burn-law';
import { propellantInputs } from './propellant-inputs';

/** A propellant: density, burn law and properties of its combustion products. */
export interface Propellant {
  readonly name: string;
  /** Density as cast. */
  readonly density: Quantity<'density'>;
  /** Density without voids; `undefined` where it is not known. */
  readonly idealDensity: Quantity<'density'> | undefined;
  readonly law: BurnLaw;
  /** Ratio of specific heats in chamber and throat. */
  readonly gamma: number;
  /** Specific gas constant of all products, condensed ones included in the mass. */
  readonly gasConstant: Quantity<'specific gas constant'>;
  /** Flame temperature without losses. */
  readonly flameTemperature: Quantity<'temperature'>;
  /** Characteristic velocity without losses. */
  readonly idealCharacteristicVelocity: Quantity<'speed'>;
  /** Delivered/ideal characteristic velocity. */
  readonly characteristicVelocityEfficiency: number;
  /** Characteristic velocity delivered. */
  readonly characteristicVelocity: Quantity<'speed'>;
  /** Flame temperature that gives the characteristic velocity delivered: η²·T. */
  readonly effectiveTemperature: Quantity<'temperature'>;
  /** Mass fraction of products that are liquid or solid; `undefined` where it is not known. */
  readonly condensedFraction: number | undefined;
  /** Source of each value and its range of validity, by field. */
  readonly sources: Readonly<Record<string, string>>;
  readonly cautions: readonly string[];
  toString(): string;
}

/** Whether a value is a propellant made by {@link propellant} or {@link publishedPropellant}. */
const isPropellant = (value: unknown): value is Propellant =>
  typeof value === 'object' && value !== null && 'law' in value && 'effectiveTemperature' in value;

/** A propellant that was made before. */
export const propellantValue = /* @__PURE__ */ instance('propellant', 'a propellant', isPropellant, {
  remedy: 'Make one with propellant or publishedPropellant',
});

const context = 'propellant';

/**
 * Makes a propellant. Characteristic velocity, gas constant, temperature and γ depend on each other
 * (c* = √(R·T) / Γ(γ)): give two of the first three, or all of them where they agree within 0.5 %. Losses are included in
 * the temperature, T·η², so that the mass balance closes.
 *
 * @example propellant({ density: '1820 kg/m^3', law: { referenceRate: '7 mm/s', referencePressure: '4 MPa', exponent: 0.3 }, gamma: 1.14, molarMass: '40 g/mol', flameTemperature: '1600 K' }).characteristicVelocity.in('m/s') // => 905.8798
 */
export const propellant = /* @__PURE__ */ procedure({
  name: context,
  title: 'Propellant',
  source:
    'Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), ch. 3 (quoted from memory, not verified)',
  inputs: propellantInputs.fields,
  gives: 'the propellant: density, burn law and properties of its combustion products',
  example: {
    density: '1820 kg/m^3',
    law: { referenceRate: '7 mm/s', referencePressure: '4 MPa', exponent: 0.3 },
    gamma: 1.14,
    molarMass: '40 g/mol',
    flameTemperature: '1600 K',
  },
  run: (given): Propellant => {
    const {
      name,
      law,
      gamma,
      sources,
      condensedFraction,
      characteristicVelocityEfficiency: efficiency,
    } = given;
    const { gasConstant, temperature, velocity } = readGas(given);
    const { density, idealDensity } = readDensity(given);
    const cautions = [
      ...(efficiency > 1
        ? [
            'the delivered characteristic velocity is above the ideal one; check throat diameter, propellant mass and pressure',
          ]
        : []),
      ...(idealDensity !== undefined && density > idealDensity * 1.0005
        ? ['the density as cast is above the ideal density; check mass and dimensions']
        : []),
    ];
    const solid = (si: number) => fromSiValue<'density'>(si, 'density', unitOf('kg/m^3'));
    const kelvin = (si: number) => fromSiValue<'temperature'>(si, 'temperature', unitOf('K'));
    const speed = (si: number) => fromSiValue<'speed'>(si, 'speed', unitOf('m/s'));
    const made: Propellant = printable(
      {
        name,
        density: solid(density),
        idealDensity: idealDensity === undefined ? undefined : solid(idealDensity),
        law,
        gamma,
        gasConstant: fromSiValue<'specific gas constant'>(
          gasConstant,
          'specific gas constant',
          unitOf('J/(kg*K)'),
        ),
        flameTemperature: kelvin(temperature),
        idealCharacteristicVelocity: speed(velocity),
        characteristicVelocityEfficiency: efficiency,
        characteristicVelocity: speed(efficiency * velocity),
        effectiveTemperature: kelvin(efficiency ** 2 * temperature),
        condensedFraction,
        sources: { ...sources },
        cautions,
      },
      () => propellantText(made),
    );
    return made;
  },
});

type Given = Values<typeof propellantInputs.fields>;

// Γ² = γ·(2 / (γ + 1))^((γ + 1) / (γ − 1)) and R·T = (Γ·c*)² (Sutton & Biblarz 7th ed., ch. 3 (quoted from memory, not verified)).
function vandenkerckhoveSquared(gamma: number): number {
  return gamma * (2 / (gamma + 1)) ** ((gamma + 1) / (gamma - 1));
}

interface Gas {
  readonly gasConstant: number;
  readonly temperature: number;
  readonly velocity: number;
}

function readGas(given: Given): Gas {
  const squared = vandenkerckhoveSquared(given.gamma);
  const gasConstant = readGasConstant(given);
  const temperature = given.flameTemperature?.si;
  const velocity = given.idealCharacteristicVelocity?.si;
  if (gasConstant !== undefined && temperature !== undefined) {
    const fromGas = Math.sqrt((gasConstant * temperature) / squared);
    if (velocity !== undefined && Math.abs(velocity / fromGas - 1) > 0.005)
      throw new MeopError({
        code: 'inconsistent',
        procedure: context,
        path: 'idealCharacteristicVelocity',
        given: given.idealCharacteristicVelocity,
        expected: `${fromGas.toPrecision(6)} m/s, which follows from gas constant, temperature and gamma`,
        remedy: 'These values are not independent; omit one of them',
      });
    return { gasConstant, temperature, velocity: fromGas };
  }
  if (velocity !== undefined && temperature !== undefined)
    return { gasConstant: (squared * velocity ** 2) / temperature, temperature, velocity };
  if (velocity !== undefined && gasConstant !== undefined)
    return { gasConstant, temperature: (squared * velocity ** 2) / gasConstant, velocity };
  throw new MeopError({
    code: 'missing-field',
    procedure: context,
    path: gasConstant === undefined ? 'molarMass' : 'flameTemperature',
    remedy:
      'Give two of molarMass (or gasConstant), flameTemperature and idealCharacteristicVelocity; the third follows from them',
  });
}

function readGasConstant({ molarMass, gasConstant }: Given): number | undefined {
  if (molarMass === undefined) return gasConstant?.si;
  if (gasConstant !== undefined) throw exclusive('molarMass', 'gasConstant');
  return constants.molarGasConstant.value / molarMass.si;
}

const exclusive = (one: string, other: string): MeopError =>
  new MeopError({
    code: 'inconsistent',
    procedure: context,
    path: other,
    problem: `${one} and ${other} are mutually exclusive; give one`,
  });

function readDensity(given: Given): { density: number; idealDensity: number | undefined } {
  const { density, densityRatio, idealDensity: ideal } = given;
  const idealDensity = ideal?.si;
  if (density !== undefined && densityRatio !== undefined) throw exclusive('density', 'densityRatio');
  if (density !== undefined) return { density: density.si, idealDensity };
  if (idealDensity === undefined)
    throw new MeopError({
      code: 'missing-field',
      procedure: context,
      path: 'density',
      expected: propellantInputs.fields.density.meaning,
      remedy: 'Give it, or idealDensity with densityRatio',
    });
  return { density: (densityRatio ?? 1) * idealDensity, idealDensity };
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
