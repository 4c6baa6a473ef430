import {
  allowable,
  grooveWallCollapseLoad,
  lameHoopStress,
  type Material,
  wallTension,
} from '../../structures';
import type { Quantity } from '../../units';

/** The wall that a groove or a thread leaves of the case. */
export interface CutWall {
  readonly load: Quantity<'force'>;
  /** Inside the cut: that of the chamber, and what pushes the wall open there. */
  readonly pressure: Quantity<'gauge pressure'>;
  readonly insideDiameter: Quantity<'length'>;
  readonly outsideDiameter: Quantity<'length'>;
  /** From the middle of that wall to where the thrust comes in, radially. */
  readonly arm: Quantity<'length'>;
  readonly material: Material;
  readonly temperature: Quantity<'temperature'> | undefined;
}

/** The calculation of a mode of a cut wall, by how the mode is called; undefined for other modes. */
export function cutWallSteps(mode: string, wall: CutWall): readonly { toString(): string }[] | undefined {
  const { load, pressure, insideDiameter, outsideDiameter, arm, material, temperature } = wall;
  const tension = { load, outsideDiameter, insideDiameter };
  if (mode.startsWith('hoop')) {
    const insideRadius = insideDiameter.per(2);
    const cylinder = { pressure, insideRadius, outsideRadius: outsideDiameter.per(2) };
    return [lameHoopStress.explain({ ...cylinder, radius: insideRadius })];
  }
  if (mode.startsWith('tension')) return [wallTension.explain(tension)];
  if (!mode.startsWith('folding')) return undefined;
  const yieldStrength = allowable({ material, property: 'yield', ...(temperature && { temperature }) }).value;
  const folding = {
    yieldStrength,
    wall: outsideDiameter.minus(insideDiameter).per(2),
    arm,
    diameter: outsideDiameter.plus(insideDiameter).per(2),
  };
  const applied = wallTension(tension);
  const limit = grooveWallCollapseLoad(folding);
  return [
    wallTension.explain(tension),
    grooveWallCollapseLoad.explain(folding),
    `as a tension of the wall, what it carries: σ_t·F_c / F = ${applied} · ${limit} / ${load} = ${applied.times(limit.per(load))}`,
  ];
}

/** The formulas behind the modes of a cut wall. */
export const cutWallFormulas = (mode: string): readonly string[] =>
  mode.startsWith('hoop')
    ? ['lameHoopStress']
    : mode.startsWith('folding')
      ? ['wallTension', 'grooveWallCollapseLoad']
      : ['wallTension'];
