// Mass and energy balance of the chamber after burnout, in plain numbers: shared by the lumped and the coupled chamber.

/** Law of the tail-off for the kernels. */
export interface TailOffKernel {
  readonly law: 'isothermal' | 'adiabatic' | 'heat-loss';
  /** Heat-transfer coefficient times wall area/specific gas constant [kg/s]; 0 without heat loss. */
  readonly wallConductance: number;
  /** Specific gas constant times wall temperature [J/kg]. */
  readonly wallEnergy: number;
}

/**
 * Writes p' [Pa/s] and e' [J/(kg·s)] of a chamber of constant volume into `out`; e = R·T.
 *
 * V·p' = γ·(ṁ_in·e_in − ṁ·e) − (γ − 1)·h·A_w·(T − T_w), from d(m·c_v·T)/dt = ṁ_in·c_p·T_in − ṁ·c_p·T − h·A_w·(T − T_w);
 * e'/e = p'/p − m'/m with m = p·V/e. `flow` is the flow through the nozzle at e: that at the reference
 * temperature times √(e_ref/e). `inflow` is any flow into the chamber [kg/s], with its gas energy [J/kg]. Source: energy balance of a vessel, as in textbooks of thermodynamics (derived).
 */
export function tailOffSlopes(
  tail: TailOffKernel,
  gamma: number,
  volume: number,
  p: number,
  e: number,
  flow: number,
  inflow: number,
  inflowEnergy: number,
  out: Float64Array,
): void {
  const heat = tail.wallConductance * (e - tail.wallEnergy);
  const byPressure = (gamma * (inflow * inflowEnergy - flow * e) - (gamma - 1) * heat) / volume;
  out[0] = byPressure;
  out[1] = e * (byPressure / p - ((inflow - flow) * e) / (p * volume));
}
