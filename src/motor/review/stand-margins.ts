import {
  anchorUplift,
  eulerBucklingLoad,
  margin,
  type RopeRestraint,
  ropeRestraint,
  strutForce,
} from '../../structures';
import type { Quantity } from '../../units';
import type { Motor } from '../document';
import { reviewMargin } from './review-margin';
import type { ReviewMargin } from './review-result';

/** Stand and restraint under a thrust. */
export interface StandReview {
  readonly margins: readonly ReviewMargin[];
  readonly restraint: RopeRestraint | undefined;
  readonly cautions: readonly string[];
}

const columnFactor = 3; // engineering practice, no published source: slender members buckle below Euler's load where they are bent or pinned off centre

/** The stand's members, anchors and restraint at the greatest thrust. */
export function standMargins(motor: Motor, thrust: Quantity<'force'>): StandReview {
  const { stand } = motor;
  if (stand === undefined)
    return {
      margins: [],
      restraint: undefined,
      cautions: ['the document has no stand: stand and restraint are not judged'],
    };
  const { members, anchors } = stand;
  const margins: ReviewMargin[] = [];
  if (members !== undefined) {
    const strut = {
      load: thrust,
      count: members.count,
      ...(members.angle && { angle: members.angle.value }),
    };
    const column = {
      elasticModulus: members.elasticModulus.value,
      secondMoment: members.secondMoment.value,
      length: members.length.value,
      ...(members.endFactor && { endFactor: members.endFactor.value.si }),
    };
    margins.push(
      reviewMargin(
        margin({
          mode: 'buckling of a member',
          applied: strutForce(strut),
          allowable: eulerBucklingLoad(column),
          factor: columnFactor,
          source: `${eulerBucklingLoad.source}; factor ${columnFactor}: engineering practice, no published source`,
          cautions: [
            'the thrust is taken as steady: a start that knocks loads the stand by up to twice as much',
          ],
        }),
        {
          part: 'stand',
          formulas: ['strutForce', 'eulerBucklingLoad'],
          steps: () => [strutForce.explain(strut), eulerBucklingLoad.explain(column)],
        },
      ),
    );
  }
  if (anchors !== undefined && stand.axis === 'horizontal') {
    const tipping = {
      thrust,
      height: anchors.height.value,
      anchorSpacing: anchors.anchorSpacing.value,
      weight: anchors.weight.value,
      count: anchors.count,
    };
    const pull = anchorUplift(tipping);
    if (pull.si > 0)
      margins.push(
        reviewMargin(
          margin({
            mode: 'pull on an anchor',
            applied: pull,
            allowable: anchors.allowable.value,
            factor: 1,
            source: `${anchorUplift.source}; allowable: the document`,
          }),
          { part: 'stand', formulas: ['anchorUplift'], steps: () => [anchorUplift.explain(tipping)] },
        ),
      );
  }
  const restraint = restraintOf(motor, thrust);
  return {
    margins: [
      ...margins,
      ...(restraint?.margins ?? []).map((one) =>
        reviewMargin(one, { part: 'restraint', formulas: ['ropeRestraint'] }),
      ),
    ],
    restraint,
    cautions: [
      ...(restraint === undefined
        ? ['the document has no restraint: nothing holds a motor that breaks free']
        : []),
      ...(restraint?.cautions ?? []).map((text) => `restraint: ${text}`),
    ],
  };
}

function restraintOf(motor: Motor, thrust: Quantity<'force'>): RopeRestraint | undefined {
  const given = motor.stand?.restraint;
  if (given === undefined) return undefined;
  const { rope, anchor } = given;
  return ropeRestraint({
    thrust,
    slack: given.slack.value,
    ropeLength: given.ropeLength.value,
    rope: { diameter: rope.diameter.value, construction: rope.construction, grade: rope.grade },
    termination: given.termination,
    ...(motor.stand?.movingMass && { mass: motor.stand.movingMass.value }),
    ...(given.legs !== undefined && { legs: given.legs }),
    ...(given.legAngle && { legAngle: given.legAngle.value }),
    ...(given.designFactor && { designFactor: given.designFactor.value.si }),
    ...(given.shackle && { shackle: given.shackle.value }),
    ...(anchor && {
      anchor: {
        count: anchor.count,
        thread: anchor.thread,
        boltClass: anchor.boltClass,
        ...(anchor.pullAngle && { pullAngle: anchor.pullAngle.value }),
        ...(anchor.factor && { factor: anchor.factor.value.si }),
      },
    }),
  });
}
