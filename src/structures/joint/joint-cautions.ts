import type { Quantity } from '../../units';
import type { HolePattern } from '../holes';
import type { Margin } from '../margin';
import type { TightenedBolt } from '../tension-bolts/tightened-bolt';
import type { FastenerType } from './fastener-type';
import type { JointStrengths } from './joint-strengths';
import { type BoltsSi, edgeRatios, type PartsSi } from './read-joint';

/** What the cautions of a joint depend on. */
export interface JointContext {
  readonly parts: PartsSi;
  readonly bolts: BoltsSi;
  readonly strengths: JointStrengths;
  /** Load of the worst bolt/equal share. */
  readonly shareFactor: number;
  readonly type: FastenerType['fastener'];
  readonly modes: readonly Margin[];
  readonly tightened: TightenedBolt | undefined;
  /** Elastic tension at the surface of the case at the bolts [Pa]. */
  readonly surfaceStress: number;
  readonly pattern: HolePattern;
  /** As shown in the review. */
  readonly length: (si: number) => Quantity<'length'>;
}

/** The cautions for the margins of a joint, each once. */
export function jointCautions(context: JointContext): readonly string[] {
  const { parts, bolts, shareFactor, modes, pattern, length } = context;
  const { given } = parts;
  const clearance = bolts.holeDiameter - bolts.thread.majorDiameter.si;
  const [, closureRatio] = edgeRatios(parts, bolts);
  return [
    ...new Set([
      ...modes.flatMap(({ cautions }) => cautions),
      ...(given.factors?.cautions ?? []),
      ...pattern.cautions,
      ...partsCautions(parts, length),
      ...preloadCaution(context),
      ...(bolts.count < 3 ? [fewBolts] : []),
      ...((given.positionTolerance?.si ?? 0) > clearance && clearance > 0
        ? ['The position tolerance exceeds the clearance of the holes: not every bolt will fit.']
        : []),
      ...(shareFactor > 1 ? [shareCaution(shareFactor, given.shareFactor !== undefined)] : []),
      ...(given.closureEdgeDistance === undefined && closureRatio >= 2
        ? [
            'closureEdgeDistance not specified; assumed at least two bolt diameters of metal inboard of the holes of the closure.',
          ]
        : []),
      ...offsetCaution(context),
      ...typeCautions(context),
      ...(bolts.rows > 1
        ? [
            'The rows are assumed to share the load equally; the net section of the row nearest the pressure carries the whole load.',
          ]
        : []),
    ]),
  ];
}

/** The assumptions that are independent of the bolts. */
export function partsCautions(
  { given, sealDiameter, bore }: PartsSi,
  length: (si: number) => Quantity<'length'>,
): readonly string[] {
  return [
    ...(sealDiameter < bore - 2 * given.gap.si
      ? [
          `The pressure is assumed to act on ${length(sealDiameter)} only. An O-ring in a groove of the closure seals on the bore, ${length(bore)}.`,
        ]
      : []),
    ...(given.positionTolerance === undefined && given.shareFactor === undefined
      ? [
          'positionTolerance not specified; assumed 0, so that the bolts share the load equally (holes drilled through case and closure together).',
        ]
      : []),
    ...(given.sealToHoles === undefined
      ? [
          'sealToHoles not specified; assumed the full hoop stress at the holes, which is conservative away from the seal.',
        ]
      : []),
    ...coldPart(
      ['closure', 'closureTemperature'],
      given.closureTemperature,
      'case',
      given.tube.wallTemperature,
    ),
    ...coldPart(
      ['case', 'tube.wallTemperature'],
      given.tube.wallTemperature,
      'closure',
      given.closureTemperature,
    ),
  ];
}

/** The caution for one or two bolts. */
export const fewBolts = 'With one or two bolts the closure can tip on its seal, which no mode here covers.';

const warm = 310.93; // K, 100 °F, the limit of room temperature in handbooks

function coldPart(
  [part, field]: readonly [part: string, field: string],
  own: Quantity<'temperature'> | undefined,
  other: string,
  given: Quantity<'temperature'> | undefined,
): readonly string[] {
  if (own !== undefined || given === undefined || given.si <= warm) return [];
  return [`${field} not specified; assumed the ${part} at room temperature next to a hot ${other}.`];
}

function typeCautions({ type, bolts, length }: JointContext): readonly string[] {
  const { engagement, thread } = bolts;
  const diameter = thread.majorDiameter.si;
  return [
    ...(type === 'pin'
      ? [
          'Pins are not held by a thread. Secure each against walking out under repeated pressure, with a grub screw, staking or a sleeve.',
        ]
      : engagement < diameter
        ? [
            `The engagement (${length(engagement)}) is less than one bolt diameter (${length(diameter)}): the threads of the closure strip before a bolt in tension breaks. Count full threads only, without run-out and chamfers.`,
          ]
        : []),
    ...(type === 'countersunk'
      ? [
          'Flush heads lower the yield load of a joint below that of bearing on the credited thickness; handbooks state it only by test (from memory).',
        ]
      : []),
  ];
}

function offsetCaution({ surfaceStress, strengths }: JointContext): readonly string[] {
  const times = surfaceStress / strengths.caseYield.si;
  return times > 1
    ? [
        `The surface of the case at the bolts yields by the offset of the bolts: the elastic stress is ${times.toFixed(2)} times the yield strength. The set is local and adds up with the firings. Bolts clamped in the closure, friction and the fit of the closure reduce the bending by an unknown amount, which is not credited.`,
      ]
    : [];
}

const shareCaution = (share: number, asGiven: boolean): string =>
  asGiven
    ? `The worst bolt carries ${share.toFixed(2)} times the equal share, as specified, in bearing as well.`
    : `The worst bolt carries ${share.toFixed(2)} times the equal share until its hole yields; bearing is evaluated at the equal share. Drill the holes through both parts together to avoid this.`;

function preloadCaution({ tightened, bolts, strengths }: JointContext): readonly string[] {
  const yielding = strengths.boltYield.si * bolts.thread.tensileStressArea.si;
  return tightened !== undefined && tightened.max.value > 0.9 * yielding
    ? [
        'The maximum preload exceeds 90 % of the yield load of the bolts, about their proof load. Tighten less (engineering practice, no published source).',
      ]
    : [];
}
