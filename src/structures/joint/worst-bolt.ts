import { count, force, formula, length, ratio, stress } from '../../units';

/**
 * Load on the bolt of a joint that carries the most.
 *
 * @example worstBoltLoad({ load: '12 kN', count: 8, shareFactor: 1.2 }).in('N') // => 1800
 */
export const worstBoltLoad = /* @__PURE__ */ formula({
  name: 'worstBoltLoad',
  title: 'Load on the most heavily loaded bolt',
  equation: 'F_b = κ·F / n',
  source: 'Statics: the equal share times the share factor',
  inputs: {
    load: force('F', 'load across the joint'),
    count: count('n', 'bolts that share it'),
    shareFactor: ratio('κ', 'load of the most heavily loaded bolt over the equal share', { min: 1 }),
  },
  output: force('F_b', 'load on that bolt'),
  example: { load: '31.4 kN', count: 12, shareFactor: 1.3 },
  si: ({ load, count: n, shareFactor }) => (load / n) * shareFactor,
});

/**
 * Share factor of the worst bolt where its hole yields in bearing: from that load on the other bolts take over.
 *
 * @example yieldLimitedShareFactor({ elasticShareFactor: 3, bearingYield: '400 MPa', diameter: '6 mm', wall: '3 mm', count: 10, load: '60 kN' }) // => 1.2
 */
export const yieldLimitedShareFactor = /* @__PURE__ */ formula({
  name: 'yieldLimitedShareFactor',
  title: 'Share of the worst bolt, limited by bearing yield of its hole',
  equation: 'κ = max(1, min(κ_e, S_y·d·t·n / F))',
  source:
    'Statics: a hole that yields in bearing carries no more (engineering practice, no published source)',
  inputs: {
    elasticShareFactor: ratio('κ_e', 'elastic share factor', { min: 1 }),
    bearingYield: stress('S_y', 'bearing yield strength of the wall', { min: 0 }),
    diameter: length('d', 'diameter of a bolt'),
    wall: length('t', 'thickness of the wall'),
    count: count('n', 'bolts'),
    load: force('F', 'load across the joint', { above: 0 }),
  },
  output: ratio('κ', 'load of the worst bolt over the equal share', { min: 1 }),
  example: {
    elasticShareFactor: 2.1,
    bearingYield: '386 MPa',
    diameter: '6 mm',
    wall: '3 mm',
    count: 12,
    load: '31.4 kN',
  },
  si: ({ elasticShareFactor, bearingYield, diameter, wall, count: n, load }) =>
    Math.max(1, Math.min(elasticShareFactor, (bearingYield * diameter * wall * n) / load)),
});

/**
 * Pull of a radial bolt on the threads of the closure: its preload, or its shear load where that is more. A bolt that tilts
 * under its shear load pulls on its threads by at most that load.
 *
 * @example radialBoltPull({ preload: '3 kN', shearLoad: '2 kN' }).in('kN') // => 3
 */
export const radialBoltPull = /* @__PURE__ */ formula({
  name: 'radialBoltPull',
  title: 'Pull of a radial bolt on its threads',
  equation: 'F_t = max(F_i, F_b)',
  source:
    'Statics: the shear load bounds the pull of a bolt that tilts (engineering practice, no published source)',
  inputs: {
    preload: force('F_i', 'preload', { min: 0 }),
    shearLoad: force('F_b', 'shear load of the bolt'),
  },
  output: force('F_t', 'pull on the threads'),
  example: { preload: '1 kN', shearLoad: '2.6 kN' },
  si: ({ preload, shearLoad }) => Math.max(preload, shearLoad),
});
