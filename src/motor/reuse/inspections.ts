import {
  boreGrowthLimit,
  grooveBurrLimit,
  holeElongationLimit,
  type Material,
  minimumHardness,
  ovalityLimit,
  type PartId,
  screwStretchLimit,
} from '../../structures';
import { fromSiValue, type Quantity, unitOf } from '../../units';
import type { Motor } from '../document';
import { boreOf } from '../document/case-size';
import type { Closure } from '../review/closure-heat';
import type { SealReview } from '../review/review-result';
import { temperLimit } from './heat-history';
import type { Inspection } from './reuse-result';

const mm = (si: number): Quantity<'length'> => fromSiValue<'length'>(si, 'length', unitOf('mm'));
const practice = 'engineering practice, no published source';
const ends = ['head', 'aft'] as const;

/** The diametral clearance that the seals of a motor still allow at MEOP [m]; infinite where no table limits it. */
export const sealAllowance = (seals: readonly SealReview[]): number =>
  Math.min(
    Number.POSITIVE_INFINITY,
    ...seals.map(({ gland: { clearanceLimit, clearanceUnderPressure } }) =>
      clearanceLimit === undefined
        ? Number.POSITIVE_INFINITY
        : Math.max(0, clearanceLimit.si - clearanceUnderPressure.max.si),
    ),
  );

/** The change of ovality that is allowed: the lesser of the limit of practice and what the gap of the seals allows. */
export function ovalityAllowed(motor: Motor, seals: readonly SealReview[]): Quantity<'length'> {
  const bore = boreOf(motor.case).value.si;
  return mm(Math.min(ovalityLimit.si({ bore }), sealAllowance(seals)));
}

/** The minimum hardness of a part, from the hardness as new or the typical one; undefined where neither is known. */
export function hardnessLimit(material: Material, asNew: number | undefined): number | undefined {
  const { ultimateStrength, typical } = material;
  const hardness = asNew ?? typical?.hardness?.value;
  if (hardness === undefined) return undefined;
  const [minimum, average] = [ultimateStrength?.value.si, typical?.ultimateStrength?.value.si];
  // Without a typical strength a drop of 10 % is allowed.
  if (minimum === undefined || average === undefined || minimum >= average) return 0.9 * hardness;
  return minimumHardness.si({ hardness, minimumStrength: minimum, typicalStrength: average });
}

/** What to inspect between firings of a motor, each with its limit in the sizes of the motor. */
export function inspections(motor: Motor, seals: readonly SealReview[]): readonly Inspection[] {
  return [
    ...ofCase(motor, seals),
    ...ends.flatMap((end) => {
      const closure = motor.closures?.[end];
      return closure === undefined ? [] : ofClosure(motor, closure, end);
    }),
    ...ofInsert(motor),
  ];
}

function ofCase(motor: Motor, seals: readonly SealReview[]): readonly Inspection[] {
  const bore = boreOf(motor.case).value;
  const growth = boreGrowthLimit({ bore });
  const oval = ovalityAllowed(motor, seals);
  const bySeal = oval.si < ovalityLimit.si({ bore: bore.si });
  const limit = temperLimit(motor.case.material);
  return [
    {
      part: 'case',
      inspection: 'permanent growth of the bore',
      limit: growth,
      instruction: `Measure the bore at the middle and at both seals. Reject at a growth of ${growth} or more (${bore} as made).`,
      source: boreGrowthLimit.source,
    },
    {
      part: 'case',
      inspection: 'ovality of the bore',
      limit: oval,
      instruction: `Measure two diameters at right angles at both seals. Reject where their difference has grown by more than ${oval}${bySeal ? ', which the gap of a seal still allows' : ''}.`,
      source: bySeal ? 'gap that the seals allow at MEOP' : ovalityLimit.source,
    },
    ...hardnessOf('case', motor.case.material),
    ...(limit === undefined
      ? []
      : [
          {
            part: 'case',
            inspection: 'wall temperature',
            limit,
            instruction: `Record the wall temperature of every firing. Above ${limit} for half an hour the typical yield strength falls below the minimum: check the hardness.`,
            source: `${motor.case.material.afterExposure?.origin.source}, read in steps of 5 °C`,
          } as const,
        ]),
  ];
}

function hardnessOf(part: PartId, material: Material): readonly Inspection[] {
  const limit = hardnessLimit(material, undefined);
  if (limit === undefined || material.class !== 'metal') return [];
  const { hardness } = material.typical ?? {};
  return [
    {
      part,
      inspection: 'hardness',
      limit: Number(limit.toPrecision(3)),
      instruction: `Measure the Brinell hardness after a hot firing. Reject below ${limit.toPrecision(3)} (typical as new: ${hardness?.value}).`,
      source: `${minimumHardness.source}; ${hardness?.source} (${hardness?.provenance})`,
    },
  ];
}

const cracks = (part: PartId, where: string): Inspection => ({
  part,
  inspection: 'cracks',
  limit: undefined,
  instruction: `Inspect ${where} with dye penetrant. Reject at any crack.`,
  source: practice,
});

function ofClosure(motor: Motor, closure: Closure, end: 'head' | 'aft'): readonly Inspection[] {
  const [part, body] = [`${end}-joint`, `${end}-closure`] as const;
  const { joint, retainingRing, thread, axialBolts, material } = closure;
  return [
    ...(joint === undefined ? [] : ofBolts(motor, joint, part)),
    ...(axialBolts === undefined
      ? []
      : [
          screws(part, axialBolts.clampedThickness.value),
          cracks(part, 'the tapped holes and the corner of the flange'),
        ]),
    ...(retainingRing === undefined ? [] : ofRing(retainingRing, part)),
    ...(thread === undefined
      ? []
      : [
          {
            part,
            inspection: 'thread',
            limit: undefined,
            instruction: 'Check both threads with go and no-go gauges. Reject where the no-go gauge enters.',
            source: practice,
          },
          cracks(part, 'the last engaged thread and its relief'),
        ]),
    ...hardnessOf(body, material),
    ...(closure.seals.length === 0
      ? []
      : [
          {
            part: body,
            inspection: 'O-rings',
            limit: undefined,
            instruction:
              'Replace the O-rings after every firing. Reject a groove or a bore with a scratch across the seal.',
            source: practice,
          },
        ]),
  ];
}

/** The screws of a joint, with the part of their length that stretches. */
function screws(part: PartId, grip: Quantity<'length'>): Inspection {
  const stretch = screwStretchLimit({ grip });
  return {
    part,
    inspection: 'screws',
    limit: stretch,
    instruction: `Replace the screws after every firing, or reject at a lengthening of ${stretch} or more (0.2 % of a grip of ${grip}). Replace them where the micrometer does not resolve this limit.`,
    source: screwStretchLimit.source,
  };
}

function ofBolts(
  motor: Motor,
  { holeDiameter: { value: holeDiameter } }: NonNullable<Closure['joint']>,
  part: PartId,
): readonly Inspection[] {
  const growth = holeElongationLimit({ holeDiameter });
  return [
    {
      part,
      inspection: 'elongation of the bolt holes',
      limit: growth,
      instruction: `Measure every hole along and across its load. Reject at a length of ${holeDiameter.plus(growth)} or more (${growth} over ${holeDiameter}).`,
      source: holeElongationLimit.source,
    },
    cracks(part, 'the edges of the holes'),
    screws(part, motor.case.wall.value),
  ];
}

function ofRing(
  { grooveDepth: { value: grooveDepth } }: NonNullable<Closure['retainingRing']>,
  part: PartId,
): readonly Inspection[] {
  const burr = grooveBurrLimit({ grooveDepth });
  return [
    {
      part,
      inspection: 'lip of the ring groove',
      limit: burr,
      instruction: `Inspect the lip of the groove. Reject at a burr or roll-over of more than ${burr} (groove ${grooveDepth} deep). Replace the ring after every firing.`,
      source: grooveBurrLimit.source,
    },
    cracks(part, 'the root of the groove'),
  ];
}

function ofInsert({ nozzle: { insert } }: Motor): readonly Inspection[] {
  if (insert === undefined) return [];
  return [
    {
      part: 'throat-insert',
      inspection: 'cracks',
      limit: undefined,
      instruction: `Inspect the ${insert.material.name} with a lens, inside and outside. Reject at any crack.`,
      source: practice,
    },
  ];
}
