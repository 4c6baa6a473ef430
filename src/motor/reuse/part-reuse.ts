import { type FailureMargin, modeName, type PartId } from '../../structures';
import type { Quantity } from '../../units';
import { type Pressurisation, seen, timesOf } from './cycles-seen';
import { featureLife } from './feature-life';
import type { LifeFeature } from './life-features';
import type { FeatureLife, PartReuse } from './reuse-result';

/** Above this many firings the estimate gives no number. */
const many = 1000;

const countOf = (entries: readonly Pressurisation[], kind: Pressurisation['kind']): number =>
  entries.filter((entry) => entry.kind === kind).reduce((total, entry) => total + timesOf(entry), 0);

/** The yield mode with the minimum failure pressure. The plain proof test has its own pressure. */
function yieldsFirst(margins: readonly FailureMargin[]): PartReuse['firstYield'] {
  return margins.reduce<PartReuse['firstYield']>((first, { id, limit, failurePressure: pressure }) => {
    if (limit !== 'yield' || pressure === undefined || id === 'proof-yield') return first;
    return first === undefined || pressure.si < first.pressure.si ? { mode: id, pressure } : first;
  }, undefined);
}

/** The reuse of a part: section and bearing first, then the life of its features. */
export function partReuse(
  part: PartId,
  margins: readonly FailureMargin[],
  features: readonly LifeFeature[],
  meop: Quantity<'gauge pressure'>,
  ledger: readonly Pressurisation[],
): PartReuse {
  const entries = seen(part, ledger);
  const lives = features.map((feature) => featureLife(feature, meop.si, entries));
  const found = lives
    .filter((life): life is FeatureLife => typeof life !== 'string')
    .sort(
      (a, b) =>
        Number(a.isBound) - Number(b.isBound) ||
        a.remainingFirings - b.remainingFirings ||
        b.localStress.si - a.localStress.si,
    );
  const firstYield = yieldsFirst(margins);
  const facts = {
    part,
    firings: countOf(entries, 'firing'),
    proofs: countOf(entries, 'proof'),
    features: found,
    remainingAtBound: undefined,
    firstYield,
  };
  const beyond = firstYield && entries.find((one) => pastYield(one, firstYield.pressure.si));
  if (firstYield !== undefined && beyond !== undefined)
    return {
      ...facts,
      used: Number.POSITIVE_INFINITY,
      remainingFirings: 0,
      statement: `A firing at ${beyond.pressure.value} exceeded ${firstYield.pressure}, where ${modeName(firstYield.mode)} begins. No life remains: measure the part and replace it.`,
    };
  if (firstYield !== undefined && firstYield.pressure.si < meop.si)
    return {
      ...facts,
      used: undefined,
      remainingFirings: 0,
      statement: `No life is estimated: ${modeName(firstYield.mode)} begins at ${firstYield.pressure}, below MEOP (${meop}). The section fails before fatigue counts.`,
    };
  const [governing] = found;
  if (governing === undefined || governing.isBound)
    return { ...facts, used: undefined, remainingFirings: undefined, statement: notEstimated(part, lives) };
  const used = Math.max(...found.filter((one) => !one.isBound).map((one) => one.used));
  const bound = found.find(({ isBound }) => isBound);
  return {
    ...facts,
    used,
    remainingFirings: governing.remainingFirings,
    remainingAtBound: bound?.remainingFirings,
    statement: stated(governing, used, bound),
  };
}

// A proof test has the strength of the cold metal; the review of the proof test judges its modes.
const pastYield = ({ kind, pressure }: Pressurisation, limit: number): boolean =>
  kind === 'firing' && pressure.value.si > limit;

function notEstimated(part: PartId, lives: readonly (FeatureLife | string)[]): string {
  const [reason] = lives.filter((life): life is string => typeof life === 'string');
  if (reason !== undefined) return `No life is estimated: ${reason}.`;
  return part === 'throat-insert'
    ? 'No life is estimated for a brittle insert. Inspect it after every firing and reject it at any crack.'
    : 'No life is estimated: no stress of this part has a known concentration.';
}

function stated(
  { feature, remainingFirings: left, verdict, notchFactor }: FeatureLife,
  used: number,
  bound: FeatureLife | undefined,
): string {
  const remain =
    left >= many
      ? `more than ${many} planned firings at MEOP remain`
      : `${left} planned ${left === 1 ? 'firing' : 'firings'} at MEOP ${left === 1 ? 'remains' : 'remain'}`;
  const state = verdict === 'elastic' ? 'stays elastic' : 'yields locally';
  const root = notchFactor > 1 ? `, whose root ${state}` : '';
  const least =
    bound === undefined || bound.remainingFirings >= Math.min(left, many)
      ? ''
      : ` By the upper bound of the local stress (${bound.feature}, finite elements) the number is ${bound.remainingFirings}.`;
  const share = used > 0 ? ` The ledger used ${(100 * used).toPrecision(2)} % of the planned life.` : '';
  return `First-order estimate: ${remain}. Governing: ${feature}${root}.${least}${share}`;
}
