import { area, formula, length, stiffness, stress } from '../../units';

/**
 * Stiffness of a bolt in tension within its grip: the unthreaded shank and the thread are two springs in series.
 *
 * @example boltAxialStiffness({ shankArea: '50 mm^2', threadArea: '40 mm^2', shankLength: '10 mm', threadLength: '8 mm', elasticModulus: '200 GPa' }).in('kN/mm') // => 500
 */
export const boltAxialStiffness = /* @__PURE__ */ formula({
  name: 'boltAxialStiffness',
  title: 'Stiffness of a bolt in tension',
  equation: 'k_b = A_d·A_t·E / (A_d·l_t + A_t·l_d)',
  source: "Shigley's Mechanical Engineering Design, 9th ed., equation 8-17",
  inputs: {
    shankArea: area('A_d', 'area of the unthreaded shank'),
    threadArea: area('A_t', 'tensile stress area of the thread'),
    shankLength: length('l_d', 'unthreaded length in the grip', { min: 0 }),
    threadLength: length('l_t', 'threaded length in the grip', { above: 0 }),
    elasticModulus: stress('E', "Young's modulus of the bolt", { above: 0 }),
  },
  output: stiffness('k_b', 'load per elongation of the bolt'),
  example: {
    shankArea: '50.3 mm^2',
    threadArea: '36.6 mm^2',
    shankLength: '4 mm',
    threadLength: '8 mm',
    elasticModulus: '205 GPa',
  },
  si: ({ shankArea, threadArea, shankLength, threadLength, elasticModulus }) =>
    (shankArea * threadArea * elasticModulus) / (shankArea * threadLength + threadArea * shankLength),
});
