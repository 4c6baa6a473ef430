// The free part of the throat while a fragment blocks it, in plain numbers: shared by the lumped and the coupled chamber.

/** Blockage of the throat for the kernels. */
export interface BlockageKernel {
  /** Blocked fraction of the throat area; 0 where nothing blocks it. */
  readonly blockedFraction: number;
  /** Time at which it begins and at which it ends [s]. */
  readonly blockedFrom: number;
  readonly blockedUntil: number;
}

/** Free fraction of the throat area at a time: 1, or 1 − φ from `blockedFrom` to `blockedUntil` (exclusive). */
export const throatOpening = (m: BlockageKernel, t: number): number =>
  m.blockedFraction > 0 && t >= m.blockedFrom && t < m.blockedUntil ? 1 - m.blockedFraction : 1;
