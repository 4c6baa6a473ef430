// Relations of a flow of given mass flow and impulse; plain numbers, unchecked.

/** The Mach number at which a flow with this momentum factor chokes. */
export const chokingMachSi = (gamma: number, momentumFactor: number): number =>
  1 / Math.sqrt(1 + gamma * (momentumFactor - 1));

/**
 * Square of the Mach number of a mass flow in an area with the impulse F = A·p·(1 + β·γ·M²); NaN where the area is choked.
 *
 * ṁ²·R·T_0/F² = γ·M²·(1 + (γ−1)/2·M²)/(1 + β·γ·M²)²: quadratic in M², its small root without cancellation.
 */
export function machSquared(
  flow: number,
  impulse: number,
  gasEnergy: number,
  gamma: number,
  momentumFactor: number,
): number {
  const s = (flow * flow * gasEnergy) / (impulse * impulse);
  const bg = momentumFactor * gamma;
  const a = s * bg * bg - (gamma * (gamma - 1)) / 2;
  const b = gamma - 2 * s * bg;
  const discriminant = b * b - 4 * a * s;
  if (!(discriminant >= 0) || !(b > 0)) return Number.NaN;
  return (2 * s) / (b + Math.sqrt(discriminant));
}

/** Isentropic stagnation over static pressure. */
export const stagnationRatio = (square: number, gamma: number): number =>
  (1 + ((gamma - 1) / 2) * square) ** (gamma / (gamma - 1));
