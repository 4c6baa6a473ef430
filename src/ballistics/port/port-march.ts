// One march along a port from the closed head to the nozzle, at a given pressure at the head.
import { rateOfLaw } from '../simulation/chamber-rate';
import type { LawKernel } from '../simulation/motor-model';
import { entranceMach, entrancePressure } from './bore-entrance';
import { type ErosionLaw, erosiveRate } from './erosion-law';
import { machSquared, stagnationRatio } from './impulse-flow';
import { CellKind, type PortCells } from './port-cells';

/** Gas and propellant of a march. */
export interface PortGas {
  readonly gamma: number;
  /** Gas constant times flame temperature [J/kg]. */
  readonly gasEnergy: number;
  /** Propellant density [kg/m³]. */
  readonly density: number;
  /** Mean of the square of the velocity over the square of its mean; 1 for a uniform profile. */
  readonly momentumFactor: number;
  /** Loss at the entrance of a bore from a gap, in dynamic heads of the bore. */
  readonly entranceLoss: number;
  readonly law: LawKernel;
  readonly erosion: ErosionLaw;
  /** Relative change at which the rounds of a cell end. */
  readonly settledWithin: number;
  /** Whether the gas that fills the burned volume is taken from the flow; at head pressure, as what is stored. */
  readonly fillsBurnedVolume: boolean;
}

/** Conditions of a march. */
export interface PortDrive {
  /** Static pressure at the head end [Pa]. */
  headPressure: number;
  /** Its rate of change [Pa/s], taken as that of the whole port. */
  headPressureSlope: number;
  /** Gas that enters at the head end [kg/s]. */
  headFlow: number;
  /** Volume of gas ahead of the first cell [m³]. */
  headVolume: number;
  /** Ignited fraction of the surface. */
  ignited: number;
  /**
   * Whether a section that is choked gets the pressure at which it passes its flow. A port that fills faster than gas can
   * go along it has no quasi-steady flow; for these first milliseconds its sections then have different pressures.
   */
  liftsChoked: boolean;
  /** Slope of the excess of flow/its estimate, as the last solution has found it; begins at 1. */
  steepness: number;
}

/** The flow found, cell by cell at their middles; written over by the next march. */
export interface PortMarch {
  /** Index of the first cell in which there is no subsonic flow at this pressure, or −1. */
  chokedCell: number;
  /** Whether the pressure of a choked section was raised. */
  lifted: boolean;
  readonly massFlow: Float64Array;
  readonly pressure: Float64Array;
  readonly mach: Float64Array;
  readonly flux: Float64Array;
  /** Burning rate [m/s]. */
  readonly rate: Float64Array;
  /** Propellant burned [kg/s]. */
  burned: number;
  exitFlow: number;
  exitPressure: number;
  exitMach: number;
  /** Isentropic stagnation pressure at the exit: what the nozzle is fed with [Pa]. */
  exitStagnation: number;
}

export const portMarch = (room: number): PortMarch => ({
  chokedCell: -1,
  lifted: false,
  massFlow: new Float64Array(room),
  pressure: new Float64Array(room),
  mach: new Float64Array(room),
  flux: new Float64Array(room),
  rate: new Float64Array(room),
  burned: 0,
  exitFlow: 0,
  exitPressure: 0,
  exitMach: 0,
  exitStagnation: 0,
});

// An enlargement beyond this is a step, on whose face the pressure of the smaller section acts; a smaller one is a taper
// with the mean pressure of both ends on it. Between the two the share passes over.
const [taperBelow, stepAbove] = [1.05, 1.3];
const rounds = 4;
const rateWork = new Float64Array(2);

/**
 * Marches along the cells; writes the flow into `out` and says whether it is subsonic everywhere.
 *
 * dṁ/dz = ρ·r·P − (A/(R·T_0))·dp/dt; d[A·(p + β·ρ_g·u²)]/dz = p·dA/dz; the gas enters at right angles; T_0 constant.
 * Trapezoids between the middles of cells: exact in a port of constant area for given rates, second order elsewhere.
 * A gap receives the impulse of the bore and its pressure on the step (Borda-Carnot); the next bore is entered
 * isentropically, less the entrance loss. Source: Shapiro (1953) ch. 8, quoted from memory, not verified.
 */
export function marchPort(cells: PortCells, gas: PortGas, drive: PortDrive, out: PortMarch): boolean {
  const { count, kind, length, area, burning, diameter, volume } = cells;
  const { gamma, gasEnergy, density, momentumFactor: beta, law, erosion } = gas;
  const bg = beta * gamma;
  const storage = drive.headPressureSlope / gasEnergy;
  const { settledWithin } = gas;
  const lifts = drive.liftsChoked;
  const sonic = 1 / (1 + gamma * (beta - 1));
  // The least impulse with which a section passes a flow, per flow.
  const perFlow =
    ((1 + bg * sonic) * Math.sqrt(gasEnergy)) / Math.sqrt(gamma * sonic * (1 + ((gamma - 1) / 2) * sonic));
  out.chokedCell = -1;
  out.lifted = false;
  let burned = 0;
  let flow = drive.headFlow - drive.headVolume * storage;
  let pressure = drive.headPressure;
  let open = area[0];
  let impulse = open * pressure;
  let square = 0;
  // Half of the gas of the cell behind, which is added between its middle and its end.
  let rest = 0;
  let position = 0;
  // Burning rate without cross-flow near the pressure of the last cell.
  let knownPressure = 0;
  let knownRate = 0;
  let exponent = 0;
  let before = 0;
  for (let i = 0; i < count; i++) {
    const to = area[i];
    const isGap = kind[i] === CellKind.gap;
    const wasGap = i > 0 && kind[i - 1] === CellKind.gap;
    if (i > 0 && (isGap || wasGap)) {
      // To the end of the cell behind.
      flow += rest;
      rest = 0;
      if (!wasGap) {
        const face = endArea(cells, i - 1, -1);
        impulse += pressure * (face - open);
        open = face;
      }
      square = machSquared(flow, impulse, gasEnergy, gamma, beta);
      if (!(square >= 0)) {
        if (!lifts) return choke(out, i - 1, flow);
        out.lifted = true;
        square = sonic;
        impulse = perFlow * Math.abs(flow);
      }
      pressure = impulse / (open * (1 + bg * square));
      if (isGap) {
        impulse += pressure * (to - open);
        open = to;
      } else {
        const face = endArea(cells, i, 1);
        const mach = entranceMach(flow, square, pressure, face, gas);
        if (!(mach >= 0)) {
          if (!lifts) return choke(out, i, flow);
          out.lifted = true;
          square = sonic;
          pressure = (perFlow * Math.abs(flow)) / (face * (1 + bg * sonic));
        } else {
          pressure = entrancePressure(flow, square, pressure, face, mach, gas);
          square = mach * mach;
        }
        open = face;
        impulse = open * pressure * (1 + bg * square);
      }
    }
    const bears = burning[i] > 0;
    let own = before * (bears ? length[i] : 0);
    const start = flow + rest;
    let mid = start;
    let p = pressure;
    for (let round = 0; round < rounds; round++) {
      mid = start + 0.5 * own;
      let f = impulse + stepPressure(pressure, p, to / open) * (to - open);
      square = machSquared(mid, f, gasEnergy, gamma, beta);
      if (!(square >= 0)) {
        if (!lifts) return choke(out, i, mid);
        out.lifted = true;
        square = sonic;
        f = perFlow * Math.abs(mid);
      }
      const next = f / (to * (1 + bg * square));
      const settled = Math.abs(next - p) <= settledWithin * p;
      p = next;
      if (bears) {
        if (Math.abs(p - knownPressure) > 2e-3 * knownPressure) {
          rateOfLaw(law, Math.log(p), rateWork);
          knownPressure = p;
          knownRate = rateWork[0];
          exponent = rateWork[0] > 0 ? rateWork[1] / rateWork[0] : 0;
        }
        // (1 + δ)^n to second order: δ is below 2e-3.
        const d = p / knownPressure - 1;
        const base = knownRate * (1 + exponent * d * (1 + 0.5 * (exponent - 1) * d));
        const flux = Math.abs(mid) / to;
        const rate =
          isGap || erosion.law === 'none'
            ? base
            : erosiveRate(
                erosion,
                density,
                base,
                flux,
                diameter[i],
                position + 0.5 * length[i],
                (flux * gasEnergy) / (p * (1 + ((gamma - 1) / 2) * square)),
              );
        out.rate[i] = rate;
        const solid = gas.fillsBurnedVolume ? density - drive.headPressure / gasEnergy : density;
        const made = solid * rate * burning[i] * drive.ignited - volume[i] * storage;
        if (round > 0 && settled && Math.abs(made - own) <= settledWithin * Math.abs(made)) {
          own = made;
          break;
        }
        own = made;
      } else {
        out.rate[i] = 0;
        const stored = -volume[i] * storage;
        if (round > 0 && settled) break;
        own = stored;
      }
    }
    impulse = p * to * (1 + bg * square);
    pressure = p;
    open = to;
    // Not the last mid: exactly what the cell makes leaves it.
    flow = start + 0.5 * own;
    rest = 0.5 * own;
    before = bears && !isGap ? own / length[i] : 0;
    position += length[i];
    burned += density * out.rate[i] * burning[i] * drive.ignited;
    out.massFlow[i] = mid;
    out.pressure[i] = p;
    out.flux[i] = Math.abs(mid) / to;
    out.mach[i] = Math.sqrt(square);
  }
  flow += rest;
  if (count > 0 && kind[count - 1] === CellKind.bore) {
    const face = endArea(cells, count - 1, -1);
    impulse += pressure * (face - open);
    open = face;
  }
  square = machSquared(flow, impulse, gasEnergy, gamma, beta);
  if (!(square >= 0)) {
    if (!lifts) return choke(out, count - 1, flow);
    out.lifted = true;
    square = sonic;
    impulse = perFlow * Math.abs(flow);
  }
  out.burned = burned;
  out.exitFlow = flow;
  out.exitPressure = impulse / (open * (1 + bg * square));
  out.exitMach = Math.sqrt(square);
  out.exitStagnation = out.exitPressure * stagnationRatio(square, gamma);
  return true;
}

/** Where there is no subsonic flow; `exitFlow` then says which way it would go. */
function choke(out: PortMarch, cell: number, flow: number): false {
  out.chokedCell = cell;
  out.exitFlow = flow;
  return false;
}

/** Pressure on the face of a change of section: the mean of both ends in a taper, that of the smaller section on a step. */
function stepPressure(from: number, to: number, ratio: number): number {
  const mean = 0.5 * (from + to);
  if (ratio <= taperBelow) return mean;
  if (ratio >= stepAbove) return from;
  const share = (ratio - taperBelow) / (stepAbove - taperBelow);
  return mean + share * (from - mean);
}

/** Area at an end of a bore cell, extrapolated from its neighbour on the other side: `side` −1 for its aft end. */
function endArea({ count, kind, area, length }: PortCells, i: number, side: 1 | -1): number {
  const j = i + side;
  if (j < 0 || j >= count || kind[j] !== CellKind.bore) return area[i];
  const between = 0.5 * (length[i] + length[j]);
  const face = area[i] + ((area[i] - area[j]) * 0.5 * length[i]) / between;
  return Math.max(0.5 * area[i], face);
}
