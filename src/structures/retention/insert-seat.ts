import { choice, inputs, length, optional, words } from '../../units';

/** The seat of a throat insert in the aft closure. */
export const insertSeat = /* @__PURE__ */ inputs(
  {
    insertedFrom: choice(
      'side from which the insert goes into the closure: from the inside a lip of the closure retains it, from the outside a retainer',
      ['inside', 'outside'],
    ),
    pocketDiameter: length('D_p', 'diameter of the pocket in the closure', {
      example: '32.2 mm',
      worse: 'high',
    }),
    pocketDepth: length(
      'h_p',
      'depth of the pocket, from the bottom of the cavity or recess of the closure on the side of insertion',
      {
        example: '14 mm',
        worse: 'high',
      },
    ),
    sealDiameter: optional(
      length(
        'D_s',
        'diameter at which the insert is sealed; where omitted that of the pocket, and that of the screws of a retainer',
        { example: '32.2 mm', worse: 'high' },
      ),
    ),
    bond: optional(words('adhesive or sealant between insert and pocket; no strength is credited to it')),
    thicknessAtOpening: optional(
      length(
        't_i',
        'axial thickness of the insert at the diameter of the opening of its seat; a 45° entrance is assumed where omitted',
        { example: '12 mm', worse: 'low' },
      ),
    ),
    erosion: optional(
      length('e', 'radial erosion of the edge of the opening over the life of the seat; 0 where omitted', {
        min: 0,
        example: '0.3 mm',
        worse: 'high',
      }),
    ),
  },
  { meaning: 'seat of the insert in the aft closure' },
);
