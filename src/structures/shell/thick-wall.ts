import { fromSiValue, printable, procedure, type Quantity, table, unitFor } from '../../units';
import { type CylinderEnds, cylinder } from './cylinder';
import { lameHoopStress, lameLongitudinalStress, lameRadialStress, vonMisesStress } from './lame';

/** The stresses at one radius, tension positive. */
export interface ThickWallStress {
  readonly hoop: Quantity<'stress'>;
  readonly radial: Quantity<'stress'>;
  readonly longitudinal: Quantity<'stress'>;
  readonly vonMises: Quantity<'stress'>;
  /** Maximum difference of principal stresses: twice the maximum shear stress. */
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

/** {@link thickWallStress} on plain SI numbers; checks nothing. */
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

/**
 * Every stress in a thick cylinder at a radius, by Lamé. Exact for any wall; valid farther from the ends than about √(r t).
 *
 * @example thickWallStress({ pressure: '1000 psi', insideRadius: '1 in', outsideRadius: '2 in', radius: '1 in' }).hoop.in('psi') // => 1666.666667
 */
export const thickWallStress = /* @__PURE__ */ procedure({
  name: 'thickWallStress',
  title: 'Stresses in a thick cylinder at a radius',
  source: lameHoopStress.source,
  inputs: cylinder,
  gives: 'the hoop, radial, longitudinal, von Mises and Tresca stress',
  example: { pressure: '1000 psi', insideRadius: '1 in', outsideRadius: '2 in' },
  run: ({ pressure, externalPressure, insideRadius, outsideRadius, ends, ...at }): ThickWallStress => {
    const radius = at.radius ?? insideRadius;
    const hoop = lameHoopStress({ pressure, externalPressure, insideRadius, outsideRadius, radius });
    const stresses = thickWallStressSi({
      pressure: pressure.si,
      externalPressure: externalPressure.si,
      insideRadius: insideRadius.si,
      outsideRadius: outsideRadius.si,
      radius: radius.si,
      ends,
    });
    const show = (si: number): Quantity<'stress'> => fromSiValue(si, 'stress', unitFor('stress', hoop.unit));
    const result = {
      hoop,
      radial: show(stresses.radial),
      longitudinal: show(stresses.longitudinal),
      vonMises: show(stresses.vonMises),
      tresca: show(stresses.tresca),
    };
    return printable(result, () =>
      table(Object.entries(result).map(([stress, value]) => ({ stress, value: value.toString() }))),
    );
  },
  si: thickWallStressSi,
});
