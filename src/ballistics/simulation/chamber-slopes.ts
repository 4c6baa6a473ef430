// The equations of the chamber: slopes of pressure, burned depth and throat radius, and their Jacobian.
import { fullIgniterFlow, igniterGasRatio, mixtureRatio } from '../transient/igniter-flow';
import { lookUp, Surface } from './burn-table';
import { massFlowSlopes, nozzleMassFlow, setOpening } from './chamber-nozzle';
import { rateAt } from './chamber-rate';
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
  setOpening(m, w, 1, m.throatRadius);
}

/** Ignited fraction of the surface, which increases evenly over the time of flame spread. */
export function ignitedFraction(m: MotorModel, w: ChamberWorkspace, t: number): number {
  if (!w.burning || !w.lit) return 0;
  const reached = w.spreading ? (t - m.ignitionDelay) / m.flameSpreadTime : 1;
  return w.held ? m.partialFraction * reached : reached;
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

/** The same with an igniter, a flame that spreads, or a closed or unchoked or eroding throat. */
function otherSlopes(m: MotorModel, w: ChamberWorkspace): void {
  const { point, slope, surface, rate, constants: c } = w;
  const p = point[1];
  const flow = nozzleMassFlow(m, w, p, point[3]);
  const igniter = w.igniting ? igniterFlowNow(m, w, point[0]) : 0;
  let made = igniter - flow;
  let depthRate = 0;
  if (w.burning && w.lit) {
    rateAt(m, w);
    depthRate = rate[0];
    if (w.spreading) depthRate *= (point[0] - m.ignitionDelay) / m.flameSpreadTime;
    if (w.held) depthRate *= m.partialFraction;
    made += (c[Constant.density] - p * c[Constant.perGasEnergy]) * surface[Surface.area] * depthRate;
  }
  if (w.igniting && m.igniterGasEnergy !== undefined) {
    const ratio = igniterGasRatio(m, m.gasEnergy);
    const generated = c[Constant.density] * surface[Surface.area] * depthRate;
    w.outflowRatio = Math.sqrt(mixtureRatio(igniter, generated, ratio));
    made += (ratio - 1) * igniter - (w.outflowRatio - 1) * flow;
  }
  slope[0] = (c[Constant.gasEnergy] * made) / (c[Constant.chamberVolume] - surface[Surface.volume]);
  slope[1] = depthRate;
  slope[2] = w.eroding ? erosionSpeed(m, p) : 0;
}

/** Mass flow of the igniter; a step lies in one of its pieces, which the switches name. */
const igniterFlowNow = (m: MotorModel, w: ChamberWorkspace, t: number): number =>
  w.igniterFalling
    ? (fullIgniterFlow(m) * (m.igniterDuration + m.igniterFallTime - t)) / m.igniterFallTime
    : fullIgniterFlow(m);

/** Flow in the balance of pressure/that of propellant gas at a point; 1 unless igniter and propellant gas differ. */
export function outflowRatioAt(
  m: MotorModel,
  w: ChamberWorkspace,
  t: number,
  p: number,
  y: number,
  throat: number,
): number {
  if (!w.igniting || m.igniterGasEnergy === undefined) return 1;
  const { point } = w;
  point[0] = t;
  point[1] = p;
  point[2] = y;
  point[3] = throat;
  chamberSlopes(m, w);
  return w.outflowRatio;
}

export const erosionSpeed = (m: MotorModel, p: number): number =>
  m.erosionExponent === 0 ? m.erosionRate : m.erosionRate * (p / m.erosionPressure) ** m.erosionExponent;

/** Writes the Jacobian at the point where {@link chamberSlopes} was called last; `slope` must still be that of the point. */
export function chamberJacobian(m: MotorModel, w: ChamberWorkspace): void {
  const { point } = w;
  const t = point[0];
  const p = point[1];
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
  let rateByT = 0;
  if (w.burning && w.lit) {
    const lit = ignitedFraction(m, w, t);
    rateByP = (lit * rate[1]) / p;
    if (w.spreading) rateByT = ((w.held ? m.partialFraction : 1) * rate[0]) / m.flameSpreadTime;
  }
  const solid = m.density - p / m.gasEnergy;
  const burnsOut = w.burning ? area : 0;
  j[0] = scale * (solid * burnsOut * rateByP - (burnsOut * depthRate) / m.gasEnergy - flowByP);
  j[1] = scale * solid * (areaSlope * depthRate) - (slopeP * area) / free;
  j[2] = -scale * flowByThroat;
  j[3] = rateByP;
  j[4] = 0;
  j[5] = 0;
  j[6] = w.eroding ? (m.erosionExponent * slope[2]) / p : 0;
  j[7] = scale * solid * burnsOut * rateByT;
  j[8] = rateByT;
  if (!w.igniting) return;
  const igniterByT = w.igniterFalling ? -fullIgniterFlow(m) / m.igniterFallTime : 0;
  j[7] += scale * igniterByT;
  if (m.igniterGasEnergy === undefined) return;
  // The mixture r = (ṁ_i·q + g) / (ṁ_i + g) changes with the gas g that the surface generates, and with ṁ_i.
  const q = igniterGasRatio(m, m.gasEnergy);
  const igniter = igniterFlowNow(m, w, t);
  const all = igniter + m.density * burnsOut * depthRate;
  const perMixture = flow / (2 * w.outflowRatio * all * all);
  const byGenerated = perMixture * igniter * (1 - q) * m.density;
  j[0] -= scale * ((w.outflowRatio - 1) * flowByP + byGenerated * burnsOut * rateByP);
  j[1] -= scale * byGenerated * (areaSlope * depthRate);
  j[2] -= scale * (w.outflowRatio - 1) * flowByThroat;
  j[7] +=
    scale * igniterByT * (q - 1 - perMixture * (all - igniter) * (q - 1)) -
    scale * byGenerated * burnsOut * rateByT;
}
