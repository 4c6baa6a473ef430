// Mach numbers in a port; plain SI numbers, unchecked.
import { areaRatioSi } from '../thermo/isentropic-kernels';
import { machFromAreaRatioSi } from '../thermo/mach-from-area-ratio';
import { chokingMachSi, machSquared } from './port/impulse-flow';

/** Mach number at the aft end of a port, isentropic from there to the choked throat; that of the choked port where it passes less. */
export function portEndMach(portToThroat: number, g: number, momentumFactor = 1): number {
  const most = chokingMachSi(g, momentumFactor);
  const least = most === 1 ? 1 : areaRatioSi(most, g);
  return portToThroat <= least ? most : machFromAreaRatioSi(portToThroat, g, false);
}

/** Mach number at a mass flux in a port with a head-end pressure; that of the choked port where there is no subsonic solution. */
export function portMachAt(
  massFlux: number,
  headPressure: number,
  gasEnergy: number,
  g: number,
  momentumFactor = 1,
): number {
  const square = machSquared(massFlux, headPressure, gasEnergy, g, momentumFactor);
  const most = chokingMachSi(g, momentumFactor);
  return square >= 0 ? Math.min(most, Math.sqrt(square)) : most;
}
