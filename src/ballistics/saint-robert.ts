import { type Arguments, type Formula, formula, type Quantity, speed } from '../units';
import { type BurnLaw, isBurnLaw } from './burn-law';
import { powerLaw, ratePoint } from './burn-law-inputs';
import { type BurnConditions, rateByLaw } from './rate-by-law';

const inputs = { ...powerLaw, pressure: ratePoint.fields.pressure };

/** The burning rate: by Saint-Robert's equation, or by a burn law at given conditions. */
export interface BurnRate extends Formula<typeof inputs, 'speed'> {
  (values: Arguments<typeof inputs>): Quantity<'speed'>;
  /** By a burn law: its band at that pressure, and the grain temperature where one is given. */
  (law: BurnLaw, conditions: BurnConditions): Quantity<'speed'>;
}

/**
 * Burning rate by Saint-Robert's law, written from a rate at a reference pressure so that no unit is raised to a
 * fractional power. With a burn law as first argument, `burnRate(law, { pressure, temperature })`, the rate by
 * that law: its band, its grain temperature, and a caution outside its characterised range.
 *
 * @throws MeopError `out-of-range` where the law does not allow pressures outside its range
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
  // With every property of the formula, so that it is explained, listed and tested as one; its getters stay getters.
  Object.defineProperties(call, Object.getOwnPropertyDescriptors(equation));
  return call as typeof call & typeof equation; // true: the properties are those of the formula
}
