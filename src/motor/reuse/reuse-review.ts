import type { FailureMargin, JointReview, PartId } from '../../structures';
import { lifeCautions, lowCycleLife } from '../../structures/life/low-cycle-life';
import type { Quantity } from '../../units';
import type { Motor } from '../document';
import type { PartCheck } from '../review/part-review';
import type { SealReview } from '../review/review-result';
import { pressureParts } from '../review/verdict';
import type { Pressurisation } from './cycles-seen';
import { heatHistory } from './heat-history';
import { inspections } from './inspections';
import { lifeFeatures } from './life-features';
import { measurementChecks } from './measurement-checks';
import { partReuse } from './part-reuse';
import type { HeatHistory, PartReuse, ReuseReview } from './reuse-result';

/** What the reuse of a motor follows from: its review at MEOP. */
export interface ReuseSource {
  readonly motor: Motor;
  /** The motor at its worst-case limits. */
  readonly worst: Motor;
  readonly meop: Quantity<'gauge pressure'>;
  readonly margins: readonly FailureMargin[];
  readonly joints: Readonly<Partial<Record<'head' | 'aft', JointReview>>>;
  readonly seals: readonly SealReview[];
  /** Pressurisations in addition to the ledger of the document, such as the firing just compared. */
  readonly more?: readonly Pressurisation[];
}

/** Cycles used, estimated life at the local stress, heat and inspections of each part of a motor. */
export function reuseReview({
  motor,
  worst,
  meop,
  margins,
  joints,
  seals,
  more = [],
}: ReuseSource): ReuseReview {
  const ledger = [...(worst.history?.pressurisations ?? []), ...more];
  const features = lifeFeatures({ motor: worst, margins, joints });
  const isOf =
    (part: PartId) =>
    (one: { readonly part: PartId }): boolean =>
      one.part === part;
  const parts = pressureParts
    .filter((part) => margins.some(isOf(part)))
    .map((part) => partReuse(part, margins.filter(isOf(part)), features.filter(isOf(part)), meop, ledger));
  const heat = heatHistory(worst, ledger);
  return {
    label: 'first-order estimate',
    parts,
    heat,
    inspections: inspections(motor, seals),
    checks: [
      ...(ledger.length > 0 ? parts.flatMap(cycleChecks) : []),
      ...temperChecks(heat),
      ...measurementChecks(motor, seals, worst.history?.measurements ?? []),
    ],
    cautions: [
      ...lifeCautions,
      'The life of screws, pins and retaining rings is not estimated. Replace them.',
      ...(motor.history?.pressurisations === undefined
        ? ['history not specified; the hardware is assumed new.']
        : []),
    ],
  };
}

/** The cycles that the ledger used of the planned life of a part. */
function cycleChecks({
  part,
  used,
  firings,
  proofs,
  remainingFirings,
  statement,
}: PartReuse): readonly PartCheck[] {
  if (used === undefined || firings + proofs === 0) return [];
  return [
    {
      part,
      check: 'cycles used',
      // Past yield nothing remains: the share of a life that does not exist is all of it.
      value: Number.isFinite(used) ? used : 1,
      limit: 1,
      passes: used < 1 && (remainingFirings ?? 0) > 0,
      message: `${firings} ${firings === 1 ? 'firing' : 'firings'}, ${proofs} ${proofs === 1 ? 'proof test' : 'proof tests'}. ${statement}`,
      source: lowCycleLife.source,
    },
  ];
}

function temperChecks(heat: HeatHistory | undefined): readonly PartCheck[] {
  if (heat?.yieldAfter === undefined || heat.minimumYield === undefined) return [];
  return [
    {
      part: 'case',
      check: 'temper after heating',
      value: heat.yieldAfter,
      limit: heat.minimumYield,
      passes: heat.yieldAfter.si >= heat.minimumYield.si,
      message: heat.statement,
      source: heat.source,
    },
  ];
}
