// A grain in plain SI numbers, as the kernel uses it.

import type { PlacedFlaw } from '../flaws';
import type { Envelope, Source } from '../surface';

export interface GrainShape {
  readonly envelope: Envelope;
  /** Cavities open to the chamber from the start. */
  readonly ports: readonly Source[];
  /** Inhibited cavities: they contain no propellant and do not burn. */
  readonly inert: readonly Source[];
  readonly flaws: readonly PlacedFlaw[];
  readonly headBurns: boolean;
  readonly aftBurns: boolean;
}
