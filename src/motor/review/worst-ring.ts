import type { RetainingRingReview } from '../../structures';
import { retainingRingReview } from '../../structures/closures/closure-review';
import { reviewRetainingRingAs } from '../../structures/closures/review-retaining-ring';
import { leastFavourable } from '../../structures/failure-mode/least-favourable';
import { fromSiValue, type Quantity, unitFor } from '../../units';
import type { ClosureAtMeop } from './closure-at-meop';
import type { Closure } from './closure-heat';
import { pressureAreaDiameter, weakestCase } from './worst-sizes';

type Ringed = ClosureAtMeop<Closure & { readonly retainingRing: NonNullable<Closure['retainingRing']> }>;

/** Evaluates a retaining ring and its groove, each mode at its worst-case groove depth. */
export function worstRing(ringed: Ringed): RetainingRingReview {
  const { motor, closure } = ringed;
  const { value, plusMinus } = closure.retainingRing.grooveDepth;
  const variants = (plusMinus > 0 ? [1, -1] : [1]).map((end) =>
    atDepth(
      ringed,
      fromSiValue<'length'>(value.si + end * plusMinus, 'length', unitFor('length', value.unit)),
    ),
  );
  return retainingRingReview({
    endForce: variants[0].endForce,
    margins: leastFavourable(variants.map(({ margins }) => margins)),
    cautions: [
      ...new Set(variants.flatMap(({ cautions }) => cautions)),
      ...(motor.case.wallTemperature === undefined
        ? []
        : [
            'The strength of the retaining ring is used as given. Ask the manufacturer for its value at elevated temperature.',
          ]),
    ],
  });
}

function atDepth(
  { motor, part, closure, meop, settings: { factors } }: Ringed,
  grooveDepth: Quantity<'length'>,
): RetainingRingReview {
  const { wall, outsideDiameter } = weakestCase(motor);
  const { material, wallTemperature } = motor.case;
  const { edgeMargin, thickness, shearStrength } = closure.retainingRing;
  return reviewRetainingRingAs(
    {
      pressure: meop,
      tube: { outsideDiameter, wall, material, wallTemperature: wallTemperature?.value },
      ring: {
        grooveDepth,
        edgeMargin: edgeMargin.value,
        thickness: thickness.value,
        shearStrength: shearStrength.value,
      },
      sealDiameter: pressureAreaDiameter(motor, closure),
      factors,
    },
    part,
  );
}
