import * as z from 'zod/mini';
import { choice, listOf, oneOf, part, positiveCount, textField } from './fields';
import { flawSchema } from './flaw-schema';
import { measure } from './measure';

const zero = { min: 0, words: '0 or more' };

const outer = () => ({
  outerDiameter: measure('length', 'diameter of the cast propellant', '44 mm'),
  length: measure('length', 'length of the cast propellant', '70 mm'),
  burningEnds: z.optional(
    choice(['both', 'head', 'aft', 'none'], 'which flat ends burn; the others are inhibited'),
  ),
  count: z.optional(positiveCount('the number of such segments, one behind the other')),
  flaws: z.optional(listOf(flawSchema(), 'flaws of the (first) segment of this kind')),
  notes: z.optional(textField('remarks')),
});
const bored = () => ({ ...outer(), boreDiameter: measure('length', 'diameter of the bore', '16 mm') });
/** A segment of the grain column, under the trade's names. */
export const segmentSchema = () =>
  oneOf(
    'shape',
    [
      part({ shape: z.literal('tubular segment'), ...bored() }, 'a segment that burns on bore and ends'),
      part({ shape: z.literal('internal-burning tube'), ...bored() }, 'a tube that burns on its bore'),
      part({ shape: z.literal('end burner'), ...outer() }, 'a solid grain that burns on one end'),
      part({ shape: z.literal('free rod'), ...outer() }, 'a rod that burns on its outside'),
      part(
        {
          shape: z.literal('offset bore'),
          ...bored(),
          offset: measure('length', 'distance of the bore from the axis', '5 mm', zero),
        },
        'a tube whose bore lies off the axis',
      ),
      part(
        {
          shape: z.literal('rod and tube'),
          ...outer(),
          tubeBoreDiameter: measure('length', 'bore of the tube', '32 mm'),
          rodDiameter: measure('length', 'diameter of the rod', '14 mm'),
        },
        'a rod in a tube',
      ),
      part(
        {
          shape: z.literal('tapered core'),
          ...outer(),
          headBoreDiameter: measure('length', 'bore at the head end', '16 mm', zero),
          aftBoreDiameter: measure('length', 'bore at the aft end', '20 mm', zero),
        },
        'a tube whose bore widens evenly',
      ),
      part(
        {
          shape: z.literal('star'),
          ...outer(),
          points: positiveCount('the number of points', 3),
          webThickness: measure('length', 'distance from the arms of the port to the wall', '10 mm'),
          filletRadius: measure('length', 'radius of the fillets', '1.5 mm', zero),
          angularFraction: measure('dimensionless', 'share of a sector that a point takes up', '0.75', {
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
        'a star-shaped port',
      ),
      part(
        {
          shape: z.literal('slotted tube'),
          ...bored(),
          slots: positiveCount('the number of slots'),
          slotWidth: measure('length', 'width of a slot', '3 mm'),
          slotDiameter: z.optional(
            measure('length', "twice the distance of a blind slot's floor from the axis", '36 mm'),
          ),
          slotFrom: z.optional(measure('length', 'where the slots begin, from the head end', '40 mm', zero)),
          slotTo: z.optional(measure('length', 'where the slots end, from the head end', '70 mm')),
        },
        'a tube with slots',
      ),
      part(
        {
          shape: z.literal('finocyl'),
          ...bored(),
          fins: positiveCount('the number of fins'),
          finThickness: measure('length', 'thickness of a fin', '3 mm'),
          finTipDiameter: measure('length', "twice the distance of a fin's tip from the axis", '30 mm'),
          finFrom: z.optional(measure('length', 'where the fins begin, from the head end', '40 mm', zero)),
          finTo: z.optional(measure('length', 'where the fins end, from the head end', '70 mm')),
        },
        'a bore with fins over part of its length',
      ),
      part(
        {
          shape: z.literal('extruded core'),
          ...outer(),
          outline: textField('the outline of the core as SVG path data'),
          unit: z.optional(measure('length', 'length of one unit of the path', '1 mm')),
        },
        'a core of any outline',
      ),
    ],
    'a segment of the grain',
  );

/** A segment as read. */
export type SegmentPart = z.output<ReturnType<typeof segmentSchema>>;
