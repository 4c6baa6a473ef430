import {
  type Arguments,
  fromSiValue,
  optional,
  printable,
  procedure,
  type Quantity,
  table,
  unitFor,
} from '../units';
import {
  clampedCentreStress,
  clampedDeflection,
  clampedEdgeStress,
  supportedCentreStress,
  supportedDeflection,
} from './plate-formulas';
import { clampedHoleEdgeStress, clampedHoleStress, supportedHoleStress } from './plate-hole-formulas';
import { plateInputs } from './plate-inputs';

/** Stresses and deflection of a flat circular closure. */
export interface PlateStress {
  /** The maximum stress. */
  readonly maxStress: Quantity<'stress'>;
  /** Position of the maximum stress. */
  readonly at: 'edge' | 'centre' | 'hole';
  /** Radial bending at the edge; zero where simply supported. */
  readonly edge: Quantity<'stress'>;
  /** Bending at the centre of the solid plate. */
  readonly centre: Quantity<'stress'>;
  /** Hoop bending at the rim of the hole, an upper bound: boss and fitting are neglected. */
  readonly hole?: Quantity<'stress'>;
  /** Deflection of the solid plate at the centre. */
  readonly deflection?: Quantity<'length'>;
  readonly cautions: readonly string[];
  toString(): string;
}

const inputs = {
  ...plateInputs,
  elasticModulus: optional(plateInputs.elasticModulus),
  holeRadius: optional(plateInputs.holeRadius),
};
/** A flat circular closure under pressure. */
export type PlateInput = Arguments<typeof inputs>;

const example = {
  pressure: '1000 psi',
  radius: '1.5 in',
  thickness: '0.375 in',
  poissonRatio: 0.33,
} as const;
const gives = 'the stresses at edge, centre and hole, and the deflection';

/**
 * A flat circular closure whose edge can neither move nor tilt. A closure retained by radial bolts lies between this and
 * {@link simplySupportedPlate}: use the supported stress unless the edge is shown to be fixed.
 *
 * @example clampedPlate({ pressure: '1000 psi', radius: '1.5 in', thickness: '0.375 in', poissonRatio: 0.33 }).edge.in('psi') // => 12000
 */
export const clampedPlate = /* @__PURE__ */ procedure({
  name: 'clampedPlate',
  title: 'Flat circular plate with a clamped edge under uniform pressure',
  source: clampedEdgeStress.source,
  inputs,
  gives,
  example,
  run: ({ pressure, radius, thickness, poissonRatio, elasticModulus, holeRadius }): PlateStress => {
    const plate = { pressure, radius, thickness };
    const solid = clampedEdgeStress(plate);
    const holed = holeRadius === undefined ? undefined : { ...plate, poissonRatio, holeRadius };
    return assembled({
      edge: holed ? clampedHoleEdgeStress(holed) : solid,
      centre: clampedCentreStress({ ...plate, poissonRatio }),
      hole: holed && clampedHoleStress(holed),
      deflection: elasticModulus && clampedDeflection({ ...plate, poissonRatio, elasticModulus }),
      cautions: [
        'A fully clamped edge is rare. A closure that can tilt at its bolts carries up to 67 % more stress.',
      ],
    });
  },
});

/**
 * A flat circular closure whose edge can tilt: the default for a closure, since bolts and a seal do not keep an edge flat.
 *
 * @example simplySupportedPlate({ pressure: '1000 psi', radius: '1.5 in', thickness: '0.375 in', poissonRatio: 0.33 }).maxStress.in('psi') // => 19980
 */
export const simplySupportedPlate = /* @__PURE__ */ procedure({
  name: 'simplySupportedPlate',
  title: 'Flat circular plate with a simply supported edge under uniform pressure',
  source: supportedCentreStress.source,
  inputs,
  gives,
  example,
  run: ({ pressure, radius, thickness, poissonRatio, elasticModulus, holeRadius }): PlateStress => {
    const plate = { pressure, radius, thickness, poissonRatio };
    const centre = supportedCentreStress(plate);
    return assembled({
      edge: fromSiValue(0, 'stress', unitFor('stress', centre.unit)),
      centre,
      hole: holeRadius === undefined ? undefined : supportedHoleStress({ ...plate, holeRadius }),
      deflection: elasticModulus && supportedDeflection({ ...plate, elasticModulus }),
      cautions: [],
    });
  },
});

/** The plate's parts before they are put together. */
interface Parts {
  readonly edge: Quantity<'stress'>;
  readonly centre: Quantity<'stress'>;
  readonly hole: Quantity<'stress'> | undefined;
  readonly deflection: Quantity<'length'> | undefined;
  readonly cautions: readonly string[];
}

function assembled({ edge, centre, hole, deflection, cautions }: Parts): PlateStress {
  // A hole replaces the centre; the solid value is kept for comparison.
  const places = [
    { at: 'edge' as const, stress: edge },
    ...(hole === undefined
      ? [{ at: 'centre' as const, stress: centre }]
      : [{ at: 'hole' as const, stress: hole }]),
  ];
  const worst = places.reduce((a, b) => (Math.abs(b.stress.si) > Math.abs(a.stress.si) ? b : a));
  const result = {
    maxStress: worst.stress,
    at: worst.at,
    edge,
    centre,
    ...(hole !== undefined && { hole }),
    ...(deflection !== undefined && { deflection }),
    cautions: [...cautions, ...(deflection?.cautions ?? [])],
  };
  return printable(result, () =>
    [
      table(
        [
          { place: 'edge', value: edge },
          { place: 'centre, solid', value: centre },
          ...(hole === undefined ? [] : [{ place: 'rim of the hole', value: hole }]),
          ...(deflection === undefined ? [] : [{ place: 'deflection', value: deflection }]),
        ].map(({ place, value }) => ({ place, value: value.toString() })),
      ),
      ...result.cautions.map((caution) => `caution: ${caution}`),
    ].join('\n'),
  );
}
