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
          construction: textField("its construction, such as '7x19' or '6x19 IWRC'"),
          grade: textField("its grade, such as 'aircraft carbon', 'improved plow' or '1770'"),
        },
        'the wire rope',
      ),
      ropeLength: measure('length', 'length of the rope', '1 m'),
      slack: measure('length', 'how far the motor moves before the rope is tight', '0 mm', zero),
      legs: z.optional(positiveCount('the number of ropes that share the load')),
      legAngle: z.optional(
        measure('angle', 'angle between a rope and the thrust', '0 deg', {
          min: 0,
          below: Math.PI / 2,
          words: '0 deg to below 90 deg',
        }),
      ),
      termination: choice(
        ['poured socket', 'swaged socket', 'swaged sleeve', 'hand-tucked splice', 'wedge socket', 'clips'],
        'how the rope ends',
      ),
      designFactor: z.optional(
        measure('dimensionless', 'factor on the breaking force', '5', { above: 0, words: 'more than 0' }),
      ),
      shackle: z.optional(measure('force', 'working load limit of the shackle of one rope', '5 kN')),
      anchor: z.optional(
        part(
          {
            count: positiveCount('the number of bolts that share the load'),
            thread: tableName('the thread of the anchor bolts', 'M10', threadGeometry),
            boltClass: tableName('the strength class of the anchor bolts', '8.8', boltClass),
            pullAngle: z.optional(measure('angle', 'angle between the pull and the surface', '0 deg', zero)),
            factor: z.optional(
              measure('dimensionless', 'factor on the ultimate strength', '2', {
                above: 0,
                words: 'more than 0',
              }),
            ),
          },
          'the anchor bolts',
        ),
      ),
    },
    'what holds a motor that breaks free',
  );

/** The test stand. */
export const standSchema = () =>
  part(
    {
      axis: choice(['horizontal', 'vertical'], 'how the thrust axis lies'),
      movingMass: z.optional(measure('mass', 'mass of the motor with what moves with it', '3 kg')),
      members: z.optional(
        part(
          {
            count: positiveCount('the number of members that share the thrust'),
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
              'least second moment of area of a member',
              '5000 mm^4',
            ),
            endFactor: z.optional(
              measure('dimensionless', 'end factor: 1 pinned at both ends, 2 free at one end', '1', {
                min: 0.5,
                words: '0.5 or more',
              }),
            ),
          },
          'the members that carry the thrust',
        ),
      ),
      anchors: z.optional(
        part(
          {
            height: measure('length', 'height of the thrust over the base', '0.3 m'),
            anchorSpacing: measure('length', 'distance between front and back anchors', '0.8 m'),
            weight: measure('force', 'weight of the stand', '300 N', zero),
            count: positiveCount('the number of anchors at the back'),
            allowable: measure('force', 'what one anchor may be pulled with', '2 kN'),
          },
          'the anchors of a horizontal stand',
        ),
      ),
      restraint: z.optional(restraintSchema()),
    },
    'the test stand',
  );

const channel = () => ({
  name: textField('the name of the channel'),
  sampleRate: measure('frequency', 'samples in a second', '1 kHz'),
  riseTime: z.optional(measure('time', 'rise time of sensor and amplifier, 10 % to 90 %', '1 ms')),
});

/** A sensor and the range it reads. */
export const instrumentSchema = () =>
  oneOf(
    'measures',
    [
      part(
        {
          measures: z.literal('pressure'),
          ...channel(),
          range: measure('gauge pressure', 'greatest pressure it reads', '1000 psig', {
            above: 0,
            words: 'more than 0',
          }),
          proofPressure: z.optional(
            measure('gauge pressure', 'pressure that it survives', '2000 psig', {
              above: 0,
              words: 'more than 0',
            }),
          ),
        },
        'a pressure transducer',
      ),
      part(
        {
          measures: z.literal('thrust'),
          ...channel(),
          range: measure('force', 'greatest thrust it reads', '2 kN'),
          safeOverload: z.optional(measure('force', 'force that it survives', '3 kN')),
        },
        'a load cell',
      ),
      part(
        {
          measures: z.literal('temperature'),
          ...channel(),
          range: measure('temperature', 'greatest temperature it reads', '1000 degC'),
          expected: z.optional(
            measure('temperature', 'greatest temperature that is expected there', '150 degC'),
          ),
        },
        'a thermocouple',
      ),
    ],
    'an instrument',
  );
