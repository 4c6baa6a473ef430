import type { ClosureCheck, RetainingRingReview } from '../../structures';
import { retainingRingReview } from '../../structures/closures/closure-review';
import { reviewRetainingRingAs } from '../../structures/closures/review-retaining-ring';
import { leastFavourable } from '../../structures/failure-mode/least-favourable';
import { fromSiValue, type Quantity, unitFor, unitOf } from '../../units';
import type { MotorRing } from '../document/closure-inputs';
import { namedRing } from '../document/ring-size';
import type { ClosureAtMeop } from './closure-at-meop';
import type { Closure } from './closure-heat';
import { leastClosureDiameter, pressureAreaDiameter, weakestCase } from './worst-sizes';

type Ringed = ClosureAtMeop<Closure & { readonly retainingRing: MotorRing }>;

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
  const standard = namedRing(closure.retainingRing);
  return retainingRingReview({
    endForce: variants[0].endForce,
    margins: leastFavourable(variants.map(({ margins }) => margins)),
    checks: worstChecks(variants.map(({ checks }) => checks)),
    notEvaluated: variants[0].notEvaluated,
    cautions: [
      ...(standard?.cautions ?? []),
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
  const { edgeMargin, thickness, shearStrength, ...ring } = closure.retainingRing;
  return reviewRetainingRingAs(
    {
      pressure: meop,
      tube: { outsideDiameter, wall, material, wallTemperature: wallTemperature?.value },
      ring: {
        grooveDepth,
        edgeMargin: edgeMargin.value,
        thickness: thickness.value,
        shearStrength: shearStrength.value,
        contactFactor: ring.contactFactor?.value,
        chamfer: ring.chamfer?.value,
        play: ring.play?.value ?? playOf(motor, closure),
        dishingCapacity: ring.dishingCapacity?.value,
        dishingChamfer: ring.dishingChamfer?.value,
      },
      sealDiameter: pressureAreaDiameter(motor, closure),
      factors,
    },
    part,
  );
}

/** Maximum radial clearance of the closure in the bore; undefined where its diameter is not specified. */
function playOf(motor: Ringed['motor'], closure: Closure): Quantity<'length'> | undefined {
  const diameter = leastClosureDiameter(closure);
  if (diameter === undefined) return undefined;
  const { bore } = weakestCase(motor);
  return fromSiValue<'length'>(Math.max(0, (bore.si - diameter) / 2), 'length', unitOf('mm'));
}

/** Each check where its value is furthest below its limit. */
function worstChecks(variants: readonly (readonly ClosureCheck[])[]): readonly ClosureCheck[] {
  const all = variants.flat();
  return [...new Set(all.map(({ check }) => check))].map((name) =>
    all
      .filter(({ check }) => check === name)
      .reduce((worst, one) => (reserve(one) < reserve(worst) ? one : worst)),
  );
}

const reserve = ({ value, limit }: ClosureCheck): number => siOf(value) / siOf(limit);
const siOf = (value: Quantity | number): number => (typeof value === 'number' ? value : value.si);
