import { materials, tube } from '../../structures/inputs';
import { inputs, length, named, optional } from '../../units';

const { material, outsideDiameter, wall, wallTemperature } = tube.fields;

/** The tube that contains the pressure, with its lengths; its wall or its bore is given. */
export const caseInputs = /* @__PURE__ */ inputs(
  {
    material,
    outsideDiameter,
    wall: optional(wall),
    insideDiameter: optional(
      length('D_b', 'inside diameter of the case as measured or honed, instead of the wall thickness', {
        example: '51 mm',
        worse: 'high',
      }),
    ),
    length: length('L', 'length of the case', { example: '360 mm', worse: 'neither' }),
    chamberLength: length('L_c', 'length of the chamber between the closures', {
      example: '320 mm',
      worse: 'neither',
    }),
    wallTemperature,
  },
  { meaning: 'case' },
);

/** The liner between grain and case. */
export const linerInputs = /* @__PURE__ */ optional(
  inputs(
    {
      material: named('material of the liner', materials, { example: 'paper tube' }),
      thickness: length('t_l', 'thickness of the liner', { example: '1 mm', worse: 'neither' }),
    },
    { meaning: 'liner' },
  ),
);
