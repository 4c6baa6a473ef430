import { lameHoopStress } from '../../structures';
import { checkedStep, given } from '../../structures/failure-mode/calculation';
import { failureMargin } from '../../structures/failure-mode/failure-margin';
import { MeopError, unitFor } from '../../units';
import { linesOf } from '../part-lines';
import { insertStrength } from './insert-strength';
import { type PartConditions, type PartReview, partReview } from './part-review';

/**
 * Evaluates the throat insert as a ring without external support, which is conservative for an insert in a
 * housing: its hoop stress is the maximum principal stress.
 */
export const insertMargins = (conditions: PartConditions): PartReview =>
  conditions.attempt([['nozzle', 'insert'], ['nozzle']], () => hoopOf(conditions)) ?? partReview({});

const unjudged = (reason: string): PartReview =>
  partReview({ unjudged: [{ part: 'throat-insert', reason }] });

function hoopOf({ motor, pressure, settings: { factors } }: PartConditions): PartReview {
  const { insert, throatDiameter } = motor.nozzle;
  if (insert === undefined)
    return unjudged('nozzle.insert not specified; its strength and its retention are not evaluated.');
  const strength = insertStrength(insert, 'tensile', factors.ultimateFactor);
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
          allowable: given('stress', strength.si),
          factor: strength.factor,
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
