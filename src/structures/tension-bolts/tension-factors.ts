import { area, force, formula, ratio, stress } from '../../units';
import { jointShare, preloadOfBolt } from './joint-constant';

const load = force('P', 'separating load of one bolt', { above: 0 });
const strength = {
  proofStress: stress('S_p', 'proof stress of the bolt', { above: 0 }),
  stressArea: area('A_t', 'tensile stress area'),
};
const loaded = { jointConstant: jointShare, load, preload: preloadOfBolt };
const example = { jointConstant: 0.3, load: '4 kN', preload: '9 kN' } as const;

/** @example boltYieldFactor({ proofStress: '600 MPa', stressArea: '20 mm^2', jointConstant: 0.25, load: '4 kN', preload: '9 kN' }) // => 1.2 */
export const boltYieldFactor = /* @__PURE__ */ formula({
  name: 'boltYieldFactor',
  title: 'Yield factor of a preloaded bolt: proof load over bolt force',
  equation: 'n_p = S_p·A_t / (C·P + F_i)',
  source: "Shigley's Mechanical Engineering Design, 9th ed., equation 8-28",
  inputs: { ...strength, ...loaded },
  output: ratio('n_p', 'proof load over the force in the bolt'),
  example: { ...example, proofStress: '580 MPa', stressArea: '20.1 mm^2' },
  si: ({ proofStress, stressArea, jointConstant, load: p, preload }) =>
    (proofStress * stressArea) / (jointConstant * p + preload),
});

/** @example boltLoadFactor({ proofStress: '600 MPa', stressArea: '20 mm^2', jointConstant: 0.25, load: '4 kN', preload: '9 kN' }) // => 3 */
export const boltLoadFactor = /* @__PURE__ */ formula({
  name: 'boltLoadFactor',
  title: 'Load factor of a preloaded bolt: factor on the separating load at proof stress',
  equation: 'n_L = (S_p·A_t − F_i) / (C·P)',
  source: "Shigley's Mechanical Engineering Design, 9th ed., equation 8-29",
  inputs: { ...strength, ...loaded, jointConstant: { ...jointShare, above: 0 } },
  output: ratio('n_L', 'factor on the separating load'),
  example: { ...example, proofStress: '580 MPa', stressArea: '20.1 mm^2' },
  si: ({ proofStress, stressArea, jointConstant, load: p, preload }) =>
    (proofStress * stressArea - preload) / (jointConstant * p),
});

/** @example separationFactor({ jointConstant: 0.25, load: '4 kN', preload: '9 kN' }) // => 3 */
export const separationFactor = /* @__PURE__ */ formula({
  name: 'separationFactor',
  title: 'Separation factor: factor on the separating load at which the parts separate',
  equation: 'n_0 = F_i / (P·(1 − C))',
  source: "Shigley's Mechanical Engineering Design, 9th ed., equation 8-30",
  inputs: { ...loaded, jointConstant: { ...jointShare, below: 1 } },
  output: ratio('n_0', 'factor on the separating load'),
  example,
  si: ({ jointConstant, load: p, preload }) => preload / (p * (1 - jointConstant)),
});
