import * as z from 'zod/mini';
import { explained, listOf, part, textField } from './fields';
import { measure } from './measure';

const stable = {
  above: -3,
  below: 1,
  words: 'a number more than -3 and less than 1 (at 1 or more no chamber pressure is stable)',
};
// Wider than any solid propellant (engineering practice, no published source); a unit error is outside.
const solid = { min: 500, max: 4000, words: '500 kg/m^3 to 4000 kg/m^3 (check the unit)' };
const regression = { min: 1e-5, max: 0.5, words: '0.01 mm/s to 500 mm/s (check the unit)' };
const flame = { min: 500, max: 5000, words: '500 K to 5000 K (check the unit)' };
const products = { min: 5e-3, max: 0.2, words: '5 g/mol to 200 g/mol (check the unit)' };
const velocity = { min: 200, max: 3000, words: '200 m/s to 3000 m/s (check the unit)' };
const sensitivity = { min: -0.02, max: 0.02, words: '-0.02 to 0.02 per kelvin (check the unit)' };
const exponent = () => measure('dimensionless', 'pressure exponent n', '0.3', stable);

const powerFields = () => ({
  referenceRate: measure('speed', 'burn rate at the reference pressure', '8 mm/s', regression),
  referencePressure: measure('absolute pressure', 'reference pressure of the rate', '4 MPaa'),
  exponent: exponent(),
});

const coefficient =
  "unknown field. Give the coefficient as a rate at a pressure: a in mm/s with p in MPa is referenceRate 'a mm/s' at referencePressure '1 MPaa'; a in in/s with p in psi is referenceRate 'a in/s' at '1 psia'.";

/**
 * A burn law in the document: one power law, or several pressure bands. Enter a coefficient a with its units as
 * the rate at a pressure.
 */
const burnLawSchema = () =>
  part(
    {
      referenceRate: z.optional(powerFields().referenceRate),
      referencePressure: z.optional(powerFields().referencePressure),
      exponent: z.optional(powerFields().exponent),
      bands: z.optional(
        listOf(
          part(
            {
              from: measure('absolute pressure', 'lower limit of the band', '0.1 MPaa'),
              to: measure('absolute pressure', 'upper limit of the band', '3 MPaa'),
              ...powerFields(),
            },
            'band of the burn law',
          ),
          'bands, each starting at the end of the previous one',
        ),
      ),
      characterisedFrom: z.optional(measure('absolute pressure', 'minimum measured pressure', '1 MPaa')),
      characterisedTo: z.optional(measure('absolute pressure', 'maximum measured pressure', '7 MPaa')),
      temperatureSensitivity: z.optional(
        measure(
          'temperature sensitivity',
          'relative change of rate with grain temperature',
          '0.0015 1/K',
          sensitivity,
        ),
      ),
      referenceTemperature: z.optional(
        measure('temperature', 'grain temperature of the measurements', '21 degC'),
      ),
      source: textField('source of the law'),
    },
    'burn law: referenceRate, referencePressure and exponent, or bands; for r = a·p^n, a in mm/s with p in MPa is the rate at 1 MPaa',
    {
      a: coefficient,
      coefficient,
      n: "unknown field; did you mean 'exponent'?",
    },
  );

/** The propellant in the form of the analysis. */
export const propellantSchema = () =>
  part(
    {
      name: textField('name of the propellant'),
      density: measure('density', 'density as cast; weigh a grain', '1780 kg/m^3', solid),
      idealDensity: z.optional(measure('density', 'density without voids', '1841 kg/m^3', solid)),
      burnLaw: burnLawSchema(),
      gamma: measure('dimensionless', 'ratio of specific heats', '1.14', {
        above: 1,
        max: 5 / 3,
        words: 'more than 1, at most 5/3',
      }),
      molarMass: z.optional(measure('molar mass', 'molar mass of all products', '40 g/mol', products)),
      flameTemperature: z.optional(
        measure('temperature', 'flame temperature without losses', '1600 K', flame),
      ),
      idealCharacteristicVelocity: z.optional(
        measure('speed', 'characteristic velocity without losses', '906 m/s', velocity),
      ),
      characteristicVelocityEfficiency: measure(
        'dimensionless',
        'delivered/ideal characteristic velocity',
        '0.95',
        {
          above: 0,
          below: 1.1,
          words: 'more than 0 and less than 1.1',
        },
      ),
      condensedFraction: z.optional(
        measure('dimensionless', 'mass fraction of liquid and solid products', '0.4', {
          min: 0,
          below: 1,
          words: '0 to less than 1',
        }),
      ),
      sources: z.optional(
        explained(z.record(z.string(), textField('source')), {
          description: 'sources of values, by field',
        }),
      ),
    },
    'propellant',
  );
