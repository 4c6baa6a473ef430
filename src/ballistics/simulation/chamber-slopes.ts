// The equations of the chamber: slopes of pressure, burned depth and throat radius, and their Jacobian.
import { idealNozzleSi } from '../../nozzle/ideal-nozzle-kernels';
import { lookUp, Surface } from './burn-table';
import { massFlowSlopes, nozzleMassFlow, setNozzle } from './chamber-nozzle';
import { erosiveRate, rateAt } from './chamber-rate';
import { type ChamberWorkspace, Constant } from './chamber-workspace';
import type { MotorModel } from './motor-model';

/** Brings the workspace to the start of a run, so that it does not depend on the run before. */
export function beginRun(m: MotorModel, w: ChamberWorkspace): void {
  w.anchor.fill(0);
  w.surface.fill(0);
  const { constants: c } = w;
  c[Constant.density] = m.density;
  c[Constant.gasEnergy] = m.gasEnergy;
  c[Constant.perGasEnergy] = 1 / m.gasEnergy;
  c[Constant.chamberVolume] = m.chamberVolume;
  c[Constant.flowFactor] = (m.dischargeCoefficient * Math.PI) / m.characteristicVelocity;
  setNozzle(m, w, idealNozzleSi(m.gamma, Math.max(1, m.exitArea / (Math.PI * m.throatRadius ** 2))));
}

/** Ignited fraction of the surface, which increases evenly over the time of flame spread. */
export function ignitedFraction(m: MotorModel, w: ChamberWorkspace, t: number): number {
  if (!w.burning) return 0;
  return w.spreading ? t / m.flameSpreadTime : 1;
}

/**
 * Writes p', y' and r_t' at the point.
 *
 * p' = (R·T/V)·((ρ − p/(R·T))·A_b·r + ṁ_igniter − ṁ_nozzle), y' = r times the ignited fraction, V = V_chamber − V_propellant(y).
 * Source: mass balance of the gas in the free volume at constant temperature (derived).
 */
export function chamberSlopes(m: MotorModel, w: ChamberWorkspace): void {
  const { point, slope, surface, constants: c } = w;
  const p = point[1];
  const throat = point[3];
  w.interval = lookUp(m.table, w.piece, point[2], w.interval, surface);
  // Kept short, so that it is compiled into the step: what happens seldom stands apart.
  if (w.plain && p > c[Constant.minChokedPressure]) {
    let made = -c[Constant.flowFactor] * p * throat * throat;
    let depthRate = 0;
    if (w.burning) {
      rateAt(m, w);
      depthRate = w.rate[0];
      made += (c[Constant.density] - p * c[Constant.perGasEnergy]) * surface[Surface.area] * depthRate;
    }
    slope[0] = (c[Constant.gasEnergy] * made) / (c[Constant.chamberVolume] - surface[Surface.volume]);
    slope[1] = depthRate;
    slope[2] = 0;
  } else otherSlopes(m, w);
}

/** The same with an igniter, a flame that spreads, a closed or unchoked or eroding throat, or erosive burning. */
function otherSlopes(m: MotorModel, w: ChamberWorkspace): void {
  const { point, slope, surface, rate, constants: c } = w;
  const p = point[1];
  const flow = nozzleMassFlow(m, w, p, point[3]);
  let made = w.igniting ? m.igniterMass / m.igniterDuration - flow : -flow;
  let depthRate = 0;
  if (w.burning) {
    rateAt(m, w);
    depthRate = rate[0];
    if (m.erosive !== undefined) depthRate = erosiveRate(m, m.erosive, w, depthRate, flow, p, point[2]);
    if (w.spreading) depthRate *= point[0] / m.flameSpreadTime;
    made += (c[Constant.density] - p * c[Constant.perGasEnergy]) * surface[Surface.area] * depthRate;
  }
  slope[0] = (c[Constant.gasEnergy] * made) / (c[Constant.chamberVolume] - surface[Surface.volume]);
  slope[1] = depthRate;
  slope[2] = w.eroding ? erosionSpeed(m, p) : 0;
}

const erosionSpeed = (m: MotorModel, p: number): number =>
  m.erosionExponent === 0 ? m.erosionRate : m.erosionRate * (p / m.erosionPressure) ** m.erosionExponent;

/** Writes the Jacobian at the point where {@link chamberSlopes} was called last; `slope` must still be that of the point. */
export function chamberJacobian(m: MotorModel, w: ChamberWorkspace): void {
  const { point } = w;
  const t = point[0];
  const p = point[1];
  const y = point[2];
  const throat = point[3];
  const { jacobian: j, slope, surface, rate } = w;
  const area = surface[Surface.area];
  const areaSlope = surface[Surface.areaSlope];
  const free = m.chamberVolume - surface[Surface.volume];
  const scale = m.gasEnergy / free;
  const slopeP = slope[0];
  const depthRate = slope[1];
  const flow = nozzleMassFlow(m, w, p, throat);
  massFlowSlopes(m, w, p, throat, flow, w.flowSlopes);
  const flowByP = w.flowSlopes[0];
  const flowByThroat = w.flowSlopes[1];
  let rateByP = 0;
  let rateByY = 0;
  let rateByThroat = 0;
  let rateByT = 0;
  if (w.burning) {
    const lit = w.spreading ? t / m.flameSpreadTime : 1;
    let whole = rate[0];
    if (m.erosive === undefined) rateByP = (lit * rate[1]) / p;
    else {
      const e = m.erosive;
      const d = 1e-6;
      const dy = d * m.table.burnout;
      const [base, byLnP] = rate;
      const at = (r: number, gas: number, pressure: number, depth: number): number =>
        erosiveRate(m, e, w, r, gas, pressure, depth);
      whole = at(base, flow, p, y);
      rateByP = (at(base + d * byLnP, flow + d * p * flowByP, p * (1 + d), y) - whole) * (lit / (d * p));
      rateByY = (at(base, flow, p, y + dy) - whole) * (lit / dy);
      rateByThroat = (at(base, flow + d * throat * flowByThroat, p, y) - whole) * (lit / (d * throat));
    }
    if (w.spreading) rateByT = whole / m.flameSpreadTime;
  }
  const solid = m.density - p / m.gasEnergy;
  const burnsOut = w.burning ? area : 0;
  j[0] = scale * (solid * burnsOut * rateByP - (burnsOut * depthRate) / m.gasEnergy - flowByP);
  j[1] = scale * solid * (areaSlope * depthRate + burnsOut * rateByY) - (slopeP * area) / free;
  j[2] = scale * (solid * burnsOut * rateByThroat - flowByThroat);
  j[3] = rateByP;
  j[4] = rateByY;
  j[5] = rateByThroat;
  j[6] = w.eroding ? (m.erosionExponent * slope[2]) / p : 0;
  j[7] = scale * solid * burnsOut * rateByT;
  j[8] = rateByT;
}
