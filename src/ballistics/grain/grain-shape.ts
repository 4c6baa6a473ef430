// A grain as the kernel sees it: plain SI numbers.
import type { BuriedCandidate } from './contact';
import type { Envelope, Source } from './source';

export interface GrainShape {
  readonly envelope: Envelope;
  /** Cavities open to the chamber from the start. */
  readonly ports: readonly Source[];
  /** Inhibited cavities: they hold no propellant and do not burn. */
  readonly inert: readonly Source[];
  readonly flaws: readonly BuriedCandidate[];
  readonly headBurns: boolean;
  readonly aftBurns: boolean;
}
