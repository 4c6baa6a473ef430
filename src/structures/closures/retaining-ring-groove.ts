import { force, inputs, length, named, optional, ratio, stress } from '../../units';
import { retainingRings } from './retaining-rings';

/** A retaining ring in a groove in the bore of the case, which retains a closure. */
export const retainingRing = /* @__PURE__ */ inputs(
  {
    ring: optional(
      named(
        'standard ring, such as DIN 472 50; it supplies the sizes of ring and groove that are omitted',
        retainingRings,
        { example: 'DIN 472 50' },
      ),
    ),
    grooveDepth: optional(
      length(
        'd',
        'radial depth of the groove in the bore of the case; that of the standard ring where omitted',
        {
          example: '1.2 mm',
          worse: 'both', // a deep groove leaves less wall, a shallow one less bearing area
        },
      ),
    ),
    grooveWidth: optional(
      length('w', 'axial width of the groove; that of the standard ring where omitted', {
        example: '1.85 mm',
        worse: 'low',
      }),
    ),
    edgeMargin: optional(
      length('z', 'length of case from the groove to its end; that of the standard ring where omitted', {
        example: '5 mm',
        worse: 'low',
      }),
    ),
    thickness: optional(
      length('T', 'axial thickness of the ring; that of the standard ring where omitted', {
        example: '1.75 mm',
        worse: 'low',
      }),
    ),
    shearStrength: stress('S_s', 'shear strength of the ring, stated by its manufacturer', {
      above: 0,
      example: '800 MPa',
      worse: 'low',
    }),
    grooveRootRadius: optional(
      length('r_g', 'radius at the root of the groove; 0.1 mm where omitted', {
        example: '0.1 mm',
        worse: 'low',
      }),
    ),
    contactFactor: optional(
      ratio(
        'C_f',
        'part of the circumference on which ring and groove bear on each other; 0.9 where omitted, for a ring with lugs and gap',
        { above: 0, max: 1, example: 0.9, worse: 'low' },
      ),
    ),
    chamfer: optional(
      length(
        'c',
        'chamfer or corner radius of the closure where it bears on the ring; 0 mm for a sharp edge',
        { min: 0, example: '0.2 mm', worse: 'high' },
      ),
    ),
    play: optional(
      length('j', 'radial clearance between closure and bore at the ring', {
        min: 0,
        example: '0.1 mm',
        worse: 'high',
      }),
    ),
    dishingCapacity: optional(
      force('F_R', 'axial capacity of the ring against dishing, stated by its manufacturer', {
        above: 0,
        example: '40 kN',
        worse: 'low',
      }),
    ),
    dishingChamfer: optional(
      length('g', 'chamfer for which dishingCapacity is stated; a sharp edge where omitted', {
        example: '2 mm',
        worse: 'neither',
      }),
    ),
  },
  { meaning: 'retaining ring in a groove in the bore of the case, which retains a closure' },
);
