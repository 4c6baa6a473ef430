import type { Motor } from '../document';
import { boreOf } from '../document/case-size';
import { placedValues, withValues } from '../varied-motor';
import { boltLigaments } from './bolt-ligaments';
import { type EndLayout, endLayout, type StandardSizes, standardSizes } from './end-layout';
import { type JointDistances, jointDistances } from './joint-distances';
import type { Ligament } from './ligament';
import { sealLigaments } from './seal-ligaments';
import { threadLigaments } from './thread-ligaments';
import { travelLigaments } from './travel-ligaments';

type End = 'head' | 'aft';

/** The layout of an end with positions as distances from the end of the case. */
export function endInDepth(motor: Motor, end: End, standard?: StandardSizes): EndLayout | undefined {
  const { closures, nozzle, case: tube } = motor;
  const closure = closures?.[end];
  return (
    closure &&
    endLayout({
      end: 'head',
      closure,
      bore: boreOf(tube).value.si,
      caseLength: 0,
      insert: end === 'aft' ? nozzle.insert : undefined,
      standard,
    })
  );
}

/** Every ligament of an end at nominal dimensions; undefined where it has no layout. */
export function endLigaments(
  motor: Motor,
  end: End,
  standard?: StandardSizes,
): readonly Ligament[] | undefined {
  const layout = endInDepth(motor, end, standard);
  const closure = motor.closures?.[end];
  if (layout === undefined || closure === undefined) return undefined;
  const { case: tube } = motor;
  const bore = boreOf(tube).value.si;
  const [atJoint, atClosure] = [`${end}-joint`, `${end}-closure`] as const;
  return [
    ...boltLigaments(layout, atJoint, bore),
    ...threadLigaments(layout, atJoint, atClosure),
    ...sealLigaments(layout, atClosure, tube.outsideDiameter.value.si),
    ...travelLigaments(layout, closure, atClosure),
  ];
}

/** The same with each value at its minimum over the tolerances of the end: what it loses to each is added up. */
export function worstLigaments(motor: Motor, end: End): readonly Ligament[] | undefined {
  const standard = sizesAt(motor, end);
  const nominal = endLigaments(motor, end, standard);
  if (nominal === undefined) return undefined;
  const slack = (of: readonly Ligament[]): readonly number[] => of.map(({ value, least }) => value - least);
  const worst = atWorst(slack(nominal), motor, end, (varied) =>
    slack(endLigaments(varied, end, standard) ?? nominal),
  );
  // What the requirement itself gains by tolerance is taken from the value.
  return nominal.map((one, i) => ({ ...one, value: worst[i] + one.least }));
}

/** The distances of a bolted joint at the limits of their tolerances that weaken it; undefined without a layout or bolts. */
export function worstJointDistances(motor: Motor, end: End): JointDistances | undefined {
  const standard = sizesAt(motor, end);
  const at = (varied: Motor): JointDistances | undefined => {
    const layout = endInDepth(varied, end, standard);
    return layout && jointDistances(layout, boreOf(varied.case).value.si);
  };
  const nominal = at(motor);
  if (nominal === undefined) return undefined;
  const numbers = (one: JointDistances = nominal): readonly number[] => [
    one.sealToHoles ?? 0,
    one.closureEdgeDistance,
    one.closureThickness ?? 0,
    -one.gap,
  ];
  const [seal, edge, thickness, gap] = atWorst(numbers(), motor, end, (varied) => numbers(at(varied)));
  return {
    sealToHoles: nominal.sealToHoles === undefined ? undefined : Math.max(0, seal),
    closureEdgeDistance: edge,
    closureThickness: nominal.closureThickness === undefined ? undefined : thickness,
    gap: Math.max(0, -gap),
  };
}

const sizesAt = ({ closures }: Motor, end: End): StandardSizes | undefined => {
  const closure = closures?.[end];
  return closure && standardSizes(closure);
};

/** Numbers of an end with what each loses to each tolerance taken off. Exact where they are sums of dimensions. */
function atWorst(
  nominal: readonly number[],
  motor: Motor,
  end: End,
  evaluate: (varied: Motor) => readonly number[],
): readonly number[] {
  const worst = [...nominal];
  for (const { path, value, plusMinus } of placedValues(motor, ['case', 'closures', 'nozzle'])) {
    if (plusMinus === 0 || !isOfEnd(path, end)) continue;
    const [low, high] = [-1, 1].map((side) =>
      evaluate(withValues(motor, [{ path, si: value.si + side * plusMinus }])),
    );
    nominal.forEach((one, i) => {
      worst[i] += Math.min(0, low[i] - one, high[i] - one);
    });
  }
  return worst;
}

const isOfEnd = ([part, field]: readonly (string | number)[], end: End): boolean =>
  part === 'case' || (part === 'closures' ? field === end : end === 'aft' && field === 'insert');
