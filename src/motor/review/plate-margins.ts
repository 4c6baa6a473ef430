import type { FailureMargin, Material, PartId } from '../../structures';
import {
  type ClosureStresses,
  dishedClosureStresses,
  flatClosureStresses,
  type PressedClosure,
  steppedClosureStresses,
} from '../../structures/closures/closure-stresses';
import { failureMargin } from '../../structures/failure-mode/failure-margin';
import { materialMode } from '../../structures/material-mode';
import { fromSiValue, MeopError, type Quantity, unitFor, unitOf } from '../../units';
import type { Motor } from '../document';
import type { ClosureAtMeop } from './closure-at-meop';
import { type Closure, closureHeat } from './closure-heat';
import { plateDiameter, pressureAreaDiameter } from './worst-sizes';

/** Evaluates the plate of a closure, or its dished head, at MEOP. */
export function plateMargins(input: ClosureAtMeop<Closure>): {
  readonly margins: readonly FailureMargin[];
  readonly unjudged: readonly string[];
  readonly cautions: readonly string[];
} {
  const { motor, part, closure, meop, settings } = input;
  const { material } = closure;
  const found = stressesOf(input);
  if (found === undefined)
    return {
      margins: [],
      unjudged: [`${material.name} has no poissonRatio; the plate is not evaluated.`],
      cautions: [],
    };
  const { stresses, unjudged, cautions } = found;
  const stressed = {
    part,
    material,
    temperature: closureHeat(motor, closure),
    factors: { yield: settings.factors.yieldFactor, ultimate: settings.factors.ultimateFactor },
    pressure: meop.si,
    unit: unitFor('stress', 'MPa'),
  };
  const margins = stresses.flatMap(({ stress, inShear, yieldMode, ultimateMode }) =>
    (
      [
        [yieldMode, inShear ? 'shear yield' : 'yield'],
        [ultimateMode, inShear ? 'shear ultimate' : 'ultimate'],
      ] as const
    ).flatMap(([id, property]) => {
      try {
        return [failureMargin(materialMode(stressed, { id, calculation: stress, property, cautions }))];
      } catch (error) {
        if (error instanceof MeopError && error.code === 'no-allowable') return [];
        throw error;
      }
    }),
  );
  return {
    margins,
    unjudged: [...unjudged, ...strengthsMissing(material, margins)],
    cautions,
  };
}

/** A plate without a minimum strength of one kind is not evaluated against it. */
function strengthsMissing({ name }: Material, margins: readonly FailureMargin[]): readonly string[] {
  if (margins.length === 0) return [`${name} has no minimum strength; the plate is not evaluated.`];
  const limits = new Set(margins.map(({ id }) => (id.endsWith('-yield') ? 'yield' : 'ultimate')));
  return (['yield', 'ultimate'] as const)
    .filter((limit) => !limits.has(limit))
    .map((limit) => `${name} has no minimum ${limit} strength; the plate is not evaluated against it.`);
}

/** The stresses by the shape of the closure; `undefined` where a plate has no Poisson's ratio. */
function stressesOf({ motor, part, closure, meop }: ClosureAtMeop<Closure>): ClosureStresses | undefined {
  const { shape, edgeSupport, thickness, material } = closure;
  const hole = centralHole(motor, part, closure);
  const isHead = shape?.form === 'dished' || shape?.form === 'ellipsoidal';
  const pressed = (poissonRatio: number): PressedClosure => ({
    pressure: meop,
    difference: fromSiValue<'pressure difference'>(meop.si, 'pressure difference', unitOf(meop.unit)),
    diameter: (isHead ? pressureAreaDiameter : plateDiameter)(motor, closure),
    thickness: thickness.value,
    edgeSupport,
    poissonRatio,
    ...elasticity(material),
    ...(hole && { openingRadius: hole.per(2) }),
  });
  if (shape?.form === 'dished')
    return dishedClosureStresses(pressed(0), {
      form: 'dished',
      crownRadius: shape.crownRadius.value,
      knuckleRadius: shape.knuckleRadius?.value,
    });
  if (shape?.form === 'ellipsoidal')
    return dishedClosureStresses(pressed(0), { form: 'ellipsoidal', depth: shape.depth.value });
  if (material.poissonRatio === undefined) return undefined;
  const plate = pressed(material.poissonRatio.value);
  return shape?.form === 'stepped'
    ? steppedClosureStresses(plate, {
        hubDiameter: shape.hubDiameter.value,
        ringThickness: shape.ringThickness.value,
      })
    : flatClosureStresses(plate);
}

const elasticity = ({ elasticModulus }: Material) =>
  elasticModulus === undefined ? {} : { elasticModulus: elasticModulus.value };

/** The hole in the middle of the whole thickness of a closure: its opening, or the pocket of the throat insert. */
function centralHole({ nozzle }: Motor, part: PartId, { opening }: Closure): Quantity<'length'> | undefined {
  const pocket = part === 'aft-closure' ? nozzle.insert?.seat?.pocketDiameter.value : undefined;
  return pocket !== undefined && pocket.si > (opening?.value.si ?? 0) ? pocket : opening?.value;
}
