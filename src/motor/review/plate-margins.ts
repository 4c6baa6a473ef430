import type { FailureMargin } from '../../structures';
import { failureMargin } from '../../structures/failure-mode/failure-margin';
import { materialMode } from '../../structures/material-mode';
import { plateStress } from '../../structures/plate-stress';
import { fromSiValue, MeopError, unitFor, unitOf } from '../../units';
import type { ClosureAtMeop } from './closure-at-meop';
import { type Closure, closureHeat } from './closure-heat';
import { pressureAreaDiameter } from './worst-sizes';

/** Evaluates the plate of a closure at MEOP. */
export function plateMargins({ motor, part, closure, meop, settings: { factors } }: ClosureAtMeop<Closure>): {
  readonly margins: readonly FailureMargin[];
  readonly cautions: readonly string[];
} {
  const { material, edgeSupport, opening } = closure;
  if (material.poissonRatio === undefined)
    return { margins: [], cautions: [`${material.name} has no poissonRatio. The plate is not evaluated.`] };
  const { stress, cautions } = plateStress(edgeSupport, {
    pressure: fromSiValue<'pressure difference'>(meop.si, 'pressure difference', unitOf(meop.unit)),
    radius: pressureAreaDiameter(motor, closure).per(2),
    thickness: closure.thickness.value,
    poissonRatio: material.poissonRatio.value,
    ...(material.elasticModulus && { elasticModulus: material.elasticModulus.value }),
    ...(opening && { holeRadius: opening.value.per(2) }),
  });
  const stressed = {
    part,
    material,
    temperature: closureHeat(motor, closure),
    factors: { yield: factors.yieldFactor, ultimate: factors.ultimateFactor },
    pressure: meop.si,
    unit: unitFor('stress', 'MPa'),
  };
  const margins = (
    [
      ['plate-bending-yield', 'yield'],
      ['plate-bending', 'ultimate'],
    ] as const
  ).flatMap(([id, property]) => {
    try {
      return [failureMargin(materialMode(stressed, { id, calculation: stress, property, cautions }))];
    } catch (error) {
      if (error instanceof MeopError && error.code === 'no-allowable') return [];
      throw error;
    }
  });
  return {
    margins,
    cautions: [
      ...cautions,
      ...(margins.length === 0
        ? [`${material.name} has no minimum strength. The plate is not evaluated.`]
        : []),
    ],
  };
}
