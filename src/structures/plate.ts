import { fromSiValue, type Quantity, type QuantityInput, table, unitFor } from '../units';
import { type FieldsOf, requireFields } from '../units/known-fields';
import {
  clampedCentreStress,
  clampedDeflection,
  clampedEdgeStress,
  supportedCentreStress,
  supportedDeflection,
} from './plate-formulas';
import { clampedHoleEdgeStress, clampedHoleStress, supportedHoleStress } from './plate-hole-formulas';

/** A flat circular closure under pressure. */
export interface PlateInput {
  readonly pressure: QuantityInput<'pressure difference'>;
  /** Where the plate is held: the bolt circle, the step or the seal, whichever is outermost. */
  readonly radius: QuantityInput<'length'>;
  readonly thickness: QuantityInput<'length'>;
  readonly poissonRatio: number;
  /** Needed for the deflection, which is left out without it. */
  readonly elasticModulus?: QuantityInput<'stress'>;
  /** A plugged central hole, such as a tapped port: its major radius. */
  readonly holeRadius?: QuantityInput<'length'>;
}

/** Stresses and deflection of a flat circular closure. */
export interface PlateStress {
  /** The greatest of all. */
  readonly maxStress: Quantity<'stress'>;
  /** Where it is: `edge`, `centre` or `hole`. */
  readonly at: 'edge' | 'centre' | 'hole';
  /** Radial bending at the edge; zero where simply supported. */
  readonly edge: Quantity<'stress'>;
  /** Bending at the centre of the solid plate. */
  readonly centre: Quantity<'stress'>;
  /** Hoop bending at the rim of the hole, an upper bound: neither a boss nor the fitting is counted. */
  readonly hole?: Quantity<'stress'>;
  /** Of the solid plate, at the centre. */
  readonly deflection?: Quantity<'length'>;
  readonly cautions: readonly string[];
  toString(): string;
}

const clampedPlateFields: FieldsOf<PlateInput> = {
  pressure: 'required',
  radius: 'required',
  thickness: 'required',
  poissonRatio: 'required',
  elasticModulus: 'optional',
  holeRadius: 'optional',
};

/**
 * A flat circular closure whose edge can neither move nor tilt. A closure held by radial bolts lies between this and
 * {@link simplySupportedPlate}: take the supported stress unless the edge is shown to be fixed.
 *
 * @throws MeopError as the formulas it is made of
 * @example clampedPlate({ pressure: '1000 psi', radius: '1.5 in', thickness: '0.375 in', poissonRatio: 0.33 }).edge.in('psi') // => 12000
 */
export function clampedPlate(input: PlateInput): PlateStress {
  requireFields('clampedPlate', input, clampedPlateFields);
  const { pressure, radius, thickness, poissonRatio, elasticModulus, holeRadius } = input;
  const plate = { pressure, radius, thickness };
  const solid = clampedEdgeStress(plate);
  const holed = holeRadius === undefined ? undefined : { ...plate, poissonRatio, holeRadius };
  return assembled({
    edge: holed ? clampedHoleEdgeStress(holed) : solid,
    centre: clampedCentreStress({ ...plate, poissonRatio }),
    hole: holed && clampedHoleStress(holed),
    deflection: elasticModulus && clampedDeflection({ ...plate, poissonRatio, elasticModulus }),
    cautions: ['a clamped edge is rare: a closure that can tilt at its bolts carries up to 67 % more stress'],
  });
}

const simplySupportedPlateFields: FieldsOf<PlateInput> = {
  pressure: 'required',
  radius: 'required',
  thickness: 'required',
  poissonRatio: 'required',
  elasticModulus: 'optional',
  holeRadius: 'optional',
};

/**
 * A flat circular closure whose edge can tilt: the default for a closure, since bolts and a seal do not hold an edge flat.
 *
 * @throws MeopError as the formulas it is made of
 * @example simplySupportedPlate({ pressure: '1000 psi', radius: '1.5 in', thickness: '0.375 in', poissonRatio: 0.33 }).maxStress.in('psi') // => 19980
 */
export function simplySupportedPlate(input: PlateInput): PlateStress {
  requireFields('simplySupportedPlate', input, simplySupportedPlateFields);
  const { pressure, radius, thickness, poissonRatio, elasticModulus, holeRadius } = input;
  const plate = { pressure, radius, thickness, poissonRatio };
  const centre = supportedCentreStress(plate);
  return assembled({
    edge: fromSiValue(0, 'stress', unitFor('stress', centre.unit)),
    centre,
    hole: holeRadius === undefined ? undefined : supportedHoleStress({ ...plate, holeRadius }),
    deflection: elasticModulus && supportedDeflection({ ...plate, elasticModulus }),
    cautions: [],
  });
}

/** The plate's parts before they are put together. */
interface Parts {
  readonly edge: Quantity<'stress'>;
  readonly centre: Quantity<'stress'>;
  readonly hole: Quantity<'stress'> | undefined;
  readonly deflection: Quantity<'length'> | undefined;
  readonly cautions: readonly string[];
}

function assembled({ edge, centre, hole, deflection, cautions }: Parts): PlateStress {
  // A hole replaces the centre: the solid value is kept to be compared with.
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
  const text = (): string =>
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
    ].join('\n');
  return { ...result, toString: text, ...{ [Symbol.for('nodejs.util.inspect.custom')]: text } };
}
