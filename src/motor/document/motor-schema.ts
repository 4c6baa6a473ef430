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

/** The version of the documents that this library writes; older ones are migrated when they are read. */
export const motorDocumentVersion = 2;

const atLeastOne = { min: 1, words: '1 or more' };
// Where people stand beside a motor (engineering practice, no published source): kPa for MPa or kelvin for degrees is a slip that would
// lower the pressure found without a word.
const outdoors = { min: 1e3, max: 2e5, words: '1 kPa to 200 kPa (is the unit right?)' };
const weather = { min: 213.15, max: 373.15, words: '-60 degC to 100 degC (is the unit right?)' };
const factor = (meaning: string, example: string) =>
  z.optional(measure('dimensionless', meaning, example, atLeastOne));

const factorsSchema = () =>
  part(
    {
      set: z.optional(choice(tuple(factorSetNames()), 'a published or customary set of factors')),
      yieldFactor: factor('factor on MEOP up to which nothing may yield', '1.5'),
      ultimateFactor: factor('factor on MEOP up to which nothing may break', '2'),
      proofFactor: factor('proof pressure over MEOP', '1.5'),
      source: z.optional(textField('who asks for these factors')),
    },
    'the factors of safety: a set by name, one’s own, or a set of which some are replaced',
  );

const limitsSchema = () =>
  part(
    {
      portToThroat: z.optional(
        measure('dimensionless', 'least port area over throat area at ignition', '2', atLeastOne),
      ),
      massFlux: z.optional(
        measure('mass flux', 'greatest mass flux at the aft end of the port', '2 lb/(in^2*s)'),
      ),
      headroom: z.optional(
        measure('dimensionless', 'least range of a sensor over what it will see', '1.25', atLeastOne),
      ),
      samplesPerRise: z.optional(
        measure('dimensionless', 'least number of samples in the rise at ignition', '10', atLeastOne),
      ),
    },
    'the limits that the review judges by',
  );

const meopSchema = () =>
  part(
    {
      basis: z.optional(
        choice(['worst case', 'percentile', 'nominal'], 'which pressure is taken as the maximum expected'),
      ),
      percentile: z.optional(
        measure('dimensionless', 'share of motors that stay below the percentile pressure', '0.9987', {
          above: 0.5,
          below: 1,
          words: 'more than 0.5 and below 1',
        }),
      ),
      samples: z.optional(positiveCount('the number of motors drawn', 100)),
      seed: z.optional(positiveCount('the seed of the random numbers', 0)),
      distribution: z.optional(
        choice(
          ['uniform', 'normal'],
          'how values lie in their tolerances; normal takes plusMinus as two standard deviations',
        ),
      ),
      allowance: z.optional(
        measure(
          'dimensionless',
          'factor for what the model leaves out, such as an ignition peak',
          '1.05',
          atLeastOne,
        ),
      ),
    },
    'how the maximum expected operating pressure is found',
  );

/**
 * The schema of a motor document, a zod schema: `motorSchema.safeParse(json)` gives zod's own result. `parseMotor` also
 * checks how the parts go together, and explains each problem.
 *
 * @example motorSchema.safeParse({}).success // => false
 */
export const motorSchema = /* @__PURE__ */ (() =>
  part(
    {
      $schema: z.optional(textField('where the JSON Schema of this document is')),
      version: explained(
        z.literal(motorDocumentVersion, {
          error: ({ input }) =>
            `${input === undefined ? 'missing' : `${JSON.stringify(input)} given`}; expected is the number ${motorDocumentVersion}, the version of the document's form`,
        }),
        { description: 'the version of the document’s form' },
      ),
      name: textField('the name of the motor'),
      notes: z.optional(listOf(textField('a remark'), 'remarks')),
      case: caseSchema(),
      liner: z.optional(linerSchema()),
      closures: z.optional(
        part(
          { head: z.optional(closureSchema('head')), aft: z.optional(closureSchema('aft')) },
          'the closures: head and aft',
        ),
      ),
      nozzle: nozzleSchema(),
      propellant: propellantSchema(),
      grain: part(
        {
          segments: listOf(segmentSchema(), 'segments, from the head end'),
          spacing: z.optional(
            measure('length', 'gap between neighbouring segments', '1 mm', { min: 0, words: '0 or more' }),
          ),
          assumedFlaw: z.optional(
            part(
              {
                segment: positiveCount('the number of the segment in the list, from 1'),
                flaw: flawSchema(),
                reason: z.optional(textField('why this flaw is assumed')),
              },
              'the flaw that the worst case counts with though nobody has seen it',
            ),
          ),
        },
        'the grain: segments',
      ),
      ignition: z.optional(ignitionSchema()),
      ambient: part(
        {
          pressure: measure('absolute pressure', 'pressure around the motor', '1 atm', outdoors),
          temperature: measure(
            'temperature',
            'temperature of grain and motor when it is fired',
            '20 degC',
            weather,
          ),
        },
        'the surroundings: pressure and temperature',
      ),
      temperatureRange: z.optional(
        part(
          {
            coldest: measure('temperature', 'coldest grain that will be fired', '0 degC', weather),
            hottest: measure('temperature', 'hottest grain that will be fired', '40 degC', weather),
          },
          'the temperatures at which the motor may be fired',
        ),
      ),
      stand: z.optional(standSchema()),
      instruments: z.optional(listOf(instrumentSchema(), 'instruments')),
      factors: z.optional(factorsSchema()),
      limits: z.optional(limitsSchema()),
      meop: z.optional(meopSchema()),
    },
    'a motor document',
  ))();

/** A motor document as it is written: the typed literal of a script, or what stands in a JSON file. */
export type MotorDocument = z.input<typeof motorSchema>;

/** The parts of a motor document as read: quantities with their tolerances. */
export type MotorParts = z.output<typeof motorSchema>;

function tuple<T extends string>(names: readonly T[]): readonly [T, ...T[]] {
  const [first, ...rest] = names;
  return [first, ...rest];
}
