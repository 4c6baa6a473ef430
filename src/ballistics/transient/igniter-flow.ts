// The gas of the igniter in plain numbers: shared by the lumped and the coupled chamber.

/** Igniter gas for the kernels: a constant flow, then a linear fall to zero. */
export interface IgniterKernel {
  /** Total mass of gas [kg]; 0 where there is none. */
  readonly igniterMass: number;
  /** Time of constant flow [s]. */
  readonly igniterDuration: number;
  /** Time in which the flow then falls to zero [s]. */
  readonly igniterFallTime: number;
  /** Gas constant times temperature of the igniter gas [J/kg]; `undefined` where it has that of the chamber gas. */
  readonly igniterGasEnergy: number | undefined;
}

/** Mass flow of the igniter before its fall [kg/s]. */
export const fullIgniterFlow = (m: IgniterKernel): number =>
  m.igniterMass > 0 ? m.igniterMass / (m.igniterDuration + m.igniterFallTime / 2) : 0;

/** Mass flow of the igniter [kg/s] at a time [s] from the start of its flow. */
export function igniterFlow(m: IgniterKernel, t: number): number {
  if (t < m.igniterDuration) return fullIgniterFlow(m);
  const left = m.igniterDuration + m.igniterFallTime - t;
  return left > 0 ? (fullIgniterFlow(m) * left) / m.igniterFallTime : 0;
}

/** Mass of igniter gas delivered from 0 to a time [kg]. */
export function igniterMassUntil(m: IgniterKernel, t: number): number {
  if (!(m.igniterMass > 0)) return 0;
  if (t <= m.igniterDuration)
    return m.igniterMass * (Math.max(0, t) / (m.igniterDuration + m.igniterFallTime / 2));
  const end = m.igniterDuration + m.igniterFallTime;
  return m.igniterMass - 0.5 * igniterFlow(m, Math.min(t, end)) * Math.max(0, end - t);
}

/** Gas energy of the igniter gas/that of the chamber gas: 1 where they are the same. */
export const igniterGasRatio = (m: IgniterKernel, gasEnergy: number): number =>
  m.igniterGasEnergy === undefined ? 1 : m.igniterGasEnergy / gasEnergy;

/**
 * Gas energy of the gas in the chamber/that of the propellant gas: the mixture in which igniter and surface deliver
 * now. The igniter alone so has its own characteristic velocity, and propellant alone that of the propellant.
 */
export function mixtureRatio(igniter: number, generated: number, ratio: number): number {
  const all = igniter + generated;
  return all > 0 ? (igniter * ratio + generated) / all : ratio;
}
