import { count, inputs, length, named, optional } from '../../units';
import { boltClasses } from '../fasteners/bolt-class-table';
import { materials } from '../materials/material-table';
import { partTemperature } from '../materials/part-temperature';
import { threads } from '../threads/thread-table';

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
        thread: named('thread of the screws', threads, { example: 'M4' }),
        boltClass: named('strength class of the screws', boltClasses, { example: 'A2-70' }),
        count: count('n', 'number of screws', { min: 2, whole: true, example: 8 }),
        boltCircle: length('D_b', 'diameter of the circle of the screws', {
          example: '42 mm',
          worse: 'high',
        }),
        engagement: length('L_e', 'length of full thread engaged in the closure', {
          example: '8 mm',
          worse: 'low',
        }),
        depth: optional(
          length('h', 'depth of the tapped holes with the drill point; the engagement where omitted', {
            example: '11 mm',
            worse: 'high',
          }),
        ),
      },
      { meaning: 'screws of the plate, parallel to the axis, into the closure' },
    ),
  },
  { meaning: 'plate screwed on the closure, which retains an insert put in from the outside' },
);
