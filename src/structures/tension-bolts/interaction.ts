import { formula, ratio } from '../../units';

const inputs = {
  tensionRatio: ratio('R_t', 'tension over its ultimate allowable', { min: 0 }),
  shearRatio: ratio('R_s', 'shear over its ultimate allowable', { min: 0 }),
};
const output = ratio('I', 'interaction; the bolt holds up to 1', { min: 0 });
const example = { tensionRatio: 0.5, shearRatio: 0.45 };

/** @example circularInteraction({ tensionRatio: 0.6, shearRatio: 0.8 }) // => 1 */
export const circularInteraction = /* @__PURE__ */ formula({
  name: 'circularInteraction',
  title: 'Interaction of tension and shear in a bolt, circle',
  equation: 'I = R_s² + R_t²',
  source: 'NASA RP-1228, Fastener design manual (from memory)',
  inputs,
  output,
  example,
  si: ({ tensionRatio, shearRatio }) => shearRatio ** 2 + tensionRatio ** 2,
});

/** @example threadInteraction({ tensionRatio: 1, shearRatio: 0 }) // => 1 */
export const threadInteraction = /* @__PURE__ */ formula({
  name: 'threadInteraction',
  title: 'Interaction of tension and shear in a bolt, threads in the shear plane',
  equation: 'I = R_s^1.2 + R_t²',
  source: 'NASA-STD-5020 (exponents from memory)',
  inputs,
  output,
  example,
  si: ({ tensionRatio, shearRatio }) => shearRatio ** 1.2 + tensionRatio ** 2,
});

/** @example shankInteraction({ tensionRatio: 1, shearRatio: 0 }) // => 1 */
export const shankInteraction = /* @__PURE__ */ formula({
  name: 'shankInteraction',
  title: 'Interaction of tension and shear in a bolt, shank in the shear plane',
  equation: 'I = R_s^2.5 + R_t^1.5',
  source: 'NASA-STD-5020 (exponents from memory)',
  inputs,
  output,
  example,
  si: ({ tensionRatio, shearRatio }) => shearRatio ** 2.5 + tensionRatio ** 1.5,
});
