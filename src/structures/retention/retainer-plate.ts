import { inputs, length, named, optional } from '../../units';
import { materials } from '../materials/material-table';
import { partTemperature } from '../materials/part-temperature';
import { axialBolts } from '../tension-bolts/axial-bolts';

/** What the screws clamp is the plate, whose thickness is given. */
const screws = /* @__PURE__ */ (() => {
  const { clampedThickness: _, ...others } = axialBolts.fields;
  return others;
})();

/** A plate screwed on the outer face of the aft closure, which retains an insert put in from the outside. */
export const retainerPlate = /* @__PURE__ */ inputs(
  {
    material: named('material of the plate', materials, { example: '6061-T6 plate' }),
    thickness: length('t', 'thickness of the plate', { example: '6 mm', worse: 'low' }),
    outsideDiameter: length('D', 'outside diameter of the plate', { example: '50 mm', worse: 'low' }),
    opening: length('D_i', 'diameter of the opening of the plate', { example: '24 mm', worse: 'high' }),
    temperature: partTemperature,
    screws: inputs(
      {
        ...screws,
        depth: optional(
          length('h', 'depth of the tapped holes with the drill point; the engagement where omitted', {
            example: '11 mm',
            worse: 'high',
          }),
        ),
      },
      { meaning: 'screws of the plate, parallel to the axis, in tapped holes of the closure' },
    ),
  },
  { meaning: 'plate screwed on the closure, which retains an insert put in from the outside' },
);
