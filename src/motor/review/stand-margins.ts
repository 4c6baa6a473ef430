import {
  anchorUplift,
  eulerBucklingLoad,
  type RopeRestraint,
  ropeRestraint,
  strutForce,
} from '../../structures';
import { checkedStep, given } from '../../structures/failure-mode/calculation';
import { failureMargin } from '../../structures/failure-mode/failure-margin';
import type { FailureMode } from '../../structures/failure-mode/failure-mode';
import { type Quantity, unitOf } from '../../units';
import type { Motor } from '../document';
import { nominal } from '../document/nominal';
import { linesOf } from '../part-lines';
import { type PartConditions, type PartReview, partReview } from './part-review';

/** Evaluation of stand and restraint for a thrust. */
export interface StandReview extends PartReview {
  readonly restraint: RopeRestraint | undefined;
}

const columnFactor = 3; // engineering practice, no published source: slender members that are bent or eccentrically pinned buckle below Euler's load

/** Evaluates the members, anchors and restraint of the stand at the maximum thrust. */
export const standMargins = (conditions: PartConditions): StandReview =>
  conditions.attempt([['stand', 'restraint'], ['stand']], () => standReview(conditions)) ?? {
    ...partReview({}),
    restraint: undefined,
  };

function standReview({ motor, thrust }: PartConditions): StandReview {
  const { stand } = motor;
  if (stand === undefined)
    return {
      ...partReview({
        cautions: [{ text: 'Stand not specified; stand and restraint are not evaluated.' }],
      }),
      restraint: undefined,
    };
  const restraint = restraintOf(motor, thrust);
  const modes = [...memberModes(stand, thrust), ...tippingModes(stand, thrust)];
  return {
    ...partReview({
      margins: [...modes.map((mode) => failureMargin(mode)), ...(restraint?.margins ?? [])],
      cautions:
        restraint === undefined
          ? [{ text: 'Restraint not specified; a motor that breaks loose is not restrained.' }]
          : linesOf('restraint', restraint.cautions),
    }),
    restraint,
  };
}

type Stand = NonNullable<Motor['stand']>;

function memberModes({ members }: Stand, thrust: Quantity<'force'>): readonly FailureMode[] {
  if (members === undefined) return [];
  const { elasticModulus, secondMoment, length, endFactor, count, angle } = members;
  return [
    {
      id: 'member-buckling',
      part: 'stand',
      limit: 'buckling',
      calculation: checkedStep(strutForce, { load: thrust, count, ...(angle && { angle: angle.value }) }),
      allowable: checkedStep(eulerBucklingLoad, {
        elasticModulus: elasticModulus.value,
        secondMoment: secondMoment.value,
        length: length.value,
        ...(endFactor && { endFactor: endFactor.value.si }),
      }),
      factor: columnFactor,
      unit: unitOf(thrust.unit),
      sources: [`factor ${columnFactor}: engineering practice, no published source`],
      cautions: ['Thrust is treated as a static load. Sudden application can double the load on the stand.'],
    },
  ];
}

function tippingModes({ anchors, axis }: Stand, thrust: Quantity<'force'>): readonly FailureMode[] {
  if (anchors === undefined || axis !== 'horizontal') return [];
  const pull = checkedStep(anchorUplift, {
    thrust,
    height: anchors.height.value,
    anchorSpacing: anchors.anchorSpacing.value,
    weight: anchors.weight.value,
    count: anchors.count,
  });
  if (pull.value <= 0) return [];
  return [
    {
      id: 'stand-anchor-pull',
      part: 'stand',
      limit: 'rated load',
      calculation: pull,
      allowable: given('force', anchors.allowable.value.si),
      factor: 1,
      unit: unitOf(thrust.unit),
      sources: ['allowable: the document'],
      cautions: [],
    },
  ];
}

function restraintOf({ stand }: Motor, thrust: Quantity<'force'>): RopeRestraint | undefined {
  if (stand === undefined) return undefined;
  const { movingMass: mass, restraint } = nominal(stand);
  return restraint && ropeRestraint({ thrust, ...restraint, ...(mass && { mass }) });
}
