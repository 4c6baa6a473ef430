import {
  type Arguments,
  fromSiValue,
  inputs,
  length,
  optional,
  procedure,
  unitFor,
  type Values,
} from '../../units';
import { reviewFactors, yieldAndUltimate } from '../factors-of-safety';
import { failureMargin } from '../failure-mode/failure-margin';
import type { PartId } from '../failure-mode/part-name';
import { exposure } from '../materials/part-temperature';
import { meop } from '../operating-pressure';
import { tube } from '../shell/tube';
import { type RetainingRingReview, retainingRingReview } from './closure-review';
import { retainingRingCautions } from './retaining-ring-cautions';
import { retainingRingChecks } from './retaining-ring-checks';
import { retainingRing } from './retaining-ring-groove';
import { retainingRingModes } from './retaining-ring-modes';
import { ringSi } from './retaining-ring-si';

/** A closure retained by an internal retaining ring in a groove of the case. */
const joint = inputs(
  {
    pressure: meop,
    tube,
    ring: retainingRing,
    sealDiameter: optional(
      length('D_s', 'diameter of the seal, on which the pressure acts; the bore where omitted', {
        example: '60 mm',
      }),
    ),
    exposure,
    factors: reviewFactors,
  },
  {
    meaning: 'a closure retained by an internal retaining ring',
  },
);

/** A closure retained by an internal retaining ring in a groove of the case, as a review takes it. */
export type RetainingRingJoint = Arguments<typeof joint.fields>;

/** The same, read. */
export type RetainingRingValues = Values<typeof joint.fields>;

/**
 * Failure modes of a retaining ring and its groove: shear and dishing of the ring, bearing of the groove as far as the bore
 * opened by pressure and heat leaves it engaged, shear and bending of the land, tension, plastic collapse and hoop stress of the
 * wall under the groove. Dishing requires the capacity that the manufacturer states, and the edge of the closure.
 *
 * @throws MeopError `no-allowable` where the material has no minimum strength, `missing-field` for a size that neither the ring
 * nor its name supplies, `contradiction` where a size is not that of the named ring
 * @example reviewRetainingRing({ pressure: '5 MPa', tube: { outsideDiameter: '70 mm', wall: '5 mm', material: '6061-T6 drawn tube' }, ring: { grooveDepth: '1.5 mm', edgeMargin: '6 mm', thickness: '2 mm', shearStrength: '800 MPa' } }).endForce.in('kN') // => 14.13716694
 */
export const reviewRetainingRing = /* @__PURE__ */ procedure({
  name: 'reviewRetainingRing',
  title: 'Review of a closure retained by a retaining ring',
  source: 'the formula of each mode, with its source',
  inputs: joint.fields,
  gives: 'the margin of safety of every failure mode of ring and groove',
  example: {
    pressure: '5 MPa',
    tube: { outsideDiameter: '70 mm', wall: '5 mm', material: '6061-T6 drawn tube' },
    ring: { grooveDepth: '1.5 mm', edgeMargin: '6 mm', thickness: '2 mm', shearStrength: '800 MPa' },
  },
  run: (given): RetainingRingReview => reviewOf(given, 'joint'),
});

/** {@link reviewRetainingRing} under the name of a part of a motor. */
export const reviewRetainingRingAs = (given: RetainingRingJoint, part: PartId): RetainingRingReview =>
  reviewOf(joint.read(given, { procedure: 'reviewRetainingRing', path: '' }), part);

function reviewOf(given: RetainingRingValues, part: PartId): RetainingRingReview {
  const { pressure, tube, exposure: time, factors } = given;
  const ring = ringSi(given);
  const { us } = unitFor('gauge pressure', pressure.unit);
  const found = retainingRingModes(ring, {
    part,
    material: tube.material,
    temperature: tube.wallTemperature,
    exposure: time,
    factors: yieldAndUltimate(factors),
    pressure: pressure.si,
    unit: unitFor('stress', us ? 'psi' : 'MPa'),
  });
  return retainingRingReview({
    endForce: fromSiValue(found.load.value, 'force', unitFor('force', us ? 'lbf' : 'N')),
    margins: found.modes.map((mode) => failureMargin(mode)),
    checks: retainingRingChecks(ring, found, us),
    notEvaluated: dishingNotEvaluated(given.ring),
    cautions: [...(factors?.cautions ?? []), ...retainingRingCautions(given, ring)],
  });
}

/** Why dishing is not evaluated; empty where it is. */
function dishingNotEvaluated({ dishingCapacity, chamfer }: RetainingRingValues['ring']): readonly string[] {
  const missing = [
    ...(dishingCapacity === undefined ? ['dishingCapacity'] : []),
    ...(chamfer === undefined ? ['chamfer'] : []),
  ];
  return missing.length === 0
    ? []
    : [
        `${missing.join(' and ')} not specified; dishing of the ring is not evaluated. Obtain the capacity of the ring from its manufacturer; the tables of ring sizes do not contain it.`,
      ];
}
