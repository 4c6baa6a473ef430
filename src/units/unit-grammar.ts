import type { UnitFactor } from './exact-factor';
import { exactAtom } from './exact-factor';
import { refusalOf, unitSyntax, unknownUnit } from './unit-error';
import { spellings } from './unit-table';

// unit    = product [ '/' ( factor | '(' product ')' ) ]
// product = factor { ('*' | '·' | '⋅') factor }
// factor  = atom [ '^' number | superscripts ]
// One solidus, and nothing after its divisor: J/kg·K could be meant twice, so it is refused.

const superscripts = '⁰¹²³⁴⁵⁶⁷⁸⁹';
const products = '*·⋅×';

interface Cursor {
  readonly whole: string;
  at: number;
}

/** The factors of the unit text that begins at `at`; an empty text is the unit 1. */
export function parseUnitText(whole: string, at: number): readonly UnitFactor[] {
  const cursor: Cursor = { whole, at };
  skipSpaces(cursor);
  if (cursor.at >= whole.length) return [];
  const factors = product(cursor, 1);
  if (peek(cursor) === '/') {
    cursor.at++;
    skipSpaces(cursor);
    if (peek(cursor) === '(') {
      cursor.at++;
      factors.push(...product(cursor, -1));
      if (peek(cursor) !== ')') throw unitSyntax(whole, cursor.at, "the bracket after '/' is not closed");
      cursor.at++;
    } else factors.push(factor(cursor, -1));
    skipSpaces(cursor);
  }
  if (cursor.at < whole.length) throw leftOver(cursor, at);
  return factors;
}

function product(cursor: Cursor, sign: 1 | -1): UnitFactor[] {
  const factors = [factor(cursor, sign)];
  skipSpaces(cursor);
  while (products.includes(peek(cursor) || ' ')) {
    cursor.at++;
    factors.push(factor(cursor, sign));
    skipSpaces(cursor);
  }
  return factors;
}

function factor(cursor: Cursor, sign: 1 | -1): UnitFactor {
  skipSpaces(cursor);
  const { whole } = cursor;
  const start = cursor.at;
  while (cursor.at < whole.length && isAtomCharacter(whole[cursor.at])) cursor.at++;
  const name = whole.slice(start, cursor.at);
  if (name === '') throw unitSyntax(whole, start, 'a unit is missing here');
  const reply = refusalOf(name);
  if (reply) throw unitSyntax(whole, start, reply, 'ambiguous-unit');
  const atom = Object.hasOwn(spellings, name) ? spellings[name] : name;
  const unit = exactAtom(atom);
  if (!unit) throw unknownUnit(whole, start, name);
  return { atom, unit, power: sign * power(cursor) };
}

function power(cursor: Cursor): number {
  const text = cursor.whole.slice(cursor.at, cursor.at + 12);
  const match = /^\^([+-]?\d+(?:\.\d+)?)|^⁻?[⁰¹²³⁴-⁹]+/.exec(text);
  if (!match) {
    if (/^[\^⁻]/.test(text))
      throw unitSyntax(cursor.whole, cursor.at, 'an exponent is a whole number or a half');
    return 1;
  }
  const [all, plain] = match;
  cursor.at += all.length;
  return Number(plain ?? all.replace(/./g, (c) => (c === '⁻' ? '-' : String(superscripts.indexOf(c)))));
}

function leftOver({ whole, at }: Cursor, start: number) {
  const rest = whole[at];
  const before = whole.slice(start, at).trim();
  const [top, bottom] = before.split('/');
  const last = whole.slice(at + 1).trim();
  const twoWays = products.includes(rest)
    ? `a product after '/' reads two ways: write ${top}/(${bottom}*${last}) or ${top}*${last}/${bottom}`
    : /(?:psi|bar|Pa)$/.test(before) && /^\(?[ga]/.test(whole.slice(at))
      ? `write ${before}g (gauge) or ${before}a (absolute)`
      : undefined;
  const what =
    rest === '/'
      ? 'put the whole divisor in brackets'
      : isAtomCharacter(rest) || rest === '-' || rest === '.'
        ? "put '*' or '·' between two units"
        : `'${rest}' cannot follow '${before}'`;
  return unitSyntax(whole, at, twoWays ?? what, twoWays && 'ambiguous-unit');
}

function isAtomCharacter(c: string): boolean {
  return /[\p{L}\d%°"″'#_℃℉]/u.test(c);
}

const peek = (cursor: Cursor): string => cursor.whole[cursor.at] ?? '';

function skipSpaces(cursor: Cursor): void {
  while (/\s/.test(peek(cursor))) cursor.at++;
}
