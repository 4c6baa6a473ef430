import { lameHoopStress, margin, type StressDatum } from '../../structures';
import { MeopError, type Quantity } from '../../units';
import type { Motor } from '../document';
import type { MotorSettings } from '../settings';
import { reviewMargin } from './review-margin';
import type { ReviewMargin } from './review-result';

/** The throat insert as a ring that nothing supports from outside: cautious, since a good housing does. */
export function insertMargins(
  motor: Motor,
  meop: Quantity<'gauge pressure'>,
  { factors }: MotorSettings,
): { readonly margins: readonly ReviewMargin[]; readonly cautions: readonly string[] } {
  const { insert, throatDiameter } = motor.nozzle;
  if (insert === undefined)
    return { margins: [], cautions: ['the document has no throat insert: its strength is not judged'] };
  const strength = strengthOf(insert);
  if (strength === undefined)
    return {
      margins: [],
      cautions: [
        `throat insert: ${insert.material.name} has no tensile strength: give nozzle.insert.tensileStrength`,
      ],
    };
  const insideRadius = throatDiameter.value.per(2);
  const outsideRadius = insert.outsideDiameter.value.per(2);
  const ring = { pressure: meop, insideRadius, outsideRadius, radius: insideRadius };
  const applied = lameHoopStress(ring);
  try {
    return {
      margins: [
        reviewMargin(
          margin({
            mode: 'hoop tension, unsupported, full chamber pressure at the throat',
            applied,
            allowable: strength.value,
            factor: factors.ultimateFactor,
            source: `${lameHoopStress.source}; strength: ${strength.source}`,
            cautions: strength.cautions,
          }),
          {
            part: 'throat insert',
            formulas: ['lameHoopStress'],
            steps: () => [lameHoopStress.explain(ring)],
            meop,
          },
        ),
      ],
      cautions: [
        'throat insert: stresses of uneven heating are not judged; graphite cracks by them more often than by pressure',
      ],
    };
  } catch (error) {
    if (error instanceof MeopError) return { margins: [], cautions: [error.message] };
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
