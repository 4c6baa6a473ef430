import type { Unit } from '../../units';
import { closureForce } from '../closure-force';
import { given, type Step, step } from '../failure-mode/calculation';
import type { PressureDrivenMode } from '../failure-mode/failure-mode';
import type { FailureModeId } from '../failure-mode/mode-name';
import { supportedHoleStress } from '../plate-hole-formulas';
import { insertShearStress, seatBearingStress } from './seat-formulas';

/** A strength of a brittle insert [Pa], with the factor that its origin requires. */
export interface BrittleStrength {
  readonly si: number;
  readonly factor: number;
  readonly source: string;
  readonly cautions: readonly string[];
}

/** An insert on its seat, in SI. */
export interface SeatedInsert {
  readonly insertDiameter: number;
  readonly pocketDiameter: number;
  readonly opening: number;
  readonly throatDiameter: number;
  readonly length: number;
  readonly poissonRatio: number;
  /** At the diameter of the opening. */
  readonly thicknessAtOpening: number;
}

/** Fraction of the seat on which graphite is assumed to bear (engineering practice, no published source). */
export const contactShare = 1 / 3;

/** The force of the gas that a seat carries with the throat blocked: the pressure on the whole sealed area. */
export const seatLoad = (pressure: number, sealDiameter: number): Step =>
  step(closureForce, { pressure, sealDiameter });

/** How a brittle insert fails on its seat. A strength that is not known leaves its modes out. */
export function insertModes(
  insert: SeatedInsert,
  { load, pressure, unit }: { readonly load: Step; readonly pressure: number; readonly unit: Unit },
  strength: {
    readonly compressive: BrittleStrength | undefined;
    readonly tensile: BrittleStrength | undefined;
  },
): readonly PressureDrivenMode[] {
  const {
    insertDiameter,
    pocketDiameter,
    opening,
    thicknessAtOpening,
    length,
    throatDiameter,
    poissonRatio,
  } = insert;
  const { compressive, tensile } = strength;
  const mode = (
    id: FailureModeId,
    calculation: Step,
    { si, factor, source, cautions }: BrittleStrength,
  ): PressureDrivenMode => ({
    id,
    part: 'throat-insert',
    limit: 'ultimate',
    calculation,
    allowable: given('stress', si),
    factor,
    pressure,
    unit,
    sources: [`strength: ${source}`],
    cautions,
  });
  return [
    ...(compressive === undefined
      ? []
      : [
          mode(
            'seat-bearing',
            step(seatBearingStress, { load, insertDiameter, opening, contactShare }),
            compressive,
          ),
        ]),
    ...(tensile === undefined
      ? []
      : [
          mode(
            'insert-plug-shear',
            step(insertShearStress, { load, opening, insertThickness: thicknessAtOpening }),
            tensile,
          ),
          mode(
            'insert-bending',
            // Held by its outer edge, with the throat plugged.
            step(supportedHoleStress, {
              pressure,
              radius: pocketDiameter / 2,
              thickness: length,
              holeRadius: throatDiameter / 2,
              poissonRatio,
            }),
            tensile,
          ),
        ]),
  ];
}
