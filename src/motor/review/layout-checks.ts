import { fromSiValue, type Quantity, unitOf } from '../../units';
import { worstLigaments } from '../layout/end-ligaments';
import type { Ligament } from '../layout/ligament';
import { linesOf } from '../part-lines';
import { nominalOf } from '../worst-case-tolerances';
import { type PartCheck, type PartConditions, type PartReview, partReview, together } from './part-review';

/** Checks the ligaments of both ends at the worst-case limits of their tolerances. */
export function layoutChecks({ motor }: PartConditions): PartReview {
  const nominal = nominalOf(motor);
  return together(
    (['head', 'aft'] as const).map((end) => {
      if (motor.closures?.[end] === undefined) return partReview({});
      const ligaments = worstLigaments(nominal, end);
      if (ligaments === undefined)
        return partReview({
          unjudged: [
            {
              part: `${end}-closure`,
              reason: `closures.${end}.layout not specified; distances between holes, grooves and faces are not evaluated.`,
            },
          ],
        });
      return partReview({
        checks: ligaments.map(checkOf),
        cautions: ligaments.flatMap((one) => linesOf(one.part, advice(one))),
      });
    }),
  );
}

const tiny = 1e-9;

function checkOf({ part, check, value, kind, least, rule, source }: Ligament): PartCheck {
  return {
    part,
    check,
    value: kind === 'length' ? inMm(value) : value,
    limit: kind === 'length' ? inMm(least) : least,
    passes: value >= least - tiny,
    message: `${text(kind, value)} minimum over the tolerances, required ≥ ${text(kind, least)} (${rule})`,
    source,
  };
}

/** A ligament that is sufficient and less than recommended. */
const advice = ({ check, value, kind, least, preferred = least }: Ligament): readonly string[] =>
  value < least - tiny || value >= preferred - tiny
    ? []
    : [
        `The ${check} is ${text(kind, value)} at its minimum; ${text(kind, preferred)} is recommended (engineering practice, no published source).`,
      ];

const inMm = (si: number): Quantity<'length'> => fromSiValue(si, 'length', unitOf('mm'));

const text = (kind: Ligament['kind'], value: number): string =>
  kind === 'length' ? `${(value * 1e3).toFixed(2)} mm` : `${(value * 100).toFixed(0)} %`;
