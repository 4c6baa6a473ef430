import { count, force, inputs, length, named, optional, ratio, torque } from '../../units';
import { boltClasses } from '../fasteners/bolt-class-table';
import { type NutFactor, nutFactor, nutFactors } from '../threads/preload';
import { threads } from '../threads/thread-table';
import { type TighteningMethod, tighteningMethod, tighteningMethods } from './tightening-method';

/** How bolts are tightened. */
export const tightening = {
  preload: optional(
    force('F_i', 'nominal preload of each bolt, instead of a torque', {
      min: 0,
      example: '9 kN',
      worse: 'neither',
    }),
  ),
  torque: optional(
    torque('T', 'tightening torque of each bolt, instead of a preload', {
      min: 0,
      example: '9 N*m',
      worse: 'neither',
    }),
  ),
  finish: optional(
    named('finish of the bolts, which determines the preload from torque', nutFactors, {
      example: 'zinc plated',
    }),
  ),
  tightening: optional(
    named('method of tightening, which determines the scatter of the preload', tighteningMethods, {
      example: 'torque wrench',
    }),
  ),
};

/** The method of tightening, and that assumed where none is given. */
export const methodOf = (given: TighteningMethod | undefined): TighteningMethod =>
  given ?? tighteningMethod('torque wrench');

/** The finish of the bolts, and that assumed where none is given. */
export const finishOf = (given: NutFactor | undefined): NutFactor => given ?? nutFactor('zinc plated');

/** Bolts in tension along the axis, in tapped holes. */
export const axialBolts = /* @__PURE__ */ inputs(
  {
    thread: named('thread of the bolts', threads, { example: 'M6' }),
    boltClass: named('strength class of the bolts', boltClasses, { example: '8.8' }),
    count: count('n', 'number of bolts', { min: 1, whole: true, example: 8 }),
    boltCircle: length('D_c', 'diameter of the bolt circle', { example: '66 mm', worse: 'neither' }),
    clampedThickness: length('h', 'thickness of all that the bolts clamp, with washers', {
      example: '12 mm',
      worse: 'neither',
    }),
    engagement: length('L_e', 'length of full thread engaged in the tapped part', {
      example: '12 mm',
      worse: 'low',
    }),
    holeDiameter: length('d_h', 'diameter of the clearance holes in the clamped part', {
      example: '6.6 mm',
      worse: 'high',
    }),
    headDiameter: optional(
      length('d_w', 'diameter of the face under the heads or washers; 1.5 thread diameters where omitted', {
        example: '10 mm',
        worse: 'low',
      }),
    ),
    shankLength: optional(
      length('l_d', 'unthreaded length of the bolts in the grip', {
        min: 0,
        example: '0 mm',
        worse: 'neither',
      }),
      0,
    ),
    ...tightening,
    relaxation: optional(
      ratio('z', 'fraction of the preload lost by embedding and relaxation', {
        min: 0,
        below: 1,
        example: 0.05,
        worse: 'neither',
      }),
      0.05,
    ),
  },
  { meaning: 'bolts in tension along the axis, in tapped holes' },
);
