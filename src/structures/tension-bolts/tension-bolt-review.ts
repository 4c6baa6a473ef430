import { printable, type Quantity } from '../../units';
import type { ClosureReview } from '../closures/closure-review';
import { governing, marginTable } from '../margin';

/** Fatigue of bolts in tension under a load repeated from zero. */
export interface TensionBoltFatigue {
  readonly amplitude: Quantity<'stress'>;
  /** Of the maximum preload. */
  readonly preloadStress: Quantity<'stress'>;
  /** Undefined where no endurance strength of the class is tabulated. */
  readonly endurance: Quantity<'stress'> | undefined;
  readonly goodman: number | undefined;
  readonly gerber: number | undefined;
  /** Undefined where the preload exceeds the proof load as well. */
  readonly elliptic: number | undefined;
  readonly proofLine: number;
}

/** Bolts in tension and the margins of their failure modes. */
export interface TensionBoltReview extends ClosureReview {
  /** Separating load of the most heavily loaded bolt. */
  readonly boltLoad: Quantity<'force'>;
  readonly preload: {
    readonly min: Quantity<'force'>;
    readonly nominal: Quantity<'force'>;
    readonly max: Quantity<'force'>;
  };
  /** Share of the separating load that adds to the bolts: computed where the stiffness is known, and its limits. */
  readonly jointConstant: {
    readonly low: number;
    readonly computed: number | undefined;
    readonly high: number;
  };
  readonly boltStiffness: Quantity<'stiffness'>;
  readonly memberStiffness: Quantity<'stiffness'> | undefined;
  /** Maximum force in a bolt. */
  readonly boltForce: Quantity<'force'>;
  /** Minimum clamp force of a bolt; zero where the parts separate. */
  readonly clampForce: Quantity<'force'>;
  /** Minimum pressure at which the parts separate. */
  readonly separationPressure: Quantity<'gauge pressure'>;
  /** Opening of the faces at the review pressure; zero where they stay clamped. */
  readonly faceOpening: Quantity<'length'>;
  readonly fatigue: TensionBoltFatigue;
  /** Aspects that could not be evaluated. */
  readonly unjudged: readonly string[];
}

/** The review of bolts in tension from its facts. */
export function tensionBoltReview(
  facts: Omit<TensionBoltReview, 'governing' | 'passes' | 'toString'>,
): TensionBoltReview {
  const { margins, jointConstant: c, preload, fatigue } = facts;
  const worst = governing(margins);
  const text = (): string =>
    [
      `end force ${facts.endForce}, ${facts.boltLoad} per bolt; governed by ${worst.mode}`,
      `preload ${preload.min} to ${preload.max}, nominal ${preload.nominal}; joint constant ${range(c.low, c.high)}`,
      `maximum bolt force ${facts.boltForce}; minimum clamp force ${facts.clampForce}; the parts separate at ${facts.separationPressure}`,
      `stress amplitude ${fatigue.amplitude}${fatigue.goodman === undefined ? '' : `; fatigue factor ${fatigue.goodman.toFixed(2)} (Goodman)`}`,
      marginTable(margins),
      ...[...facts.unjudged, ...facts.cautions].map((caution) => `caution: ${caution}`),
    ].join('\n');
  return printable({ ...facts, governing: worst, passes: worst.marginOfSafety >= 0 }, text);
}

const range = (low: number, high: number): string =>
  low === high ? low.toFixed(2) : `${low.toFixed(2)} to ${high.toFixed(2)}`;
