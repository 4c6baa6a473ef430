import { inputs, length, stress } from '../../units';

/** A retaining ring in a groove in the bore of the case, which retains a closure. */
export const retainingRing = /* @__PURE__ */ inputs(
  {
    grooveDepth: length('d', 'radial depth of the groove in the bore of the case', {
      example: '1.2 mm',
      worse: 'both', // a deep groove leaves less wall, a shallow one less bearing area
    }),
    edgeMargin: length('z', 'length of case from the groove to its end', {
      example: '5 mm',
      worse: 'low',
    }),
    thickness: length('T', 'axial thickness of the ring', { example: '1.75 mm', worse: 'low' }),
    shearStrength: stress('S_s', 'shear strength of the ring, stated by its manufacturer', {
      above: 0,
      example: '800 MPa',
      worse: 'low',
    }),
  },
  { meaning: 'retaining ring in a groove in the bore of the case, which retains a closure' },
);
