import type { Step } from '../failure-mode/calculation';
import { step } from '../failure-mode/calculation';
import type { PressureDrivenMode } from '../failure-mode/failure-mode';
import { materialMode, type StressedPart } from '../material-mode';
import { contactShare } from './insert-modes';
import { lipBendingStress, lipShearStress, seatBearingStress } from './seat-formulas';

/** The lip of a closure on which an insert bears, in SI. */
export interface SeatLip {
  readonly load: Step;
  readonly insertDiameter: number;
  readonly pocketDiameter: number;
  readonly opening: number;
  readonly thickness: number;
}

/** True for a lip that is wider than it is thick, so that it bends before it shears. */
export const isSlender = ({ pocketDiameter, opening, thickness }: SeatLip): boolean =>
  (pocketDiameter - opening) / 2 > thickness;

/** How the lip of a seat fails. */
export function lipModes(part: StressedPart, lip: SeatLip): readonly PressureDrivenMode[] {
  const { load, insertDiameter, pocketDiameter, opening, thickness: lipThickness } = lip;
  const bearing = step(seatBearingStress, { load, insertDiameter, opening, contactShare });
  const shear = step(lipShearStress, { load, insertDiameter, lipThickness });
  const bending = isSlender(lip)
    ? step(lipBendingStress, { load, pocketDiameter, opening, lipThickness })
    : undefined;
  return [
    materialMode(part, { id: 'lip-bearing-yield', calculation: bearing, property: 'yield' }),
    materialMode(part, { id: 'lip-shear-yield', calculation: shear, property: 'shear yield' }),
    materialMode(part, { id: 'lip-shear', calculation: shear, property: 'shear ultimate' }),
    ...(bending === undefined
      ? []
      : [
          materialMode(part, { id: 'lip-bending-yield', calculation: bending, property: 'yield' }),
          materialMode(part, { id: 'lip-bending', calculation: bending, property: 'ultimate' }),
        ]),
  ];
}
