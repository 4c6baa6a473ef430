import { fromSiValue, type Quantity, type QuantityInput, readInput, table, unitFor } from '../../units';
import { type FieldsOf, requireFields } from '../../units/known-fields';
import { lameHoopStress, lameLongitudinalStress, lameRadialStress, vonMisesStress } from './lame';

/** Closed: the wall carries the end force. Open: something else does (a tie rod, a thrust stand). */
export type CylinderEnds = 'closed' | 'open';

/** A thick cylinder under pressure and where its stress is wanted. */
export interface ThickWallInput {
  readonly pressure: QuantityInput<'gauge pressure'>;
  /** Zero gauge where left out. */
  readonly externalPressure?: QuantityInput<'gauge pressure'>;
  readonly insideRadius: QuantityInput<'length'>;
  readonly outsideRadius: QuantityInput<'length'>;
  /** The bore, where all stresses are worst, where left out. */
  readonly radius?: QuantityInput<'length'>;
  /** Default `'closed'`. */
  readonly ends?: CylinderEnds;
}

/** The stresses at one radius, tension positive. */
export interface ThickWallStress {
  readonly hoop: Quantity<'stress'>;
  readonly radial: Quantity<'stress'>;
  readonly longitudinal: Quantity<'stress'>;
  readonly vonMises: Quantity<'stress'>;
  /** Greatest difference of principal stresses: twice the maximum shear. */
  readonly tresca: Quantity<'stress'>;
  toString(): string;
}

/** The stresses at one radius in Pa. */
export interface ThickWallStressSi {
  readonly hoop: number;
  readonly radial: number;
  readonly longitudinal: number;
  readonly vonMises: number;
  readonly tresca: number;
}

/**
 * {@link thickWallStress} on plain SI numbers; checks nothing.
 *
 * @example thickWallStressSi({ pressure: 3e6, insideRadius: 1, outsideRadius: 2, radius: 1 }).hoop // => 5000000
 */
export function thickWallStressSi(cylinder: {
  readonly pressure: number;
  readonly externalPressure?: number;
  readonly insideRadius: number;
  readonly outsideRadius: number;
  readonly radius: number;
  readonly ends?: CylinderEnds;
}): ThickWallStressSi {
  const hoop = lameHoopStress.si(cylinder);
  const radial = lameRadialStress.si(cylinder);
  const longitudinal = cylinder.ends === 'open' ? 0 : lameLongitudinalStress.si(cylinder);
  return {
    hoop,
    radial,
    longitudinal,
    vonMises: vonMisesStress.si({ first: hoop, second: longitudinal, third: radial }),
    tresca: Math.max(hoop, longitudinal, radial) - Math.min(hoop, longitudinal, radial),
  };
}

const thickWallStressFields: FieldsOf<ThickWallInput> = {
  pressure: 'required',
  externalPressure: 'optional',
  insideRadius: 'required',
  outsideRadius: 'required',
  radius: 'optional',
  ends: 'optional',
};

/**
 * Every stress in a thick cylinder at a radius, by Lamé. Exact for any wall; away from the ends by more than about √(r t).
 *
 * @throws MeopError as the formulas it is made of: {@link lameHoopStress}, {@link lameRadialStress}
 * @example thickWallStress({ pressure: '1000 psi', insideRadius: '1 in', outsideRadius: '2 in', radius: '1 in' }).hoop.in('psi') // => 1666.666667
 */
export function thickWallStress(input: ThickWallInput): ThickWallStress {
  requireFields('thickWallStress', input, thickWallStressFields);
  const { pressure, externalPressure = '0 Pa', insideRadius, outsideRadius, ends = 'closed' } = input;
  const radius = input.radius ?? insideRadius;
  const hoop = lameHoopStress({ pressure, externalPressure, insideRadius, outsideRadius, radius });
  const read = (kind: 'gauge pressure' | 'length', field: string, value: unknown): number =>
    readInput(kind, field, value, 'thickWallStress').si;
  const stresses = thickWallStressSi({
    pressure: read('gauge pressure', 'pressure', pressure),
    externalPressure: read('gauge pressure', 'externalPressure', externalPressure),
    insideRadius: read('length', 'insideRadius', insideRadius),
    outsideRadius: read('length', 'outsideRadius', outsideRadius),
    radius: read('length', 'radius', radius),
    ends,
  });
  const unit = unitFor('stress', hoop.unit);
  const show = (si: number): Quantity<'stress'> => fromSiValue(si, 'stress', unit);
  const result = {
    hoop,
    radial: show(stresses.radial),
    longitudinal: show(stresses.longitudinal),
    vonMises: show(stresses.vonMises),
    tresca: show(stresses.tresca),
  };
  const text = (): string =>
    table(Object.entries(result).map(([stress, value]) => ({ stress, value: value.toString() })));
  return { ...result, toString: text, ...{ [Symbol.for('nodejs.util.inspect.custom')]: text } };
}
