import type { Quantity, Values } from '../../units';
import { checkedStep, type Step } from '../failure-mode/calculation';
import type { FailureModeId } from '../failure-mode/mode-name';
import { clampedDeflection, plugShearStress, supportedDeflection } from '../plate-formulas';
import { stretchedPlateDeflection } from '../plate-large-deflection';
import { type EdgeSupport, plateStress } from '../plate-stress';
import type { closureShape } from './closure-shape';
import {
  ellipsoidalFactor,
  ellipsoidalHeadStress,
  torisphericalFactor,
  torisphericalHeadStress,
} from './dished-head';
import {
  clampedRingStress,
  supportedHubHoleStress,
  supportedHubStress,
  supportedRingStress,
} from './stepped-plate';

type Length = Quantity<'length'>;
type Shape = Values<{ readonly shape: typeof closureShape }>['shape'];

/** A closure under pressure, at its worst-case sizes. */
export interface PressedClosure {
  readonly pressure: Quantity<'gauge pressure'>;
  readonly difference: Quantity<'pressure difference'>;
  /** Of the area that the pressure pushes on. */
  readonly diameter: Length;
  readonly thickness: Length;
  readonly edgeSupport: EdgeSupport;
  readonly openingRadius?: Length;
  readonly elasticModulus?: Quantity<'stress'>;
  readonly poissonRatio: number;
}

/** One stress of a closure: the mode by yield and by ultimate strength. */
export interface ClosureStress {
  readonly stress: Step;
  readonly inShear: boolean;
  readonly yieldMode: FailureModeId;
  readonly ultimateMode: FailureModeId;
}

/** The stresses of a closure, and what is not evaluated of it. */
export interface ClosureStresses {
  readonly stresses: readonly ClosureStress[];
  readonly unjudged: readonly string[];
  readonly cautions: readonly string[];
}

const bending = (stress: Step): ClosureStress => ({
  stress,
  inShear: false,
  yieldMode: 'plate-bending-yield',
  ultimateMode: 'plate-bending',
});

const shear = (stress: Step): ClosureStress => ({
  stress,
  inShear: true,
  yieldMode: 'plate-shear-yield',
  ultimateMode: 'plate-shear',
});

const plate = ({ difference, diameter, thickness, poissonRatio }: PressedClosure) => ({
  pressure: difference,
  radius: diameter.per(2),
  thickness,
  poissonRatio,
});

const supportShear = ({ difference, diameter }: PressedClosure, thickness: Length): ClosureStress =>
  shear(checkedStep(plugShearStress, { pressure: difference, diameter, thickness }));

/** A flat plate of one thickness. */
export function flatClosureStresses(closure: PressedClosure): ClosureStresses {
  const { edgeSupport, elasticModulus, openingRadius: holeRadius, thickness } = closure;
  const { stress, cautions } = plateStress(edgeSupport, {
    ...plate(closure),
    ...(elasticModulus && { elasticModulus }),
    ...(holeRadius && { holeRadius }),
  });
  return {
    stresses: [bending(stress), supportShear(closure, thickness)],
    unjudged: [],
    cautions: [...cautions, ...deflectionCautions(closure)],
  };
}

/** A thin ring around a thick hub. */
export function steppedClosureStresses(
  closure: PressedClosure,
  { hubDiameter, ringThickness }: { readonly hubDiameter: Length; readonly ringThickness: Length },
): ClosureStresses {
  const { edgeSupport, openingRadius: holeRadius, thickness, poissonRatio } = closure;
  const { thickness: _, poissonRatio: nu, ...loaded } = plate(closure);
  const step = { ...loaded, hubRadius: hubDiameter.per(2) };
  const ring =
    edgeSupport === 'clamped'
      ? checkedStep(clampedRingStress, { ...step, ringThickness })
      : checkedStep(supportedRingStress, { ...step, ringThickness, poissonRatio: nu });
  // A supported edge gives the hub more than a clamped one.
  const hub = { ...step, hubThickness: thickness, poissonRatio };
  return {
    stresses: [
      { ...bending(ring), yieldMode: 'plate-ring-bending-yield', ultimateMode: 'plate-ring-bending' },
      bending(
        holeRadius === undefined
          ? checkedStep(supportedHubStress, hub)
          : checkedStep(supportedHubHoleStress, { ...hub, holeRadius }),
      ),
      supportShear(closure, ringThickness),
    ],
    unjudged: [],
    cautions: [
      'The step is evaluated without its stress concentration, which limits the number of uses and not the static strength.',
    ],
  };
}

const headStress = (stress: Step): ClosureStress => ({
  stress,
  inShear: false,
  yieldMode: 'head-stress-yield',
  ultimateMode: 'head-stress',
});
const headCautions = [
  'The stress of a dished head is that of the pressure vessel code, with the pressure on the concave side. By finite elements the elastic peak on a tube of the same wall is 1.5 times as high for a hemisphere or a 2:1 ellipsoid and 1.8 times for a knuckle of 10 %: this place yields first. Inspect it after the proof test.',
];

/** A head of double curvature, its pressure on the concave side. */
export function dishedClosureStresses(
  closure: PressedClosure,
  shape: Extract<Shape, { readonly form: 'dished' | 'ellipsoidal' }>,
): ClosureStresses {
  const { pressure, diameter, thickness, openingRadius } = closure;
  const opening =
    openingRadius === undefined
      ? []
      : ['The opening of a dished head is not evaluated. It weakens the head where it is not reinforced.'];
  if (shape.form === 'ellipsoidal') {
    const stressFactor = checkedStep(ellipsoidalFactor, { insideDiameter: diameter, depth: shape.depth });
    const head = { pressure, insideDiameter: diameter, thickness, stressFactor: stressFactor.value };
    const stress = checkedStep(ellipsoidalHeadStress, head);
    return {
      stresses: [headStress({ ...stress, given: { ...stress.given, stressFactor } })],
      unjudged: [
        ...opening,
        ...thinHead(thickness.si, 0.9 * diameter.si, diameter.si / shape.depth.si > 2.001),
      ],
      cautions: [
        ...headCautions,
        ...ellipsoidalFactor.cautions({ insideDiameter: diameter, depth: shape.depth }),
      ],
    };
  }
  const { crownRadius, knuckleRadius } = shape;
  if (knuckleRadius === undefined)
    return {
      stresses: [
        headStress(
          checkedStep(torisphericalHeadStress, { pressure, crownRadius, thickness, stressFactor: 1 }),
        ),
      ],
      unjudged: opening,
      cautions: headCautions,
    };
  const stressFactor = checkedStep(torisphericalFactor, { crownRadius, knuckleRadius });
  const stress = checkedStep(torisphericalHeadStress, {
    pressure,
    crownRadius,
    thickness,
    stressFactor: stressFactor.value,
  });
  return {
    stresses: [headStress({ ...stress, given: { ...stress.given, stressFactor } })],
    unjudged: [...opening, ...thinHead(thickness.si, crownRadius.si, true)],
    cautions: [...headCautions, ...torisphericalFactor.cautions({ crownRadius, knuckleRadius })],
  };
}

/** The hoop compression of a thin knuckle can buckle it, which no formula here covers. */
const thinHead = (thickness: number, crown: number, hasKnuckle: boolean): readonly string[] =>
  hasKnuckle && thickness / crown < 0.002
    ? [
        `The knuckle of the head is thin (t/L = ${(thickness / crown).toFixed(4)}, required ≥ 0.002); its buckling is not evaluated.`,
      ]
    : [];

/** Plate theory assumes that the deflection is small against the thickness. */
function deflectionCautions(closure: PressedClosure): readonly string[] {
  const { elasticModulus, edgeSupport, thickness } = closure;
  if (elasticModulus === undefined) return [];
  const clamped = edgeSupport === 'clamped';
  const linear = (clamped ? clampedDeflection : supportedDeflection)({ ...plate(closure), elasticModulus });
  const ratio = linear.si / thickness.si;
  if (ratio <= 0.5) return [];
  const stretched = clamped ? stretchedPlateDeflection.si({ linearDeflection: ratio }) : undefined;
  return [
    `The deflection of the plate by linear theory is ${ratio.toFixed(2)} thicknesses (allowed ≤ 0.5)${
      stretched === undefined ? '' : `; with stretching of a fixed rim it is ${stretched.toFixed(2)}`
    }. The plate stretches, and its stress is not that of plate theory. Use a thicker closure.`,
  ];
}
