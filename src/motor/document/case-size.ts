import { fromSiValue, unitFor } from '../../units';
import type { Measured, Partly } from './document-types';
import type { MotorParts } from './motor-schema';

type Tube = Partly<MotorParts['case']>;

/** The case of a motor, with its wall as given or as it follows from the bore. */
export type MotorCase = MotorParts['case'] & { readonly wall: Measured<'length'> };

/** The wall of a case, as given or as it follows from the bore, with its tolerance; undefined where it is not known. */
export function wallOf({ outsideDiameter, wall, insideDiameter }: Tube): Measured<'length'> | undefined {
  if (wall !== undefined || outsideDiameter === undefined || insideDiameter === undefined) return wall;
  return measured(
    (outsideDiameter.value.si - insideDiameter.value.si) / 2,
    (outsideDiameter.plusMinus + insideDiameter.plusMinus) / 2,
    outsideDiameter,
  );
}

/** The bore of a case, as given or as it follows from the wall, with its tolerance. */
export function boreOf(tube: MotorCase): Measured<'length'>;
/** The same of a case that could be read in part; undefined where the bore is not known. */
export function boreOf(tube: Tube): Measured<'length'> | undefined;
export function boreOf({ outsideDiameter, wall, insideDiameter }: Tube): Measured<'length'> | undefined {
  if (insideDiameter !== undefined || outsideDiameter === undefined || wall === undefined)
    return insideDiameter;
  return measured(
    outsideDiameter.value.si - 2 * wall.value.si,
    outsideDiameter.plusMinus + 2 * wall.plusMinus,
    outsideDiameter,
  );
}

const measured = (si: number, plusMinus: number, like: Measured<'length'>): Measured<'length'> => ({
  value: fromSiValue<'length'>(si, 'length', unitFor('length', like.value.unit)),
  plusMinus,
});
