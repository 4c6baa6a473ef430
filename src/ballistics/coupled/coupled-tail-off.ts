// The tail-off of a coupled run where its gas cools: without sources the port is a part of the chamber, whose gas has one pressure.
import { nozzleMassFlow, setOpening } from '../simulation/chamber-nozzle';
import { type ChamberWorkspace, Constant } from '../simulation/chamber-workspace';
import type { MotorModel } from '../simulation/motor-model';
import { runTailOff } from '../simulation/run-tail-off';
import { tailOffSlopes } from '../transient/tail-off-slopes';
import type { CoupledResult } from './coupled-model';
import type { CoupledRecorder, CoupledRun } from './coupled-state';

const nothing = (): void => undefined;

/** Runs from burnout to the end and leaves the state there; the law of the tail-off is not isothermal. */
export function coolDown(
  run: CoupledRun,
  result: CoupledResult,
  recorder: CoupledRecorder | undefined,
): void {
  const { state, march, model, workspace: w } = run;
  const { motor: m } = model;
  const slopes = new Float64Array(2);
  march.massFlow.fill(0);
  march.flux.fill(0);
  march.mach.fill(0);
  state.burned = 0;
  w.burning = false;
  const take = (t: number, p: number, throat: number): void => {
    state.time = t;
    state.headPressure = p;
    state.stagnation = p;
    state.throatRadius = throat;
    state.flow = nozzleMassFlow(m, w, p, throat);
    march.pressure.fill(p);
    tailOffSlopes(m.tailOff, m.gamma, m.chamberVolume, p, gasEnergyNow(m, w), state.flow, 0, 0, slopes);
    state.headSlope = slopes[0];
  };
  runTailOff(m, w, result, state.time, state.stagnation, m.table.burnout, state.throatRadius, {
    perStep: 4,
    begin: nothing,
    mark: nothing,
    sample: (_m, _w, t, p, _y, throat) => {
      take(t, p, throat);
      recorder?.(run);
    },
  });
  take(result.endTime, result.endPressure, result.endThroatRadius);
  setOpening(m, w, 1, m.throatRadius);
}

/** Gas energy at the sample just taken, from the factor of the flow that belongs to it. */
function gasEnergyNow(m: MotorModel, w: ChamberWorkspace): number {
  const reference = ((m.dischargeCoefficient * Math.PI) / m.characteristicVelocity) * w.opening;
  return m.gasEnergy * (reference / w.constants[Constant.flowFactor]) ** 2;
}
