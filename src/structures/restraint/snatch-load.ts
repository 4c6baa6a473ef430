import { area, force, formula, length, ratio, stiffness, stress } from '../../units';

/**
 * Stiffness of a rope of some length.
 *
 * @example ropeStiffness({ metallicArea: '0.0295 in^2', modulus: '15 Msi', length: '120 in' }).in('lbf/in') // => 3687.5
 */
export const ropeStiffness = /* @__PURE__ */ formula({
  name: 'ropeStiffness',
  title: 'Stiffness of a rope',
  equation: 'k = A·E / L',
  source: 'Hooke’s law',
  inputs: {
    metallicArea: area('A', 'area of the wires; 0.472·d² for 7x19 rope'),
    modulus: stress('E', 'modulus of the rope, about half of that of steel', { above: 0 }),
    length: length('L', 'length of the rope'),
  },
  output: stiffness('k', 'stiffness'),
  example: { metallicArea: '19 mm^2', modulus: '103 GPa', length: '1.5 m' },
  si: ({ metallicArea, modulus, length: l }) => (metallicArea * modulus) / l,
});

/**
 * Load in an elastic tether when a steady load takes up its slack: twice the load without slack, and much more with
 * it. With a weight as the load it is that of a weight dropped by the slack. The stand and the motor are assumed
 * rigid and the rope massless, which is conservative.
 *
 * @example snatchLoad({ load: '200 lbf', stiffness: '3687.5 lbf/in', slack: '12 in' }).in('lbf') // => 4411.887938
 */
export const snatchLoad = /* @__PURE__ */ formula({
  name: 'snatchLoad',
  title: 'Snatch load of a tether with slack',
  equation: 'P = F + √(F² + 2·k·F·s)',
  source: 'Energy method; D. Hall, Understanding Shock Loads, TD&T 49(2) (2013), for a dropped weight',
  inputs: {
    load: force('F', 'steady load: thrust, or weight', { above: 0 }),
    stiffness: stiffness('k', 'stiffness of the tether'),
    slack: length('s', 'slack before the tether is tight', { min: 0 }),
  },
  output: force('P', 'maximum load in the tether'),
  example: { load: '2 kN', stiffness: '1300 N/mm', slack: '20 mm' },
  si: ({ load, stiffness: k, slack }) => load + Math.sqrt(load * load + 2 * k * load * slack),
});

/**
 * Snatch load of a tether/steady load; 2 without slack.
 *
 * @example impactFactor({ load: '200 lbf', stiffness: '3687.5 lbf/in', slack: '12 in' }) // => 22.05943969
 */
export const impactFactor = /* @__PURE__ */ formula({
  name: 'impactFactor',
  title: 'Impact factor of a tether with slack',
  equation: 'n = 1 + √(1 + 2·k·s / F)',
  source: 'Energy method; D. Hall, Understanding Shock Loads, TD&T 49(2) (2013), for a dropped weight',
  inputs: {
    load: force('F', 'steady load: thrust, or weight', { above: 0 }),
    stiffness: stiffness('k', 'stiffness of the tether'),
    slack: length('s', 'slack before the tether is tight', { min: 0 }),
  },
  output: ratio('n', 'maximum load/steady load', { min: 2 }),
  example: { load: '2 kN', stiffness: '1300 N/mm', slack: '20 mm' },
  si: ({ load, stiffness: k, slack }) => 1 + Math.sqrt(1 + (2 * k * slack) / load),
});

/**
 * The catalogue strength required of a rope for a load.
 *
 * @example requiredBreakingForce({ load: '4 kN', designFactor: 5, efficiency: 0.8 }).in('kN') // => 25
 */
export const requiredBreakingForce = /* @__PURE__ */ formula({
  name: 'requiredBreakingForce',
  title: 'Required breaking force of a rope',
  equation: 'B = N·P / η',
  source: 'Definition; a safe load of one fifth of the breaking force is that of rope tables',
  inputs: {
    load: force('P', 'maximum load in one rope'),
    designFactor: ratio('N', 'design factor', { above: 0 }),
    efficiency: ratio('η', 'termination efficiency', { above: 0, max: 1 }),
  },
  output: force('B', 'minimum breaking force of the rope'),
  example: { load: '4 kN', designFactor: 5, efficiency: 0.8 },
  si: ({ load, designFactor, efficiency }) => (designFactor * load) / efficiency,
});
