import { coherentText } from './dimension';
import { MeopError } from './errors';
import { dimensionOfKind, type Kind } from './kinds';
import { isQuantity } from './quantity-mark';
import { shownUnits } from './shown-unit';

export const article = (kind: Kind): string =>
  kind === 'dimensionless'
    ? 'a plain number'
    : kind.startsWith('dimension ')
      ? `in ${coherentText(dimensionOfKind(kind))}`
      : `${/^[aeiou]/.test(kind) ? 'an' : 'a'} ${kind}`;

// What to write instead, for the mix-ups of the trade: wanted < given.
export const remedies: Readonly<Record<string, string>> = {
  'force<mass': 'write lbf, kgf or N',
  'mass<force': 'write kg, lb or oz',
  'absolute pressure<gauge pressure': 'convert with absolute(p, ambient)',
  'gauge pressure<absolute pressure': 'convert with gauge(p, ambient)',
  'temperature difference<temperature': 'write delta_degC, delta_degF or delta_K',
  'temperature<temperature difference': 'write degC, degF or K',
  'specific impulse<time': "write quantity('specific impulse', '230 s')",
  'time<speed': "write .as('specific impulse') before s",
  'volume<mass': 'write US_fl_oz',
};

/** What to write where a kind was given and another is wanted. */
export function remedyFor(given: Kind, wanted: Kind): string {
  const known = remedies[`${wanted}<${given}`];
  if (known) return known;
  const beyond = dimensionOfKind(wanted).key - dimensionOfKind(given).key;
  if (beyond === dimensionOfKind('acceleration').key && dimensionOfKind(given).exponents[1])
    return 'write lbf or kgf, since lb and kg are masses';
  if (wanted === 'dimensionless') return 'write a plain number';
  return `write it in ${shownUnits(wanted)
    .map((unit) => unit.text)
    .join(' or ')}, for example`;
}

/** How a value is quoted in a message: as it was given, cut to a readable length. */
export const quoted = (value: unknown): string => {
  if (typeof value === 'string') return `'${value.length > 60 ? `${value.slice(0, 60)}…` : value}'`;
  return Object(value) === value ? `this ${typeof value}` : String(value);
};

/** A quantity of the wrong kind: `pressure: '1000 mm' is a length; a gauge pressure is expected: …`. */
export function wrongKind(field: string, given: unknown, wanted: Kind, context = field): MeopError {
  const quantity = isQuantity(given) ? given : undefined;
  const text = quantity ? quantity.toJSON() : quoted(given);
  const what = quantity ? `'${text}' is ${article(quantity.kind)}` : `${text} is not a quantity`;
  const out = typeof given === 'string' ? `write q(${text})` : remedyFor(quantity?.kind ?? wanted, wanted);
  return new MeopError(
    'wrong-kind',
    `${context === '' ? '' : `${context}: `}${what}; ${article(wanted)} is expected: ${out}`,
    field,
    {
      value: given,
      expected: wanted,
    },
  );
}
