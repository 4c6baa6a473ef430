import { fromSiValue, type NamedKind, type QuantityInput, readInput, unitFor } from '../../units';
import { type FieldsOf, requireFields } from '../../units/known-fields';
import { readPositive, refusal } from '../../units/refusal';
import { failureMargin } from '../failure-mode/failure-margin';
import type { PartId } from '../failure-mode/part-name';
import type { JointFactors } from '../joint';
import { readFactors } from '../joint/joint-factors';
import type { Material, MaterialName } from '../materials';
import { materialOf } from '../materials/library';
import { type RetainingRingReview, retainingRingReview } from './closure-review';
import { retainingRingModes } from './retaining-ring-modes';

/** A closure held by an internal retaining ring in a groove of the case. */
export interface RetainingRingJoint {
  readonly pressure: QuantityInput<'gauge pressure'>;
  readonly boreDiameter: QuantityInput<'length'>;
  /** The bore where left out. */
  readonly sealDiameter?: QuantityInput<'length'>;
  /** Radially. */
  readonly grooveDepth: QuantityInput<'length'>;
  /** From the groove to the end of the case. */
  readonly edgeMargin: QuantityInput<'length'>;
  readonly caseWall: QuantityInput<'length'>;
  readonly caseMaterial: Material | MaterialName;
  /** Axially. */
  readonly ringThickness: QuantityInput<'length'>;
  /** Shear strength of the ring; from its maker. */
  readonly ringShearStrength: QuantityInput<'stress'>;
  readonly caseTemperature?: QuantityInput<'temperature'>;
  readonly exposure?: QuantityInput<'time'>;
  /** 1.5 and 2.0 where left out (common practice). */
  readonly factors?: JointFactors;
}

const name = 'reviewRetainingRing';

const reviewRetainingRingFields: FieldsOf<RetainingRingJoint> = {
  pressure: 'required',
  boreDiameter: 'required',
  sealDiameter: 'optional',
  grooveDepth: 'required',
  edgeMargin: 'required',
  caseWall: 'required',
  caseMaterial: 'required',
  ringThickness: 'required',
  ringShearStrength: 'required',
  caseTemperature: 'optional',
  exposure: 'optional',
  factors: 'optional',
};

/**
 * Whether a retaining ring and its groove hold a closure: ring shear, bearing and yield of the groove wall, shear of the
 * land, tension, folding and hoop of the wall that the groove leaves.
 *
 * @throws MeopError `out-of-domain`, `unknown-name`, `no-allowable`
 * @example reviewRetainingRing({ pressure: '5 MPa', boreDiameter: '60 mm', grooveDepth: '1.5 mm', edgeMargin: '6 mm', caseWall: '5 mm', caseMaterial: '6061-T6 drawn tube', ringThickness: '2 mm', ringShearStrength: '800 MPa' }).endForce.in('kN') // => 14.13716694
 */
export function reviewRetainingRing(joint: RetainingRingJoint): RetainingRingReview {
  return reviewRetainingRingAs(joint, 'joint');
}

/** {@link reviewRetainingRing} under the name of a part of a motor. */
export function reviewRetainingRingAs(joint: RetainingRingJoint, part: PartId): RetainingRingReview {
  requireFields('reviewRetainingRing', joint, reviewRetainingRingFields);
  const read = (kind: NamedKind, field: keyof RetainingRingJoint): number =>
    readPositive(kind, field, joint[field], name).si;
  const pressure = read('gauge pressure', 'pressure');
  const boreDiameter = read('length', 'boreDiameter');
  const sealDiameter = joint.sealDiameter === undefined ? boreDiameter : read('length', 'sealDiameter');
  const grooveDepth = read('length', 'grooveDepth');
  const edgeMargin = read('length', 'edgeMargin');
  const wall = read('length', 'caseWall');
  const ringThickness = read('length', 'ringThickness');
  const ringStrength = read('stress', 'ringShearStrength');
  if (grooveDepth >= wall)
    throw refusal(name, 'grooveDepth', joint.grooveDepth, 'less than the wall of the case');
  const factors = readFactors(name, joint.factors);

  const { us } = readInput('gauge pressure', 'pressure', joint.pressure, name).unit;
  const { modes, load } = retainingRingModes(
    { boreDiameter, sealDiameter, grooveDepth, edgeMargin, wall, ringThickness, ringStrength },
    {
      part,
      material: materialOf(joint.caseMaterial),
      temperature: joint.caseTemperature,
      exposure: joint.exposure,
      factors,
      pressure,
      unit: unitFor('stress', us ? 'psi' : 'MPa'),
    },
  );
  const cautions = [
    ...(joint.factors?.cautions ?? []),
    ...(sealDiameter < boreDiameter
      ? [
          'the pressure is taken to act on less than the bore: an O-ring in a groove of the closure seals on the bore',
        ]
      : []),
    ...(edgeMargin < 3 * grooveDepth
      ? ['the land is shorter than three groove depths (engineering practice, no published source)']
      : []),
    'the full hoop stress is taken at the groove: true of a groove beside the seal, cautious further away',
    'a corner radius or chamfer on the closure tips the ring and lowers what it carries: ask its maker',
  ];
  return retainingRingReview({
    endForce: fromSiValue(load.value, 'force', unitFor('force', us ? 'lbf' : 'N')),
    margins: modes.map((mode) => failureMargin(mode)),
    cautions,
  });
}
