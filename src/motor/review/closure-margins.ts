import type { JointReview, RetainingRingReview, ThreadedClosureReview } from '../../structures';
import type { Quantity } from '../../units';
import type { Motor } from '../document';
import type { MotorSettings } from '../settings';
import { worstJoint } from './bolt-margins';
import { type Closure, closureHeat } from './closure-heat';
import { plateMargins } from './plate-margins';
import { reviewMargin } from './review-margin';
import type { ReviewMargin } from './review-result';
import { ringMargins } from './ring-margins';
import { threadMargins } from './thread-margins';

type End = 'head' | 'aft';

/** What holds a closure, judged. */
export interface RetentionReview {
  readonly margins: readonly ReviewMargin[];
  readonly cautions: readonly string[];
  readonly joint?: JointReview;
  readonly retainingRing?: RetainingRingReview;
  readonly thread?: ThreadedClosureReview;
}

/** The plate of a closure and what holds it, at MEOP. */
export function closureMargins(
  motor: Motor,
  end: End,
  closure: Closure,
  meop: Quantity<'gauge pressure'>,
  settings: MotorSettings,
): RetentionReview {
  const hold = holdMargins(motor, end, closure, meop, settings);
  const plate = plateMargins(motor, end, closure, meop, settings);
  return {
    ...hold,
    margins: [...hold.margins, ...plate.margins],
    cautions: [
      ...hold.cautions.map((text) => `${end} joint: ${text}`),
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

function holdMargins(
  motor: Motor,
  end: End,
  closure: Closure,
  meop: Quantity<'gauge pressure'>,
  settings: MotorSettings,
): RetentionReview {
  const { joint: bolts, retainingRing, thread } = closure;
  const part = `${end} joint` as const;
  if (retainingRing !== undefined)
    return ringMargins({ motor, part, closure: { ...closure, retainingRing }, meop, settings });
  if (thread !== undefined)
    return threadMargins({ motor, part, closure: { ...closure, thread }, meop, settings });
  if (bolts === undefined) return { margins: [], cautions: [] }; // a document without is refused
  const joint = worstJoint(motor, { ...closure, joint: bolts }, meop, settings);
  return {
    joint,
    margins: joint.modes.map((mode) =>
      reviewMargin(mode, { part, formulas: ['reviewJoint'], steps: () => [mode.explain()], meop }),
    ),
    cautions: joint.cautions,
  };
}
