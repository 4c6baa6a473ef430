// The entrance of a bore from a gap; plain SI numbers, unchecked.
import { machFromAreaRatioSi } from '../../thermo/mach-from-area-ratio';
import { stagnationRatio } from './impulse-flow';

/** Gas and loss of an entrance. */
export interface EntranceGas {
  readonly gamma: number;
  readonly gasEnergy: number;
  /** Loss in dynamic heads of the bore. */
  readonly entranceLoss: number;
}

const rounds = 60;

/** Mach number behind the isentropic entrance of a bore from a gap, less the loss; NaN where it chokes. */
export function entranceMach(
  flow: number,
  gapSquare: number,
  gapPressure: number,
  open: number,
  { gamma, gasEnergy, entranceLoss }: EntranceGas,
): number {
  if (flow === 0) return 0;
  const stagnation = gapPressure * stagnationRatio(gapSquare, gamma);
  const sonic =
    (Math.abs(flow) * Math.sqrt(gasEnergy)) /
    (Math.sqrt(gamma) * (2 / (gamma + 1)) ** ((gamma + 1) / (2 * (gamma - 1))));
  let supply = stagnation;
  for (let round = 0; round < rounds; round++) {
    const ratio = (open * supply) / sonic;
    if (!(ratio >= 1)) return Number.NaN;
    const mach = machFromAreaRatioSi(ratio, gamma, false);
    if (!(entranceLoss > 0)) return mach;
    const square = mach * mach;
    const next = stagnation - (entranceLoss * 0.5 * gamma * square * supply) / stagnationRatio(square, gamma);
    if (Math.abs(next - supply) <= 1e-13 * supply) return mach;
    supply = next;
  }
  return Number.NaN;
}

/** Static pressure behind that entrance [Pa]. */
export function entrancePressure(
  flow: number,
  gapSquare: number,
  gapPressure: number,
  open: number,
  mach: number,
  { gamma, gasEnergy }: EntranceGas,
): number {
  if (flow === 0) return gapPressure * stagnationRatio(gapSquare, gamma);
  const square = mach * mach;
  return (Math.abs(flow) * Math.sqrt(gasEnergy / (gamma * square * (1 + ((gamma - 1) / 2) * square)))) / open;
}
