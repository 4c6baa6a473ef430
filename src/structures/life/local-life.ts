import { findRoot } from '../../numerics';
import type { CyclicConstants } from '../materials/cyclic-constants';
import { neuberNominalStress, rambergOsgoodStrain } from './neuber';
import { smithWatsonTopper } from './strain-life';
import { meanStressSlopes } from './universal-slopes';

/** What yields at the load: the section, the root of the notch only, or neither. */
export type LifeVerdict = 'section yields' | 'local yielding' | 'elastic';

/** A metal in SI: its tensile test, and the constants of its strain-controlled tests where they are known. */
export interface LifeMetal {
  readonly yieldStrength: number;
  readonly ultimateStrength: number;
  readonly elasticModulus: number;
  /** Fraction. */
  readonly elongation: number;
  readonly cyclic?: CyclicConstants | undefined;
}

/** The life at the root of a notch that is loaded from zero. */
export interface LocalLife {
  readonly verdict: LifeVerdict;
  /** Maximum stress at the root [Pa]. */
  readonly localStress: number;
  /** Range of the strain at the root. */
  readonly strainRange: number;
  /** Cycles to a crack; `mostCycles` means that many or more, zero means none. */
  readonly cyclesToFailure: number;
  /** The same with the factors of scatter; not whole. */
  readonly allowedCycles: number;
}

/** The end of the search for cycles. */
export const mostCycles = 1e6;
/** Factors of scatter on cycles, and on stress and strain. */
export const scatter = { cycles: 20, strain: 2 } as const;

const none = { cyclesToFailure: 0, allowedCycles: 0 };

/**
 * Net section first: past yield it collapses before any life. Then the root of the notch by Neuber's rule. The load cycles
 * from zero, so that half of the strain range is the amplitude, and the maximum stress brings in the mean stress.
 */
export function localLife(nominal: number, notchFactor: number, metal: LifeMetal): LocalLife {
  const elastic = notchFactor * nominal;
  const root =
    metal.cyclic === undefined ? idealRoot(elastic, metal) : curvedRoot(elastic, metal, metal.cyclic);
  if (nominal > metal.yieldStrength) return { verdict: 'section yields', ...root, ...none };
  const { localStress, strainRange } = root;
  const cyclesToFailure = cyclesAt((localStress * strainRange) / 2, metal);
  const doubled = Math.min(scatter.strain * localStress, Math.max(localStress, metal.ultimateStrength));
  return {
    verdict: elastic > metal.yieldStrength ? 'local yielding' : 'elastic',
    ...root,
    cyclesToFailure,
    allowedCycles: Math.min(
      cyclesToFailure / scatter.cycles,
      cyclesAt((doubled * scatter.strain * strainRange) / 2, metal),
    ),
  };
}

interface Root {
  readonly localStress: number;
  readonly strainRange: number;
}

// Without a cyclic curve the metal flows at its yield strength both ways, so that a range up to twice of it is elastic after
// the first loading. The maximum stress is what an elastic root would have, up to the ultimate strength: no less is sure.
function idealRoot(elastic: number, { yieldStrength, ultimateStrength, elasticModulus }: LifeMetal): Root {
  const range = Math.min(elastic, 2 * yieldStrength);
  return {
    localStress: Math.min(elastic, ultimateStrength),
    strainRange: elastic ** 2 / (elasticModulus * range),
  };
}

// The loop of a metal follows its cyclic curve at twice the scale (Masing): amplitudes follow the curve itself.
function curvedRoot(elastic: number, { elasticModulus }: LifeMetal, cyclic: CyclicConstants): Root {
  const { strengthCoefficient, hardeningExponent } = cyclic;
  const curve = { elasticModulus, strengthCoefficient, hardeningExponent };
  const stressAt = (nominal: number): number =>
    findRoot((localStress) => neuberNominalStress.si({ localStress, concentration: 1, ...curve }) - nominal, {
      lower: 0,
      upper: nominal,
    }).root;
  const amplitude = rambergOsgoodStrain.si({ stress: stressAt(elastic / 2), ...curve });
  return { localStress: stressAt(elastic), strainRange: 2 * amplitude };
}

/** Cycles at a maximum stress times strain amplitude. */
function cyclesAt(product: number, metal: LifeMetal): number {
  const { elasticModulus, ultimateStrength, elongation, cyclic } = metal;
  const productAt = (cycles: number): number =>
    cyclic === undefined
      ? meanStressSlopes.si({
          ultimateStrength,
          elasticModulus,
          ductility: Math.log1p(elongation), // low, since necking strains more: conservative
          cycles,
        })
      : smithWatsonTopper.si({ ...cyclic, elasticModulus, cycles });
  const excess = (log: number): number => productAt(10 ** log) - product;
  if (excess(0) <= 0) return 0;
  const top = Math.log10(mostCycles);
  return excess(top) >= 0 ? mostCycles : 10 ** findRoot(excess, { lower: 0, upper: top }).root;
}
