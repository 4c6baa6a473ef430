import { allowable, clampedPlate, margin, simplySupportedPlate } from '../../structures';
import { fromSiValue, MeopError, type Quantity, unitOf } from '../../units';
import type { Motor } from '../document';
import type { MotorSettings } from '../settings';
import { type Closure, closureHeat } from './closure-heat';
import { reviewMargin } from './review-margin';
import type { ReviewMargin } from './review-result';
import { pressureAreaDiameter } from './worst-sizes';

/** The plate of a closure at MEOP. */
export function plateMargins(
  motor: Motor,
  end: 'head' | 'aft',
  closure: Closure,
  meop: Quantity<'gauge pressure'>,
  { factors }: MotorSettings,
): { readonly margins: readonly ReviewMargin[]; readonly cautions: readonly string[] } {
  const { material, edgeSupport, opening } = closure;
  const temperature = closureHeat(motor, closure);
  const { poissonRatio, elasticModulus } = material;
  if (poissonRatio === undefined)
    return {
      margins: [],
      cautions: [`${end} closure: ${material.name} has no poissonRatio: its plate is not judged`],
    };
  const plate = (edgeSupport === 'clamped' ? clampedPlate : simplySupportedPlate)({
    pressure: fromSiValue<'pressure difference'>(meop.si, 'pressure difference', unitOf(meop.unit)),
    radius: pressureAreaDiameter(motor, closure).per(2),
    thickness: closure.thickness.value,
    poissonRatio: poissonRatio.value,
    ...(elasticModulus && { elasticModulus: elasticModulus.value }),
    ...(opening && { holeRadius: opening.value.per(2) }),
  });
  const source = `flat circular plate, ${edgeSupport}, ${plate.at === 'hole' ? 'at its hole' : `at its ${plate.at}`}: Roark's Formulas for Stress and Strain`;
  const mode = (limit: 'yield' | 'ultimate'): ReviewMargin[] => {
    try {
      const strength = allowable({ material, property: limit, ...(temperature && { temperature }) });
      return [
        reviewMargin(
          margin({
            mode: `bending of the plate${limit === 'yield' ? ', yield' : ''}`,
            applied: plate.maxStress,
            allowable: strength.value,
            factor: limit === 'yield' ? factors.yieldFactor : factors.ultimateFactor,
            ...(temperature && { temperature }),
            source: `${source}; strength: ${strength.source}`,
            cautions: [...strength.cautions, ...plate.cautions],
          }),
          {
            part: `${end} closure`,
            formulas: [edgeSupport === 'clamped' ? 'clampedPlate' : 'simplySupportedPlate'],
            steps: () => [plate],
            meop,
          },
        ),
      ];
    } catch (error) {
      if (error instanceof MeopError && error.code === 'no-allowable') return [];
      throw error;
    }
  };
  const margins = [...mode('yield'), ...mode('ultimate')];
  return {
    margins,
    cautions: [
      ...plate.cautions.map((text) => `${end} closure: ${text}`),
      ...(margins.length === 0
        ? [`${end} closure: ${material.name} has no minimum strength: its plate is not judged`]
        : []),
    ],
  };
}
