import { inputs, length, named } from '../../units';
import { materials } from '../materials/material-table';
import { partTemperature } from '../materials/part-temperature';

/** The tube that contains the pressure: its outside diameter and wall give every radius and the bore. */
export const tube = /* @__PURE__ */ inputs(
  {
    material: named('material of the case', materials, { example: '6061-T6 drawn tube' }),
    outsideDiameter: length('D_o', 'outside diameter of the case', { example: '54 mm', worse: 'high' }),
    wall: length('t', 'wall thickness of the case', { example: '3 mm', worse: 'low' }),
    wallTemperature: partTemperature,
  },
  {
    meaning: 'tube that contains the pressure',
    checks: [
      ({ outsideDiameter, wall }) =>
        wall.si < outsideDiameter.si / 2
          ? undefined
          : {
              path: 'wall',
              given: wall,
              expected: `less than half the outside diameter (${outsideDiameter.times(0.5)})`,
            },
    ],
  },
);
