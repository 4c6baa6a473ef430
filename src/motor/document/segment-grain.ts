import {
  endBurner,
  extrudedCore,
  finocyl,
  freeRod,
  type Grain,
  internalTube,
  offsetBore,
  rodAndTube,
  slottedTube,
  star,
  taperedCore,
  tubularSegment,
} from '../../ballistics';
import type { Quantity } from '../../units';
import type { Measured } from './document-types';
import type { SegmentPart } from './segment-inputs';

/** The grain of a segment without its flaws. */
export function grainOf(segment: SegmentPart): Grain {
  const outer = {
    outerDiameter: segment.outerDiameter.value,
    length: segment.length.value,
    ...(segment.burningEnds !== undefined && { burningEnds: segment.burningEnds }),
  };
  switch (segment.shape) {
    case 'tubular segment':
      return tubularSegment({ ...outer, boreDiameter: segment.boreDiameter.value });
    case 'internal-burning tube':
      return internalTube({ ...outer, boreDiameter: segment.boreDiameter.value });
    case 'end burner':
      return endBurner(outer);
    case 'free rod':
      return freeRod(outer);
    case 'offset bore':
      return offsetBore({ ...outer, boreDiameter: segment.boreDiameter.value, offset: segment.offset.value });
    case 'rod and tube':
      return rodAndTube({
        ...outer,
        tubeBoreDiameter: segment.tubeBoreDiameter.value,
        rodDiameter: segment.rodDiameter.value,
      });
    case 'tapered core':
      return taperedCore({
        ...outer,
        headBoreDiameter: segment.headBoreDiameter.value,
        aftBoreDiameter: segment.aftBoreDiameter.value,
      });
    case 'star':
      return star({
        ...outer,
        points: segment.points,
        webThickness: segment.webThickness.value,
        filletRadius: segment.filletRadius.value,
        angularFraction: segment.angularFraction.value.si,
        openingAngle: segment.openingAngle.value,
      });
    case 'slotted tube':
      return slottedTube({
        ...outer,
        boreDiameter: segment.boreDiameter.value,
        slots: segment.slots,
        slotWidth: segment.slotWidth.value,
        ...lengths({
          slotDiameter: segment.slotDiameter,
          slotFrom: segment.slotFrom,
          slotTo: segment.slotTo,
        }),
      });
    case 'finocyl':
      return finocyl({
        ...outer,
        boreDiameter: segment.boreDiameter.value,
        fins: segment.fins,
        finThickness: segment.finThickness.value,
        finTipDiameter: segment.finTipDiameter.value,
        ...lengths({ finFrom: segment.finFrom, finTo: segment.finTo }),
      });
    case 'extruded core':
      return extrudedCore({ ...outer, outline: segment.outline, ...lengths({ unit: segment.unit }) });
  }
}

type Given<F> = { readonly [K in keyof F]?: Quantity<'length'> };

function lengths<F extends Readonly<Record<string, Measured<'length'> | undefined>>>(fields: F): Given<F> {
  const entries = Object.entries(fields).flatMap(([name, value]) =>
    value === undefined ? [] : [[name, value.value]],
  );
  return Object.fromEntries(entries) as Given<F>; // valid: the fields that are given, as quantities
}
