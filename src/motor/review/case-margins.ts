import {
  lameHoopStress,
  lameLongitudinalStress,
  lameRadialStress,
  reviewShell,
  type ShellReview,
  vonMisesStress,
} from '../../structures';
import type { Quantity } from '../../units';
import type { Motor } from '../document';
import type { MotorSettings } from '../settings';
import { reviewMargin } from './review-margin';
import type { ReviewMargin } from './review-result';
import { weakestCase } from './worst-sizes';

/** The plain tube at MEOP. */
export function caseMargins(
  motor: Motor,
  meop: Quantity<'gauge pressure'>,
  { factors }: MotorSettings,
): { readonly margins: readonly ReviewMargin[]; readonly shell: ShellReview } {
  const { insideRadius, outsideRadius } = weakestCase(motor);
  const { material, wallTemperature } = motor.case;
  const shell = reviewShell({
    material,
    insideRadius,
    outsideRadius,
    meop,
    factors,
    ...(wallTemperature && { temperature: wallTemperature.value }),
  });
  const cylinder = { pressure: meop, insideRadius, outsideRadius };
  const hoop = () => lameHoopStress.explain({ ...cylinder, radius: insideRadius });
  const known: Readonly<Record<string, readonly [string[], (() => readonly { toString(): string }[])?]>> = {
    'yield at the bore, hoop stress': [['lameHoopStress'], () => [hoop()]],
    'yield at the bore, von Mises': [
      ['lameHoopStress', 'lameRadialStress', 'lameLongitudinalStress', 'vonMisesStress'],
      () => [
        hoop(),
        lameRadialStress.explain({ ...cylinder, radius: insideRadius }),
        lameLongitudinalStress.explain(cylinder),
        vonMisesStress.explain({
          first: shell.stress.hoop,
          second: shell.stress.longitudinal,
          third: shell.stress.radial,
        }),
      ],
    ],
  };
  const margins = shell.margins.map((margin) => {
    const found = known[margin.mode];
    const [formulas, steps] = found ?? [['burstPressure']];
    // The proof test is cold and at its own pressure: it is no step on the way up.
    const isProof = margin.mode.includes('proof');
    return reviewMargin(margin, {
      part: 'case',
      formulas: isProof ? ['yieldPressuresAtTemperature', 'proofCheck'] : formulas,
      ...(steps && { steps }),
      ...(!isProof && { meop }),
    });
  });
  return { margins, shell };
}
