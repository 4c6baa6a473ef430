import {
  type Arguments,
  absolutePressure,
  type Formula,
  formula,
  type Quantity,
  ratio,
  speed,
} from '../units';
import type { BurnLaw } from './burn-law';
import { type BurnConditions, rateByLaw } from './rate-by-law';

const inputs = {
  referenceRate: speed('r_ref', 'burning rate at the reference pressure', { above: 0 }),
  referencePressure: absolutePressure('p_ref', 'reference pressure'),
  exponent: ratio('n', 'pressure exponent', { below: 1 }),
  pressure: absolutePressure('p', 'chamber pressure'),
};

/** The burning rate: by Saint-Robert's equation, or by a burn law at given conditions. */
export interface BurnRate extends Formula<typeof inputs, 'speed'> {
  (values: Arguments<typeof inputs>): Quantity<'speed'>;
  /** By a burn law: the band that holds, and the grain temperature where one is given. */
  (law: BurnLaw, conditions: BurnConditions): Quantity<'speed'>;
}

/**
 * Burning rate by Saint-Robert's law, written from a rate at a reference pressure so that no unit is ever raised to a
 * power that is not whole. With a burn law as first argument, `burnRate(law, { pressure, temperature })`, the rate by
 * that law: its band, its grain temperature, and a caution where the law was not characterised.
 *
 * @throws MeopError `out-of-domain`, and `out-of-range` where the law is told to refuse pressures outside its range
 * @example burnRate({ referenceRate: '8 mm/s', referencePressure: '1 MPa', exponent: 0.3, pressure: '1 MPa' }).in('mm/s') // => 8
 */
export const burnRate: BurnRate = /* @__PURE__ */ withLaw();

function withLaw(): BurnRate {
  const equation = formula({
    name: 'burnRate',
    title: "Saint-Robert's burning-rate law",
    equation: 'r = r_ref·(p / p_ref)^n',
    source:
      'Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), ch. 11, r = a·pⁿ with a = r_ref / p_refⁿ',
    inputs,
    output: speed('r', 'burning rate'),
    example: { referenceRate: '8 mm/s', referencePressure: '1 MPa', exponent: 0.3, pressure: '5 MPa' },
    si: ({ referenceRate, referencePressure, exponent, pressure }) =>
      referenceRate * (pressure / referencePressure) ** exponent,
    solve: {
      referenceRate: (rate, { referencePressure, exponent, pressure }) =>
        rate / (pressure / referencePressure) ** exponent,
      pressure: (rate, { referenceRate, referencePressure, exponent }) =>
        referencePressure * (rate / referenceRate) ** (1 / exponent),
      exponent: (rate, { referenceRate, referencePressure, pressure }) =>
        Math.log(rate / referenceRate) / Math.log(pressure / referencePressure),
    },
  });
  const call = (first: Arguments<typeof inputs> | BurnLaw, conditions?: BurnConditions): Quantity<'speed'> =>
    isBurnLaw(first) ? rateByLaw(first, conditions) : equation(first);
  // Everything a formula carries goes along, so that it is explained, listed and tested as one.
  const made = Object.assign(call, equation);
  Object.defineProperty(made, 'name', { value: 'burnRate' });
  return made;
}

// Whatever else was given goes to the formula, whose reply names what is missing.
function isBurnLaw(value: unknown): value is BurnLaw {
  return typeof value === 'object' && value !== null && 'bands' in value;
}
