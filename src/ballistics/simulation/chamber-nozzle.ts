// Mass flow and thrust of the nozzle at a chamber pressure.
import { type IdealNozzle, idealNozzle, nozzleFlowSi } from '../../nozzle';
import { machFromPressureRatioSi, massFlowParameterSi } from '../../thermo';
import {
  AMBIENT_LOSS,
  CHOKED_ABOVE,
  type ChamberWorkspace,
  FLOW_FACTOR,
  FULL_ABOVE,
  THRUST_FACTOR,
  VACUUM_COEFFICIENT,
} from './chamber-workspace';
import type { MotorModel } from './motor-model';

/** Changes the nozzle, and with it the pressure above which the throat is choked. */
export function setNozzle(m: MotorModel, w: ChamberWorkspace, nozzle: IdealNozzle): void {
  w.nozzle = nozzle;
  const { constants: c } = w;
  c[CHOKED_ABOVE] = m.ambientPressure / nozzle.unchokedAbove;
  c[FULL_ABOVE] = m.separation === 'none' ? c[CHOKED_ABOVE] : m.ambientPressure / nozzle.exitPressureRatio;
  c[THRUST_FACTOR] = m.thrustEfficiency * m.dischargeCoefficient * Math.PI;
  c[VACUUM_COEFFICIENT] = nozzle.vacuumThrustCoefficient;
  c[AMBIENT_LOSS] = nozzle.expansionRatio * m.ambientPressure;
}

/**
 * Thrust [N] at a chamber pressure; never below zero: a full-flowing nozzle cannot suck the motor back.
 *
 * Source: thrust coefficient of an ideal nozzle, Sutton & Biblarz 7th ed., ch. 3 (from memory), which makes the thrust of a
 * full-flowing nozzle a straight line in pressure; other regimes as in the nozzle module.
 */
export function thrustAt(m: MotorModel, w: ChamberWorkspace, p: number, throat: number): number {
  const { constants: c } = w;
  if (!(p > c[FULL_ABOVE])) return thrustBelowFull(m, w, p, throat);
  const force = c[THRUST_FACTOR] * throat * throat * (c[VACUUM_COEFFICIENT] * p - c[AMBIENT_LOSS]);
  return w.flowing && force > 0 ? force : 0;
}

function thrustBelowFull(m: MotorModel, w: ChamberWorkspace, p: number, throat: number): number {
  if (!w.flowing || p <= m.ambientPressure) return 0;
  const criterion = m.separation === 'none' ? 'summerfield' : m.separation;
  nozzleFlowSi(w.nozzle, m.ambientPressure / p, criterion, w.nozzleFlow);
  return Math.max(0, w.constants[THRUST_FACTOR] * throat * throat * p * w.nozzleFlow[0]);
}

/** Brings the nozzle's expansion ratio up to date where its throat changes. */
export function updateNozzle(m: MotorModel, w: ChamberWorkspace, throat: number): void {
  // An exit smaller than the throat is none: the nozzle then ends at its throat.
  const ratio = Math.max(1, m.exitArea / (Math.PI * throat * throat));
  if (Math.abs(ratio - w.nozzle.expansionRatio) > 1e-9 * ratio) setNozzle(m, w, idealNozzle(m.gamma, ratio));
}

/** Mass flow through the nozzle [kg/s]. */
export function nozzleMassFlow(m: MotorModel, w: ChamberWorkspace, p: number, throat: number): number {
  if (!w.flowing) return 0;
  const choked = w.constants[FLOW_FACTOR] * p * throat * throat;
  return p > w.constants[CHOKED_ABOVE] ? choked : choked * unchokedShare(w.nozzle, m.ambientPressure, p);
}

/** Mass flow over choked mass flow at a chamber pressure where the throat is not choked. */
function unchokedShare(nozzle: IdealNozzle, ambient: number, p: number): number {
  if (p <= ambient) return 0;
  const mach = machFromPressureRatioSi(ambient / p, nozzle.gamma);
  return Math.min(
    1,
    (massFlowParameterSi(mach, nozzle.gamma) * nozzle.expansionRatio) / nozzle.vandenkerckhove,
  );
}
