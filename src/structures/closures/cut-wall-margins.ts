import type { Margin } from '../margin';
import { lameHoopStress } from '../shell/lame';
import { grooveWallCollapseLoad, wallTension } from './cut-wall';
import { type JudgedPart, partMargin } from './part-margin';

/** What a groove or a thread leaves of the case's wall, in SI. */
export interface CutWall {
  readonly cut: 'groove' | 'thread';
  /** End force. */
  readonly load: number;
  /** Hoop stress at the inside radius. */
  readonly hoop: number;
  readonly insideRadius: number;
  readonly outsideRadius: number;
  /** From the middle of the wall that is left to where the closure bears. */
  readonly arm: number;
}

/** Tension, folding and hoop of a wall that is cut. */
export function cutWallMargins(
  part: JudgedPart,
  { cut, load, hoop, insideRadius, outsideRadius, arm }: CutWall,
): readonly Margin[] {
  const pulled = wallTension.si({
    load,
    outsideDiameter: 2 * outsideRadius,
    insideDiameter: 2 * insideRadius,
  });
  const wall = outsideRadius - insideRadius;
  const diameter = outsideRadius + insideRadius;
  const tension = { applied: pulled, source: wallTension.source };
  const folding = {
    applied: pulled,
    source: grooveWallCollapseLoad.source,
    // As a stress in the wall: what it carries when it folds.
    carried: (yieldStrength: number) =>
      (pulled / load) * grooveWallCollapseLoad.si({ yieldStrength, wall, arm, diameter }),
  };
  const round = { applied: hoop, source: lameHoopStress.source };
  return [
    partMargin(part, { mode: `tension of the wall under the ${cut}, yield`, property: 'yield', ...tension }),
    partMargin(part, { mode: `tension of the wall under the ${cut}`, property: 'ultimate', ...tension }),
    partMargin(part, { mode: `folding of the wall under the ${cut}, yield`, property: 'yield', ...folding }),
    partMargin(part, { mode: `hoop at the ${cut}, yield`, property: 'yield', ...round }),
    partMargin(part, { mode: `hoop at the ${cut}`, property: 'ultimate', ...round }),
  ];
}
