import type { JointReview } from '../../structures';
import { failureOrder } from '../../structures/failure-mode/failure-order';
import { leastFavourable } from '../../structures/failure-mode/least-favourable';
import { partAt } from '../../structures/failure-mode/part-name';
import { jointReview } from '../../structures/joint/joint-review';
import { reviewJointAs } from '../../structures/joint/review-joint';
import { fromSiValue, type Quantity, unitOf } from '../../units';
import type { Motor } from '../document';
import { worstJointDistances } from '../layout/end-ligaments';
import type { JointDistances } from '../layout/joint-distances';
import { nominalOf } from '../worst-case-tolerances';
import type { ClosureAtMeop } from './closure-at-meop';
import { type Closure, closureHeat } from './closure-heat';
import { pressureAreaDiameter, weakestCase } from './worst-sizes';

type Bolted = ClosureAtMeop<Closure & { readonly joint: NonNullable<Closure['joint']> }>;

/** A joint with the distances that follow from the layout of its end, where it has one. */
type Placed = Bolted & { readonly placed: JointDistances | undefined };

/**
 * Evaluates the joint, each mode in its worst case. With misplaced holes a stiff wall shares the load less evenly,
 * so that a thick wall can be worse than a thin one and a wall at room temperature worse than a hot one: all
 * combinations are evaluated.
 */
export function worstJoint(joint: Bolted): JointReview {
  const { motor, closure, meop } = joint;
  const { end } = partAt(joint.part);
  const bolted = { ...joint, placed: end && worstJointDistances(nominalOf(motor), end) };
  const thin = jointOf(bolted, motor);
  if (thin.shareFactor <= 1) return thin;
  const { wallTemperature: _, ...unheated } = motor.case;
  const { temperature: __, ...coldClosure } = closure;
  const { wall } = motor.case;
  const thickest = {
    ...wall,
    value: fromSiValue<'length'>(wall.value.si + 2 * wall.plusMinus, 'length', unitOf('mm')),
  };
  const cold = { ...bolted, closure: coldClosure };
  const variants = [
    thin,
    jointOf(bolted, { ...motor, case: { ...motor.case, wall: thickest } }),
    jointOf(cold, { ...motor, case: unheated }),
    jointOf(cold, { ...motor, case: { ...unheated, wall: thickest } }),
  ];
  const modes = leastFavourable(variants.map((one) => one.modes));
  // A joint warns only if it does in every variant.
  const silent = variants
    .map((one) => one.failureOrder)
    .filter(({ warns }) => !warns)
    .sort((a, b) => (a.warningRatio ?? 0) - (b.warningRatio ?? 0));
  return jointReview({
    ...thin,
    pressure: meop,
    modes,
    failureOrder: silent[0] ?? failureOrder(modes),
  });
}

function jointOf({ part, closure, meop, settings, placed }: Placed, motor: Motor): JointReview {
  const { wall, outsideDiameter } = weakestCase(motor);
  const { wallTemperature } = motor.case;
  const { material, joint } = closure;
  const closureTemperature = closureHeat(motor, closure);
  return reviewJointAs(
    {
      pressure: meop,
      tube: { outsideDiameter, wall, material: motor.case.material, wallTemperature: wallTemperature?.value },
      closureMaterial: material,
      sealDiameter: pressureAreaDiameter(motor, closure),
      thread: joint.thread,
      boltClass: joint.boltClass,
      fastener: joint.fastener,
      headDiameter: joint.headDiameter?.value,
      headAngle: joint.headAngle?.value,
      countersinkAngle: joint.countersinkAngle?.value,
      counterboreDepth: joint.counterboreDepth?.value,
      count: joint.count,
      shearPlane: joint.shearPlane,
      holeDiameter: joint.holeDiameter.value,
      edgeDistance: joint.edgeDistance.value,
      engagement: joint.engagement.value,
      gap: joint.gap?.value ?? lengthOf(placed?.gap),
      rows: joint.rows,
      rowSpacing: joint.rowSpacing?.value,
      sealToHoles: lengthOf(placed?.sealToHoles) ?? joint.sealToHoles?.value,
      closureEdgeDistance: lengthOf(placed?.closureEdgeDistance),
      closureThickness: lengthOf(placed?.closureThickness),
      preload: joint.preload?.value,
      torque: joint.torque?.value,
      finish: joint.finish,
      tightening: joint.tightening,
      ...(joint.positionTolerance &&
        joint.positionTolerance.value.si > 0 && { positionTolerance: joint.positionTolerance.value }),
      closureTemperature,
      factors: settings.factors,
    },
    part,
  );
}

const lengthOf = (si: number | undefined): Quantity<'length'> | undefined =>
  si === undefined ? undefined : fromSiValue<'length'>(si, 'length', unitOf('mm'));
