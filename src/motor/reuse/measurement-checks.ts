import {
  boreGrowthLimit,
  grooveBurrLimit,
  holeElongationLimit,
  minimumHardness,
  ovalityLimit,
  screwStretchLimit,
} from '../../structures';
import { fromSiValue, type Quantity, unitOf } from '../../units';
import type { Motor } from '../document';
import { boreOf } from '../document/case-size';
import type { PartCheck } from '../review/part-review';
import type { SealReview } from '../review/review-result';
import type { Measurement } from './cycles-seen';
import { hardnessLimit, ovalityAllowed } from './inspections';

type Of<M extends Measurement['measure']> = Extract<Measurement, { readonly measure: M }>;

const mm = (si: number): Quantity<'length'> => fromSiValue<'length'>(si, 'length', unitOf('mm'));
const practice = 'engineering practice, no published source';
const endOf = (part: 'head-joint' | 'aft-joint'): 'head' | 'aft' => (part === 'head-joint' ? 'head' : 'aft');

/** A length that has grown against its limit. */
const grown = (
  { part, check, source }: Pick<PartCheck, 'part' | 'check' | 'source'>,
  found: number,
  limit: number,
  from: string,
): PartCheck => {
  const [value, allowed] = [mm(Math.max(0, found)), mm(limit)];
  const passes = found < limit;
  return {
    part,
    check,
    value,
    limit: allowed,
    passes,
    message: `${value} ${from}; ${passes ? 'less than' : 'not less than'} the limit of ${allowed}`,
    source,
  };
};

/** A finding without a size. */
const found = (
  { part, check }: Pick<PartCheck, 'part' | 'check'>,
  passes: boolean,
  message: string,
): PartCheck => ({ part, check, value: passes ? 0 : 1, limit: 0, passes, message, source: practice });

/** Each measurement of the ledger against its limit; one without a limit has no check. */
export function measurementChecks(
  motor: Motor,
  seals: readonly SealReview[],
  measurements: readonly Measurement[],
): readonly PartCheck[] {
  return measurements.flatMap((one) => {
    const check = checkOf(motor, seals, one);
    if (check === undefined) return [];
    return [one.date === undefined ? check : { ...check, message: `${one.date}: ${check.message}` }];
  });
}

function checkOf(motor: Motor, seals: readonly SealReview[], one: Measurement): PartCheck | undefined {
  switch (one.measure) {
    case 'hole length':
      return holeLength(motor, one);
    case 'bore': {
      const bore = (one.asMade ?? boreOf(motor.case)).value;
      return grown(
        { part: 'case', check: 'growth of the bore', source: boreGrowthLimit.source },
        one.diameter.value.si - bore.si,
        boreGrowthLimit.si({ bore: bore.si }),
        `over ${bore}`,
      );
    }
    case 'ovality':
      return grown(
        { part: 'case', check: 'ovality of the bore', source: ovalityLimit.source },
        one.difference.value.si - (one.asMade?.value.si ?? 0),
        ovalityAllowed(motor, seals).si,
        'more than as made',
      );
    case 'hardness':
      return hardness(motor, one);
    case 'groove burr':
      return grooveBurr(motor, one);
    case 'thread gauge':
      return found(
        { part: one.part, check: 'thread gauge' },
        one.accepted,
        one.accepted ? 'accepted by both gauges' : 'rejected by a gauge: replace the part',
      );
    case 'crack':
      return found(
        { part: one.part, check: 'cracks' },
        !one.found,
        one.found ? 'a crack was found: replace the part' : 'no crack was found',
      );
    case 'screw length':
      return grown(
        { part: one.part, check: 'lengthening of the screws', source: screwStretchLimit.source },
        one.length.value.si - one.asMade.value.si,
        screwStretchLimit.si({ grip: one.grip.value.si }),
        `over ${one.asMade.value}`,
      );
  }
}

function holeLength(motor: Motor, { part, length, asMade }: Of<'hole length'>): PartCheck | undefined {
  const drilled = (asMade ?? motor.closures?.[endOf(part)]?.joint?.holeDiameter)?.value;
  return (
    drilled &&
    grown(
      { part, check: 'elongation of the bolt holes', source: holeElongationLimit.source },
      length.value.si - drilled.si,
      holeElongationLimit.si({ holeDiameter: drilled.si }),
      `over ${drilled}`,
    )
  );
}

function hardness(motor: Motor, { part, hardness: measured, asNew }: Of<'hardness'>): PartCheck | undefined {
  const closures = { 'head-closure': motor.closures?.head, 'aft-closure': motor.closures?.aft };
  const material = part === 'case' ? motor.case.material : closures[part]?.material;
  const limit = material && hardnessLimit(material, asNew?.value.si);
  if (limit === undefined) return undefined;
  const value = measured.value.si;
  const passes = value >= limit;
  return {
    part,
    check: 'hardness',
    value,
    limit,
    passes,
    message: `Brinell hardness ${value}; ${passes ? 'at least' : 'less than'} the minimum of ${limit.toPrecision(3)}`,
    source: minimumHardness.source,
  };
}

function grooveBurr(motor: Motor, { part, height }: Of<'groove burr'>): PartCheck | undefined {
  const depth = motor.closures?.[endOf(part)]?.retainingRing?.grooveDepth.value;
  return (
    depth &&
    grown(
      { part, check: 'lip of the ring groove', source: grooveBurrLimit.source },
      height.value.si,
      grooveBurrLimit.si({ grooveDepth: depth.si }),
      `of burr on a groove ${depth} deep`,
    )
  );
}
