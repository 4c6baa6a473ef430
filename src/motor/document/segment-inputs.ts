import {
  endBurner,
  extrudedCore,
  finocyl,
  freeRod,
  internalTube,
  offsetBore,
  rodAndTube,
  slottedTube,
  star,
  taperedCore,
  tubularSegment,
} from '../../ballistics';
import { segmentGap } from '../../ballistics/inputs';
import { count, type Inputs, inputs, list, optional, variants, words } from '../../units';
import type { ReadAs } from './document-types';
import { flawInputs } from './flaw-inputs';

const placed = {
  count: optional(count('N', 'number of such segments, in series', { example: 4 })),
  flaws: optional(list('flaws of the (first) segment of this kind', flawInputs)),
  notes: optional(words('remarks')),
};
const segment = <const I extends Inputs>(fields: I, meaning: string) =>
  inputs({ ...fields, ...placed }, { meaning });

// A document does not specify forms of tips, tapered fins and cores of partial length.
const { slots, slotWidth, slotDiameter, slotFrom, slotTo } = slottedTube.inputs;
const { fins, finThickness, finTipDiameter, finFrom, finTo } = finocyl.inputs;
const { outerDiameter, length: castLength, burningEnds, unit } = extrudedCore.inputs;

/** A segment of the grain column, by its usual name. */
export const segmentInputs = /* @__PURE__ */ variants('shape', 'segment of the grain', {
  'tubular segment': segment(tubularSegment.inputs, 'segment that burns on bore and ends'),
  'internal-burning tube': segment(internalTube.inputs, 'tube that burns on its bore'),
  'end burner': segment(endBurner.inputs, 'solid grain that burns on one end'),
  'free rod': segment(freeRod.inputs, 'rod that burns on its outside'),
  'offset bore': segment(offsetBore.inputs, 'tube with an offset bore'),
  'rod and tube': segment(rodAndTube.inputs, 'rod in a tube'),
  'tapered core': segment(taperedCore.inputs, 'tube with a tapered bore'),
  star: segment(star.inputs, 'star-shaped port'),
  'slotted tube': segment(
    { ...internalTube.inputs, slots, slotWidth, slotDiameter, slotFrom, slotTo },
    'tube with slots',
  ),
  finocyl: segment(
    { ...internalTube.inputs, fins, finThickness, finTipDiameter, finFrom, finTo },
    'bore with fins over part of its length',
  ),
  'extruded core': segment(
    {
      outerDiameter,
      length: castLength,
      burningEnds,
      outline: words('outline of the core as SVG path data'),
      unit,
    },
    'core of any outline',
  ),
});

/** A segment as parsed. */
export type SegmentPart = ReadAs<typeof segmentInputs>;

/** The grain: its segments, the gap between them, and a flaw that is assumed. */
export const grainInputs = /* @__PURE__ */ inputs(
  {
    segments: list('segments, from the head end', segmentInputs),
    spacing: optional(segmentGap),
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
