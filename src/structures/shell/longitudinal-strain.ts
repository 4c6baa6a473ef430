import { formula, ratio } from '../../units';
import { elasticModulus, poissonRatio } from './elastic-inputs';
import { longitudinalStress } from './thin-shell';

export const longitudinalStrain = /* @__PURE__ */ formula({
  name: 'longitudinalStrain',
  title: 'Longitudinal strain of a closed thin-walled cylinder',
  equation: 'ε_l = p·r / (E·t)·(1 / 2 − ν)',
  source: longitudinalStress.source,
  inputs: { ...longitudinalStress.inputs, elasticModulus, poissonRatio },
  output: ratio('ε_l', 'longitudinal strain'),
  si: ({ pressure, radius, wall, elasticModulus, poissonRatio }) =>
    ((pressure * radius) / (elasticModulus * wall)) * (0.5 - poissonRatio),
});
