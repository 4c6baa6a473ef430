import {
  type JointReview,
  type RetainingRingReview,
  type TensionBoltReview,
  type ThreadedClosureReview,
  threadGeometry,
} from '../../structures';
import type { Quantity } from '../../units';
import type { Motor } from '../document';
import { linesOf } from '../part-lines';
import type { MotorSettings } from '../settings';
import { axialBoltChecks, thinLigaments } from './axial-bolt-checks';
import type { ClosureAtMeop } from './closure-at-meop';
import { type Closure, closureHeat } from './closure-heat';
import { type PartReview, partReview } from './part-review';
import { plateMargins } from './plate-margins';
import { worstAxialBolts, worstTappedEnd } from './worst-axial-bolts';
import { worstJoint } from './worst-joint';
import { worstRing } from './worst-ring';
import { worstThread } from './worst-thread';

/** Retention of a closure. */
export interface Retention {
  readonly joint?: JointReview;
  readonly retainingRing?: RetainingRingReview;
  readonly thread?: ThreadedClosureReview;
  readonly axialBolts?: TensionBoltReview;
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
  const { joint, retainingRing, thread, axialBolts } = closure;
  const held = { motor, part: atJoint, meop, settings };
  // One of them: a document with none, or with more, is rejected.
  const retention: Retention = {
    ...(joint && { joint: worstJoint({ ...held, closure: { ...closure, joint } }) }),
    ...(retainingRing && { retainingRing: worstRing({ ...held, closure: { ...closure, retainingRing } }) }),
    ...(thread && { thread: worstThread({ ...held, closure: { ...closure, thread } }) }),
    ...(axialBolts && { axialBolts: worstAxialBolts({ ...held, closure: { ...closure, axialBolts } }) }),
  };
  const { joint: bolts, retainingRing: ring, thread: screwed } = retention;
  const along = axialReview(held, closure, retention.axialBolts);
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
      ...along.margins,
      ...plate.margins,
    ],
    checks: [
      ...[...(bolts?.checks ?? []), ...(ring?.checks ?? [])].map((check) => ({ part: atJoint, ...check })),
      ...along.checks,
    ],
    unjudged: [
      ...(ring?.notEvaluated ?? []).map((reason) => ({
        part: atJoint,
        reason: `closures.${end}.retainingRing: ${reason}`,
      })),
      ...along.unjudged,
      ...plate.unjudged.map((reason) => ({ part: atClosure, reason })),
      ...(isHeatUnknown
        ? [
            {
              part: atClosure,
              reason: `The strength of ${closure.material.name} at elevated temperature is not known; it is evaluated at room temperature.`,
            },
          ]
        : []),
    ],
    cautions: [
      ...along.cautions,
      ...linesOf(
        atJoint,
        [bolts, ring, screwed].flatMap((one) => one?.cautions ?? []),
      ),
      ...linesOf(atClosure, plate.cautions),
    ],
  });
  return { ...found, ...retention };
}

/** Bolts along the axis with the end that they are tapped into. */
function axialReview(
  held: Omit<ClosureAtMeop<Closure>, 'closure'>,
  { axialBolts, ...closure }: Closure,
  bolts: TensionBoltReview | undefined,
): PartReview {
  if (axialBolts === undefined || bolts === undefined) return partReview({});
  const bolted = { ...held, closure: { ...closure, axialBolts } };
  const end = worstTappedEnd(bolted);
  const checks = axialBoltChecks(bolted, bolts);
  return partReview({
    margins: [...bolts.margins, ...end.margins],
    checks,
    unjudged: bolts.unjudged.map((reason) => ({ part: held.part, reason })),
    cautions: linesOf(held.part, [
      ...new Set([
        ...bolts.cautions,
        ...end.cautions,
        ...thinLigaments(checks, threadGeometry(axialBolts.thread).majorDiameter),
      ]),
    ]),
  });
}
