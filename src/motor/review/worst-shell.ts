import { reviewShell, type ShellReview } from '../../structures';
import type { Quantity } from '../../units';
import type { Motor } from '../document';
import type { MotorSettings } from '../settings';
import { weakestCase } from './worst-sizes';

/** Evaluates the plain tube at MEOP. */
export function worstShell(
  motor: Motor,
  meop: Quantity<'gauge pressure'>,
  { factors }: MotorSettings,
): ShellReview {
  const { outsideDiameter, wall } = weakestCase(motor);
  const { material, wallTemperature } = motor.case;
  return reviewShell({
    tube: { material, outsideDiameter, wall, wallTemperature: wallTemperature?.value },
    meop,
    factors,
  });
}
