import { constants, fromSiValue, type Quantity, type QuantityInput, readInput, unitOf } from '../../units';
import { type FieldsOf, requireFields } from '../../units/known-fields';
import { refusal } from '../../units/refusal';
import { reducedProperties } from './species-polynomials';
import { fitRange, type PolynomialForm, type Species, speciesTable } from './species-table';

/** What {@link speciesProperties} needs. */
export interface SpeciesPropertiesOptions {
  /** Name as {@link speciesNames} lists it: `CO2`, `K2CO3(l)`, `C(graphite)`. */
  readonly species: string;
  readonly temperature: QuantityInput<'temperature'>;
  /** Which fit: `nasa7` holds every species, `nasa9` N2, O2, NO, N and O up to 20000 K. Default `nasa7`. */
  readonly form?: PolynomialForm;
}

/** A species at a temperature and the standard pressure of 1 bar. */
export interface SpeciesProperties {
  readonly phase: 'gas' | 'solid' | 'liquid';
  readonly molarMass: Quantity<'molar mass'>;
  readonly molarHeatCapacity: Quantity<'molar heat capacity'>;
  /** With the heat of formation: the elements in their reference state have 0 at 298.15 K. */
  readonly molarEnthalpy: Quantity<'molar energy'>;
  readonly molarEntropy: Quantity<'molar heat capacity'>;
  readonly molarGibbsEnergy: Quantity<'molar energy'>;
  /** Enthalpy above that at 298.15 K, where the species has one there. */
  readonly sensibleEnthalpy?: Quantity<'molar energy'>;
  /** Specific heat for each unit of mass, as `gasMixture` and `twoPhaseMixture` take it. */
  readonly specificHeat: Quantity<'specific heat'>;
  readonly source: string;
}

const speciesPropertiesFields: FieldsOf<SpeciesPropertiesOptions> = {
  species: 'required',
  temperature: 'required',
  form: 'optional',
};

/** The standard temperature of heats of formation. */
export const formationTemperature = 298.15;

/**
 * Names of the species that {@link speciesProperties} and {@link equilibriumProducts} know.
 *
 * @example speciesNames().includes('K2CO3(l)') // => true
 */
export function speciesNames(form: PolynomialForm = 'nasa7'): readonly string[] {
  return [...speciesTable(form).keys()];
}

/**
 * Specific heat, enthalpy with the heat of formation, and entropy of a species by the NASA polynomials: for the specific heat of a
 * {@link gasMixture} at its temperature, or to check a heat balance by hand.
 *
 * Source: NASA TM-4513 (1993) and NASA TP-2002-211556 (2002), as listed by the Cantera library.
 *
 * @throws MeopError `out-of-domain` for a species that the form does not hold, or a temperature outside its fit
 * @example speciesProperties({ species: 'CO2', temperature: '1000 K' }).molarHeatCapacity.in('J/(mol*K)') // => 54.32086
 */
export function speciesProperties(options: SpeciesPropertiesOptions): SpeciesProperties {
  requireFields('speciesProperties', options, speciesPropertiesFields);
  const { form = 'nasa7' } = options;
  const t = readInput('temperature', 'temperature', options.temperature, 'speciesProperties').si;
  if (form !== 'nasa7' && form !== 'nasa9')
    throw refusal('speciesProperties', 'form', form, "'nasa7' or 'nasa9'");
  const species = knownSpecies('speciesProperties', 'species', options.species, form);
  const { from, to } = fitRange(species);
  if (!(t >= from && t <= to))
    throw refusal('speciesProperties', 'temperature', options.temperature, `from ${from} K to ${to} K`);
  const gasConstant = constants.molarGasConstant.value;
  const at = reducedProperties(species, t);
  const energy = (si: number): Quantity<'molar energy'> => fromSiValue(si, 'molar energy', unitOf('kJ/mol'));
  const capacity = (si: number): Quantity<'molar heat capacity'> =>
    fromSiValue(si, 'molar heat capacity', unitOf('J/(mol*K)'));
  const enthalpy = at.enthalpy * gasConstant * t;
  return {
    phase: species.phase,
    molarMass: fromSiValue(species.molarMass, 'molar mass', unitOf('g/mol')),
    molarHeatCapacity: capacity(at.specificHeat * gasConstant),
    molarEnthalpy: energy(enthalpy),
    molarEntropy: capacity(at.entropy * gasConstant),
    molarGibbsEnergy: energy(enthalpy - at.entropy * gasConstant * t),
    ...(from <= formationTemperature &&
      to >= formationTemperature && {
        sensibleEnthalpy: energy(
          enthalpy -
            reducedProperties(species, formationTemperature).enthalpy * gasConstant * formationTemperature,
        ),
      }),
    specificHeat: fromSiValue(
      (at.specificHeat * gasConstant) / species.molarMass,
      'specific heat',
      unitOf('J/(kg*K)'),
    ),
    source: species.source,
  };
}

/** The species of a name, or an error that lists those of the same elements. */
export function knownSpecies(procedure: string, field: string, name: string, form: PolynomialForm): Species {
  const found = speciesTable(form).get(name);
  if (found !== undefined) return found;
  const letters = String(name)
    .replace(/[^A-Za-z]/g, '')
    .toLowerCase();
  const near = speciesNames(form).filter((each) =>
    each
      .replace(/[^A-Za-z]/g, '')
      .toLowerCase()
      .startsWith(letters.slice(0, 2)),
  );
  throw refusal(
    procedure,
    field,
    name,
    near.length > 0 && letters !== ''
      ? `a name of speciesNames(), such as ${near.slice(0, 8).join(', ')},`
      : 'a name of speciesNames()',
  );
}
