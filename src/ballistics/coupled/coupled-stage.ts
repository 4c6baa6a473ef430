// One instant of a coupled run: the head pressure that a step of time gives, and the rates there.
import { CellKind } from '../port/port-cells';
import { type PortSolution, type PressureSlope, solvePort } from '../port/solve-port';
import { nozzleMassFlow } from '../simulation/chamber-nozzle';
import { ignitedFractionAt } from '../transient/ignited-fraction';
import { igniterFlow, igniterGasRatio, mixtureRatio } from '../transient/igniter-flow';
import { throatOpening } from '../transient/throat-opening';
import { ColumnSum, cutColumn, endOf } from './column-cells';
import type { CoupledResult } from './coupled-model';
import type { CoupledRun, CoupledState } from './coupled-state';

/** Sets the state at the end of a stage: depths given, head pressure by the port. False where there is no solution. */
export function stage(
  run: CoupledRun,
  from: CoupledState,
  result: CoupledResult,
  duration: number,
  slope: PressureSlope,
  depthAt: (i: number) => number,
  guess: number,
): boolean {
  const { model, path, gas, drive, march, workspace: w, state } = run;
  const { motor: m } = model;
  const n = path.stateCount;
  const t = from.time + duration;
  state.time = t;
  for (let i = 0; i < n; i++) state.depth[i] = Math.max(from.depth[i], depthAt(i));
  cutColumn(path, state.depth);
  // A step ends where the equations change: its end takes what holds before.
  const just = t - 1e-9 * duration;
  drive.ignited = ignitedFractionAt(m, just, run.held);
  const igniter = igniterFlow(m, just);
  const ratio = igniterGasRatio(m, m.gasEnergy);
  drive.headFlow = igniter * ratio;
  // The nozzle passes the mixture that igniter and surface delivered at the start of the step.
  const mixed =
    igniter > 0 && m.igniterGasEnergy !== undefined
      ? Math.sqrt(mixtureRatio(igniter, from.burned, ratio))
      : 1;
  const opening = throatOpening(m, just) * mixed;
  const throat = state.throatRadius;
  // What no gap holds is fed from the ends of the bore.
  const { cells } = path;
  const atHead = cells.kind[0] === CellKind.gap ? 0 : path.spareVolume;
  const atAft = cells.kind[cells.count - 1] === CellKind.gap ? 0 : path.spareVolume;
  drive.headVolume = atHead;
  const solve = (liftsChoked: boolean): PortSolution => {
    drive.liftsChoked = liftsChoked;
    const found = solvePort(
      cells,
      gas,
      (p0) => opening * nozzleMassFlow(m, w, p0, throat) + (atAft * drive.headPressureSlope) / m.gasEnergy,
      drive,
      march,
      guess > 0.5 * from.headPressure ? guess : from.headPressure,
      slope,
      1e-2 * model.tolerance,
    );
    result.evaluations += found.marches;
    return found;
  };
  let found = solve(false);
  if (!found.converged) found = solve(true);
  if (!found.converged || !(found.headPressure > 0) || !Number.isFinite(march.exitStagnation)) return false;
  state.headPressure = found.headPressure;
  state.headSlope = slope.slope * found.headPressure + slope.offset;
  const full = opening * nozzleMassFlow(m, w, march.exitStagnation, throat);
  // A choked port delivers less than the throat could pass: the throat then is fed by that much less.
  const delivered = march.exitFlow - (atAft * state.headSlope) / m.gasEnergy;
  const share = found.chokedPort && full > 0 ? Math.max(0, Math.min(1, delivered / full)) : 1;
  state.stagnation = share * march.exitStagnation;
  state.flow = share * full;
  state.burned = march.burned;
  state.volume = path.sums[ColumnSum.volume];
  state.area = path.sums[ColumnSum.area] * drive.ignited;
  // While the chamber fills, a port may choke for a moment.
  const filling = m.chamberVolume * Math.abs(state.headSlope) > 0.1 * m.gasEnergy * march.burned;
  if (found.chokedPort && !filling) result.chokedUntil = t;
  takeRates(run);
  state.throatSlope =
    m.erosionRate !== 0 && t >= m.erosionDelay && w.flowing
      ? m.erosionExponent === 0
        ? m.erosionRate
        : m.erosionRate * (march.exitStagnation / m.erosionPressure) ** m.erosionExponent
      : 0;
  return true;
}

/** Rates of the stations and of the ends from the march. */
function takeRates({ path, march, state, drive }: CoupledRun): void {
  const { cells, stationOf, gapBehind, stationCount, segments } = path;
  state.rate.fill(0);
  let nearest = 0;
  for (let c = 0; c < cells.count; c++) {
    const rate = march.rate[c] * drive.ignited;
    const station = stationOf[c];
    if (station >= 0) {
      state.rate[station] = rate;
      nearest = rate;
    } else {
      const k = gapBehind[c];
      if (k < segments.length && segments[k].headBurns) state.rate[endOf(path, k)] = rate;
      for (let j = k - 1; j >= 0 && state.rate[endOf(path, j) + 1] === 0; j--)
        if (segments[j].aftBurns) {
          state.rate[endOf(path, j) + 1] = rate;
          break;
        }
    }
  }
  // Stations that an end has passed keep pace with their neighbours, so that the spread inside a station stays true.
  for (let k = 0; k < segments.length; k++) {
    const first = path.first[k];
    const n = path.stations[k];
    for (let i = 1; i < n; i++)
      if (state.rate[first + i] === 0) state.rate[first + i] = state.rate[first + i - 1];
    for (let i = n - 2; i >= 0; i--)
      if (state.rate[first + i] === 0) state.rate[first + i] = state.rate[first + i + 1];
  }
  if (stationCount === 0) state.rate[0] = nearest;
}
