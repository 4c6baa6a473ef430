import { gamma } from '../thermo/gas-inputs';
import {
  type Arguments,
  density,
  inputs,
  instance,
  molarMass,
  optional,
  ratio,
  specificGasConstant,
  speed,
  temperature,
  words,
} from '../units';
import { burnLaw } from './burn-law';

const isTexts = (value: unknown): value is Readonly<Record<string, string>> =>
  typeof value === 'object' &&
  value !== null &&
  !Array.isArray(value) &&
  Object.values(value).every((text) => typeof text === 'string');

/** Density of the propellant as cast. */
export const castDensity = density('ρ', 'propellant density as cast', {
  example: '1780 kg/m^3',
  synonyms: ['grain density'],
});

/** Characteristic velocity that the motor delivers. */
export const deliveredVelocity = speed('c*', 'characteristic velocity delivered', {
  above: 0,
  example: '860 m/s',
});

/** A propellant as the analysis needs it. */
export const propellantInputs = inputs(
  {
    name: optional(words('name of the propellant'), 'propellant'),
    density: optional(castDensity),
    idealDensity: optional(density('ρ_0', 'density without voids', { example: '1841 kg/m^3' })),
    densityRatio: optional(
      ratio('φ', 'density as cast/density without voids, where only the latter is known', {
        above: 0,
        below: 1.0001,
        example: 0.95,
      }),
    ),
    law: burnLaw,
    gamma,
    molarMass: optional(molarMass('M', 'molar mass of all products', { example: '40 g/mol' })),
    gasConstant: optional(
      specificGasConstant('R', 'specific gas constant of all products, condensed ones included in the mass', {
        example: '208 J/(kg*K)',
      }),
    ),
    flameTemperature: optional(temperature('T', 'flame temperature without losses', { example: '1600 K' })),
    idealCharacteristicVelocity: optional(
      speed('c*_0', 'characteristic velocity without losses', { above: 0, example: '906 m/s' }),
    ),
    characteristicVelocityEfficiency: optional(
      ratio('η', 'delivered/ideal characteristic velocity', { above: 0, below: 1.1, example: 0.95 }),
      1,
    ),
    condensedFraction: optional(
      ratio('x_c', 'mass fraction of products that are liquid or solid', { min: 0, below: 1, example: 0.4 }),
    ),
    sources: optional(instance('sources of the values, by field', 'an object of texts', isTexts), {}),
  },
  { meaning: 'propellant' },
);

/** What a propellant is made of. */
export type PropellantInput = Arguments<typeof propellantInputs.fields>;
