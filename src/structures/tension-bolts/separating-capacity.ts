import { area, force, formula, length, stiffness, stress } from '../../units';
import { jointShare, preloadOfBolt } from './joint-constant';

/**
 * Load at which a section of a bolted joint reaches a strength: of the bolt, of its thread, or under its head.
 *
 * @example sectionLoad({ strength: '800 MPa', area: '20 mm^2' }).in('kN') // => 16
 */
export const sectionLoad = /* @__PURE__ */ formula({
  name: 'sectionLoad',
  title: 'Load of a section at its strength',
  equation: 'F_s = S·A',
  source: 'Definition of strength',
  inputs: {
    strength: stress('S', 'strength', { above: 0 }),
    area: area('A', 'area that carries the load'),
  },
  output: force('F_s', 'load at which the strength is reached'),
  example: { strength: '640 MPa', area: '20.1 mm^2' },
  si: ({ strength, area: a }) => strength * a,
});

/**
 * The separating load at which the force in a preloaded bolt reaches a given load. Once the parts have separated the bolt
 * carries all of the separating load, so that it cannot exceed the load itself; zero where the preload alone exceeds it.
 *
 * @example separatingCapacity({ sectionLoad: '12 kN', preload: '9 kN', jointConstant: 0.5 }).in('kN') // => 6
 */
export const separatingCapacity = /* @__PURE__ */ formula({
  name: 'separatingCapacity',
  title: 'Separating load at which a preloaded bolt reaches a given force',
  equation: 'P_s = max(0, min((F_s − F_i) / C, F_s))',
  source:
    "Shigley's Mechanical Engineering Design, 9th ed., equation 8-29 for the load; C is 1 after separation",
  inputs: {
    sectionLoad: force('F_s', 'force in the bolt that is allowed', { min: 0 }),
    preload: preloadOfBolt,
    jointConstant: { ...jointShare, above: 0 },
  },
  output: force('P_s', 'separating load of one bolt', { min: 0 }),
  example: { sectionLoad: '11.6 kN', preload: '9 kN', jointConstant: 0.3 },
  si: ({ sectionLoad: limit, preload, jointConstant: c }) =>
    Math.max(0, Math.min((limit - preload) / c, limit)),
});

/**
 * The separating load at which the clamped parts separate.
 *
 * @example separationLoad({ preload: '9 kN', jointConstant: 0.25 }).in('kN') // => 12
 */
export const separationLoad = /* @__PURE__ */ formula({
  name: 'separationLoad',
  title: 'Separating load at which the clamped parts separate',
  equation: 'P_0 = F_i / (1 − C)',
  source: "Shigley's Mechanical Engineering Design, 9th ed., equation 8-30 for the load",
  inputs: { preload: preloadOfBolt, jointConstant: { ...jointShare, below: 1 } },
  output: force('P_0', 'separating load of one bolt', { min: 0 }),
  example: { preload: '9 kN', jointConstant: 0.3 },
  si: ({ preload, jointConstant: c }) => preload / (1 - c),
});

/**
 * How far clamped faces open: beyond the load at which they separate the bolts alone stretch.
 *
 * @example faceOpening({ load: '10 kN', separationLoad: '8 kN', boltStiffness: '200 kN/mm' }).in('mm') // => 0.01
 */
export const faceOpening = /* @__PURE__ */ formula({
  name: 'faceOpening',
  title: 'Opening of clamped faces',
  equation: 'δ = max(0, (P − P_0) / k_b)',
  source:
    'Statics of the bolts as springs; plates that bend open more (engineering practice, no published source)',
  inputs: {
    load: force('P', 'separating load of one bolt', { min: 0 }),
    separationLoad: force('P_0', 'separating load at which the faces separate', { min: 0 }),
    boltStiffness: stiffness('k_b', 'stiffness of the bolt', { above: 0 }),
  },
  output: length('δ', 'opening of the faces', { min: 0 }),
  example: { load: '10 kN', separationLoad: '8 kN', boltStiffness: '200 kN/mm' },
  si: ({ load, separationLoad: start, boltStiffness }) => Math.max(0, (load - start) / boltStiffness),
});
