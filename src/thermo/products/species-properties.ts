import {
  choice,
  constants,
  fromSiValue,
  MeopError,
  named,
  optional,
  procedure,
  type Quantity,
  temperature,
  unitOf,
} from '../../units';
import { reducedProperties } from './species-polynomials';
import { fitRange, type Species, species, speciesOf } from './species-table';

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

/** The standard temperature of heats of formation. */
export const formationTemperature = 298.15;

/** The error for a temperature that the data of a species do not cover; `undefined` where they do. */
export function temperatureConflict(
  species: Species,
  given: Quantity<'temperature'>,
  procedure: string,
): MeopError | undefined {
  const { from, to } = fitRange(species);
  if (given.si >= from && given.si <= to) return undefined;
  const expected = `from ${from} K to ${to} K, the range of the data of ${species.name}`;
  return new MeopError({ code: 'out-of-domain', procedure, path: 'temperature', given, expected });
}

/**
 * Specific heat, enthalpy including the heat of formation, and entropy of a species by the NASA polynomials: for the specific heat of a
 * {@link gasMixture} at its temperature, or to check a heat balance by hand.
 *
 * @example speciesProperties({ species: 'CO2', temperature: '1000 K' }).molarHeatCapacity.in('J/(mol*K)') // => 54.32086
 */
export const speciesProperties = /* @__PURE__ */ procedure({
  name: 'speciesProperties',
  title: 'Thermodynamic properties of a species at 1 bar',
  source: 'NASA TM-4513 (1993) and NASA TP-2002-211556 (2002), as listed by the Cantera library',
  inputs: {
    species: named('name of the species, as speciesNames() lists it', species, { example: 'CO2' }),
    temperature: temperature('T', 'temperature'),
    form: optional(
      choice('polynomials: nasa7 for every species, nasa9 for N2, O2, NO, N and O up to 20000 K', [
        'nasa7',
        'nasa9',
      ]),
      'nasa7',
    ),
  },
  gives: 'molar mass, heat capacity, enthalpy, entropy and Gibbs energy',
  example: { species: 'CO2', temperature: '1000 K' },
  run: ({ species: found, temperature, form }): SpeciesProperties => {
    const place = { procedure: 'speciesProperties', path: 'species' };
    const species = form === 'nasa7' ? found : speciesOf(found.name, form, place);
    const conflict = temperatureConflict(species, temperature, 'speciesProperties');
    if (conflict) throw conflict;
    const { from, to } = fitRange(species);
    const t = temperature.si;
    const gasConstant = constants.molarGasConstant.value;
    const at = reducedProperties(species, t);
    const energy = (si: number): Quantity<'molar energy'> =>
      fromSiValue(si, 'molar energy', unitOf('kJ/mol'));
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
  },
});
