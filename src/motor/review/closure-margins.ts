import {
  allowable,
  clampedPlate,
  type JointReview,
  margin,
  reviewJoint,
  simplySupportedPlate,
} from '../../structures';
import { fromSiValue, MeopError, type Quantity, unitOf } from '../../units';
import type { Motor } from '../document';
import type { MotorSettings } from '../settings';
import { reviewMargin } from './review-margin';
import type { ReviewMargin } from './review-result';
import { least, most, weakestCase } from './worst-sizes';

type End = 'head' | 'aft';
type Closure = NonNullable<NonNullable<Motor['closures']>[End]>;

/** What a closure and its joint are judged by. */
export interface ClosureJudged {
  readonly margins: readonly ReviewMargin[];
  readonly joint: JointReview;
  readonly cautions: readonly string[];
}

/** The plate of a closure and the bolts that hold it, at MEOP. */
export function closureMargins(
  motor: Motor,
  end: End,
  closure: Closure,
  meop: Quantity<'gauge pressure'>,
  settings: MotorSettings,
): ClosureJudged {
  const joint = jointOf(motor, closure, meop, settings);
  const plate = plateMargins(motor, end, closure, meop, settings);
  return {
    joint,
    margins: [
      ...joint.modes.map((mode) =>
        reviewMargin(mode, {
          part: `${end} joint`,
          formulas: ['reviewJoint'],
          steps: () => [mode.explain()],
          meop,
        }),
      ),
      ...plate.margins,
    ],
    cautions: [...joint.cautions.map((text) => `${end} joint: ${text}`), ...plate.cautions],
  };
}

function jointOf(
  motor: Motor,
  { material, joint }: Closure,
  meop: Quantity<'gauge pressure'>,
  { factors }: MotorSettings,
): JointReview {
  const { wall, outsideDiameter, bore } = weakestCase(motor);
  const { wallTemperature } = motor.case;
  const gap = joint.gap?.value.si ?? 0;
  return reviewJoint({
    pressure: meop,
    caseOutsideDiameter: outsideDiameter,
    caseWall: wall,
    caseMaterial: motor.case.material,
    closureMaterial: material,
    sealDiameter: bore,
    thread: joint.thread,
    boltClass: joint.boltClass,
    count: joint.count,
    shearPlane: joint.shearPlane,
    holeDiameter: most(joint.holeDiameter),
    edgeDistance: least(joint.edgeDistance),
    engagement: least(joint.engagement),
    ...(gap > 0 && { closureDiameter: fromSiValue<'length'>(bore.si - 2 * gap, 'length', unitOf('mm')) }),
    ...(joint.rows !== undefined && { rows: joint.rows }),
    ...(joint.rowSpacing && { rowSpacing: joint.rowSpacing.value }),
    ...(joint.sealToHoles && { sealToHoles: least(joint.sealToHoles) }),
    ...(joint.misplacement &&
      joint.misplacement.value.si > 0 && { positionTolerance: joint.misplacement.value }),
    ...(wallTemperature && { caseTemperature: wallTemperature.value }),
    factors,
  });
}

function plateMargins(
  motor: Motor,
  end: End,
  closure: Closure,
  meop: Quantity<'gauge pressure'>,
  { factors }: MotorSettings,
): { readonly margins: readonly ReviewMargin[]; readonly cautions: readonly string[] } {
  const { material, held, opening } = closure;
  const { insideRadius } = weakestCase(motor);
  const { poissonRatio, elasticModulus } = material;
  if (poissonRatio === undefined)
    return {
      margins: [],
      cautions: [`${end} closure: ${material.name} has no poissonRatio: its plate is not judged`],
    };
  const plate = (held === 'clamped' ? clampedPlate : simplySupportedPlate)({
    pressure: fromSiValue<'pressure difference'>(meop.si, 'pressure difference', unitOf(meop.unit)),
    radius: insideRadius,
    thickness: least(closure.thickness),
    poissonRatio: poissonRatio.value,
    ...(elasticModulus && { elasticModulus: elasticModulus.value }),
    ...(opening && { holeRadius: most(opening).per(2) }),
  });
  const source = `flat circular plate, ${held}, ${plate.at === 'hole' ? 'at its hole' : `at its ${plate.at}`}: Roark's Formulas for Stress and Strain`;
  const mode = (limit: 'yield' | 'ultimate'): ReviewMargin[] => {
    try {
      const strength = allowable({ material, property: limit });
      return [
        reviewMargin(
          margin({
            mode: `bending of the plate${limit === 'yield' ? ', yield' : ''}`,
            applied: plate.greatest,
            allowable: strength.value,
            factor: limit === 'yield' ? factors.yieldFactor : factors.ultimateFactor,
            source: `${source}; strength: ${strength.source}`,
            cautions: [...strength.cautions, ...plate.cautions],
          }),
          {
            part: `${end} closure`,
            formulas: [held === 'clamped' ? 'clampedPlate' : 'simplySupportedPlate'],
            steps: () => [plate],
            meop,
          },
        ),
      ];
    } catch (error) {
      if (error instanceof MeopError && error.code === 'no-allowable') return [];
      throw error;
    }
  };
  const margins = [...mode('yield'), ...mode('ultimate')];
  return {
    margins,
    cautions: [
      ...plate.cautions.map((text) => `${end} closure: ${text}`),
      ...(margins.length === 0
        ? [`${end} closure: ${material.name} has no minimum strength: its plate is not judged`]
        : []),
    ],
  };
}
