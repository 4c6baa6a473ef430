import { force, formula, length, stress } from '../../units';

/**
 * Tension in what a groove or thread leaves of a tube's wall: the end force over the ring.
 *
 * @example wallTension({ load: '20 kN', outsideDiameter: '70 mm', insideDiameter: '63 mm' }).in('MPa') // => 27.35208474
 */
export const wallTension = /* @__PURE__ */ formula({
  name: 'wallTension',
  title: 'Tension in a tube',
  equation: 'σ_t = 4·F / (π·(D_o² − D_i²))',
  source: 'Statics: load over the ring',
  inputs: {
    load: force('F', 'load along the tube'),
    outsideDiameter: length('D_o', 'outside diameter'),
    insideDiameter: length(
      'D_i',
      'inside diameter; of the bottom of the groove or thread where the wall is cut',
    ),
  },
  output: stress('σ_t', 'average tension'),
  example: { load: '20 kN', outsideDiameter: '70 mm', insideDiameter: '63 mm' },
  requires: [
    ({ outsideDiameter, insideDiameter }) =>
      outsideDiameter > insideDiameter || 'the outside diameter does not exceed the inside diameter',
  ],
  si: ({ load, outsideDiameter, insideDiameter }) =>
    (4 * load) / (Math.PI * (outsideDiameter ** 2 - insideDiameter ** 2)),
});

/**
 * End force at which the thinned wall of a tube folds outward: a groove or thread takes the thrust at its bore side, off the
 * middle of what is left of the wall, which must carry tension and bending together. The whole bending is put on the wall
 * and none on the land or closure, so it is a lower bound.
 *
 * @example grooveWallCollapseLoad({ yieldStrength: '241 MPa', wall: '3.5 mm', arm: '2.5 mm', diameter: '66.5 mm' }).in('kN') // => 55.54864161
 */
export const grooveWallCollapseLoad = /* @__PURE__ */ formula({
  name: 'grooveWallCollapseLoad',
  title: 'End force that folds the wall at a groove',
  equation: 'F_c = π·D·t·S_y·(√(1 + (2·a / t)²) − 2·a / t)',
  source:
    'Limit analysis of a rectangular section, M/M_p + (N/N_p)² = 1 with M = N·a (Hodge, Plastic Analysis of Structures, from memory)',
  inputs: {
    yieldStrength: stress('S_y', 'yield strength', { above: 0 }),
    wall: length('t', 'wall that the groove leaves'),
    arm: length('a', 'from the middle of that wall to where the thrust comes in, radially', { min: 0 }),
    diameter: length('D', 'mean diameter of that wall'),
  },
  output: force('F_c', 'end force at which the section is plastic throughout'),
  example: { yieldStrength: '241 MPa', wall: '3.5 mm', arm: '2.5 mm', diameter: '66.5 mm' },
  si: ({ yieldStrength, wall, arm, diameter }) => {
    const x = (2 * arm) / wall;
    // √(1 + x²) − x without the cancellation.
    return (Math.PI * diameter * wall * yieldStrength) / (Math.sqrt(1 + x * x) + x);
  },
});

/**
 * Tension in a wall at the end force that folds it: the load it stands, as a stress.
 *
 * @example grooveWallCollapseStress({ tension: '20 MPa', load: '10 kN', collapseLoad: '50 kN' }).in('MPa') // => 100
 */
export const grooveWallCollapseStress = /* @__PURE__ */ formula({
  name: 'grooveWallCollapseStress',
  title: 'Tension in a wall as it collapses at a groove',
  equation: 'σ_c = σ_t·F_c / F',
  source: 'Proportion of tension and end force',
  inputs: {
    tension: stress('σ_t', 'tension under the end force'),
    load: force('F', 'end force', { above: 0 }),
    collapseLoad: force('F_c', 'end force at which the wall collapses'),
  },
  output: stress('σ_c', 'tension at which the wall collapses'),
  example: { tension: '27 MPa', load: '20 kN', collapseLoad: '55 kN' },
  si: ({ tension, load, collapseLoad }) => (tension / load) * collapseLoad,
});
