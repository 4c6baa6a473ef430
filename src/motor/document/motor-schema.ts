import * as z from 'zod/mini';
import { factorSetNames } from '../../structures';
import { caseSchema, linerSchema } from './case-schema';
import { closureSchema } from './closure-schema';
import { choice, explained, listOf, part, positiveCount, textField } from './fields';
import { flawSchema } from './flaw-schema';
import { measure } from './measure';
import { ignitionSchema, nozzleSchema } from './nozzle-schema';
import { propellantSchema } from './propellant-schema';
import { segmentSchema } from './segment-schema';
import { instrumentSchema, standSchema } from './stand-schema';

/** The version of documents written by this library; older ones are migrated when read. */
export const motorDocumentVersion = 2;

const atLeastOne = { min: 1, words: '1 or more' };
// Ambient conditions for people (engineering practice, no published source): kPa for MPa or kelvin for degrees is an error that would
// lower the computed pressure unnoticed.
const outdoors = { min: 1e3, max: 2e5, words: '1 kPa to 200 kPa (check the unit)' };
const weather = { min: 213.15, max: 373.15, words: '-60 degC to 100 degC (check the unit)' };
const factor = (meaning: string, example: string) =>
  z.optional(measure('dimensionless', meaning, example, atLeastOne));

const factorsSchema = () =>
  part(
    {
      set: z.optional(choice(tuple(factorSetNames()), 'named set of factors')),
      yieldFactor: factor('factor on MEOP without yielding', '1.5'),
      ultimateFactor: factor('factor on MEOP without failure', '2'),
      proofFactor: factor('proof pressure/MEOP ratio', '1.5'),
      source: z.optional(textField('source of the factors')),
    },
    'factors of safety: a named set, user-defined factors, or a set with some factors replaced',
  );

const limitsSchema = () =>
  part(
    {
      portToThroat: z.optional(
        measure('dimensionless', 'minimum port/throat area ratio at ignition', '2', atLeastOne),
      ),
      massFlux: z.optional(
        measure('mass flux', 'maximum mass flux at the aft end of the port', '2 lb/(in^2*s)'),
      ),
      headroom: z.optional(
        measure('dimensionless', 'minimum ratio of sensor range to expected maximum', '1.25', atLeastOne),
      ),
      samplesPerRise: z.optional(
        measure('dimensionless', 'minimum number of samples in the rise at ignition', '10', atLeastOne),
      ),
    },
    'limits of the review',
  );

const meopSchema = () =>
  part(
    {
      basis: z.optional(
        choice(['worst case', 'percentile', 'nominal'], 'basis of the maximum expected operating pressure'),
      ),
      percentile: z.optional(
        measure('dimensionless', 'fraction of samples below the percentile pressure', '0.9987', {
          above: 0.5,
          below: 1,
          words: 'more than 0.5 and less than 1',
        }),
      ),
      samples: z.optional(positiveCount('number of Monte Carlo samples', 100)),
      seed: z.optional(positiveCount('seed of the random numbers', 0)),
      distribution: z.optional(
        choice(
          ['uniform', 'normal'],
          'distribution of values in their tolerances; for normal, plusMinus is two standard deviations',
        ),
      ),
      allowance: z.optional(
        measure(
          'dimensionless',
          'factor for effects outside the model, such as an ignition peak',
          '1.05',
          atLeastOne,
        ),
      ),
    },
    'settings for the maximum expected operating pressure',
  );

/**
 * The zod schema of a motor document: `motorSchema.safeParse(json)` gives the result of zod. `parseMotor` also
 * checks relations between parts and explains each error.
 *
 * @example motorSchema.safeParse({}).success // => false
 */
export const motorSchema = /* @__PURE__ */ (() =>
  part(
    {
      $schema: z.optional(textField('location of the JSON Schema of this document')),
      version: explained(
        z.literal(motorDocumentVersion, {
          error: ({ input }) =>
            `${input === undefined ? 'missing required field' : 'must be'} ${motorDocumentVersion} (document version)${input === undefined ? '' : `, got ${JSON.stringify(input)}`}`,
        }),
        { description: 'document version' },
      ),
      name: textField('name of the motor'),
      notes: z.optional(listOf(textField('remark'), 'remarks')),
      case: caseSchema(),
      liner: z.optional(linerSchema()),
      closures: z.optional(
        part(
          { head: z.optional(closureSchema('head')), aft: z.optional(closureSchema('aft')) },
          'closures: head and aft',
        ),
      ),
      nozzle: nozzleSchema(),
      propellant: propellantSchema(),
      grain: part(
        {
          segments: listOf(segmentSchema(), 'segments, from the head end'),
          spacing: z.optional(
            measure('length', 'gap between adjacent segments', '1 mm', { min: 0, words: '0 or more' }),
          ),
          assumedFlaw: z.optional(
            part(
              {
                segment: positiveCount('number of the segment in the list, from 1'),
                flaw: flawSchema(),
                reason: z.optional(textField('reason for assuming this flaw')),
              },
              'undetected flaw to include in the worst case',
            ),
          ),
        },
        'grain: segments',
      ),
      ignition: z.optional(ignitionSchema()),
      ambient: part(
        {
          pressure: measure('absolute pressure', 'ambient pressure', '1 atm', outdoors),
          temperature: measure('temperature', 'temperature of grain and motor at firing', '20 degC', weather),
        },
        'ambient pressure and temperature',
      ),
      temperatureRange: z.optional(
        part(
          {
            coldest: measure('temperature', 'minimum grain temperature at firing', '0 degC', weather),
            hottest: measure('temperature', 'maximum grain temperature at firing', '40 degC', weather),
          },
          'temperature range for firing',
        ),
      ),
      stand: z.optional(standSchema()),
      instruments: z.optional(listOf(instrumentSchema(), 'instruments')),
      factors: z.optional(factorsSchema()),
      limits: z.optional(limitsSchema()),
      meop: z.optional(meopSchema()),
    },
    'motor document',
  ))();

/** A motor document as written: the typed literal of a script, or the content of a JSON file. */
export type MotorDocument = z.input<typeof motorSchema>;

/** The parts of a motor document as parsed: quantities with tolerances. */
export type MotorParts = z.output<typeof motorSchema>;

function tuple<T extends string>(names: readonly T[]): readonly [T, ...T[]] {
  const [first, ...rest] = names;
  return [first, ...rest];
}
