import { isentropicPressureRatioSi, vandenkerckhoveSi } from '../thermo/isentropic-kernels';
import { machFromAreaRatioSi } from '../thermo/mach-from-area-ratio';
import { shockPressureRatioSi } from '../thermo/normal-shock-kernels';

/** Quantities that depend only on γ and expansion ratio, not on the pressures. */
export interface IdealNozzle {
  readonly gamma: number;
  /** Exit/throat area ratio. */
  readonly expansionRatio: number;
  readonly vandenkerckhove: number;
  /** Mach number at the exit of the full-flowing nozzle. */
  readonly exitMach: number;
  /** Exit/chamber pressure ratio of the full-flowing nozzle. */
  readonly exitPressureRatio: number;
  /** Ratio of the pressure at Mach 1 to chamber pressure. */
  readonly criticalPressureRatio: number;
  /**
   * Ambient/chamber pressure ratio above which the throat is not choked, if the divergent section recovers
   * pressure.
   */
  readonly maxChokedBackPressureRatio: number;
  /** Ambient/chamber pressure ratio at which a normal shock is at the exit. */
  readonly shockAtExit: number;
  /** Thrust coefficient in a vacuum, full flowing, without losses. */
  readonly vacuumThrustCoefficient: number;
}

/**
 * Exit state and limits of an ideal nozzle, for kernels; plain numbers, unchecked (`gamma` > 1, `expansionRatio` ≥
 * 1).
 *
 * @example idealNozzle(1.2, 10).vacuumThrustCoefficient // => 1.742307
 */
export function idealNozzle(gamma: number, expansionRatio: number): IdealNozzle {
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
    vacuumThrustCoefficient: vacuumThrustCoefficientAt(exitMach, gamma, vandenkerckhoveSi(gamma)),
  };
}

/**
 * Vacuum thrust coefficient of a nozzle truncated where the Mach number is `mach`; plain numbers, unchecked.
 * Γ·(√γ·M/√B + 1/(√γ·M·√B)) with B = 1 + (γ−1)/2·M²: continuity replaces the power in the pressure term.
 *
 * @example vacuumThrustCoefficientAt(1, 1.2, vandenkerckhove.si({ gamma: 1.2 })) // => 1.241842
 */
export function vacuumThrustCoefficientAt(mach: number, gamma: number, vandenkerckhove: number): number {
  const b = 1 + ((gamma - 1) / 2) * mach * mach;
  return (vandenkerckhove * (1 + gamma * mach * mach)) / (mach * Math.sqrt(gamma * b));
}

/**
 * Thrust coefficient of a full-flowing ideal nozzle; plain numbers, unchecked. For many pressures at one expansion
 * ratio use {@link idealNozzle} once instead; for start, tail-off and separated flow use {@link nozzleFlowSi}.
 *
 * @example thrustCoefficientSi(1.13, 7, 101325 / 5e6) // => 1.58897
 */
export function thrustCoefficientSi(
  gamma: number,
  expansionRatio: number,
  ambientOverChamber: number,
): number {
  const mach = machFromAreaRatioSi(expansionRatio, gamma, true);
  return (
    vacuumThrustCoefficientAt(mach, gamma, vandenkerckhoveSi(gamma)) - expansionRatio * ambientOverChamber
  );
}
