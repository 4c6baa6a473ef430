import { checkedStep, type Step } from './failure-mode/calculation';
import { clampedPlate, type PlateInput, simplySupportedPlate } from './plate';
import { clampedEdgeStress, supportedCentreStress } from './plate-formulas';
import { clampedHoleEdgeStress, clampedHoleStress, supportedHoleStress } from './plate-hole-formulas';

/** Edge condition of a plate. */
export type EdgeSupport = 'clamped' | 'simply supported';

/** The maximum stress of a flat circular closure as a step of a calculation, with its cautions. */
export function plateStress(
  edgeSupport: EdgeSupport,
  input: PlateInput,
): { readonly stress: Step; readonly cautions: readonly string[] } {
  const { at, cautions } = (edgeSupport === 'clamped' ? clampedPlate : simplySupportedPlate)(input);
  const { pressure, radius, thickness, poissonRatio, holeRadius } = input;
  const plate = { pressure, radius, thickness };
  if (holeRadius === undefined)
    return {
      stress:
        edgeSupport === 'clamped'
          ? checkedStep(clampedEdgeStress, plate)
          : checkedStep(supportedCentreStress, { ...plate, poissonRatio }),
      cautions,
    };
  const holed = { ...plate, holeRadius, poissonRatio };
  const atEdge = edgeSupport === 'clamped' && at === 'edge';
  return {
    stress: atEdge
      ? checkedStep(clampedHoleEdgeStress, holed)
      : checkedStep(edgeSupport === 'clamped' ? clampedHoleStress : supportedHoleStress, holed),
    cautions,
  };
}
