import type { Evaluate, Step } from '../failure-mode/calculation';
import {
  counterboredHoleWidth,
  countersinkDepth,
  countersunkBearingThickness,
  countersunkHoleWidth,
  landThickness,
} from './countersink';
import type { JointSi } from './joint-si';

/** What the head of a fastener leaves of the wall. */
export interface HeadSeat<V> {
  /** Thickness on which the shank bears. */
  readonly bearingThickness: V | number;
  /** Mean width of the hole over the wall. */
  readonly holeWidth: V | number;
  /** Stress concentration of the hole over that of a plain one. */
  readonly concentration: number;
}

// Upper end of the 10 to 40 % by which a countersunk hole exceeds a plain one: an equation in CMC 3(2), 2006, of which only the
// abstract was read.
const countersunkExcess = 1.4;

/** What the heads of the fasteners leave of the wall, from the shape of the countersink or counterbore. */
export function headSeat<V extends Step | number>(
  { head, wall, holeDiameter }: JointSi,
  run: Evaluate<V>,
): HeadSeat<V> {
  if (head === undefined) return { bearingThickness: wall, holeWidth: holeDiameter, concentration: 1 };
  const { diameter } = head;
  if (head.kind === 'counterbore') {
    const { depth } = head;
    return {
      bearingThickness: run(landThickness, { wall, depth }),
      holeWidth: run(counterboredHoleWidth, { wall, depth, holeDiameter, counterbore: diameter }),
      concentration: 1,
    };
  }
  const depth = run(countersinkDepth, { headDiameter: diameter, holeDiameter, headAngle: head.angle });
  return {
    bearingThickness: run(countersunkBearingThickness, { wall, depth }),
    holeWidth: run(countersunkHoleWidth, { wall, depth, holeDiameter, headDiameter: diameter }),
    concentration: countersunkExcess,
  };
}
