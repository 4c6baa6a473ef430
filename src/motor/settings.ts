import { type DesignFactors, designFactors } from '../structures';
import type { Motor } from './document';

/**
 * Settings of an analysis, with the values assumed where the document specifies none. Every assumption is
 * reported.
 */
export interface MotorSettings {
  readonly factors: DesignFactors;
  readonly limits: {
    readonly portToThroat: number;
    /** Maximum mass flux in the port [kg/(m²·s)]. */
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
  /** One line for each value that the document does not specify. */
  readonly assumptions: readonly string[];
  /** Those of them that bear on MEOP. */
  readonly meopAssumptions: readonly string[];
}

const practice = 'engineering practice, no published source';

/** Returns the settings of a motor: those of the document, or assumed values. */
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
    lines.push(`${name} not specified; assumed ${String(otherwise)} (${why}).`);
    return otherwise;
  };
  const { limits, meop, factors } = motor;
  const complete = factors?.yieldFactor && factors.ultimateFactor && factors.proofFactor;
  if (factors?.set === undefined && !complete)
    assumptions.push(`factors.set not specified; assumed 'ground test' (${practice}).`);
  return {
    factors: designFactors({
      set: factors?.set,
      yieldFactor: factors?.yieldFactor?.value.si,
      ultimateFactor: factors?.ultimateFactor?.value.si,
      proofFactor: factors?.proofFactor?.value.si,
      source: factors?.source,
    }),
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
        'upper bound, by the definition of MEOP',
        meopAssumptions,
      ),
      percentile: taken(
        meop?.percentile?.value.si,
        0.9987,
        'meop.percentile',
        'three standard deviations, one-sided',
        meopAssumptions,
      ),
      samples: taken(meop?.samples, 10_000, 'meop.samples', 'sufficient for the percentile', meopAssumptions),
      seed: taken(
        meop?.seed,
        1,
        'meop.seed',
        'arbitrary; the same seed gives the same results',
        meopAssumptions,
      ),
      distribution: taken(
        meop?.distribution,
        'uniform',
        'meop.distribution',
        'conservative: limits as likely as the nominal value',
        meopAssumptions,
      ),
      allowance: taken(
        meop?.allowance?.value.si,
        1,
        'meop.allowance',
        'no allowance for effects outside the model',
        meopAssumptions,
      ),
    },
    assumptions: [...assumptions, ...meopAssumptions],
    meopAssumptions,
  };
}
