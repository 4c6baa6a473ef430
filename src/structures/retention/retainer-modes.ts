import type { Step } from '../failure-mode/calculation';
import { step } from '../failure-mode/calculation';
import type { PressureDrivenMode } from '../failure-mode/failure-mode';
import { materialMode, type StressedPart } from '../material-mode';
import { flangeBendingStress, flangeMoment, ringTwistStress } from './flange-formulas';
import { contactShare } from './insert-modes';
import { lipShearStress, seatBearingStress } from './seat-formulas';

/** A retainer plate with its insert, in SI. */
export interface RetainerSi {
  readonly load: Step;
  readonly insertDiameter: number;
  readonly opening: number;
  readonly outsideDiameter: number;
  readonly thickness: number;
  readonly poissonRatio: number;
  readonly boltCircle: number;
}

/** True for a plate whose section turns as a whole rather than bends: thicker than half its width. */
export const isStiffRing = ({ boltCircle, opening, thickness }: RetainerSi): boolean =>
  thickness > (boltCircle - opening) / 4;

/** How a retainer plate fails, supported at its screws and loaded at the edge of its opening. */
export function retainerModes(part: StressedPart, plate: RetainerSi): readonly PressureDrivenMode[] {
  const { load, insertDiameter, opening, outsideDiameter, thickness, poissonRatio, boltCircle } = plate;
  const bearing = step(seatBearingStress, { load, insertDiameter, opening, contactShare });
  const shear = step(lipShearStress, { load, insertDiameter, lipThickness: thickness });
  const bending = isStiffRing(plate)
    ? step(ringTwistStress, {
        load,
        arm: (boltCircle - opening) / 2,
        thickness,
        outsideRadius: outsideDiameter / 2,
        innerRadius: opening / 2,
      })
    : step(flangeBendingStress, {
        moment: step(flangeMoment, {
          load,
          outerRadius: boltCircle / 2,
          innerRadius: opening / 2,
          poissonRatio,
        }),
        thickness,
      });
  return [
    materialMode(part, { id: 'retainer-bearing-yield', calculation: bearing, property: 'yield' }),
    materialMode(part, { id: 'retainer-shear-yield', calculation: shear, property: 'shear yield' }),
    materialMode(part, { id: 'retainer-shear', calculation: shear, property: 'shear ultimate' }),
    materialMode(part, { id: 'retainer-bending-yield', calculation: bending, property: 'yield' }),
    materialMode(part, { id: 'retainer-bending', calculation: bending, property: 'ultimate' }),
  ];
}
