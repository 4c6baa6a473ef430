import { inputs, words } from '../../units';
import type { CyclicConstants } from '../materials/cyclic-constants';
import { stressStrainCurve } from './neuber';
import { strainLifeConstants } from './strain-life';

const { elasticModulus: _e, ...curve } = stressStrainCurve;
const { elasticModulus: _m, ...life } = strainLifeConstants;

/** Constants of a metal from strain-controlled tests. The library has none: they scatter from heat to heat, so each needs its source. */
export const cyclicConstants = /* @__PURE__ */ inputs(
  { ...curve, ...life, source: words('report of the tests: metal, temper, product form') },
  { meaning: 'constants of strain-controlled fatigue tests of this metal' },
);

/** The same in SI. */
export const cyclicSi = ({
  strengthCoefficient,
  fatigueStrength,
  ...numbers
}: Omit<CyclicConstants, 'strengthCoefficient' | 'fatigueStrength'> & {
  readonly strengthCoefficient: { readonly si: number };
  readonly fatigueStrength: { readonly si: number };
}): CyclicConstants => ({
  hardeningExponent: numbers.hardeningExponent,
  fatigueExponent: numbers.fatigueExponent,
  fatigueDuctility: numbers.fatigueDuctility,
  ductilityExponent: numbers.ductilityExponent,
  strengthCoefficient: strengthCoefficient.si,
  fatigueStrength: fatigueStrength.si,
});
