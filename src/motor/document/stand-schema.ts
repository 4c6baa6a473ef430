import * as z from 'zod/mini';
import { boltClass, threadGeometry } from '../../structures';
import { choice, oneOf, part, positiveCount, textField } from './fields';
import { measure } from './measure';
import { tableName } from './table-name';

const zero = { min: 0, words: '0 or more' };

const restraintSchema = () =>
  part(
    {
      rope: part(
        {
          diameter: measure('length', 'diameter of the rope', '1/4 in'),
          construction: textField("construction, such as '7x19' or '6x19 IWRC'"),
          grade: textField("grade, such as 'aircraft carbon', 'improved plow' or '1770'"),
        },
        'wire rope',
      ),
      ropeLength: measure('length', 'length of the rope', '1 m'),
      slack: measure('length', 'slack: travel of the motor before the rope is taut', '0 mm', zero),
      legs: z.optional(positiveCount('number of ropes that share the load')),
      legAngle: z.optional(
        measure('angle', 'angle between a rope and the thrust', '0 deg', {
          min: 0,
          below: Math.PI / 2,
          words: '0 deg to below 90 deg',
        }),
      ),
      termination: choice(
        ['poured socket', 'swaged socket', 'swaged sleeve', 'hand-tucked splice', 'wedge socket', 'clips'],
        'termination of the rope',
      ),
      designFactor: z.optional(
        measure('dimensionless', 'design factor on the breaking force', '5', {
          above: 0,
          words: 'more than 0',
        }),
      ),
      shackle: z.optional(measure('force', 'working load limit of the shackle of one rope', '5 kN')),
      anchor: z.optional(
        part(
          {
            count: positiveCount('number of bolts that share the load'),
            thread: tableName('thread of the anchor bolts', 'M10', threadGeometry),
            boltClass: tableName('strength class of the anchor bolts', '8.8', boltClass),
            pullAngle: z.optional(measure('angle', 'angle between the load and the surface', '0 deg', zero)),
            factor: z.optional(
              measure('dimensionless', 'factor on the ultimate strength', '2', {
                above: 0,
                words: 'more than 0',
              }),
            ),
          },
          'anchor bolts',
        ),
      ),
    },
    'restraint of a motor that breaks loose',
  );

/** The test stand. */
export const standSchema = () =>
  part(
    {
      axis: choice(['horizontal', 'vertical'], 'direction of the thrust axis'),
      movingMass: z.optional(measure('mass', 'mass of the motor and moving parts', '3 kg')),
      members: z.optional(
        part(
          {
            count: positiveCount('number of members that share the thrust'),
            angle: z.optional(
              measure('angle', 'angle between a member and the axis', '0 deg', {
                min: 0,
                below: Math.PI / 2,
                words: '0 deg to below 90 deg',
              }),
            ),
            length: measure('length', 'length of a member between its ends', '0.5 m'),
            elasticModulus: measure('stress', "Young's modulus of a member", '200 GPa'),
            secondMoment: measure(
              'second moment of area',
              'minimum second moment of area of a member',
              '5000 mm^4',
            ),
            endFactor: z.optional(
              measure(
                'dimensionless',
                'effective length factor: 1 pinned at both ends, 2 free at one end',
                '1',
                {
                  min: 0.5,
                  words: '0.5 or more',
                },
              ),
            ),
          },
          'members that carry the thrust',
        ),
      ),
      anchors: z.optional(
        part(
          {
            height: measure('length', 'height of the thrust line above the base', '0.3 m'),
            anchorSpacing: measure('length', 'distance between front and back anchors', '0.8 m'),
            weight: measure('force', 'weight of the stand', '300 N', zero),
            count: positiveCount('number of rear anchors'),
            allowable: measure('force', 'allowable tension of one anchor', '2 kN'),
          },
          'anchors of a horizontal stand',
        ),
      ),
      restraint: z.optional(restraintSchema()),
    },
    'test stand',
  );

const channel = () => ({
  name: textField('name of the channel'),
  sampleRate: measure('frequency', 'sample rate', '1 kHz'),
  riseTime: z.optional(measure('time', 'rise time of sensor and amplifier, 10 % to 90 %', '1 ms')),
});

/** An instrument and its range. */
export const instrumentSchema = () =>
  oneOf(
    'measures',
    [
      part(
        {
          measures: z.literal('pressure'),
          ...channel(),
          range: measure('gauge pressure', 'maximum of the range', '1000 psig', {
            above: 0,
            words: 'more than 0',
          }),
          proofPressure: z.optional(
            measure('gauge pressure', 'proof pressure', '2000 psig', {
              above: 0,
              words: 'more than 0',
            }),
          ),
        },
        'pressure transducer',
      ),
      part(
        {
          measures: z.literal('thrust'),
          ...channel(),
          range: measure('force', 'maximum of the range', '2 kN'),
          safeOverload: z.optional(measure('force', 'safe overload', '3 kN')),
        },
        'load cell',
      ),
      part(
        {
          measures: z.literal('temperature'),
          ...channel(),
          range: measure('temperature', 'maximum of the range', '1000 degC'),
          expected: z.optional(measure('temperature', 'expected maximum temperature', '150 degC')),
        },
        'thermocouple',
      ),
    ],
    'instrument',
  );
