import { droplets, gasAlone } from '../thermo/gas-inputs';
import { fromSiValue, procedure, type Quantity, ratio, unitOf } from '../units';
import { chamberTemperature } from './nozzle-inputs';

/** Specific impulse, ideally expanded, in the four limits of how droplets follow the gas. */
export interface TwoPhaseLagBounds {
  /** Same velocity, same temperature: the upper bound, to which the mixture γ applies. */
  readonly noLag: Quantity<'specific impulse'>;
  /** Same velocity, but droplets remain at the chamber temperature. */
  readonly thermalLag: Quantity<'specific impulse'>;
  /** Droplets give up their heat but are not accelerated. */
  readonly velocityLag: Quantity<'specific impulse'>;
  /** Droplets are neither accelerated nor cooled: the lower bound. */
  readonly fullLag: Quantity<'specific impulse'>;
  /** Lower/upper bound: the factor is between this and 1. */
  readonly minFactor: number;
  /** Thermal lag only/upper bound: the remaining loss with droplets fine enough to follow the flow. */
  readonly thermalLagFactor: number;
  readonly cautions: readonly string[];
}

/**
 * Bounds of the loss by droplets that lag behind the gas: specific impulse at equal exit and ambient pressure in the four
 * limiting cases. Fine droplets come near the upper bounds; only a firing shows where a small nozzle is between the bounds.
 *
 * @example twoPhaseLagBounds({ condensedMassFraction: 0, gasSpecificHeat: '1960 J/(kg*K)', condensedSpecificHeat: '1550 J/(kg*K)', gasConstant: '231 J/(kg*K)', temperature: '1700 K', pressureRatio: 0.02 }).minFactor // => 1
 */
export const twoPhaseLagBounds = /* @__PURE__ */ procedure({
  name: 'twoPhaseLagBounds',
  title: 'Bounds of the loss by droplets that lag behind the gas',
  source:
    'Derived from the energy and momentum balance of each limit; the four limits: Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), section 3.5 (quoted from memory, not verified)',
  inputs: {
    ...droplets,
    gasConstant: gasAlone,
    temperature: chamberTemperature,
    pressureRatio: ratio('p_e/p_c', 'exit/chamber pressure', { above: 0, below: 1 }),
  },
  gives: 'specific impulse without lag, with thermal lag, with velocity lag and with both, and their ratios',
  example: {
    condensedMassFraction: 0.43,
    gasSpecificHeat: '1960 J/(kg*K)',
    condensedSpecificHeat: '1550 J/(kg*K)',
    gasConstant: '231 J/(kg*K)',
    temperature: '1700 K',
    pressureRatio: 0.02,
  },
  checks: [
    ({ gasSpecificHeat, gasConstant }) =>
      gasSpecificHeat.si > gasConstant.si
        ? undefined
        : {
            path: 'gasSpecificHeat',
            given: gasSpecificHeat,
            expected: `above the gas constant, ${gasConstant}`,
          },
  ],
  run: ({
    condensedMassFraction: x,
    gasSpecificHeat: { si: gas },
    condensedSpecificHeat: { si: condensed },
    gasConstant: { si: r },
    temperature: { si: hot },
    pressureRatio,
  }): TwoPhaseLagBounds => {
    // From the enthalpy drop of a flow of specific heat c (per unit mass of what moves) whose gas makes up `share` of it.
    const speed = (c: number, share: number): number =>
      Math.sqrt(-2 * c * hot * Math.expm1(((share * r) / c) * Math.log(pressureRatio)));
    const mixture = (1 - x) * gas + x * condensed;
    const noLag = speed(mixture, 1 - x);
    const thermalLag = speed((1 - x) * gas, 1 - x);
    const velocityLag = (1 - x) * speed(mixture / (1 - x), 1);
    const fullLag = (1 - x) * speed(gas, 1);
    const impulse = (si: number): Quantity<'specific impulse'> =>
      fromSiValue(si, 'specific impulse', unitOf('m/s'));
    return {
      noLag: impulse(noLag),
      thermalLag: impulse(thermalLag),
      velocityLag: impulse(velocityLag),
      fullLag: impulse(fullLag),
      minFactor: fullLag / noLag,
      thermalLagFactor: thermalLag / noLag,
      cautions: x > 0.1 ? ['The bounds are wide: they bracket the loss but do not estimate it.'] : [],
    };
  },
});
