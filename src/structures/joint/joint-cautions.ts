import { type Quantity, readInput } from '../../units';
import type { HolePattern } from '../holes';
import type { Margin } from '../margin';
import type { JointStrengths } from './joint-strengths';
import type { JointParts } from './radial-bolt-joint';
import { type BoltsSi, edgeRatios, type PartsSi } from './read-joint';

/** What the cautions of a joint depend on. */
export interface JointContext {
  readonly parts: PartsSi;
  readonly bolts: BoltsSi;
  readonly strengths: JointStrengths;
  /** The worst bolt's load over the equal share. */
  readonly shareFactor: number;
  readonly modes: readonly Margin[];
  readonly pattern: HolePattern;
  /** As shown in the review. */
  readonly length: (si: number) => Quantity<'length'>;
}

/** What a joint's margins rest on and could be wrong about, each said once. */
export function jointCautions(judged: JointContext): readonly string[] {
  const { parts, bolts, shareFactor, modes, pattern, length } = judged;
  const { given } = parts;
  const clearance = bolts.holeDiameter - bolts.thread.majorDiameter.si;
  const [, closureRatio] = edgeRatios(parts, bolts);
  return [
    ...new Set([
      ...modes.flatMap(({ cautions }) => cautions),
      ...(given.factors?.cautions ?? []),
      ...pattern.cautions,
      ...partsCautions(given, parts, length),
      ...preloadCaution(judged),
      ...(bolts.count < 3 ? [fewBolts] : []),
      ...(parts.positionTolerance > clearance && clearance > 0
        ? ['the position tolerance exceeds the clearance of the holes: not every bolt will go in']
        : []),
      ...(shareFactor > 1 ? [shareCaution(shareFactor, given.shareFactor !== undefined)] : []),
      ...(given.closureEdgeDistance === undefined && closureRatio >= 2
        ? ['the closure is taken to have two diameters or more of metal inboard of its holes']
        : []),
      ...(bolts.rows > 1
        ? ['rows are taken to share alike, and the row nearest the pressure to see the whole load']
        : []),
    ]),
  ];
}

/** What is taken for granted before any bolts are chosen. */
export function partsCautions(
  given: JointParts,
  { sealDiameter, bore, gap }: PartsSi,
  length: (si: number) => Quantity<'length'>,
): readonly string[] {
  return [
    ...(sealDiameter < bore - 2 * gap
      ? [
          `the pressure is taken to act on ${length(sealDiameter)} only: an O-ring in a groove of the closure seals on the bore, ${length(bore)}`,
        ]
      : []),
    ...(given.positionTolerance === undefined && given.shareFactor === undefined
      ? ['the bolts are taken to share alike: true of holes drilled through case and closure together']
      : []),
    ...(given.sealToHoles === undefined
      ? ['the full hoop stress is taken at the holes: true of holes beside the seal, cautious further away']
      : []),
    ...coldPart('closure', given.closureTemperature, 'case', given.caseTemperature),
    ...coldPart('case', given.caseTemperature, 'closure', given.closureTemperature),
  ];
}

/** What is wrong with a closure on one or two bolts. */
export const fewBolts =
  'one or two bolts do not hold a closure square: it can tip on its seal, which no mode here counts';

const warm = 310.93; // K, 100 °F: to here handbooks call it room temperature

function coldPart(part: string, own: unknown, other: string, given: unknown): readonly string[] {
  if (own !== undefined || given === undefined) return [];
  if (readInput('temperature', `${other}Temperature`, given, 'reviewJoint').si <= warm) return [];
  return [
    `the ${part} is taken at room temperature beside a hot ${other}: give ${part}Temperature where it is hot`,
  ];
}

const shareCaution = (share: number, asGiven: boolean): string =>
  asGiven
    ? `the worst bolt is taken to carry ${share.toFixed(2)} times the equal share, as given, in bearing too`
    : `the worst bolt carries ${share.toFixed(2)} times its share until its hole yields; bearing is judged on the equal share, since it is what yields; holes drilled through both parts together have no such bolt`;

function preloadCaution({ parts, bolts, strengths }: JointContext): readonly string[] {
  const yielding = strengths.boltYield.si * bolts.thread.tensileStressArea.si;
  return parts.preload > 0.9 * yielding
    ? [
        'the preload exceeds nine tenths of what yields the bolts, about their proof load: tighten less (engineering practice, no published source)',
      ]
    : [];
}
