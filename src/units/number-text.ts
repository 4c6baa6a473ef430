// Parses the number at the start of a string: decimals, exponents and workshop fractions (`3/8`, `1 1/2`, `1½`).
// Anchored expressions without nested repeats, so the cost is linear in the length.

/** End of the number and its value; `value` is NaN where there is none. */
export interface LeadingNumber {
  readonly value: number;
  readonly end: number;
}

// A minus is a hyphen or the minus sign.
const decimal = /[+−-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+−-]?\d+)?/y;
const fraction = /([+−-]?)(?:(\d*) ?([¼-¾⅐-⅞])(?!\d)|(?:(\d+) +)?(\d+)[/⁄](\d+))/y; // `12e-6 1/K` is a number and the unit 1/K

/** Parses the number at the start of a string; `at` is its first character that is not a space. */
export function leadingNumber(text: string, at: number): LeadingNumber {
  decimal.lastIndex = at;
  const digits = decimal.exec(text)?.[0];
  const end = digits ? decimal.lastIndex : at;
  // No fraction continues with a letter, and most strings do.
  const next = text[text[end] === ' ' ? end + 1 : end];
  fraction.lastIndex = at;
  const found = next > '@' && next < 'x' ? null : fraction.exec(text);
  if (found) {
    const [, sign, before, glyph, whole = before, ...parts] = found;
    const [top, bottom] = glyph ? glyph.normalize('NFKD').split('⁄') : parts;
    const size = Number(whole ?? 0) + Number(top) / Number(bottom);
    return { value: sign && sign !== '+' ? -size : size, end: fraction.lastIndex };
  }
  return { value: digits ? Number(digits) || Number(digits.replaceAll('−', '-')) : Number.NaN, end };
}
