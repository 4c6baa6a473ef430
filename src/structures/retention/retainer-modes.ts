import type { Step } from '../failure-mode/calculation';
import { step } from '../failure-mode/calculation';
import type { PressureDrivenMode } from '../failure-mode/failure-mode';
import { materialMode, type StressedPart } from '../material-mode';
import { flangeBendingStress, flangeMoment } from './flange-formulas';
import { contactShare } from './insert-modes';
import { lipShearStress, seatBearingStress } from './seat-formulas';

/** A retainer plate with its insert, in SI. */
export interface RetainerSi {
  readonly load: Step;
  readonly insertDiameter: number;
  readonly opening: number;
  readonly thickness: number;
  readonly poissonRatio: number;
  readonly boltCircle: number;
}

/** How a retainer plate fails, supported at its screws and loaded at the edge of its opening. */
export function retainerModes(part: StressedPart, plate: RetainerSi): readonly PressureDrivenMode[] {
  const { load, insertDiameter, opening, thickness, poissonRatio, boltCircle } = plate;
  const bearing = step(seatBearingStress, { load, insertDiameter, opening, contactShare });
  const shear = step(lipShearStress, { load, insertDiameter, lipThickness: thickness });
  const bending = step(flangeBendingStress, {
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
