import { unknownName } from '../units';
import { notAnObject } from '../units/declare/field-errors';
import { type Propellant, propellant } from './propellant';
import { type PropellantInput, propellantInputs } from './propellant-inputs';

// Characterisations for analysis only, without preparation. None of these is a measurement of the user's own propellant,
// which always takes precedence.

const strand =
  'strand-burner law widely quoted among amateurs since about 1999; quoted from memory, not verified';
const band = (from: number, to: number, coefficient: number, exponent: number) => ({
  from: `${from} MPa` as const,
  to: `${to} MPa` as const,
  coefficient,
  rateUnit: 'mm/s' as const,
  pressureUnit: 'MPa' as const,
  exponent,
});

const characterisations: Readonly<Record<string, () => PropellantInput>> = {
  'potassium nitrate/sorbitol': () => ({
    idealDensity: '1841 kg/m^3',
    gamma: 1.136,
    molarMass: '39.9 g/mol',
    flameTemperature: '1600 K',
    law: {
      bands: [
        band(0.103, 0.807, 10.708, 0.625),
        band(0.807, 1.503, 8.763, -0.314),
        band(1.503, 3.792, 7.852, -0.013),
        band(3.792, 7.033, 3.907, 0.535),
        band(7.033, 10.67, 9.653, 0.064),
      ],
      source: strand,
    },
    sources: {
      flameTemperature: 'Olde, MSc thesis, TU Delft 2019, summary page: 1600 K and c* 911 m/s at 6.895 MPa',
      idealDensity: 'quoted from memory, not verified',
      molarMass: 'effective, condensed products included in the mass; quoted from memory, not verified',
      gamma: 'mixture in the chamber; quoted from memory, not verified',
      law: strand,
    },
  }),
  'potassium nitrate/sorbitol, single law': () => ({
    idealDensity: '1841 kg/m^3',
    gamma: 1.136,
    molarMass: '39.9 g/mol',
    flameTemperature: '1600 K',
    law: {
      coefficient: 5.13,
      rateUnit: 'mm/s',
      pressureUnit: 'MPa',
      exponent: 0.222,
      source: 'single law; quoted from memory, not verified',
    },
    sources: {
      flameTemperature: 'Olde, MSc thesis, TU Delft 2019, summary page',
      idealDensity: 'quoted from memory, not verified',
      molarMass: 'quoted from memory, not verified',
      gamma: 'quoted from memory, not verified',
      law: 'single law; quoted from memory, not verified',
    },
  }),
  'potassium nitrate/dextrose': () => ({
    idealDensity: '1879 kg/m^3',
    gamma: 1.131,
    molarMass: '42.39 g/mol',
    flameTemperature: '1710 K',
    law: {
      bands: [
        band(0.103, 0.779, 8.875, 0.619),
        band(0.779, 2.572, 7.553, -0.009),
        band(2.572, 5.93, 3.841, 0.688),
        band(5.93, 8.502, 17.2, -0.148),
        band(8.502, 11.2, 4.775, 0.442),
      ],
      source: strand,
    },
    sources: {
      idealDensity: 'quoted from memory, not verified',
      gamma: 'quoted from memory, not verified',
      molarMass: 'quoted from memory, not verified',
      flameTemperature: 'quoted from memory, not verified',
      law: strand,
    },
  }),
  'potassium nitrate/sucrose': () => ({
    idealDensity: '1889 kg/m^3',
    gamma: 1.133,
    molarMass: '42.02 g/mol',
    flameTemperature: '1720 K',
    law: {
      coefficient: 8.26,
      rateUnit: 'mm/s',
      pressureUnit: 'MPa',
      exponent: 0.319,
      source: 'widely quoted law; quoted from memory, not verified (0.0665 in/s at 1 psi, n 0.319)',
    },
    sources: {
      idealDensity: 'quoted from memory, not verified',
      gamma: 'quoted from memory, not verified',
      molarMass: 'quoted from memory, not verified',
      flameTemperature: 'quoted from memory, not verified',
      law: 'quoted from memory, not verified',
    },
  }),
};

/**
 * Names of the characterisations included in the library.
 *
 * @example publishedPropellants().includes('potassium nitrate/sucrose') // => true
 */
export const publishedPropellants = (): readonly string[] => Object.keys(characterisations);

/**
 * A characterisation included in the library, with the source of each value. Any other field given replaces the published one.
 *
 * Density is the ideal one unless `density` (weighed) or `densityRatio` is given, and c* is ideal unless
 * `characteristicVelocityEfficiency` is given. Motors of this class deliver roughly 0.90 to 0.97 of each (engineering
 * practice, no published source).
 *
 * @throws MeopError `unknown-name`
 * @example publishedPropellant('potassium nitrate/sucrose', { densityRatio: 0.95 }).density.in('kg/m^3') // => 1794.55
 */
export function publishedPropellant(name: string, own: Partial<PropellantInput> = {}): Propellant {
  const at = { procedure: 'publishedPropellant', path: '' };
  if (!Object.hasOwn(characterisations, name))
    throw unknownName(name, publishedPropellants(), 'propellant', at);
  if (typeof own !== 'object' || own === null)
    throw notAnObject(own, Object.keys(propellantInputs.fields), at);
  const published = characterisations[name]();
  const sources = { ...published.sources };
  for (const field of Object.keys(own))
    if (field !== 'sources') sources[field] = own.sources?.[field] ?? 'user-supplied';
  return propellant({ name, ...published, ...own, sources });
}
