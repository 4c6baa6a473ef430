import { MeopError } from '../units';
import { type Propellant, type PropellantInput, propellant } from './propellant';

// Characterisations for analysis only: what a propellant does, never how it is made. None of these is a measurement
// of anyone's own propellant; a strand of the batch at hand outranks them all.

const strand = 'strand-burner law widely quoted among amateurs since about 1999, from memory';
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
      idealDensity: 'from memory',
      molarMass: 'effective, condensed products counted as mass; from memory',
      gamma: 'mixture in the chamber; from memory',
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
      source: 'single law, from memory',
    },
    sources: {
      flameTemperature: 'Olde, MSc thesis, TU Delft 2019, summary page',
      idealDensity: 'from memory',
      molarMass: 'from memory',
      gamma: 'from memory',
      law: 'single law, from memory',
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
      idealDensity: 'from memory',
      gamma: 'from memory',
      molarMass: 'from memory',
      flameTemperature: 'from memory',
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
      source: 'widely quoted law, from memory (0.0665 in/s at 1 psi, n 0.319)',
    },
    sources: {
      idealDensity: 'from memory',
      gamma: 'from memory',
      molarMass: 'from memory',
      flameTemperature: 'from memory',
      law: 'from memory',
    },
  }),
};

/**
 * The names of the characterisations that come with the library.
 *
 * @example publishedPropellants().includes('potassium nitrate/sucrose') // => true
 */
export function publishedPropellants(): readonly string[] {
  return Object.keys(characterisations);
}

/**
 * A characterisation that comes with the library, with the source of each value; what is known from memory says so.
 *
 * Density is the ideal one unless `density` (weighed) or `densityRatio` is given, and c* is ideal unless
 * `characteristicVelocityEfficiency` is: real motors of this class deliver roughly 0.90 to 0.97 of each (common
 * practice, no source). Any other field given replaces the one on file.
 *
 * @throws MeopError `unknown-name`
 * @example publishedPropellant('potassium nitrate/sucrose', { densityRatio: 0.95 }).density.in('kg/m^3') // => 1794.55
 */
export function publishedPropellant(name: string, own: Partial<PropellantInput> = {}): Propellant {
  if (!Object.hasOwn(characterisations, name))
    throw new MeopError(
      'unknown-name',
      `publishedPropellant: no characterisation '${name}'; there are ${publishedPropellants()
        .map((known) => `'${known}'`)
        .join(', ')}; make your own with propellant({ … })`,
      'name',
      { value: name },
    );
  const filed = characterisations[name]();
  const sources = { ...filed.sources };
  for (const field of Object.keys(own))
    if (field !== 'sources') sources[field] = own.sources?.[field] ?? 'given by the caller';
  return propellant({ name, ...filed, ...own, sources });
}
