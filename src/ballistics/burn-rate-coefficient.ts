import { MeopError, type UnitOf, unitFor } from '../units';
import { type FieldsOf, requireFields } from '../units/known-fields';

/** The units that a burn-rate coefficient is quoted in: those of r and of p in r = a·pⁿ. */
export interface CoefficientUnits {
  readonly rateUnit: UnitOf<'speed'>;
  readonly pressureUnit: UnitOf<'absolute pressure'>;
}

const unitFields: FieldsOf<CoefficientUnits> = { rateUnit: 'required', pressureUnit: 'required' };
const fields: FieldsOf<Parameters<typeof convertBurnRateCoefficient>[0]> = {
  coefficient: 'required',
  exponent: 'required',
  from: 'required',
  to: 'required',
  referencePressure: 'optional',
};

/**
 * The coefficient a of r = a·pⁿ in other units. The factor depends on n: there is no such thing as the conversion
 * factor of a.
 *
 * a₂ = a₁·(rate unit 1 / rate unit 2)·(pressure unit 2 / pressure unit 1)ⁿ. With `referencePressure` (in units of
 * `from.pressureUnit`, default 1) the coefficient given is the rate at that pressure.
 *
 * Source: from the definition of the power law.
 *
 * @throws MeopError `not-finite`, `unknown-unit`, `wrong-unit`
 * @example convertBurnRateCoefficient({ coefficient: 0.0665, exponent: 0.319, from: { rateUnit: 'in/s', pressureUnit: 'psi' }, to: { rateUnit: 'mm/s', pressureUnit: 'MPa' } }).toPrecision(9) // => '8.26357183'
 */
export function convertBurnRateCoefficient(options: {
  readonly coefficient: number;
  readonly exponent: number;
  readonly from: CoefficientUnits;
  readonly to: CoefficientUnits;
  readonly referencePressure?: number;
}): number {
  requireFields('convertBurnRateCoefficient', options, fields);
  const { coefficient, exponent, from, to, referencePressure = 1 } = options;
  requireFields('convertBurnRateCoefficient: from', from, unitFields);
  requireFields('convertBurnRateCoefficient: to', to, unitFields);
  for (const [field, value] of Object.entries({ coefficient, exponent, referencePressure }))
    if (!Number.isFinite(value))
      throw new MeopError(
        'not-finite',
        `convertBurnRateCoefficient: ${field}: ${value} given; a finite number is expected`,
        field,
        { value },
      );
  const rate = sizeOf('speed', from.rateUnit, 'from.rateUnit') / sizeOf('speed', to.rateUnit, 'to.rateUnit');
  const pressure =
    sizeOf('absolute pressure', to.pressureUnit, 'to.pressureUnit') /
    sizeOf('absolute pressure', from.pressureUnit, 'from.pressureUnit');
  return coefficient * rate * (pressure / referencePressure) ** exponent;
}

/** SI size of a unit of rate or of absolute pressure. */
export function sizeOf(kind: 'speed' | 'absolute pressure', text: string, field: string): number {
  const unit = unitFor(kind, text);
  const general = kind === 'speed' ? 'speed' : 'pressure';
  if (unit.kind === kind || unit.kind === general) return unit.factor / unit.divisor;
  throw new MeopError(
    'wrong-unit',
    `${field}: '${text}' is a unit of ${unit.kind}; ${kind} is expected`,
    field,
    {
      value: text,
      expected: kind,
    },
  );
}
