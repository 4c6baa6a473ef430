import { type FailureMargin, lameHoopStress, type StressDatum } from '../../structures';
import { checkedStep, given } from '../../structures/failure-mode/calculation';
import { failureMargin } from '../../structures/failure-mode/failure-margin';
import { MeopError, type Quantity, unitFor } from '../../units';
import type { Motor } from '../document';
import { linesOf, type PartLine } from '../part-lines';
import type { MotorSettings } from '../settings';

/** The throat insert as a ring that nothing supports from outside: cautious, since a good housing does. */
export function insertMargins(
  motor: Motor,
  meop: Quantity<'gauge pressure'>,
  { factors }: MotorSettings,
): { readonly margins: readonly FailureMargin[]; readonly cautions: readonly PartLine[] } {
  const { insert, throatDiameter } = motor.nozzle;
  if (insert === undefined)
    return {
      margins: [],
      cautions: [{ text: 'the document has no throat insert: its strength is not judged' }],
    };
  const strength = strengthOf(insert);
  if (strength === undefined)
    return {
      margins: [],
      cautions: linesOf('throat-insert', [
        `${insert.material.name} has no tensile strength: give nozzle.insert.tensileStrength`,
      ]),
    };
  const insideRadius = throatDiameter.value.per(2);
  const outsideRadius = insert.outsideDiameter.value.per(2);
  try {
    return {
      margins: [
        failureMargin({
          id: 'insert-hoop',
          part: 'throat-insert',
          limit: 'ultimate',
          calculation: checkedStep(lameHoopStress, {
            pressure: meop,
            insideRadius,
            outsideRadius,
            radius: insideRadius,
          }),
          allowable: given('stress', strength.value.si),
          factor: factors.ultimateFactor,
          pressure: meop.si,
          unit: unitFor('stress', 'MPa'),
          sources: [`strength: ${strength.source}`],
          cautions: strength.cautions,
        }),
      ],
      cautions: linesOf('throat-insert', [
        'stresses of uneven heating are not judged; graphite cracks by them more often than by pressure',
      ]),
    };
  } catch (error) {
    if (error instanceof MeopError) return { margins: [], cautions: [{ text: error.message }] };
    throw error;
  }
}

interface Strength {
  readonly value: Quantity<'stress'>;
  readonly source: string;
  readonly cautions: readonly string[];
}

function strengthOf({
  material,
  tensileStrength,
}: NonNullable<Motor['nozzle']['insert']>): Strength | undefined {
  if (tensileStrength !== undefined)
    return { value: tensileStrength.value, source: 'the document: certificate of the block', cautions: [] };
  const typical: StressDatum | undefined = material.typical?.tensileStrength?.min;
  return (
    typical && {
      value: typical.value,
      source: typical.source,
      cautions: [`the strength of ${material.name} is the least of a supplier's typical range: no allowable`],
    }
  );
}
