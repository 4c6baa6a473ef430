import { force, formula, ratio, stiffness } from '../../units';

export const jointShare = /* @__PURE__ */ ratio(
  'C',
  'joint constant: share of the separating load that adds to the bolt',
  {
    min: 0,
    max: 1,
  },
);
export const preloadOfBolt = /* @__PURE__ */ force('F_i', 'preload of the bolt', { min: 0 });
export const separatingLoad = /* @__PURE__ */ force('P', 'separating load of one bolt', { min: 0 });

/**
 * The share of a separating load that adds to the bolt; the rest relieves the clamped parts. Valid while they are clamped.
 *
 * @example jointConstant({ boltStiffness: '200 kN/mm', memberStiffness: '600 kN/mm' }) // => 0.25
 */
export const jointConstant = /* @__PURE__ */ formula({
  name: 'jointConstant',
  title: 'Joint constant of a bolt in tension',
  equation: 'C = k_b / (k_b + k_m)',
  source: "Shigley's Mechanical Engineering Design, 9th ed., section 8-7, stiffness constant of the joint",
  inputs: {
    boltStiffness: stiffness('k_b', 'stiffness of the bolt', { above: 0 }),
    memberStiffness: stiffness('k_m', 'stiffness of the clamped parts', { above: 0 }),
  },
  output: ratio('C', 'joint constant', { min: 0, max: 1 }),
  example: { boltStiffness: '350 kN/mm', memberStiffness: '700 kN/mm' },
  si: ({ boltStiffness, memberStiffness }) => boltStiffness / (boltStiffness + memberStiffness),
});

/**
 * Force in a preloaded bolt under a separating load; all of the load once the parts have separated.
 *
 * @example tensionBoltForce({ preload: '10 kN', jointConstant: 0.25, load: '4 kN' }).in('kN') // => 11
 */
export const tensionBoltForce = /* @__PURE__ */ formula({
  name: 'tensionBoltForce',
  title: 'Force in a preloaded bolt',
  equation: 'F_b = max(F_i + C·P, P)',
  source:
    "Shigley's Mechanical Engineering Design, 9th ed., equation 8-24; after separation the bolt carries the load",
  inputs: { preload: preloadOfBolt, jointConstant: jointShare, load: separatingLoad },
  output: force('F_b', 'force in the bolt'),
  example: { preload: '9 kN', jointConstant: 0.3, load: '4 kN' },
  si: ({ preload, jointConstant: c, load }) => Math.max(preload + c * load, load),
});

/**
 * Force that is left between the clamped parts under a separating load; zero once they have separated.
 *
 * @example clampForce({ preload: '10 kN', jointConstant: 0.25, load: '4 kN' }).in('kN') // => 7
 */
export const clampForce = /* @__PURE__ */ formula({
  name: 'clampForce',
  title: 'Clamp force of a preloaded bolt under load',
  equation: 'F_m = max(0, F_i − (1 − C)·P)',
  source: "Shigley's Mechanical Engineering Design, 9th ed., equation 8-25, as a force of compression",
  inputs: { preload: preloadOfBolt, jointConstant: jointShare, load: separatingLoad },
  output: force('F_m', 'clamp force', { min: 0 }),
  example: { preload: '9 kN', jointConstant: 0.3, load: '4 kN' },
  si: ({ preload, jointConstant: c, load }) => Math.max(0, preload - (1 - c) * load),
});
