// The steady flow through a port and the nozzle behind it.
import type { PortCells } from './port-cells';
import { marchPort, type PortDrive, type PortGas, type PortMarch } from './port-march';

/** Mass flow that the nozzle passes at a stagnation pressure [kg/s]. */
export type NozzleFlow = (stagnationPressure: number) => number;

/** How a port was solved. */
export interface PortSolution {
  /** Static pressure at the head end [Pa]. */
  readonly headPressure: number;
  /** Whether the port, not the throat, limits the flow: it chokes at this head pressure. */
  readonly chokedPort: boolean;
  readonly marches: number;
  readonly converged: boolean;
}

/** How the head pressure changes with itself in a step of time: dp/dt = slope·p + offset. */
export interface PressureSlope {
  readonly slope: number;
  readonly offset: number;
}

export const steady: PressureSlope = { slope: 0, offset: 0 };

const mostMarches = 120;
// Share of the flow by which the excess falls with ln p where nothing is stored: one less a usual exponent.
const usualFall = 0.65;

/**
 * Finds the head pressure at which the port delivers what the nozzle passes. Where the port is choked at every lower
 * pressure, and delivers less than the throat could pass at every higher one, the head pressure is that at which it chokes.
 * The flow found stays in `out`.
 *
 * The excess of delivery over nozzle flow falls with pressure for exponents below 1: a step by its estimated slope, then
 * secants kept inside a bracket. `tolerance` is the relative error of the pressure.
 */
export function solvePort(
  cells: PortCells,
  gas: PortGas,
  nozzle: NozzleFlow,
  drive: PortDrive,
  out: PortMarch,
  guess: number,
  rate: PressureSlope,
  tolerance: number,
): PortSolution {
  let marches = 0;
  let passed = 0;
  const excess = (lnP: number): number => {
    marches++;
    const p = Math.exp(lnP);
    drive.headPressure = p;
    drive.headPressureSlope = rate.slope * p + rate.offset;
    if (!marchPort(cells, gas, drive, out))
      return out.exitFlow >= 0 ? Number.POSITIVE_INFINITY : Number.NEGATIVE_INFINITY;
    passed = nozzle(out.exitStagnation);
    return out.exitFlow - passed;
  };
  let stored = drive.headVolume;
  for (let i = 0; i < cells.count; i++) stored += cells.volume[i];
  /** Estimated fall of the excess with ln p [kg/s]. */
  const fall = (lnP: number): number =>
    usualFall * Math.abs(passed) + (rate.slope * stored * Math.exp(lnP)) / gas.gasEnergy + 1e-12;
  let x = Math.log(guess);
  let f = excess(x);
  let [low, fLow, high, fHigh] = [Number.NEGATIVE_INFINITY, 0, Number.POSITIVE_INFINITY, 0];
  let size = 1;
  let [before, fBefore] = [x, f];
  // What the last solution has shown of its own slope serves the next.
  let steepness = drive.steepness;
  const learn = (): void => {
    const found = (fBefore - f) / ((x - before) * fall(x));
    if (found > 0.3 && found < 3) {
      steepness = found;
      drive.steepness = found;
    }
  };
  const isBracketed = (): boolean => low > Number.NEGATIVE_INFINITY && high < Number.POSITIVE_INFINITY;
  while (marches < mostMarches) {
    if (f > 0) [low, fLow] = [x, f];
    else [high, fHigh] = [x, f];
    if (isBracketed() || f === 0) break;
    const wanted = Number.isFinite(f) ? (size * f) / (steepness * fall(x)) : Math.sign(f) * 0.02 * size;
    if (Math.abs(wanted) < 0.3 * tolerance) break;
    before = x;
    fBefore = f;
    x += Math.max(-0.7, Math.min(0.7, wanted));
    size *= 1.3;
    f = excess(x);
    learn();
  }
  let side = 0;
  while (isBracketed() && high - low > tolerance && marches < mostMarches) {
    if (Math.abs(f) <= 0.3 * tolerance * fall(x)) break;
    // Illinois' form of the secant; the middle where one end is choked.
    const finite = Number.isFinite(fLow) && Number.isFinite(fHigh);
    const plain = finite ? (fLow * high - fHigh * low) / (fLow - fHigh) : Number.NaN;
    x = plain > low && plain < high ? plain : 0.5 * (low + high);
    f = excess(x);
    if (f > 0) {
      [low, fLow] = [x, f];
      if (side === 1) fHigh *= 0.5;
      side = 1;
    } else {
      [high, fHigh] = [x, f];
      if (side === -1) fLow *= 0.5;
      side = -1;
    }
  }
  // The flow of a pressure at which there is one.
  const closed = isBracketed() && high - low <= tolerance;
  if (out.chokedCell >= 0 && high < Number.POSITIVE_INFINITY) f = excess(high);
  const isFree = Math.abs(f) <= 10 * tolerance * fall(x);
  return {
    headPressure: drive.headPressure,
    chokedPort: closed && !isFree && !Number.isFinite(fLow),
    marches,
    converged: Number.isFinite(f) && (closed || isFree),
  };
}
