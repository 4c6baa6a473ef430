// The ideal nozzle in plain numbers, unchecked: γ above 1, expansion ratio at least 1.
import { isentropicPressureRatioSi, vandenkerckhoveSi } from '../thermo/isentropic-kernels';
import { machFromAreaRatioSi } from '../thermo/mach-from-area-ratio';
import { shockPressureRatioSi } from '../thermo/normal-shock-kernels';

/** Everything about a nozzle of one γ and one expansion ratio that does not depend on the pressures. */
export interface IdealNozzle {
  readonly gamma: number;
  /** Exit area/throat area. */
  readonly expansionRatio: number;
  readonly vandenkerckhove: number;
  /** Mach number at the exit of the full-flowing nozzle. */
  readonly exitMach: number;
  /** Exit/chamber pressure of the full-flowing nozzle. */
  readonly exitPressureRatio: number;
  /** Pressure at Mach 1/chamber pressure. */
  readonly criticalPressureRatio: number;
  /** Maximum ambient/chamber pressure at which the throat is choked, if the divergent section recovers pressure. */
  readonly maxChokedBackPressureRatio: number;
  /** Ambient/chamber pressure at which a normal shock is in the exit plane. */
  readonly shockAtExit: number;
  /** Thrust coefficient in a vacuum, full flowing, without losses. */
  readonly vacuumThrustCoefficient: number;
}

/** Exit state and limits of an ideal nozzle. */
export function idealNozzleSi(gamma: number, expansionRatio: number): IdealNozzle {
  const exitMach = machFromAreaRatioSi(expansionRatio, gamma, true);
  const exitPressureRatio = isentropicPressureRatioSi(exitMach, gamma);
  const subsonic = machFromAreaRatioSi(expansionRatio, gamma, false);
  return {
    gamma,
    expansionRatio,
    vandenkerckhove: vandenkerckhoveSi(gamma),
    exitMach,
    exitPressureRatio,
    criticalPressureRatio: isentropicPressureRatioSi(1, gamma),
    maxChokedBackPressureRatio: isentropicPressureRatioSi(subsonic, gamma),
    shockAtExit: exitPressureRatio * shockPressureRatioSi(exitMach, gamma),
    vacuumThrustCoefficient: vacuumThrustCoefficientAtSi(exitMach, gamma, vandenkerckhoveSi(gamma)),
  };
}

/**
 * Vacuum thrust coefficient of a nozzle cut off where the Mach number is `mach`: Γ·(√γ·M/√B + 1/(√γ·M·√B)) with
 * B = 1 + (γ−1)/2·M². Continuity has replaced the power in the pressure term.
 */
export function vacuumThrustCoefficientAtSi(mach: number, gamma: number, vandenkerckhove: number): number {
  const b = 1 + ((gamma - 1) / 2) * mach * mach;
  return (vandenkerckhove * (1 + gamma * mach * mach)) / (mach * Math.sqrt(gamma * b));
}

/** Thrust coefficient of a full-flowing ideal nozzle. For many pressures compute {@link idealNozzleSi} once instead. */
export function thrustCoefficientSi(
  gamma: number,
  expansionRatio: number,
  ambientOverChamber: number,
): number {
  const mach = machFromAreaRatioSi(expansionRatio, gamma, true);
  return (
    vacuumThrustCoefficientAtSi(mach, gamma, vandenkerckhoveSi(gamma)) - expansionRatio * ambientOverChamber
  );
}

/** The two terms of a thrust coefficient. */
export interface ThrustCoefficientParts {
  /** Term of the exit momentum, to which the divergence factor applies. */
  readonly momentum: number;
  /** Term of the difference between exit and ambient pressure; negative when over-expanded. */
  readonly pressure: number;
  /** Their sum. */
  readonly total: number;
}

/** Momentum and pressure terms of the thrust coefficient of a full-flowing nozzle. */
export function thrustCoefficientPartsSi(
  gamma: number,
  expansionRatio: number,
  ambientOverChamber: number,
): ThrustCoefficientParts {
  const mach = machFromAreaRatioSi(expansionRatio, gamma, true);
  const vandenkerckhove = vandenkerckhoveSi(gamma);
  const b = 1 + ((gamma - 1) / 2) * mach * mach;
  const momentum = (vandenkerckhove * Math.sqrt(gamma) * mach) / Math.sqrt(b);
  const vacuum = vacuumThrustCoefficientAtSi(mach, gamma, vandenkerckhove);
  const pressure = vacuum - momentum - expansionRatio * ambientOverChamber;
  return { momentum, pressure, total: vacuum - expansionRatio * ambientOverChamber };
}
