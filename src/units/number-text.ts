// Reading the number at the front of a text: decimals, exponents and workshop fractions (`3/8`, `1 1/2`).
// Anchored expressions without nested repeats, so the cost is linear in the length.

/** Where the number ends and what it is worth; `value` is NaN where there is none. */
export interface LeadingNumber {
  readonly value: number;
  readonly end: number;
}

const decimal = /[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?/y;
const whole = /^[+-]?\d+$/;
const fraction = /\/(\d+)| +(\d+)\/(\d+)/y; // after a whole number; `12e-6 1/K` is a number and the unit 1/K

/** Reads the number at the front of a text, `at` being its first character that is no space. */
export function leadingNumber(text: string, at: number): LeadingNumber {
  decimal.lastIndex = at;
  if (!decimal.test(text)) return { value: Number.NaN, end: at };
  const end = decimal.lastIndex;
  const digits = text.slice(at, end);
  const value = Number(digits);
  const next = text.charCodeAt(end);
  if ((next !== 47 && next !== 32) || !whole.test(digits)) return { value, end };
  fraction.lastIndex = end;
  const match = fraction.exec(text);
  if (!match) return { value, end };
  const [, below, top, bottom] = match;
  const part = Number(top) / Number(bottom);
  return {
    value: below ? value / Number(below) : digits[0] === '-' ? value - part : value + part,
    end: fraction.lastIndex,
  };
}
