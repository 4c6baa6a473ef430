import { type DesignFactors, designFactors, factorSet } from '../structures';
import type { Motor } from './document';

/** What the document leaves to the library, with what was taken: nothing is taken without being said. */
export interface MotorSettings {
  readonly factors: DesignFactors;
  readonly limits: {
    readonly portToThroat: number;
    /** [kg/(m²·s)] */
    readonly massFlux: number;
    readonly headroom: number;
    readonly samplesPerRise: number;
  };
  readonly meop: {
    readonly basis: 'worst case' | 'percentile' | 'nominal';
    readonly percentile: number;
    readonly samples: number;
    readonly seed: number;
    readonly distribution: 'uniform' | 'normal';
    readonly allowance: number;
  };
  /** A line for each value that the document does not give. */
  readonly assumptions: readonly string[];
  /** Those of them that bear on MEOP. */
  readonly meopAssumptions: readonly string[];
}

const practice = 'engineering practice, no published source';

/** The settings of a motor: its own where the document has them. */
export function settingsOf(motor: Motor): MotorSettings {
  const assumptions: string[] = [];
  const meopAssumptions: string[] = [];
  const taken = <T>(
    given: T | undefined,
    otherwise: T,
    name: string,
    why: string,
    lines = assumptions,
  ): T => {
    if (given !== undefined) return given;
    lines.push(`${name} is not given: ${String(otherwise)} is taken (${why})`);
    return otherwise;
  };
  const { limits, meop, factors } = motor;
  const complete = factors?.yieldFactor && factors.ultimateFactor && factors.proofFactor;
  if (factors?.set === undefined && !complete)
    assumptions.push(`factors.set is not given: 'ground test' is taken (${practice})`);
  const own = {
    ...factorSet(factors?.set ?? 'ground test'),
    ...(complete &&
      factors?.set === undefined && { source: "user's own", provenance: "user's own" as const }),
    ...(factors?.yieldFactor && { yieldFactor: factors.yieldFactor.value.si }),
    ...(factors?.ultimateFactor && { ultimateFactor: factors.ultimateFactor.value.si }),
    ...(factors?.proofFactor && { proofFactor: factors.proofFactor.value.si }),
    ...(factors?.source !== undefined && { source: factors.source }),
  };
  return {
    factors: designFactors(own),
    limits: {
      portToThroat: taken(limits?.portToThroat?.value.si, 2, 'limits.portToThroat', practice),
      massFlux: taken(limits?.massFlux?.value.si, 1400, 'limits.massFlux', `kg/(m²·s); ${practice}`),
      headroom: taken(limits?.headroom?.value.si, 1.25, 'limits.headroom', practice),
      samplesPerRise: taken(limits?.samplesPerRise?.value.si, 10, 'limits.samplesPerRise', practice),
    },
    meop: {
      basis: taken(
        meop?.basis,
        'worst case',
        'meop.basis',
        'an upper bound, as MEOP is defined',
        meopAssumptions,
      ),
      percentile: taken(
        meop?.percentile?.value.si,
        0.9987,
        'meop.percentile',
        'three standard deviations, one-sided',
        meopAssumptions,
      ),
      samples: taken(meop?.samples, 10_000, 'meop.samples', 'enough for the percentile', meopAssumptions),
      seed: taken(
        meop?.seed,
        1,
        'meop.seed',
        'any will do; the same one gives the same numbers',
        meopAssumptions,
      ),
      distribution: taken(
        meop?.distribution,
        'uniform',
        'meop.distribution',
        'cautious: ends as likely as the middle',
        meopAssumptions,
      ),
      allowance: taken(
        meop?.allowance?.value.si,
        1,
        'meop.allowance',
        'nothing added for what the model leaves out',
        meopAssumptions,
      ),
    },
    assumptions: [...assumptions, ...meopAssumptions],
    meopAssumptions,
  };
}
