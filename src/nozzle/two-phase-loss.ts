import { fromSiValue, type NamedKind, type Quantity, type QuantityInput, readInput, unitOf } from '../units';
import { type FieldsOf, requireFields } from '../units/known-fields';
import { readPositive, refusal } from '../units/refusal';

const name = 'twoPhaseLagBounds';

/** Options of {@link twoPhaseLagBounds}. */
export interface TwoPhaseLagOptions {
  /** Condensed mass fraction, from 0 to below 1. */
  readonly condensedMassFraction: number;
  readonly gasSpecificHeat: QuantityInput<'specific heat'>;
  readonly condensedSpecificHeat: QuantityInput<'specific heat'>;
  /** Specific gas constant of the gas alone. */
  readonly gasConstant: QuantityInput<'specific gas constant'>;
  /** Chamber temperature. */
  readonly temperature: QuantityInput<'temperature'>;
  /** Exit/chamber pressure ratio, above 0 and below 1. */
  readonly pressureRatio: number;
}

/** Specific impulse at ideal expansion, in the four limits of particle lag. */
export interface TwoPhaseLagBounds {
  /** Same velocity and same temperature: the upper bound, which the mixture γ represents. */
  readonly noLag: Quantity<'specific impulse'>;
  /** Same velocity; droplets keep the chamber temperature. */
  readonly thermalLag: Quantity<'specific impulse'>;
  /** Same temperature; droplets are not accelerated. */
  readonly velocityLag: Quantity<'specific impulse'>;
  /** Neither: the lower bound. */
  readonly fullLag: Quantity<'specific impulse'>;
  /** Ratio of lower to upper bound: the factor is between this and 1. */
  readonly leastFactor: number;
  /**
   * Ratio of the bound with thermal lag only to the upper bound: the remaining loss with droplets fine enough to
   * follow the flow.
   */
  readonly thermalLagFactor: number;
  readonly cautions: readonly string[];
}

const twoPhaseLagBoundsFields: FieldsOf<TwoPhaseLagOptions> = {
  condensedMassFraction: 'required',
  gasSpecificHeat: 'required',
  condensedSpecificHeat: 'required',
  gasConstant: 'required',
  temperature: 'required',
  pressureRatio: 'required',
};

/**
 * Bounds of the two-phase loss by particle lag: specific impulse at ideal expansion in the four limiting cases.
 * Fine droplets are near the upper bounds; only a firing determines where a small nozzle is between the bounds.
 *
 * Source: derived from the energy and momentum balance of each limit; the four limits are those of Sutton &
 * Biblarz, Rocket Propulsion Elements, 7th ed. (2001), section 3.5 (quoted from memory, not verified).
 *
 * @throws MeopError `out-of-domain` for values outside the ranges of the fields
 * @example twoPhaseLagBounds({ condensedMassFraction: 0, gasSpecificHeat: '1960 J/(kg*K)', condensedSpecificHeat: '1550 J/(kg*K)', gasConstant: '231 J/(kg*K)', temperature: '1700 K', pressureRatio: 0.02 }).leastFactor // => 1
 */
export function twoPhaseLagBounds(options: TwoPhaseLagOptions): TwoPhaseLagBounds {
  requireFields(name, options, twoPhaseLagBoundsFields);
  const read = (
    kind: NamedKind,
    field: keyof TwoPhaseLagOptions,
    holds: (si: number) => boolean,
    expected: string,
  ): number => {
    const { si } = readInput(kind, field, options[field], name);
    if (holds(si)) return si;
    throw refusal(name, field, options[field], expected);
  };
  const positive = (kind: NamedKind, field: keyof TwoPhaseLagOptions): number =>
    readPositive(kind, field, options[field], name).si;
  const x = read('dimensionless', 'condensedMassFraction', (v) => v >= 0 && v < 1, 'from 0 to below 1');
  const r = positive('specific gas constant', 'gasConstant');
  const gas = read('specific heat', 'gasSpecificHeat', (v) => v > r, 'above the gas constant');
  const condensed = positive('specific heat', 'condensedSpecificHeat');
  const hot = positive('temperature', 'temperature');
  const ratio = read('dimensionless', 'pressureRatio', (v) => v > 0 && v < 1, 'above 0 and below 1');

  // Enthalpy drop of a flow of specific heat c (per kg of moving mass) with a gas mass fraction `share`.
  const speed = (c: number, share: number): number =>
    Math.sqrt(-2 * c * hot * Math.expm1(((share * r) / c) * Math.log(ratio)));
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
    leastFactor: fullLag / noLag,
    thermalLagFactor: thermalLag / noLag,
    cautions: x > 0.1 ? ['The bounds are wide: they enclose the loss and do not estimate it.'] : [],
  };
}
