import { angle, choice, count, inputs, length, list, optional, ratio, variants, words } from '../../units';
import type { ReadAs } from './document-types';
import { flawInputs } from './flaw-inputs';

const size = (symbol: string, meaning: string, example: `${number} mm`) =>
  length(symbol, meaning, { above: 0, example, worse: 'neither' });
const fromZero = (symbol: string, meaning: string, example: `${number} mm`) =>
  length(symbol, meaning, { min: 0, example, worse: 'neither' });

const outer = {
  outerDiameter: size('D', 'diameter of the cast propellant', '44 mm'),
  length: size('L', 'length of the cast propellant', '70 mm'),
  burningEnds: optional(
    choice('flat ends that burn; the others are inhibited', ['both', 'head', 'aft', 'none']),
  ),
  count: optional(count('N', 'number of such segments, in series', { example: 4 })),
  flaws: optional(list('flaws of the (first) segment of this kind', flawInputs)),
  notes: optional(words('remarks')),
};
const bored = { ...outer, boreDiameter: size('d', 'diameter of the bore', '16 mm') };

/** A segment of the grain column, by its usual name. */
export const segmentInputs = /* @__PURE__ */ variants('shape', 'segment of the grain', {
  'tubular segment': inputs(bored, { meaning: 'segment that burns on bore and ends' }),
  'internal-burning tube': inputs(bored, { meaning: 'tube that burns on its bore' }),
  'end burner': inputs(outer, { meaning: 'solid grain that burns on one end' }),
  'free rod': inputs(outer, { meaning: 'rod that burns on its outside' }),
  'offset bore': inputs(
    { ...bored, offset: fromZero('e', 'distance of the bore from the axis', '5 mm') },
    { meaning: 'tube with an offset bore' },
  ),
  'rod and tube': inputs(
    {
      ...outer,
      tubeBoreDiameter: size('d_t', 'bore of the tube', '32 mm'),
      rodDiameter: size('d_r', 'diameter of the rod', '14 mm'),
    },
    { meaning: 'rod in a tube' },
  ),
  'tapered core': inputs(
    {
      ...outer,
      headBoreDiameter: fromZero('d_h', 'bore at the head end', '16 mm'),
      aftBoreDiameter: fromZero('d_a', 'bore at the aft end', '20 mm'),
    },
    { meaning: 'tube with a tapered bore' },
  ),
  star: inputs(
    {
      ...outer,
      points: count('N', 'number of points', { min: 3, example: 5 }),
      webThickness: size('w', 'web between the port arms and the wall', '10 mm'),
      filletRadius: fromZero('f', 'radius of the fillets', '1.5 mm'),
      angularFraction: ratio('ε', 'fraction of a sector occupied by a point', {
        above: 0,
        max: 1,
        example: 0.75,
        worse: 'neither',
      }),
      openingAngle: angle('θ', 'full angle between the sides of a point', {
        above: 0,
        below: Math.PI,
        example: '62 deg',
        worse: 'neither',
      }),
    },
    { meaning: 'star-shaped port' },
  ),
  'slotted tube': inputs(
    {
      ...bored,
      slots: count('N', 'number of slots', { example: 4 }),
      slotWidth: size('w', 'width of a slot', '3 mm'),
      slotDiameter: optional(
        size('d_s', 'twice the distance of the bottom of a blind slot from the axis', '36 mm'),
      ),
      slotFrom: optional(fromZero('z_1', 'start of the slots, from the head end', '40 mm')),
      slotTo: optional(size('z_2', 'end of the slots, from the head end', '70 mm')),
    },
    { meaning: 'tube with slots' },
  ),
  finocyl: inputs(
    {
      ...bored,
      fins: count('N', 'number of fins', { example: 6 }),
      finThickness: size('t', 'thickness of a fin', '3 mm'),
      finTipDiameter: size('d_f', 'twice the distance of a fin tip from the axis', '30 mm'),
      finFrom: optional(fromZero('z_1', 'start of the fins, from the head end', '40 mm')),
      finTo: optional(size('z_2', 'end of the fins, from the head end', '70 mm')),
    },
    { meaning: 'bore with fins over part of its length' },
  ),
  'extruded core': inputs(
    {
      ...outer,
      outline: words('outline of the core as SVG path data'),
      unit: optional(size('u', 'length of one unit of the path', '1 mm')),
    },
    { meaning: 'core of any outline' },
  ),
});

/** A segment as parsed. */
export type SegmentPart = ReadAs<typeof segmentInputs>;

/** The grain: its segments, the gap between them, and a flaw that is assumed. */
export const grainInputs = /* @__PURE__ */ inputs(
  {
    segments: list('segments, from the head end', segmentInputs),
    spacing: optional(fromZero('s', 'gap between adjacent segments', '1 mm')),
    assumedFlaw: optional(
      inputs(
        {
          segment: count('i', 'number of the segment in the list, from 1', { example: 1 }),
          flaw: flawInputs,
          reason: optional(words('reason why this flaw is assumed')),
        },
        { meaning: 'flaw that the worst case assumes although none has been found' },
      ),
    ),
  },
  { meaning: 'grain: segments' },
);
