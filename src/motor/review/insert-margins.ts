import { lameHoopStress, type StressDatum } from '../../structures';
import { checkedStep, given } from '../../structures/failure-mode/calculation';
import { failureMargin } from '../../structures/failure-mode/failure-margin';
import { MeopError, type Quantity, unitFor } from '../../units';
import type { Motor } from '../document';
import { linesOf } from '../part-lines';
import { type PartConditions, type PartReview, partReview } from './part-review';

/**
 * Evaluates the throat insert as a ring without external support, which is conservative for an insert in a
 * housing.
 */
export const insertMargins = (conditions: PartConditions): PartReview =>
  conditions.attempt([['nozzle', 'insert'], ['nozzle']], () => hoopOf(conditions)) ?? partReview({});

const unjudged = (reason: string): PartReview =>
  partReview({ unjudged: [{ part: 'throat-insert', reason }] });

function hoopOf({ motor, pressure, settings: { factors } }: PartConditions): PartReview {
  const { insert, throatDiameter } = motor.nozzle;
  if (insert === undefined) return unjudged('nozzle.insert not specified; its strength is not evaluated.');
  const strength = strengthOf(insert);
  if (strength === undefined)
    return unjudged(
      `${insert.material.name} has no tensile strength; the insert is not evaluated. Specify nozzle.insert.tensileStrength.`,
    );
  const insideRadius = throatDiameter.value.per(2);
  const outsideRadius = insert.outsideDiameter.value.per(2);
  try {
    return partReview({
      margins: [
        failureMargin({
          id: 'insert-hoop',
          part: 'throat-insert',
          limit: 'ultimate',
          calculation: checkedStep(lameHoopStress, {
            pressure,
            insideRadius,
            outsideRadius,
            radius: insideRadius,
          }),
          allowable: given('stress', strength.value.si),
          factor: factors.ultimateFactor,
          pressure: pressure.si,
          unit: unitFor('stress', 'MPa'),
          sources: [`strength: ${strength.source}`],
          cautions: strength.cautions,
        }),
      ],
      cautions: linesOf('throat-insert', [
        'Thermal stress is not evaluated. Graphite cracks from thermal stress more often than from pressure.',
      ]),
    });
  } catch (error) {
    if (error instanceof MeopError) return unjudged(`Not evaluated: ${error.statement}`);
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
      cautions: [
        `The strength of ${material.name} is the minimum of a supplier's typical range and is not an allowable.`,
      ],
    }
  );
}
