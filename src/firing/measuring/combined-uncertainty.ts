import { list, procedure, ratio } from '../../units';

/**
 * Returns the standard uncertainty of a result from those of its independent components (calibration, zero,
 * integration, clock, …), all relative to the result or all in its unit: the root of the sum of their squares.
 *
 * @example combinedUncertainty([0.03, 0.04]) // => 0.05
 */
export const combinedUncertainty = /* @__PURE__ */ procedure({
  name: 'combinedUncertainty',
  title: 'Combined standard uncertainty of independent components',
  source: 'JCGM 100:2008 (GUM), clause 5.1.2, uncorrelated inputs (formula quoted from memory, not verified)',
  subject: list(
    'standard uncertainties of the components',
    ratio('u_i', 'standard uncertainty of a component', { min: 0, example: 0.03 }),
  ),
  inputs: {},
  gives: 'the standard uncertainty of the result',
  example: 'combinedUncertainty([0.03, 0.04])',
  run: (parts): number => Math.hypot(...parts),
});
