import { force, formula, length, stress } from '../../units';

const width = /* @__PURE__ */ length('w', 'width of the strip; the pitch in a row of holes', {
  example: '30 mm',
});
const holeDiameter = /* @__PURE__ */ length('d', 'diameter of the hole', { example: '10 mm' });
const fits = (given: { readonly width: number; readonly holeDiameter: number }): true | string =>
  given.holeDiameter < given.width || 'the hole is as wide as the strip';

/** @example netStripStress({ grossStress: '100 MPa', width: '30 mm', holeDiameter: '15 mm' }).in('MPa') // => 200 */
export const netStripStress = /* @__PURE__ */ formula({
  name: 'netStripStress',
  title: 'Net-section stress of a strip with a hole',
  equation: 'σ_n = σ·w / (w − d)',
  source: 'Equilibrium of the net section, any strength-of-materials text',
  inputs: {
    grossStress: stress('σ', 'stress of the strip away from the hole', { above: 0, example: '190 MPa' }),
    width,
    holeDiameter,
  },
  output: stress('σ_n', 'average stress of the net section'),
  requires: [fits],
  si: ({ grossStress, width: w, holeDiameter: d }) => (grossStress * w) / (w - d),
});

/**
 * Load at which the net section of a strip yields across: its plastic limit without hardening.
 *
 * @example netSectionCollapseLoad({ yieldStrength: '240 MPa', width: '30 mm', holeDiameter: '10 mm', thickness: '3 mm' }).in('kN') // => 14.4
 */
export const netSectionCollapseLoad = /* @__PURE__ */ formula({
  name: 'netSectionCollapseLoad',
  title: 'Collapse load of the net section of a strip with a hole',
  equation: 'F_c = S_y·(w − d)·t',
  source: 'Limit analysis of the net section, any text on plasticity',
  inputs: {
    yieldStrength: stress('S_y', 'yield strength', { above: 0, example: '241 MPa' }),
    width,
    holeDiameter,
    thickness: length('t', 'thickness of the strip', { example: '3 mm' }),
  },
  output: force('F_c', 'collapse load'),
  requires: [fits],
  si: ({ yieldStrength, width: w, holeDiameter: d, thickness }) => yieldStrength * (w - d) * thickness,
});
