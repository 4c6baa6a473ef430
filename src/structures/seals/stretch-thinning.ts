import { formula, ratio } from '../../units';

const source = (range: string): string =>
  `empirical fit of the Parker O-Ring Handbook and AS4716 for a stretch of ${range}, stated in per cent (from memory)`;
const output = ratio('Y', 'loss of cross section, as a fraction of it');

/**
 * Measured loss of cross section of an O-ring stretched by up to 3 %: more than by constant volume
 * alone ({@link stretchedCrossSection}), since the section also flattens on its groove.
 *
 * @example stretchThinning({ stretch: 0.02 }) // => 0.01735
 */
export const stretchThinning = /* @__PURE__ */ formula({
  name: 'stretchThinning',
  title: 'Loss of cross section of a stretched O-ring, to 3 %',
  equation: 'Y = −0.00005 + 1.19·S − 19·S² − 10·S³ + 8000·S⁴',
  source: source('0 to 3 %'),
  inputs: { stretch: ratio('S', 'stretch of the inside diameter', { min: 0 }) },
  output,
  example: { stretch: 0.02 },
  valid: [
    ({ stretch }) => stretch <= 0.03 || 'The fit is valid to a stretch of 3 %. Use largeStretchThinning.',
  ],
  si: ({ stretch: s }) => -0.00005 + s * (1.19 + s * (-19 + s * (-10 + 8000 * s))),
});

/** @example largeStretchThinning({ stretch: 0.1 }) // => 0.06 */
export const largeStretchThinning = /* @__PURE__ */ formula({
  name: 'largeStretchThinning',
  title: 'Loss of cross section of a stretched O-ring, 3 to 25 %',
  equation: 'Y = 0.0056 + 0.59·S − 0.46·S²',
  source: source('3 to 25 %'),
  inputs: { stretch: ratio('S', 'stretch of the inside diameter', { min: 0 }) },
  output,
  example: { stretch: 0.05 },
  valid: [
    ({ stretch }) => (stretch >= 0.03 && stretch <= 0.25) || 'The fit is valid for a stretch of 3 % to 25 %.',
  ],
  si: ({ stretch: s }) => 0.0056 + s * (0.59 - 0.46 * s),
});
