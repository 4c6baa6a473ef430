import {
  fromSiValue,
  type NamedKind,
  type Quantity,
  type QuantityInput,
  readInput,
  unitFor,
} from '../../units';
import { type FieldsOf, requireFields } from '../../units/known-fields';
import { readPositive, refusal } from '../../units/refusal';
import { closureForce } from '../closure-force';
import type { JointFactors } from '../joint';
import { readFactors } from '../joint/joint-factors';
import { governing, type Margin, margin, marginTable } from '../margin';
import type { Material, MaterialName } from '../materials';
import { materialOf } from '../materials/library';
import { lameHoopStress } from '../shell/lame';
import { cutWallMargins } from './cut-wall-margins';
import { partMargin } from './part-margin';
import { grooveBearingStress, grooveLandShearStress, ringShearStress } from './retaining-ring';

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

/** A retaining ring, judged. */
export interface RetainingRingReview {
  readonly endForce: Quantity<'force'>;
  readonly margins: readonly Margin[];
  readonly governing: Margin;
  readonly passes: boolean;
  readonly cautions: readonly string[];
  toString(): string;
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

  const load = closureForce.si({ pressure, sealDiameter });
  const grooveDiameter = boreDiameter + 2 * grooveDepth;
  const [insideRadius, outsideRadius] = [grooveDiameter / 2, boreDiameter / 2 + wall];
  const displayUnit = readInput('gauge pressure', 'pressure', joint.pressure, name).unit;
  const unit = unitFor('stress', displayUnit.us ? 'psi' : 'MPa');
  const stress = (si: number): Quantity<'stress'> => fromSiValue(si, 'stress', unit);
  const { caseTemperature: temperature, exposure } = joint;
  const tube = { material: materialOf(joint.caseMaterial), temperature, exposure, factors, unit };
  const hoop = lameHoopStress.si({ pressure, insideRadius, outsideRadius, radius: insideRadius });
  const margins: readonly Margin[] = [
    margin({
      mode: 'shear of the ring',
      applied: stress(ringShearStress.si({ load, boreDiameter, ringThickness })),
      allowable: stress(ringStrength),
      factor: factors.ultimate,
      source: ringShearStress.source,
      cautions: ['the shear strength of the ring is as given by its maker'],
    }),
    partMargin(tube, {
      mode: 'bearing of the groove, yield',
      applied: grooveBearingStress.si({ load, boreDiameter, grooveDepth }),
      property: 'yield', // of a wall that may tip, not the bearing strength of a bolt hole
      source: grooveBearingStress.source,
    }),
    partMargin(tube, {
      mode: 'shear of the land',
      applied: grooveLandShearStress.si({ load, grooveDiameter, edgeMargin }),
      property: 'shear ultimate',
      source: grooveLandShearStress.source,
    }),
    // The ring bears on the middle of the groove's depth.
    ...cutWallMargins(tube, { cut: 'groove', load, hoop, insideRadius, outsideRadius, arm: wall / 2 }),
  ];
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
  const worst = governing(margins);
  const text = (): string =>
    [
      `end force ${fromSiValue(load, 'force', unitFor('force', displayUnit.us ? 'lbf' : 'N'))}; governed by ${worst.mode}`,
      marginTable(margins),
      ...cautions.map((caution) => `caution: ${caution}`),
    ].join('\n');
  return {
    endForce: fromSiValue(load, 'force', unitFor('force', displayUnit.us ? 'lbf' : 'N')),
    margins,
    governing: worst,
    passes: worst.marginOfSafety >= 0,
    cautions,
    toString: text,
    ...{ [Symbol.for('nodejs.util.inspect.custom')]: text },
  };
}
