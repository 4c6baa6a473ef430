import * as z from 'zod/mini';
import { choice, listOf, oneOf, part, positiveCount, textField } from './fields';
import { flawSchema } from './flaw-schema';
import { measure } from './measure';

const zero = { min: 0, words: '0 or more' };

const outer = () => ({
  outerDiameter: measure('length', 'diameter of the cast propellant', '44 mm'),
  length: measure('length', 'length of the cast propellant', '70 mm'),
  burningEnds: z.optional(
    choice(['both', 'head', 'aft', 'none'], 'flat ends that burn; the others are inhibited'),
  ),
  count: z.optional(positiveCount('number of such segments, in series')),
  flaws: z.optional(listOf(flawSchema(), 'flaws of the (first) segment of this kind')),
  notes: z.optional(textField('remarks')),
});
const bored = () => ({ ...outer(), boreDiameter: measure('length', 'diameter of the bore', '16 mm') });
/** A segment of the grain column, by its usual name. */
export const segmentSchema = () =>
  oneOf(
    'shape',
    [
      part({ shape: z.literal('tubular segment'), ...bored() }, 'segment that burns on bore and ends'),
      part({ shape: z.literal('internal-burning tube'), ...bored() }, 'tube that burns on its bore'),
      part({ shape: z.literal('end burner'), ...outer() }, 'solid grain that burns on one end'),
      part({ shape: z.literal('free rod'), ...outer() }, 'rod that burns on its outside'),
      part(
        {
          shape: z.literal('offset bore'),
          ...bored(),
          offset: measure('length', 'distance of the bore from the axis', '5 mm', zero),
        },
        'tube with an offset bore',
      ),
      part(
        {
          shape: z.literal('rod and tube'),
          ...outer(),
          tubeBoreDiameter: measure('length', 'bore of the tube', '32 mm'),
          rodDiameter: measure('length', 'diameter of the rod', '14 mm'),
        },
        'rod in a tube',
      ),
      part(
        {
          shape: z.literal('tapered core'),
          ...outer(),
          headBoreDiameter: measure('length', 'bore at the head end', '16 mm', zero),
          aftBoreDiameter: measure('length', 'bore at the aft end', '20 mm', zero),
        },
        'tube with a tapered bore',
      ),
      part(
        {
          shape: z.literal('star'),
          ...outer(),
          points: positiveCount('number of points', 3),
          webThickness: measure('length', 'web between the port arms and the wall', '10 mm'),
          filletRadius: measure('length', 'radius of the fillets', '1.5 mm', zero),
          angularFraction: measure('dimensionless', 'fraction of a sector occupied by a point', '0.75', {
            above: 0,
            max: 1,
            words: 'more than 0, at most 1',
          }),
          openingAngle: measure('angle', 'full angle between the sides of a point', '62 deg', {
            above: 0,
            below: Math.PI,
            words: 'between 0 and 180 deg',
          }),
        },
        'star-shaped port',
      ),
      part(
        {
          shape: z.literal('slotted tube'),
          ...bored(),
          slots: positiveCount('number of slots'),
          slotWidth: measure('length', 'width of a slot', '3 mm'),
          slotDiameter: z.optional(
            measure('length', 'twice the distance of the bottom of a blind slot from the axis', '36 mm'),
          ),
          slotFrom: z.optional(measure('length', 'start of the slots, from the head end', '40 mm', zero)),
          slotTo: z.optional(measure('length', 'end of the slots, from the head end', '70 mm')),
        },
        'tube with slots',
      ),
      part(
        {
          shape: z.literal('finocyl'),
          ...bored(),
          fins: positiveCount('number of fins'),
          finThickness: measure('length', 'thickness of a fin', '3 mm'),
          finTipDiameter: measure('length', 'twice the distance of a fin tip from the axis', '30 mm'),
          finFrom: z.optional(measure('length', 'start of the fins, from the head end', '40 mm', zero)),
          finTo: z.optional(measure('length', 'end of the fins, from the head end', '70 mm')),
        },
        'bore with fins over part of its length',
      ),
      part(
        {
          shape: z.literal('extruded core'),
          ...outer(),
          outline: textField('outline of the core as SVG path data'),
          unit: z.optional(measure('length', 'length of one unit of the path', '1 mm')),
        },
        'core of any outline',
      ),
    ],
    'segment of the grain',
  );

/** A segment as parsed. */
export type SegmentPart = z.output<ReturnType<typeof segmentSchema>>;
