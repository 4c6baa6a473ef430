import { inputs, optional, procedure, ratio } from '../units';
import { coefficientUnits } from './burn-law-inputs';
import { sizeOf } from './read-burn-law';

/**
 * Converts the coefficient a of r = a·pⁿ to other units: a₂ = a₁·(rate unit 1 / rate unit 2)·(pressure unit 2 / pressure unit 1)ⁿ.
 * The factor depends on n, so that no single conversion factor of a exists.
 *
 * @example convertBurnRateCoefficient({ coefficient: 0.0665, exponent: 0.319, from: { rateUnit: 'in/s', pressureUnit: 'psi' }, to: { rateUnit: 'mm/s', pressureUnit: 'MPa' } }).toPrecision(9) // => '8.26357183'
 */
export const convertBurnRateCoefficient = /* @__PURE__ */ procedure({
  name: 'convertBurnRateCoefficient',
  title: 'Burn-rate coefficient in other units',
  source: 'definition of the power law',
  inputs: {
    coefficient: ratio('a', 'coefficient a of r = a·pⁿ'),
    exponent: ratio('n', 'pressure exponent'),
    from: inputs(coefficientUnits, { meaning: 'units of the coefficient' }),
    to: inputs(coefficientUnits, { meaning: 'units of the result' }),
    referencePressure: optional(
      ratio('p_ref', 'pressure, in units of from.pressureUnit, at which the rate is the coefficient'),
      1,
    ),
  },
  gives: 'the coefficient in the other units',
  example: {
    coefficient: 0.0665,
    exponent: 0.319,
    from: { rateUnit: 'in/s', pressureUnit: 'psi' },
    to: { rateUnit: 'mm/s', pressureUnit: 'MPa' },
  },
  run: ({ coefficient, exponent, from, to, referencePressure }): number => {
    const rate = sizeOf(from.rateUnit) / sizeOf(to.rateUnit);
    const pressure = sizeOf(to.pressureUnit) / sizeOf(from.pressureUnit);
    return coefficient * rate * (pressure / referencePressure) ** exponent;
  },
});
