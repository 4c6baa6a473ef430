import { inputs, length, optional, variants } from '../../units';

/** The shape of a closure where it carries the pressure: a flat plate of one thickness, unless another is given. */
export const closureShape = /* @__PURE__ */ variants(
  'form',
  'shape of the closure',
  {
    flat: inputs({}, { meaning: 'flat plate of one thickness' }),
    stepped: inputs(
      {
        ringThickness: length(
          't',
          'thickness of the thin ring around the hub, depth of a groove or recess removed',
          {
            example: '8 mm',
            worse: 'low',
          },
        ),
        hubDiameter: length('D_b', 'diameter of the thick hub, where the thin ring begins', {
          example: '36 mm',
          worse: 'low',
        }),
      },
      { meaning: 'thick hub in a thin ring, such as next to a groove or a recess' },
    ),
    dished: inputs(
      {
        crownRadius: length('L', 'inside radius of the crown; half of the bore for a hemisphere', {
          example: '50 mm',
          worse: 'high',
        }),
        knuckleRadius: optional(
          length('r', 'inside radius of the knuckle; omit it for a hemisphere', {
            example: '5 mm',
            worse: 'low',
          }),
        ),
      },
      { meaning: 'hemisphere, or crown with a knuckle, with the pressure on its concave side' },
    ),
    ellipsoidal: inputs(
      {
        depth: length('h', 'inside depth of the ellipsoid without its skirt', {
          example: '12.5 mm',
          worse: 'low',
        }),
      },
      { meaning: 'half of an ellipsoid, with the pressure on its concave side' },
    ),
  },
  { standard: 'flat' },
);
