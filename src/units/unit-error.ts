import { MeopError } from './errors';
import { exactAtom } from './exact-factor';
import { atoms, refusals, spellings } from './unit-table';

/** A unit text that does not follow the grammar; the message shows where, cut to a readable length. */
export function unitSyntax(whole: string, at: number, what: string, code = 'unit-syntax'): MeopError {
  const from = Math.max(0, at - 30);
  const shown = whole.slice(from, at + 30).replace(/\s/g, ' ');
  const message = `${what}: '${from > 0 ? '…' : ''}${shown}' (character ${at + 1})`;
  return new MeopError(code, message, undefined, { value: whole });
}

/** The reply that an ambiguous spelling deserves; `undefined` where a name is not ambiguous. */
export function refusalOf(name: string): string | undefined {
  const [, first, second] = /^(k?N|Pa|in|ft)(mm?|s|lb)f?$/.exec(name) ?? []; // Nm, Ns, ftlb
  const [, base = '', digit] = /^(\p{L}+)([2-4])$/u.exec(name) ?? []; // mm2
  const milli = `m${name.slice(1)}`;
  let instead: string | undefined;
  if (Object.hasOwn(refusals, name)) instead = refusals[name];
  else if (second) instead = `${first}*${second}${second === 'lb' ? 'f' : ''}`;
  else if (exactAtom(base)) instead = `${base}^${digit}`;
  else if (/^M./.test(name) && !exactAtom(name) && exactAtom(milli)) instead = `${milli} (M is mega)`;
  return instead && `'${name}' could be meant twice: write ${instead}`;
}

/** A name that is no unit, with the nearest one that is. */
export function unknownUnit(whole: string, at: number, name: string): MeopError {
  const near = nearest(name);
  const hint = near ? ` (did you mean '${near}'?)` : '';
  return unitSyntax(whole, at, `no unit '${name.slice(0, 40)}'${hint}`, 'unknown-unit');
}

function nearest(name: string): string | undefined {
  if (name.length > 20) return undefined;
  let best: string | undefined;
  let least = name.length > 3 ? 3 : Math.min(name.length, 2); // another letter is no misspelling of a letter
  for (const candidate of candidates()) {
    const otherCase = candidate.toLowerCase() === name.toLowerCase();
    const distance = otherCase ? 0.5 : editDistance(name, candidate);
    if (distance < least || otherCase) {
      least = distance;
      best = candidate;
    }
  }
  return best;
}

function* candidates(): Generator<string> {
  for (const [name, [, list]] of Object.entries(atoms)) {
    yield name;
    for (const prefix of list?.split(' ') ?? []) yield prefix + name;
  }
  yield* Object.keys(spellings);
}

// Levenshtein distance on two short words.
function editDistance(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++)
      next.push(Math.min(next[j - 1] + 1, row[j] + 1, row[j - 1] + (a[i - 1] === b[j - 1] ? 0 : 1)));
    row = next;
  }
  return row[b.length];
}
