// Mass flow and thrust of the nozzle at a chamber pressure.
import { type IdealNozzle, idealNozzleSi } from '../../nozzle/ideal-nozzle-kernels';
import { nozzleFlowSi } from '../../nozzle/nozzle-flow';
import { machFromPressureRatioSi, massFlowParameterSi } from '../../thermo/isentropic-kernels';
import { type ChamberWorkspace, Constant } from './chamber-workspace';
import type { MotorModel } from './motor-model';

/** Changes the nozzle, and with it the pressure above which the throat is choked. */
export function setNozzle(m: MotorModel, w: ChamberWorkspace, nozzle: IdealNozzle): void {
  w.nozzle = nozzle;
  const { constants: c } = w;
  const choked = m.ambientPressure / nozzle.maxChokedBackPressureRatio;
  // A throat that changes inside a step moves the bound; above the ratio of a plain hole every throat is choked.
  c[Constant.minChokedPressure] =
    m.erosionRate === 0 ? choked : m.ambientPressure / nozzle.criticalPressureRatio;
  c[Constant.fullAbove] = m.separation === 'none' ? choked : m.ambientPressure / nozzle.exitPressureRatio;
  c[Constant.thrustFactor] = m.thrustEfficiency * m.dischargeCoefficient * Math.PI * w.opening;
  c[Constant.vacuumCoefficient] = nozzle.vacuumThrustCoefficient;
  c[Constant.ambientLoss] = nozzle.expansionRatio * m.ambientPressure;
}

/**
 * Thrust [N] at a chamber pressure; never below zero: a full-flowing nozzle cannot suck the motor back.
 *
 * Source: thrust coefficient of an ideal nozzle, Sutton & Biblarz 7th ed., ch. 3 (quoted from memory, not verified), which makes the thrust of a
 * full-flowing nozzle a straight line in pressure; other regimes as in the nozzle module.
 */
export function thrustAt(m: MotorModel, w: ChamberWorkspace, p: number, throat: number): number {
  const { constants: c } = w;
  if (!(p > c[Constant.fullAbove])) return thrustBelowFull(m, w, p, throat);
  const force =
    c[Constant.thrustFactor] *
    throat *
    throat *
    (c[Constant.vacuumCoefficient] * p - c[Constant.ambientLoss]);
  return w.flowing && force > 0 ? force : 0;
}

function thrustBelowFull(m: MotorModel, w: ChamberWorkspace, p: number, throat: number): number {
  if (!w.flowing || p <= m.ambientPressure) return 0;
  const criterion = m.separation === 'none' ? 'summerfield' : m.separation;
  nozzleFlowSi(w.nozzle, m.ambientPressure / p, criterion, w.nozzleFlow);
  return Math.max(0, w.constants[Constant.thrustFactor] * throat * throat * p * w.nozzleFlow[0]);
}

/** Brings the nozzle's expansion ratio up to date where its throat changes. */
export function updateNozzle(m: MotorModel, w: ChamberWorkspace, throat: number): void {
  const ratio = expansionOf(m, w, throat);
  if (Math.abs(ratio - w.nozzle.expansionRatio) > 1e-9 * ratio)
    setNozzle(m, w, idealNozzleSi(m.gamma, ratio));
}

/** Mass flow through the nozzle [kg/s]. */
export function nozzleMassFlow(m: MotorModel, w: ChamberWorkspace, p: number, throat: number): number {
  if (!w.flowing) return 0;
  const choked = w.constants[Constant.flowFactor] * p * throat * throat;
  if (p > w.constants[Constant.minChokedPressure]) return choked;
  const above = p - m.ambientPressure;
  if (above <= 0) return 0;
  const near = w.constants[Constant.nearAmbient];
  if (above < near) {
    const share = above / near;
    const top = m.ambientPressure + near;
    return unchokedFlow(m, w, top, (choked / p) * top, throat) * share * (1.5 - 0.5 * share);
  }
  return unchokedFlow(m, w, p, choked, throat);
}

function unchokedFlow(m: MotorModel, w: ChamberWorkspace, p: number, choked: number, throat: number): number {
  const mach = machFromPressureRatioSi(m.ambientPressure / p, m.gamma);
  return choked * Math.min(1, unchokedShare(m, w, mach, throat));
}

/** Mass flow/choked mass flow at a Mach number in the exit; above 1 the throat is choked. */
function unchokedShare(m: MotorModel, w: ChamberWorkspace, mach: number, throat: number): number {
  return (massFlowParameterSi(mach, m.gamma) * expansionOf(m, w, throat)) / w.nozzle.vandenkerckhove;
}

// An exit smaller than the throat is none: the nozzle then ends at its throat.
const expansionOf = (m: MotorModel, w: ChamberWorkspace, throat: number): number =>
  Math.max(1, m.exitArea / (Math.PI * throat * throat) / w.opening);

/** Sets the free fraction of the throat: flow, thrust and expansion ratio follow the area that is left. */
export function setOpening(m: MotorModel, w: ChamberWorkspace, opening: number, throat: number): void {
  w.opening = opening;
  w.constants[Constant.flowFactor] =
    ((m.dischargeCoefficient * Math.PI) / m.characteristicVelocity) * opening;
  setNozzle(m, w, idealNozzleSi(m.gamma, Math.max(1, m.exitArea / (Math.PI * throat ** 2) / opening)));
}

/** Derivatives of the mass flow by pressure and by throat radius, into `out`. */
export function massFlowSlopes(
  m: MotorModel,
  w: ChamberWorkspace,
  p: number,
  throat: number,
  flow: number,
  out: Float64Array,
): void {
  out[0] = flow / p;
  out[1] = (2 * flow) / throat;
  if (!w.flowing || p > w.constants[Constant.minChokedPressure] || p <= m.ambientPressure) return;
  const share = (p - m.ambientPressure) / w.constants[Constant.nearAmbient];
  if (share < 1) out[0] = (flow / (p - m.ambientPressure)) * ((1.5 - share) / (1.5 - 0.5 * share));
  const mach = machFromPressureRatioSi(m.ambientPressure / p, m.gamma);
  if (unchokedShare(m, w, mach, throat) >= 1) return;
  // dM/dp of the isentropic relation in the mass flow parameter: steep where pressure is close to ambient.
  if (share >= 1) out[0] *= 1 + (1 - mach * mach) / (m.gamma * mach * mach);
  // Then the exit meters the flow, not the throat.
  if (m.exitArea > Math.PI * throat * throat * w.opening) out[1] = 0;
}
