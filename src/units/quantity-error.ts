import { coherentText } from './dimension';
import { type ErrorFacts, quoted } from './error-message';
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

/** True for a temperature below absolute zero, beyond the rounding of °F. */
export const isBelowZero = (si: number, kind: Kind): boolean => kind === 'temperature' && si < -1e-9;

/** What is expected of such a temperature. */
export const aboveZero = 'at or above absolute zero, 0 K';

// Fixes for common confusions of kinds: required < given.
export const remedies: Readonly<Record<string, string>> = {
  'force<mass': 'Write lbf, kgf or N',
  'mass<force': 'Write kg, lb or oz',
  'absolute pressure<gauge pressure': 'Convert with absolute(p, ambient)',
  'gauge pressure<absolute pressure': 'Convert with gauge(p, ambient)',
  'temperature difference<temperature': 'Write delta_degC, delta_degF or delta_K',
  'temperature<temperature difference': 'Write degC, degF or K',
  'specific impulse<time': "Write quantity('specific impulse', '230 s')",
  'time<speed': "Write .as('specific impulse') before s",
  'volume<mass': 'Write US_fl_oz',
};

/** The fix for a value of one kind where another is required. */
export function remedyFor(given: Kind, wanted: Kind): string {
  const known = remedies[`${wanted}<${given}`];
  if (known) return known;
  const beyond = dimensionOfKind(wanted).key - dimensionOfKind(given).key;
  if (beyond === dimensionOfKind('acceleration').key && dimensionOfKind(given).exponents[1])
    return 'Write lbf or kgf, since lb and kg are masses';
  return unitRemedy(wanted);
}

/** Units that a kind is written in. */
export const unitRemedy = (kind: Kind): string =>
  kind === 'dimensionless'
    ? 'Write a plain number'
    : `Use a unit such as ${shownUnits(kind)
        .map((unit) => unit.text)
        .join(' or ')}`;

/** A value of the wrong kind: `pressure must be a gauge pressure, got '1000 mm' (a length).` */
export function wrongKind(given: unknown, wanted: Kind, path?: string, procedure?: string): MeopError {
  const kind = isQuantity(given) ? given.kind : undefined;
  const remedy = typeof given === 'string' ? `Write q(${quoted(given)})` : remedyFor(kind ?? wanted, wanted);
  return otherKind(given, kind, wanted, { path, procedure, remedy });
}

/** {@link wrongKind} of a value whose kind is known. */
export function otherKind(
  given: unknown,
  kind: Kind | undefined,
  wanted: Kind,
  { path, procedure, remedy = remedyFor(kind ?? wanted, wanted) }: Partial<ErrorFacts>,
): MeopError {
  const note = kind && article(kind);
  return new MeopError({
    code: 'wrong-kind',
    procedure,
    path,
    given,
    note,
    expected: article(wanted),
    remedy,
  });
}
