import { governing, type JointReview, reviewJoint } from '../../structures';
import { fromSiValue, type Quantity, unitOf } from '../../units';
import type { Motor } from '../document';
import type { MotorSettings } from '../settings';
import { type Closure, closureHeat } from './closure-heat';
import { pressureAreaDiameter, weakestCase } from './worst-sizes';

type BoltedClosure = Closure & { readonly joint: NonNullable<Closure['joint']> };

/**
 * The joint, each mode at its least. Where bolts are out of place a stiff wall shares their load worse, so that a thick
 * wall may be worse than a thin one and a cold one worse than a hot one: all are tried.
 */
export function worstJoint(
  motor: Motor,
  closure: BoltedClosure,
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
    passes: modes.every(({ marginOfSafety }) => marginOfSafety >= 0),
    firstToFail: modes.reduce((least, next) =>
      next.failurePressure.si < least.failurePressure.si ? next : least,
    ),
    bearingFirst: [thin, ...others].every(({ bearingFirst }) => bearingFirst),
  };
}

function jointOf(
  motor: Motor,
  closure: BoltedClosure,
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
    sealDiameter: pressureAreaDiameter(motor, closure),
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
    ...(joint.positionTolerance &&
      joint.positionTolerance.value.si > 0 && { positionTolerance: joint.positionTolerance.value }),
    ...(wallTemperature && { caseTemperature: wallTemperature.value }),
    ...(closureTemperature && { closureTemperature }),
    factors,
  });
}
