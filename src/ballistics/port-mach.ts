// Mach numbers in a port; plain SI numbers, unchecked.
import { machFromAreaRatioSi } from '../thermo/mach-from-area-ratio';

/** Mach number at the aft end of a port, isentropic from there to the choked throat. */
export const portEndMach = (portToThroat: number, g: number): number =>
  portToThroat <= 1 ? 1 : machFromAreaRatioSi(portToThroat, g, false);

/** Mach number at a mass flux in a port with a head-end pressure; 1 where there is no subsonic solution. */
export function portMachAt(massFlux: number, headPressure: number, gasEnergy: number, g: number): number {
  const s = (massFlux * Math.sqrt(gasEnergy)) / headPressure;
  const ss = s * s;
  // A quadratic in M²: (γ²·s² − γ·(γ−1)/2)·x² + (2·γ·s² − γ)·x + s² = 0; its small root without cancellation.
  const a = g * g * ss - (g * (g - 1)) / 2;
  const b = 2 * g * ss - g;
  const discriminant = b * b - 4 * a * ss;
  if (!(discriminant > 0) || b >= 0) return 1;
  return Math.min(1, Math.sqrt((2 * ss) / (-b + Math.sqrt(discriminant))));
}
