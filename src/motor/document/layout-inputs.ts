import { inputs, length, optional } from '../../units';

const recess = (meaning: string, face: string) =>
  optional(
    inputs(
      {
        diameter: length('D_r', `diameter of the ${meaning}`, { example: '36 mm', worse: 'high' }),
        depth: length('h_r', `depth of the ${meaning}, from the ${face} face`, {
          example: '8 mm',
          worse: 'high',
        }),
      },
      { meaning },
    ),
  );

/** Where a closure lies along the axis. Each position is a distance from the end face of the case at that end, positive towards the chamber. */
export const closureLayout = /* @__PURE__ */ inputs(
  {
    innerFace: length('x_i', 'distance from the end face of the case to the inner face of the closure', {
      min: 0,
      example: '30 mm',
      worse: 'both',
    }),
    length: length('L_c', 'overall axial length of the closure', { example: '30 mm', worse: 'both' }),
    diameter: length('D_c', 'diameter of the closure in the case', { example: '50.9 mm', worse: 'both' }),
    shoulder: optional(
      inputs(
        {
          diameter: length('D_f', 'diameter of the shoulder', { example: '54 mm', worse: 'both' }),
          thickness: length('h_f', 'axial thickness of the shoulder', { example: '4 mm', worse: 'both' }),
        },
        { meaning: 'shoulder of the closure, which rests on the end face of the case' },
      ),
    ),
    cavity: recess('cavity in the inner face', 'inner'),
    recess: recess('recess in the outer face', 'outer'),
    threadStart: optional(
      length('x_t', 'distance from the end face of the case to the start of the engaged thread', {
        min: 0,
        example: '2 mm',
        worse: 'both',
      }),
    ),
    reliefLength: optional(
      length('L_r', 'axial length of the runout groove at the inner end of the thread', {
        example: '4 mm',
        worse: 'both',
      }),
    ),
  },
  { meaning: 'position of the closure and its features along the axis' },
);
