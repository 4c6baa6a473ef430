import type { MeopError } from './errors';
import type { UnitFactor } from './exact-factor';
import { exactAtom } from './exact-factor';
import { refusalOf, unitSyntax, unknownUnit } from './unit-error';
import { spellings, superscripts } from './unit-table';

// unit    = product [ '/' ( factor | '(' product ')' ) ]
// product = factor { ('*' | '·' | '⋅' | '×') factor }
// factor  = atom [ '^' number | superscripts ]
// One solidus, and nothing after its divisor: J/kg·K is ambiguous, so it is rejected.

const products = /[*·⋅×]/;
const factorText =
  /(\s*)([\p{L}\d%°˚"″'′#_℃℉]*)(?:\^([+-]?\d{1,8}(?:\.\d{1,8})?)(?!\d)|(⁻?[⁰¹²³⁴-⁹]{1,8}))?\s*/uy;

/** The factors of the unit string that begins at `from`; an empty string is the unit 1. */
export function parseUnitText(whole: string, from: number): readonly UnitFactor[] {
  const factors: UnitFactor[] = [];
  if (!whole.slice(from).trim()) return factors;
  let divides = false;
  let bracket = false;
  for (let at = from; ; ) {
    factorText.lastIndex = at;
    const [, spaces = '', name = '', plain, raised] = factorText.exec(whole) ?? [];
    const start = at + spaces.length;
    at = factorText.lastIndex;
    const size = Number(plain ?? digits(raised ?? '1'));
    factors.push({ ...factor(whole, start, name, divides), power: divides ? -size : size });
    const next = whole[at] ?? '';
    if (/[\^⁻]/.test(next)) throw unitSyntax(whole, at, 'an exponent is a whole number or a half');
    if (products.test(next) && (bracket || !divides)) at++;
    else if (next === '/' && !divides) {
      divides = true;
      const open = /^\s*\(/.exec(whole.slice(++at));
      bracket = open !== null;
      at += open?.[0].length ?? 0;
    } else {
      if (bracket && next === ')') bracket = !/^\s*$/.test(whole.slice(++at));
      if (!whole.slice(at).trim() && !bracket) return factors;
      throw leftOver(whole, from, at);
    }
  }
}

function factor(whole: string, start: number, given: string, divides: boolean): Omit<UnitFactor, 'power'> {
  const name = asciiName(given);
  if (name === '')
    throw unitSyntax(whole, start, whole[start] === '√' ? 'write a root as m^0.5' : 'a unit is missing here');
  const word = name.replace(/(?<=inch)es$|(?<=\w{4})s$/, ''); // inches, hours
  const atom = Object.hasOwn(spellings, word) ? spellings[word] : name;
  const unit = exactAtom(atom);
  const reply = unit && !divides ? undefined : refusalOf(word, divides);
  if (reply) throw unitSyntax(whole, start, reply, 'ambiguous-unit');
  if (!unit) throw unknownUnit(whole, start, name);
  return { atom, unit };
}

// µ has two code points, and the degree sign similar ones.
const asciiName = (name: string): string =>
  name
    .replace(/[µμ]/, 'u')
    .replace(/^(Δ?)[°º˚](?=[CFRK]?$)/, '$1deg')
    .replace('Δ', 'delta_');

const digits = (raised: string): string =>
  raised.replace(/\D/g, (c) => (c === '⁻' ? '-' : String(superscripts.indexOf(c))));

// The fix for a string that continues where its unit could have ended.
function leftOver(whole: string, from: number, at: number): MeopError {
  const before = whole.slice(from, at).trim();
  const rest = whole.slice(at).trim();
  const joined = refusalOf(before + rest.replace(/^-/, ''), false); // ft-lb as ftlb
  if (joined) return unitSyntax(whole, at, joined, 'ambiguous-unit');
  if (products.test(rest[0])) {
    const [top, bottom] = before.split('/');
    const next = rest.slice(1).trim();
    const readings = `${top}/(${bottom}*${next}) or ${top}*${next}/${bottom}`;
    return unitSyntax(whole, at, `a product after '/' reads two ways: write ${readings}`, 'ambiguous-unit');
  }
  if (/(?:psi|bar|Pa)$/.test(before) && /^\(?[ga]/.test(rest))
    return unitSyntax(whole, at, `write ${before}g (gauge) or ${before}a (absolute)`, 'ambiguous-unit');
  const what = !rest
    ? "the bracket after '/' is not closed"
    : (/(?:deg|°)$/.test(before) && /^[CFR]/.test(rest)) || /^H(?:g|2O)/.test(rest)
      ? `write ${before}${rest}`
      : /^\d/.test(rest)
        ? 'a quantity is one number and one unit: 5.5 ft, not 5 ft 6 in'
        : rest[0] === '/'
          ? 'put the whole divisor in brackets'
          : /^[\p{L}%°"″'_#√]|^[-.]./u.test(rest)
            ? "put '*' or '·' between two units"
            : `'${rest[0]}' cannot follow '${before}'`;
  return unitSyntax(whole, at, what);
}
