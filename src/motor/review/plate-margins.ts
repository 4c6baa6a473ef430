import type { FailureMargin, PartId } from '../../structures';
import { failureMargin } from '../../structures/failure-mode/failure-margin';
import { materialMode } from '../../structures/material-mode';
import { plateStress } from '../../structures/plate-stress';
import { fromSiValue, MeopError, type Quantity, unitFor, unitOf } from '../../units';
import type { Motor } from '../document';
import type { ClosureAtMeop } from './closure-at-meop';
import { type Closure, closureHeat } from './closure-heat';
import { plateDiameter } from './worst-sizes';

/** Evaluates the plate of a closure at MEOP. */
export function plateMargins({ motor, part, closure, meop, settings: { factors } }: ClosureAtMeop<Closure>): {
  readonly margins: readonly FailureMargin[];
  readonly unjudged: readonly string[];
  readonly cautions: readonly string[];
} {
  const { material, edgeSupport } = closure;
  const hole = centralHole(motor, part, closure);
  if (material.poissonRatio === undefined)
    return {
      margins: [],
      unjudged: [`${material.name} has no poissonRatio; the plate is not evaluated.`],
      cautions: [],
    };
  const { stress, cautions } = plateStress(edgeSupport, {
    pressure: fromSiValue<'pressure difference'>(meop.si, 'pressure difference', unitOf(meop.unit)),
    radius: plateDiameter(motor, closure).per(2),
    thickness: closure.thickness.value,
    poissonRatio: material.poissonRatio.value,
    ...(material.elasticModulus && { elasticModulus: material.elasticModulus.value }),
    ...(hole && { holeRadius: hole.per(2) }),
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
    unjudged:
      margins.length === 0 ? [`${material.name} has no minimum strength; the plate is not evaluated.`] : [],
    cautions,
  };
}

/** The hole in the middle of the whole thickness of a closure: its opening, or the pocket of the throat insert. */
function centralHole({ nozzle }: Motor, part: PartId, { opening }: Closure): Quantity<'length'> | undefined {
  const pocket = part === 'aft-closure' ? nozzle.insert?.seat?.pocketDiameter.value : undefined;
  return pocket !== undefined && pocket.si > (opening?.value.si ?? 0) ? pocket : opening?.value;
}
