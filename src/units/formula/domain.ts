import { MeopError } from '../errors';
import { formatSi } from '../format';
import type { SiInput } from '../parse';
import { shownIn } from '../shown-unit';
import type { Unit } from '../unit';
import type { Domain, FormulaParameter } from './declaration';

/** Whether an SI value lies in a domain. */
export function inDomain(
  si: number,
  { above = -Infinity, below = Infinity, min = above, max = below, whole }: Domain,
): boolean {
  return si > above && si < below && si >= min && si <= max && (!whole || Number.isInteger(si));
}

const bounds = [
  ['above', 'above'],
  ['min', 'at least'],
  ['below', 'below'],
  ['max', 'at most'],
] as const;

/** A domain in words: `above 0 mm and below 1 m`. */
export function domainText({ kind, domain }: FormulaParameter, unit: Unit = shownIn(kind, false)): string {
  const shown = (si: number): string =>
    si === 0 && unit.originSi === 0 ? '0' : formatSi(si, unit.kind, unit, { figures: 6 });
  const parts = [
    ...(domain.whole ? ['a whole number'] : []),
    ...bounds.flatMap(([bound, words]) => {
      const si = domain[bound];
      return si === undefined ? [] : [`${words} ${shown(si)}`];
    }),
  ];
  return parts.join(' and ') || 'any finite value';
}

/** The error for a value outside its domain. */
export function outOfDomain(
  context: string,
  field: string,
  given: FormulaParameter,
  value: unknown,
  read: SiInput,
): MeopError {
  const text =
    typeof value === 'object' ? formatSi(read.si, given.kind, read.unit, { figures: 12 }) : String(value);
  const expected = domainText(given, read.unit.dimension.key === 0 ? undefined : read.unit);
  return new MeopError(
    'out-of-domain',
    `${context}: ${field}: ${text} given; the ${given.meaning} must be ${expected}`,
    field,
    {
      value,
      expected,
    },
  );
}
