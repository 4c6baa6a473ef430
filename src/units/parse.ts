import { MeopError } from './errors';
import { accepts } from './kind-rules';
import type { NamedKind } from './kinds';
import { leadingNumber } from './number-text';
import { aboveZero, isBelowZero, otherKind } from './quantity-error';
import { toSi, type Unit, unitAt, unitFor } from './unit';
import { unitSyntax } from './unit-error';

const longest = 200; // characters; no quantity needs more, and a pasted file should not be scanned

// Likely typing errors after a number: 1,450 and 1-1/2 and 1.2x10^3, among others.
const slip = /^(?:[,/]|-\d|['’_]?\d\d|[x×*·] ?10)/;

/** An SI double and the unit it was given in. */
export interface SiInput {
  readonly si: number;
  readonly unit: Unit;
}

/** Parses a string such as `3/8 in`; where a kind is given, the unit must be one of that kind. */
export function parse(text: string, kind: NamedKind | undefined): SiInput {
  if (text.length > longest)
    throw new MeopError({
      code: 'text-too-long',
      given: text,
      expected: `at most ${longest} characters long`,
    });
  const at = text.search(/\S/);
  const { value, end } = leadingNumber(text, at);
  if (end === at) throw noNumber(text);
  let start = end;
  while (text.charCodeAt(start) === 32) start++;
  const name = text.slice(start).trim();
  // Only seconds and K have another meaning where a kind is given; every other unit is parsed in place.
  const first = text[start];
  if (!(first > '@' && first < 'x') && slip.test(text.slice(start)))
    throw unitSyntax(
      text,
      start,
      'write a number as 1450 or 1.45e3, a fraction as 1 1/2 in, a reciprocal as 2 1/K',
    );
  const unit = kind && /^(?:K|s(?:ec.*)?)$/.test(name) ? unitFor(kind, name) : unitAt(text, start);
  const si = finiteSi(value, unit, text);
  if (kind !== undefined && !accepts(kind, unit.kind)) throw otherKind(text, unit.kind, kind, {});
  return { si, unit };
}

/** The number in SI; throws where it is not finite, or a temperature below absolute zero. */
export function finiteSi(value: number, unit: Unit, given: unknown, index?: number): number {
  const si = toSi(value, unit);
  const below = isBelowZero(si, unit.kind) && si > Number.NEGATIVE_INFINITY;
  if (Number.isFinite(si) && !below) return si;
  throw new MeopError({
    code: below ? 'out-of-domain' : 'not-finite',
    path: index === undefined ? undefined : `values[${index}]`,
    given: below ? `${value} ${unit.text}` : given,
    expected: below ? aboveZero : 'a finite number',
  });
}

/** The error for a value that does not start with a number. */
export function noNumber(given: unknown): MeopError {
  if (typeof given === 'string' && /^\s*[+-]?(?:nan|inf|∞)/i.test(given))
    return new MeopError({ code: 'not-finite', given, expected: 'a finite number' });
  return new MeopError({
    code: 'no-number',
    given,
    expected: 'a number and a unit',
    remedy: "Write for example '1000 psi' or '3/8 in'",
  });
}
