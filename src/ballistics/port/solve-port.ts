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

/**
 * Finds the head pressure at which the port delivers what the nozzle passes. Where the port is choked at every lower
 * pressure, and delivers less than the throat could pass at every higher one, the head pressure is that at which it chokes.
 * The flow found stays in `out`.
 *
 * The excess of delivery over nozzle flow falls with pressure for exponents below 1: a bracket, then secants kept inside it.
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
  const excess = (lnP: number): number => {
    marches++;
    const p = Math.exp(lnP);
    drive.headPressure = p;
    drive.headPressureSlope = rate.slope * p + rate.offset;
    if (!marchPort(cells, gas, drive, out)) return Number.POSITIVE_INFINITY;
    const passed = nozzle(out.exitStagnation);
    return (out.exitFlow - passed) / (Math.abs(passed) + Math.abs(out.exitFlow) + 1e-300);
  };
  let x = Math.log(guess);
  let f = excess(x);
  let [low, fLow, high, fHigh] = [Number.NEGATIVE_INFINITY, 0, Number.POSITIVE_INFINITY, 0];
  const place = (at: number, value: number): void => {
    if (value > 0) [low, fLow] = [at, value];
    else [high, fHigh] = [at, value];
  };
  place(x, f);
  let step = 0.02;
  // Outward from the guess until the root lies between two pressures.
  while ((low === Number.NEGATIVE_INFINITY || high === Number.POSITIVE_INFINITY) && marches < mostMarches) {
    if (f === 0) break;
    // A relative excess e is removed by a change of about e·2 in ln p, more where the rate rises with it.
    const wanted = Number.isFinite(f) ? 2.5 * f : 0.1;
    const move = f > 0 ? Math.max(step, wanted) : Math.min(-step, wanted);
    x += Math.max(-1.5, Math.min(1.5, move));
    step = Math.min(2 * step, 0.7);
    f = excess(x);
    place(x, f);
  }
  if (low === Number.NEGATIVE_INFINITY || high === Number.POSITIVE_INFINITY)
    return { headPressure: Math.exp(x), chokedPort: false, marches, converged: f === 0 };
  let side = 0;
  while (high - low > tolerance && marches < mostMarches) {
    if (Math.abs(f) <= 0.05 * tolerance) break;
    // Illinois' form of the secant; the middle where one end is choked.
    const plain = Number.isFinite(fLow) ? (fLow * high - fHigh * low) / (fLow - fHigh) : 0.5 * (low + high);
    x = plain > low && plain < high ? plain : 0.5 * (low + high);
    f = excess(x);
    if (f > 0) {
      [low, fLow] = [x, f];
      if (side === 1) fHigh *= 0.5;
      side = 1;
    } else {
      [high, fHigh] = [x, f];
      if (side === -1 && Number.isFinite(fLow)) fLow *= 0.5;
      side = -1;
    }
  }
  const chokedPort = !Number.isFinite(fLow) && high - low <= Math.max(tolerance, 1e-13);
  // The flow of a pressure at which there is one.
  if (out.chokedCell >= 0) f = excess(high);
  return {
    headPressure: drive.headPressure,
    chokedPort: chokedPort && Math.abs(f) > 10 * tolerance,
    marches,
    converged: high - low <= Math.max(tolerance, 1e-13) || Math.abs(f) <= tolerance,
  };
}
