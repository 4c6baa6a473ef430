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
import { retainingRing } from './retaining-ring-groove';
import { retainingRingModes } from './retaining-ring-modes';

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
    checks: [
      ({ ring, tube: { wall } }) =>
        ring.grooveDepth.si < wall.si
          ? undefined
          : {
              path: 'ring.grooveDepth',
              given: ring.grooveDepth,
              expected: `less than the wall of the case (${wall})`,
            },
    ],
  },
);

/** A closure retained by an internal retaining ring in a groove of the case, as a review takes it. */
export type RetainingRingJoint = Arguments<typeof joint.fields>;

/**
 * Failure modes of a retaining ring and its groove: shear of the ring, bearing and yield of the groove wall, shear of the
 * land, tension, plastic collapse and hoop stress of the wall under the groove.
 *
 * @throws MeopError `no-allowable` where the material has no minimum strength
 * @example reviewRetainingRing({ pressure: '5 MPa', tube: { outsideDiameter: '70 mm', wall: '5 mm', material: '6061-T6 drawn tube' }, ring: { grooveDepth: '1.5 mm', edgeMargin: '6 mm', thickness: '2 mm', shearStrength: '800 MPa' } }).endForce.in('kN') // => 14.13716694
 */
export const reviewRetainingRing = /* @__PURE__ */ procedure({
  name: 'reviewRetainingRing',
  title: 'Review of a closure retained by a retaining ring',
  source: 'the formula of each mode, with its source',
  inputs: joint.fields,
  checks: joint.checks,
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

function reviewOf(
  {
    pressure,
    tube: { outsideDiameter, wall, material, wallTemperature },
    ring,
    ...given
  }: Values<typeof joint.fields>,
  part: PartId,
): RetainingRingReview {
  const boreDiameter = outsideDiameter.si - 2 * wall.si;
  const sealDiameter = given.sealDiameter?.si ?? boreDiameter;
  const [grooveDepth, edgeMargin] = [ring.grooveDepth.si, ring.edgeMargin.si];
  const { us } = unitFor('gauge pressure', pressure.unit);
  const { modes, load } = retainingRingModes(
    {
      boreDiameter,
      sealDiameter,
      grooveDepth,
      edgeMargin,
      wall: wall.si,
      ringThickness: ring.thickness.si,
      ringStrength: ring.shearStrength.si,
    },
    {
      part,
      material,
      temperature: wallTemperature,
      exposure: given.exposure,
      factors: yieldAndUltimate(given.factors),
      pressure: pressure.si,
      unit: unitFor('stress', us ? 'psi' : 'MPa'),
    },
  );
  return retainingRingReview({
    endForce: fromSiValue(load.value, 'force', unitFor('force', us ? 'lbf' : 'N')),
    margins: modes.map((mode) => failureMargin(mode)),
    cautions: [
      ...(given.factors?.cautions ?? []),
      ...(sealDiameter < boreDiameter
        ? [
            'The pressure is assumed to act on less than the bore. An O-ring in a groove of the closure seals on the bore.',
          ]
        : []),
      ...(edgeMargin < 3 * grooveDepth
        ? ['The land is shorter than three groove depths (engineering practice, no published source).']
        : []),
      'The full hoop stress is assumed at the groove, which is conservative away from the seal.',
      'A corner radius or chamfer on the closure tips the ring and reduces its strength. Consult its manufacturer.',
    ],
  });
}
