import { coherentText } from './dimension';
import { MeopError } from './errors';
import { dimensionOfKind, type Kind, kindFacts } from './kinds';
import { isQuantity } from './quantity-mark';

const article = (kind: Kind): string =>
  kind === 'dimensionless'
    ? 'a plain number'
    : kind.startsWith('dimension ')
      ? `in ${coherentText(dimensionOfKind(kind))}`
      : `${/^[aeiou]/.test(kind) ? 'an' : 'a'} ${kind}`;

// What to write instead, for the mix-ups of the trade: wanted < given.
const waysOut: Readonly<Record<string, string>> = {
  'force<mass': 'write lbf, kgf or N for a force',
  'mass<force': 'write kg, lb or oz for a mass',
  'absolute pressure<gauge pressure': 'convert with absolute(p, ambient)',
  'gauge pressure<absolute pressure': 'convert with gauge(p, ambient)',
  'temperature difference<temperature': 'write delta_degC, delta_degF or delta_K',
  'temperature<temperature difference': 'write degC, degF or K',
  'specific impulse<time': "write quantity('specific impulse', '230 s')",
  'volume<mass': 'write US_fl_oz for a fluid ounce',
};

function wayOut(given: Kind, wanted: Kind): string {
  const known = waysOut[`${wanted}<${given}`];
  if (known) return known;
  const beyond = dimensionOfKind(wanted).key - dimensionOfKind(given).key;
  if (beyond === dimensionOfKind('acceleration').key) return 'write lbf or kgf, since lb and kg are masses';
  const facts = kindFacts(wanted);
  if (!facts || wanted === 'dimensionless') return 'write a plain number';
  return `write it in ${facts.metric}${facts.us === facts.metric ? '' : ` or ${facts.us}`}, for example`;
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
  const out = wayOut(quantity?.kind ?? wanted, wanted);
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

/** A conversion to a unit of another kind. */
export function wrongUnit(subject: string, kind: Kind, unit: string, unitKind: Kind): MeopError {
  return new MeopError(
    'wrong-unit',
    `${subject} is ${article(kind)} and cannot be shown in '${unit}', ${article(unitKind)}: ${wayOut(unitKind, kind)}`,
    'unit',
    { value: unit, expected: kind },
  );
}
