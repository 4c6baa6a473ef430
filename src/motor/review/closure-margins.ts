import type { JointReview, RetainingRingReview, ThreadedClosureReview } from '../../structures';
import type { Quantity } from '../../units';
import type { Motor } from '../document';
import { linesOf } from '../part-lines';
import type { MotorSettings } from '../settings';
import { type Closure, closureHeat } from './closure-heat';
import { type PartReview, partReview } from './part-review';
import { plateMargins } from './plate-margins';
import { worstJoint } from './worst-joint';
import { worstRing } from './worst-ring';
import { worstThread } from './worst-thread';

/** Retention of a closure. */
export interface Retention {
  readonly joint?: JointReview;
  readonly retainingRing?: RetainingRingReview;
  readonly thread?: ThreadedClosureReview;
}

/** Evaluates the plate of a closure and its retention at MEOP. */
export function closureMargins(
  motor: Motor,
  end: 'head' | 'aft',
  closure: Closure,
  meop: Quantity<'gauge pressure'>,
  settings: MotorSettings,
): PartReview & Retention {
  const [atJoint, atClosure] = [`${end}-joint`, `${end}-closure`] as const;
  const { joint, retainingRing, thread } = closure;
  const held = { motor, part: atJoint, meop, settings };
  // One of the three: a document with none, or with more, is rejected.
  const retention: Retention = {
    ...(joint && { joint: worstJoint({ ...held, closure: { ...closure, joint } }) }),
    ...(retainingRing && { retainingRing: worstRing({ ...held, closure: { ...closure, retainingRing } }) }),
    ...(thread && { thread: worstThread({ ...held, closure: { ...closure, thread } }) }),
  };
  const { joint: bolts, retainingRing: ring, thread: screwed } = retention;
  const plate = plateMargins({ ...held, part: atClosure, closure });
  const isHeatUnknown =
    motor.case.wallTemperature !== undefined &&
    closure.temperature === undefined &&
    closureHeat(motor, closure) === undefined;
  const found = partReview({
    margins: [
      ...(bolts?.modes ?? []),
      ...(ring?.margins ?? []),
      ...(screwed?.margins ?? []),
      ...plate.margins,
    ],
    unjudged: plate.unjudged.map((reason) => ({ part: atClosure, reason })),
    cautions: [
      ...linesOf(
        atJoint,
        [bolts, ring, screwed].flatMap((one) => one?.cautions ?? []),
      ),
      ...linesOf(atClosure, [
        ...plate.cautions,
        ...(isHeatUnknown
          ? [
              `The strength of ${closure.material.name} at elevated temperature is not known. It is evaluated at room temperature.`,
            ]
          : []),
      ]),
    ],
  });
  return { ...found, ...retention };
}
