import {
  allowable,
  clampedPlate,
  governing,
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
import { weakestCase } from './worst-sizes';

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
  const joint = worstJoint(motor, closure, meop, settings);
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
    cautions: [
      ...joint.cautions.map((text) => `${end} joint: ${text}`),
      ...plate.cautions,
      ...(motor.case.wallTemperature !== undefined &&
      closure.temperature === undefined &&
      closureHeat(motor, closure) === undefined
        ? [
            `${end} closure: the strength of ${closure.material.name} while hot is not known: it is judged at room temperature`,
          ]
        : []),
    ],
  };
}

/** How hot the closure is taken: as the case where the document does not say and its strength while hot is known. */
function closureHeat({ case: { wallTemperature } }: Motor, { material, temperature }: Closure) {
  if (temperature !== undefined) return temperature.value;
  return material.atTemperature === undefined ? undefined : wallTemperature?.value;
}

/**
 * The joint, each mode at its least. Where bolts are out of place a stiff wall shares their load worse, so that a thick
 * wall may be worse than a thin one and a cold one worse than a hot one: all are tried.
 */
function worstJoint(
  motor: Motor,
  closure: Closure,
  meop: Quantity<'gauge pressure'>,
  settings: MotorSettings,
): JointReview {
  const thin = jointOf(motor, closure, meop, settings);
  if (thin.shareFactor <= 1) return thin;
  const { wallTemperature: _, ...unheated } = motor.case;
  const { temperature: __, ...coldClosure } = closure;
  const { wall } = motor.case;
  const thickest = {
    ...wall,
    value: fromSiValue<'length'>(wall.value.si + 2 * wall.plusMinus, 'length', unitOf('mm')),
  };
  const others = [
    jointOf({ ...motor, case: { ...motor.case, wall: thickest } }, closure, meop, settings),
    jointOf({ ...motor, case: unheated }, coldClosure, meop, settings),
    jointOf({ ...motor, case: { ...unheated, wall: thickest } }, coldClosure, meop, settings),
  ];
  const modes = thin.modes.map((mode) =>
    others
      .flatMap((other) => other.modes.filter(({ mode: name }) => name === mode.mode))
      .reduce((least, next) => (next.marginOfSafety < least.marginOfSafety ? next : least), mode),
  );
  return {
    ...thin,
    modes,
    governing: governing(modes),
    holds: modes.every(({ marginOfSafety }) => marginOfSafety >= 0),
    firstToFail: modes.reduce((least, next) => (next.reachedAt.si < least.reachedAt.si ? next : least)),
    bearingFirst: [thin, ...others].every(({ bearingFirst }) => bearingFirst),
  };
}

function jointOf(
  motor: Motor,
  closure: Closure,
  meop: Quantity<'gauge pressure'>,
  { factors }: MotorSettings,
): JointReview {
  const { wall, outsideDiameter, bore } = weakestCase(motor);
  const { wallTemperature } = motor.case;
  const { material, joint } = closure;
  const gap = joint.gap?.value.si ?? 0;
  const closureTemperature = closureHeat(motor, closure);
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
    holeDiameter: joint.holeDiameter.value,
    edgeDistance: joint.edgeDistance.value,
    engagement: joint.engagement.value,
    ...(gap > 0 && { closureDiameter: fromSiValue<'length'>(bore.si - 2 * gap, 'length', unitOf('mm')) }),
    ...(joint.rows !== undefined && { rows: joint.rows }),
    ...(joint.rowSpacing && { rowSpacing: joint.rowSpacing.value }),
    ...(joint.sealToHoles && { sealToHoles: joint.sealToHoles.value }),
    ...(joint.misplacement &&
      joint.misplacement.value.si > 0 && { positionTolerance: joint.misplacement.value }),
    ...(wallTemperature && { caseTemperature: wallTemperature.value }),
    ...(closureTemperature && { closureTemperature }),
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
  const temperature = closureHeat(motor, closure);
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
    thickness: closure.thickness.value,
    poissonRatio: poissonRatio.value,
    ...(elasticModulus && { elasticModulus: elasticModulus.value }),
    ...(opening && { holeRadius: opening.value.per(2) }),
  });
  const source = `flat circular plate, ${held}, ${plate.at === 'hole' ? 'at its hole' : `at its ${plate.at}`}: Roark's Formulas for Stress and Strain`;
  const mode = (limit: 'yield' | 'ultimate'): ReviewMargin[] => {
    try {
      const strength = allowable({ material, property: limit, ...(temperature && { temperature }) });
      return [
        reviewMargin(
          margin({
            mode: `bending of the plate${limit === 'yield' ? ', yield' : ''}`,
            applied: plate.greatest,
            allowable: strength.value,
            factor: limit === 'yield' ? factors.yieldFactor : factors.ultimateFactor,
            ...(temperature && { temperature }),
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
