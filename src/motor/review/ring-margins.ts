import {
  closureForce,
  governing,
  grooveBearingStress,
  grooveLandShearStress,
  marginTable,
  type RetainingRingReview,
  reviewRetainingRing,
  ringShearStress,
} from '../../structures';
import { fromSiValue, type Quantity, unitFor } from '../../units';
import type { ClosureAtMeop } from './closure-at-meop';
import type { Closure } from './closure-heat';
import { cutWallFormulas, cutWallSteps } from './cut-wall-steps';
import { reviewMargin } from './review-margin';
import type { ReviewMargin } from './review-result';
import { pressureAreaDiameter, weakestCase } from './worst-sizes';

type Ringed = Closure & { readonly retainingRing: NonNullable<Closure['retainingRing']> };

type RingJudged = ClosureAtMeop<Ringed>;

/** A retaining ring and its groove, each mode at the depth of the groove that leaves it less. */
export function ringMargins(judged: RingJudged): {
  readonly margins: readonly ReviewMargin[];
  readonly retainingRing: RetainingRingReview;
  readonly cautions: readonly string[];
} {
  const { motor, closure } = judged;
  const { value, plusMinus } = closure.retainingRing.grooveDepth;
  const [deep, ...others] = (plusMinus > 0 ? [1, -1] : [1]).map((end) =>
    atDepth(
      judged,
      fromSiValue<'length'>(value.si + end * plusMinus, 'length', unitFor('length', value.unit)),
    ),
  );
  const margins = deep.margins.map((one, i) =>
    others.reduce(
      (least, other) => (other.margins[i].marginOfSafety < least.marginOfSafety ? other.margins[i] : least),
      one,
    ),
  );
  const worst = governing(margins);
  const cautions = [
    ...new Set([deep, ...others].flatMap(({ review }) => review.cautions)),
    ...(motor.case.wallTemperature === undefined
      ? []
      : ['the strength of the retaining ring is taken as given: its maker says how it falls when hot']),
  ];
  const { endForce } = deep.review;
  const text = (): string =>
    [
      `end force ${endForce}; governed by ${worst.mode}`,
      marginTable(margins),
      ...cautions.map((caution) => `caution: ${caution}`),
    ].join('\n');
  return {
    margins,
    cautions,
    retainingRing: {
      endForce,
      margins,
      governing: worst,
      passes: worst.marginOfSafety >= 0,
      cautions,
      toString: text,
      ...{ [Symbol.for('nodejs.util.inspect.custom')]: text },
    },
  };
}

function atDepth(
  { motor, part, closure, meop, settings: { factors } }: RingJudged,
  grooveDepth: Quantity<'length'>,
): { readonly review: RetainingRingReview; readonly margins: readonly ReviewMargin[] } {
  const { wall, bore, outsideDiameter } = weakestCase(motor);
  const { material, wallTemperature } = motor.case;
  const { retainingRing: ring } = closure;
  const sealDiameter = pressureAreaDiameter(motor, closure);
  const edgeMargin = ring.edgeMargin.value;
  const ringThickness = ring.thickness.value;
  const temperature = wallTemperature?.value;
  const review = reviewRetainingRing({
    pressure: meop,
    boreDiameter: bore,
    sealDiameter,
    grooveDepth,
    edgeMargin,
    caseWall: wall,
    caseMaterial: material,
    ringThickness,
    ringShearStrength: ring.shearStrength.value,
    ...(temperature && { caseTemperature: temperature }),
    factors,
  });
  const steps = (mode: string): readonly { toString(): string }[] => {
    const load = closureForce({ pressure: meop, sealDiameter });
    const grooveDiameter = bore.plus(grooveDepth.times(2));
    const own = mode.startsWith('shear of the ring')
      ? ringShearStress.explain({ load, boreDiameter: bore, ringThickness })
      : mode.startsWith('bearing')
        ? grooveBearingStress.explain({ load, boreDiameter: bore, grooveDepth })
        : grooveLandShearStress.explain({ load, grooveDiameter, edgeMargin });
    return [
      ...(mode.startsWith('hoop') ? [] : [closureForce.explain({ pressure: meop, sealDiameter })]),
      ...(cutWallSteps(mode, {
        load,
        pressure: meop,
        insideDiameter: grooveDiameter,
        outsideDiameter,
        arm: wall.per(2),
        material,
        temperature,
      }) ?? [own]),
    ];
  };
  const margins = review.margins.map((margin) =>
    reviewMargin(margin, {
      part,
      formulas: formulasOf(margin.mode),
      steps: () => steps(margin.mode),
      meop,
    }),
  );
  return { review, margins };
}

const formulasOf = (mode: string): readonly string[] =>
  mode.startsWith('hoop')
    ? cutWallFormulas(mode)
    : [
        'closureForce',
        ...(mode.startsWith('shear of the ring')
          ? ['ringShearStress']
          : mode.startsWith('bearing')
            ? ['grooveBearingStress']
            : mode.startsWith('shear of the land')
              ? ['grooveLandShearStress']
              : cutWallFormulas(mode)),
      ];
