import type { Step } from '../failure-mode/calculation';
import { step } from '../failure-mode/calculation';
import type { PressureDrivenMode } from '../failure-mode/failure-mode';
import { materialMode, type StressedPart } from '../material-mode';
import { grooveWallCollapseLoad, grooveWallCollapseStress, wallTension } from './cut-wall';

/** What a groove or a thread leaves of the case's wall. */
export interface CutWall {
  readonly cut: 'groove' | 'thread';
  /** End force. */
  readonly load: Step;
  /** Hoop stress at the inside radius. */
  readonly hoop: Step;
  readonly insideRadius: number;
  readonly outsideRadius: number;
  /** From the middle of the wall that is left to where the closure bears. */
  readonly arm: number;
}

/** Tension, folding and hoop of a wall that is cut. */
export function cutWallModes(
  part: StressedPart,
  { cut, load, hoop, insideRadius, outsideRadius, arm }: CutWall,
): readonly PressureDrivenMode[] {
  const tension = step(wallTension, {
    load,
    outsideDiameter: 2 * outsideRadius,
    insideDiameter: 2 * insideRadius,
  });
  const [wall, diameter] = [outsideRadius - insideRadius, outsideRadius + insideRadius];
  const folding = (yieldStrength: number): Step =>
    step(grooveWallCollapseStress, {
      tension,
      load,
      collapseLoad: step(grooveWallCollapseLoad, { yieldStrength, wall, arm, diameter }),
    });
  const ids = idsOf[cut];
  return [
    materialMode(part, { id: ids.tensionYield, calculation: tension, property: 'yield' }),
    materialMode(part, { id: ids.tension, calculation: tension, property: 'ultimate' }),
    materialMode(part, { id: ids.foldingYield, calculation: tension, property: 'yield', allowable: folding }),
    materialMode(part, { id: ids.hoopYield, calculation: hoop, property: 'yield' }),
    materialMode(part, { id: ids.hoop, calculation: hoop, property: 'ultimate' }),
  ];
}

const idsOf = {
  groove: {
    tensionYield: 'groove-wall-tension-yield',
    tension: 'groove-wall-tension',
    foldingYield: 'groove-wall-folding-yield',
    hoopYield: 'groove-hoop-yield',
    hoop: 'groove-hoop',
  },
  thread: {
    tensionYield: 'thread-wall-tension-yield',
    tension: 'thread-wall-tension',
    foldingYield: 'thread-wall-folding-yield',
    hoopYield: 'thread-hoop-yield',
    hoop: 'thread-hoop',
  },
} as const;
