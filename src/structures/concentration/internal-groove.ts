import { formula, ratio } from '../../units';

/**
 * Stress concentration at the root of a groove in the bore of a tube: that of a groove around a bar whose radius is the wall,
 * and at least 2.5. An estimate: no published fit for the internal groove of a tube was available.
 *
 * @example internalGrooveConcentration({ barConcentration: 2.1 }) // => 2.5
 */
export const internalGrooveConcentration = /* @__PURE__ */ formula({
  name: 'internalGrooveConcentration',
  title: 'Stress concentration of a groove in the bore of a tube (estimate)',
  equation: 'K_g = max(2.5, K_t)',
  source:
    'Estimate from the groove around a bar, wall in place of the radius, with a minimum of 2.5 (engineering practice, no published source)',
  inputs: {
    barConcentration: ratio('K_t', 'stress concentration of the same groove around a bar', {
      min: 1,
      example: 5.6,
    }),
  },
  output: ratio('K_g', 'peak stress/sum of average and bending stress of the wall under the groove'),
  si: ({ barConcentration }) => Math.max(2.5, barConcentration),
});
