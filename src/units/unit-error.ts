import { MeopError } from './errors';
import { exactAtom } from './exact-factor';
import { atoms, refusals, spellings } from './unit-table';

/** A unit string that does not follow the grammar; the message shows the position, shortened to a readable length. */
export function unitSyntax(whole: string, at: number, what: string, code = 'unit-syntax'): MeopError {
  const from = Math.max(0, at - 30);
  const shown = whole.slice(from, at + 30).replace(/\s/g, ' ');
  const problem = `${what}: '${from > 0 ? '…' : ''}${shown}' (character ${at + 1})`;
  return new MeopError({ code, problem, given: whole });
}

/** The message for an ambiguous spelling; `undefined` where a name is not ambiguous. */
export function refusalOf(name: string, divides: boolean): string | undefined {
  const [, first, second] = /^(k?N|Pa(?=s)|(?:in|ft)(?=l))(mm?|s|lb)f?s?$/.exec(name) ?? []; // Nm, Ns, ftlb
  const [, per] = (divides && /^(kg|k?mol|[gm])K$/.exec(name)) || []; // W/mK
  const [, base = '', digit] = /^(\p{L}+)([2-4])$/u.exec(name) ?? []; // mm2
  const milli = `m${name.slice(1)}`;
  let instead: string | undefined;
  if (/^['′]/.test(name)) instead = 'ft or arcmin';
  else if (Object.hasOwn(refusals, name)) instead = refusals[name];
  else if (second) instead = `${first}*${second}${second === 'lb' ? 'f' : ''}`;
  else if (per) instead = `${per}*K`;
  else if (exactAtom(base)) instead = `${base}^${digit}`;
  else if (/^M./.test(name) && !exactAtom(name) && exactAtom(milli)) instead = `${milli} (M is mega)`;
  return instead && `'${name}' could be meant twice: write ${instead}`;
}

/** A name that is not a unit, with the nearest known one. */
export function unknownUnit(whole: string, at: number, name: string): MeopError {
  const near = nearest(name);
  const hint = near ? ` (did you mean '${near}'?)` : '';
  return unitSyntax(whole, at, `unknown unit '${name.slice(0, 40)}'${hint}`, 'unknown-unit');
}

// In another case, or one letter different. The first letter must be correct: a lost prefix is a factor of a thousand.
function nearest(name: string): string | undefined {
  const lower = name.toLowerCase();
  const known = Object.entries(atoms).flatMap(([unit, [, prefixes = '']]) =>
    `${prefixes} `.split(' ').map((prefix) => prefix + unit),
  );
  const names = [...Object.keys(spellings), ...known].reverse();
  return (
    names.find((one) => one.toLowerCase() === lower || `${one}s` === name) ??
    names.find((one) => name.length > 2 && one[0] === name[0] && oneApart(name, one))
  );
}

function oneApart(a: string, b: string): boolean {
  let i = 0;
  while (i < a.length && a[i] === b[i]) i++;
  const [left, right] = [a.slice(i), b.slice(i)];
  // Of three letters, one different letter is another unit: lpm is not lbm.
  const swapped = a.length > 3 && left.slice(1) === right.slice(1);
  return swapped || left.slice(1) === right || left === right.slice(1);
}
