import { inputs, length, optional } from '../../units';

/** The thread by which a closure screws into the case. */
export const closureThread = /* @__PURE__ */ inputs(
  {
    majorDiameter: length(
      'D',
      'nominal diameter of the thread in the end of the case; given in inches it has the limits of class 2A/2B, otherwise those of 6g/6H',
      { example: '52 mm', worse: 'neither' },
    ),
    pitch: length('P', 'pitch of the thread; 1/16 in for 16 threads per inch', {
      example: '1.5 mm',
      worse: 'neither',
    }),
    engagement: length('L_e', 'length of full thread engaged, without chamfers and runout', {
      example: '12 mm',
      worse: 'low',
    }),
    reliefDiameter: optional(
      length('D_r', 'diameter of the runout groove, where it is deeper than the thread', {
        example: '53 mm',
        worse: 'high',
      }),
    ),
  },
  { meaning: 'thread by which a closure screws into the case' },
);
