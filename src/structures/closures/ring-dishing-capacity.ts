import { type Step, step } from '../failure-mode/calculation';
import { chamferLever, dishingCapacity, sharpEdgeLever, tiltLever } from './ring-dishing';

/** What the dishing of a ring follows from, in SI. */
export interface RingDishing {
  /** Capacity that the manufacturer states. */
  readonly capacity: number;
  /** The chamfer that it is stated for; undefined for a sharp edge. */
  readonly statedChamfer: number | undefined;
  readonly chamfer: number;
  readonly play: number;
}

/** The capacity of a ring against dishing with the chamfer and play of its closure. */
export function dishingStep(
  { capacity, statedChamfer, chamfer, play }: RingDishing,
  boreDiameter: number,
): Step {
  if (statedChamfer !== undefined)
    return step(dishingCapacity, {
      statedCapacity: capacity,
      statedLever: statedChamfer,
      lever: step(chamferLever, { statedChamfer, chamfer, play }),
    });
  const sharpLever = step(sharpEdgeLever, { boreDiameter });
  return step(dishingCapacity, {
    statedCapacity: capacity,
    statedLever: sharpLever,
    lever: step(tiltLever, { sharpLever, chamfer, play }),
  });
}
