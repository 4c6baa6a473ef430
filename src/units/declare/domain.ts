import { MeopError } from '../errors';
import { formatSi } from '../format';
import type { NamedKind } from '../kinds';
import { shownIn } from '../shown-unit';
import type { Unit } from '../unit';
import type { Place } from './place';

/** The SI values that an input accepts. */
export interface Domain {
  /** Exclusive lower bound. */
  readonly above?: number;
  /** Exclusive upper bound. */
  readonly below?: number;
  /** Inclusive lower bound. */
  readonly min?: number;
  /** Inclusive upper bound. */
  readonly max?: number;
  /** True for integers only. */
  readonly whole?: boolean;
}

/** True if an SI value is in a domain. */
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
export function domainText(kind: NamedKind, domain: Domain, unit: Unit = shownIn(kind, false)): string {
  const parts = [
    ...(domain.whole ? ['a whole number'] : []),
    ...bounds.flatMap(([bound, words]) => {
      const si = domain[bound];
      return si === undefined ? [] : [`${words} ${formatSi(si, unit.kind, unit, { figures: 6 })}`];
    }),
  ];
  return parts.join(' and ') || 'any finite value';
}

/** The error for a value outside its domain, whose bounds are shown in the unit it was given in. */
export function outOfDomain(
  kind: NamedKind,
  domain: Domain,
  given: unknown,
  unit: Unit,
  { procedure, path }: Place,
): MeopError {
  const expected = domainText(kind, domain, unit.dimension.key === 0 ? undefined : unit);
  return new MeopError({ code: 'out-of-domain', procedure, path, given, expected });
}
