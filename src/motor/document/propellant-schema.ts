import * as z from 'zod/mini';
import { explained, listOf, part, words } from './fields';
import { measure } from './measure';

const stable = {
  above: -3,
  below: 1,
  words: 'a number above -3 and below 1 (from 1 on no chamber pressure is stable)',
};
const exponent = () => measure('dimensionless', 'pressure exponent n', '0.3', stable);

const powerFields = () => ({
  rate: measure('speed', 'burning rate at the reference pressure', '8 mm/s'),
  atPressure: measure('absolute pressure', 'reference pressure of that rate', '4 MPaa'),
  exponent: exponent(),
});

/**
 * A burn law in the document: one power law, or bands of them. A coefficient a with its units is entered as the rate at
 * a pressure, which is what it says.
 */
const burnLawSchema = () =>
  part(
    {
      rate: z.optional(powerFields().rate),
      atPressure: z.optional(powerFields().atPressure),
      exponent: z.optional(powerFields().exponent),
      bands: z.optional(
        listOf(
          part(
            {
              from: measure('absolute pressure', 'pressure from which the band holds', '0.1 MPaa'),
              to: measure('absolute pressure', 'pressure up to which the band holds', '3 MPaa'),
              ...powerFields(),
            },
            'a band of the burn law',
          ),
          'bands, each beginning where the one before ends',
        ),
      ),
      characterisedFrom: z.optional(
        measure('absolute pressure', 'least pressure that was measured', '1 MPaa'),
      ),
      characterisedTo: z.optional(
        measure('absolute pressure', 'greatest pressure that was measured', '7 MPaa'),
      ),
      temperatureSensitivity: z.optional(
        measure('temperature sensitivity', 'relative change of rate by grain temperature', '0.0015 1/K'),
      ),
      referenceTemperature: z.optional(
        measure('temperature', 'grain temperature of the measurements', '21 degC'),
      ),
      source: words('where the law is from'),
    },
    'the burn law: rate, atPressure and exponent, or bands',
  );

/** The propellant as analysis sees it. */
export const propellantSchema = () =>
  part(
    {
      name: words('the name of the propellant'),
      density: measure('density', 'density as cast: weigh a grain', '1780 kg/m^3'),
      idealDensity: z.optional(measure('density', 'density without voids', '1841 kg/m^3')),
      burnLaw: burnLawSchema(),
      gamma: measure('dimensionless', 'ratio of specific heats', '1.14', { above: 1, words: 'more than 1' }),
      molarMass: z.optional(measure('molar mass', 'molar mass of all products', '40 g/mol')),
      flameTemperature: z.optional(measure('temperature', 'flame temperature without losses', '1600 K')),
      idealCharacteristicVelocity: z.optional(
        measure('speed', 'characteristic velocity without losses', '906 m/s'),
      ),
      characteristicVelocityEfficiency: measure(
        'dimensionless',
        'delivered over ideal characteristic velocity',
        '0.95',
        {
          above: 0,
          below: 1.1,
          words: 'more than 0 and below 1.1',
        },
      ),
      condensedFraction: z.optional(
        measure('dimensionless', 'mass fraction of products that are liquid or solid', '0.4', {
          min: 0,
          below: 1,
          words: '0 to below 1',
        }),
      ),
      sources: z.optional(
        explained(z.record(z.string(), words('a source')), {
          description: 'where values come from, by field',
        }),
      ),
    },
    'the propellant',
  );
