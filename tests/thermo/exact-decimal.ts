import { Decimal } from 'decimal.js';

const Wide = Decimal.clone({ precision: 60 });

/** A double as a decimal of exactly the same value: the constructor alone would take its shortest text instead. */
export function exact(value: number): Decimal {
  const bits = new BigUint64Array(Float64Array.of(Math.abs(value)).buffer)[0];
  const exponent = Number(bits >> 52n);
  const fraction = bits & ((1n << 52n) - 1n);
  const mantissa = exponent === 0 ? fraction : fraction | (1n << 52n);
  const scaled = new Wide(mantissa.toString()).mul(new Wide(2).pow((exponent || 1) - 1075));
  return value < 0 ? scaled.neg() : scaled;
}

/** The distance of a double from a decimal, in units in the last place of the double nearest to it. */
export function ulps(found: number, reference: Decimal): number {
  const near = Math.abs(reference.toNumber());
  const bits = new BigUint64Array(Float64Array.of(near).buffer);
  bits[0] += 1n;
  const unit = new Float64Array(bits.buffer)[0] - near;
  return exact(found).minus(reference).abs().div(exact(unit)).toNumber();
}
