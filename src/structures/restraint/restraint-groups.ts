import {
  angle,
  choice,
  count,
  force,
  inputs,
  length,
  named,
  optional,
  ratio,
  secondMomentOfArea,
  stress,
  words,
} from '../../units';
import { boltClasses } from '../fasteners/bolt-class-table';
import { threads } from '../threads/thread-table';

const aboveZero = { above: 0 } as const;
const number = { min: 1, whole: true } as const;

/** The steel wire rope of a restraint. */
export const rope = /* @__PURE__ */ inputs(
  {
    diameter: length('d', 'diameter of the rope', { example: '1/4 in', worse: 'neither' }),
    construction: words("construction of the rope, such as '7x19' or '6x19 IWRC'", { example: '7x19' }),
    grade: words("grade of the rope, such as 'aircraft carbon', 'improved plow' or '1770'", {
      example: 'aircraft carbon',
    }),
  },
  { meaning: 'wire rope' },
);

/** Bolts that anchor a restraint or a stand. */
export const anchor = /* @__PURE__ */ inputs(
  {
    count: count('n', 'number of anchor bolts that share the load', { ...number, example: 4 }),
    thread: named('thread of the anchor bolts', threads, { example: 'M10' }),
    boltClass: named('strength class of the anchor bolts', boltClasses, { example: '8.8' }),
    pullAngle: optional(
      angle('α', 'angle between the pull and the surface; 0° shears the bolts, 90° pulls them out', {
        min: 0,
        max: Math.PI / 2,
        example: '0 deg',
        worse: 'neither',
      }),
      0,
    ),
    factor: optional(
      ratio('FS', 'factor on the ultimate strength', { min: 1, example: 2, worse: 'high' }),
      2,
    ),
  },
  { meaning: 'anchor bolts of the restraint' },
);

/** What restrains a motor that separates from its stand. */
export const restraint = /* @__PURE__ */ inputs(
  {
    rope,
    ropeLength: length('L', 'length of a rope', { example: '1 m', worse: 'low' }), // a short rope is a stiff one
    slack: length('s', 'travel of the motor before the rope is tight', {
      min: 0,
      example: '0 mm',
      worse: 'high',
    }),
    legs: optional(count('n', 'number of ropes that share the load', { ...number, example: 1 }), 1),
    legAngle: optional(
      angle('θ', 'angle between a rope and the thrust', {
        min: 0,
        below: Math.PI / 2,
        example: '0 deg',
        worse: 'high',
      }),
      0,
    ),
    termination: choice('termination of the rope', [
      'poured socket',
      'swaged socket',
      'swaged sleeve',
      'hand-tucked splice',
      'wedge socket',
      'clips',
    ]),
    designFactor: optional(
      ratio('N', 'design factor on the breaking force', { min: 1, example: 5, worse: 'high' }),
      5,
    ),
    shackle: optional(
      force('WLL', 'working load limit of the shackle of one rope, as marked on it', {
        ...aboveZero,
        example: '5 kN',
        worse: 'low',
      }),
    ),
    anchor: optional(anchor),
  },
  { meaning: 'restraint of a motor that separates from its stand' },
);

/** The members of a stand that carry the thrust. */
export const standMembers = /* @__PURE__ */ inputs(
  {
    count: count('n', 'number of members that share the thrust equally', { ...number, example: 3 }),
    angle: optional(
      angle('θ', 'angle between a member and the axis', {
        min: 0,
        below: Math.PI / 2,
        example: '0 deg',
        worse: 'high',
      }),
      0,
    ),
    length: length('L', 'length of a member between its ends', { example: '0.5 m', worse: 'high' }),
    elasticModulus: stress('E', 'elastic modulus of a member', {
      ...aboveZero,
      example: '200 GPa',
      worse: 'low',
    }),
    secondMoment: secondMomentOfArea('I', 'minimum second moment of area of a member', {
      example: '5000 mm^4',
      worse: 'low',
    }),
    endFactor: optional(
      ratio('K', 'end factor: 1 pinned at both ends, 2 free at one end', {
        min: 0.5,
        example: 1,
        worse: 'high',
      }),
      1,
    ),
  },
  { meaning: 'members of the stand that carry the thrust' },
);

/** The anchors of a horizontal stand. */
export const standAnchors = /* @__PURE__ */ inputs(
  {
    height: length('h', 'height of the thrust axis above the base', { example: '0.3 m', worse: 'high' }),
    anchorSpacing: length('b', 'distance between front and rear anchors', {
      example: '0.8 m',
      worse: 'low',
    }),
    weight: force('W', 'weight of the stand', { min: 0, example: '300 N', worse: 'low' }),
    count: count('n', 'number of anchors at the rear', { ...number, example: 2 }),
    allowable: force('F_a', 'allowable uplift of one anchor', {
      ...aboveZero,
      example: '2 kN',
      worse: 'low',
    }),
  },
  { meaning: 'anchors of a horizontal stand' },
);
