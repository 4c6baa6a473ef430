import { choice, count, inputs, length, named, optional } from '../../units';
import { boltClasses } from '../fasteners/bolt-class-table';
import { tightening } from '../tension-bolts/axial-bolts';
import { threads } from '../threads/thread-table';
import { fastenerType } from './fastener-type';

/** The radial bolts that retain a closure in the case, and their holes. */
export const radialBolts = /* @__PURE__ */ inputs(
  {
    thread: named('thread of the bolts', threads, { example: 'M5' }),
    boltClass: named('strength class of the bolts', boltClasses, { example: 'A2-70' }),
    ...fastenerType.fields,
    count: count('n', 'number of bolts in a row', { min: 1, whole: true, example: 12 }),
    rows: optional(count('m', 'number of rows of bolts', { min: 1, whole: true, example: 1 }), 1),
    rowSpacing: optional(length('s', 'distance between rows, axial', { example: '15 mm', worse: 'low' })),
    shearPlane: choice('part of the bolt in the shear plane between case and closure', [
      'thread',
      'shank',
      'root',
    ]),
    holeDiameter: length('d_h', 'diameter of the holes in the case', { example: '5.3 mm', worse: 'high' }),
    edgeDistance: length('e', 'distance from the hole centres of the nearest row to the end of the case', {
      example: '11 mm',
      worse: 'low',
    }),
    engagement: length('L_e', 'length of full thread engaged in the closure', {
      example: '8 mm',
      worse: 'low',
    }),
    sealToHoles: optional(
      length('x', 'distance from the seal to the holes, over which the hoop stress decays', {
        min: 0,
        example: '10 mm',
        worse: 'low',
      }),
    ),
    gap: optional(
      length('g', 'radial gap between case and closure at the bolts', {
        min: 0,
        example: '0.05 mm',
        worse: 'high',
      }),
      0,
    ),
    positionTolerance: optional(
      length('δ', 'position tolerance of a hole; 0 (drilled together) where omitted', {
        min: 0,
        example: '0.05 mm',
        worse: 'high',
      }),
    ),
    ...tightening,
  },
  { meaning: 'radial bolts that retain a closure' },
);
