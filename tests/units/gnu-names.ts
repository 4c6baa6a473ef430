import { execFileSync } from 'node:child_process';
import gnu from './gnu-units.json';

/** What GNU Units made of a unit text of ours, when it was recorded. */
export interface GnuRow {
  readonly unit: string;
  readonly gnu: string;
  readonly value: number;
  readonly base: string;
}

export const gnuSource: string = gnu.source;
export const gnuRows: ReadonlyMap<string, GnuRow> = new Map(gnu.rows.map((row) => [row.unit, row]));

/** The exponents of m, kg, s, K and mol in a GNU base text such as `kg m / K s^3`; radians count as nothing. */
export function exponentsOf(base: string): readonly number[] {
  const [above = '', below = ''] = base.split('/');
  const found = new Map<string, number>();
  for (const [text, sign] of [
    [above, 1],
    [below, -1],
  ] as const)
    for (const word of text.split(/[\s*]+/).filter(Boolean)) {
      const [name, power = '1'] = word.split('^');
      found.set(name, (found.get(name) ?? 0) + sign * Number(power));
    }
  return ['m', 'kg', 's', 'K', 'mol'].map((name) => found.get(name) ?? 0);
}

/** The path of GNU Units, or `undefined` where it is not installed. */
export function gnuInstalled(): boolean {
  try {
    return execFileSync('units', ['--version'], { encoding: 'utf8' }).startsWith('GNU Units');
  } catch {
    return false;
  }
}

/** What GNU Units makes of each expression now: a number and base units, or `undefined` where it refuses. */
export function askGnu(
  expressions: readonly string[],
): readonly ({ value: number; base: string } | undefined)[] {
  // One process answers every line; an empty second line asks for the definition, a mark tells the answers apart.
  const input = expressions.map((text) => `${text}\n\n12345679 mol^7\n\n`).join('');
  const answers = execFileSync('units', ['-q', '-1', '-t', '-o', '%.17g'], { input, encoding: 'utf8' })
    .split(/12345679 mol\^7\n/)
    .slice(0, expressions.length);
  return answers.map((answer) => {
    const match = /^([\d.e+-]+)(.*)$/.exec(answer.trim().split(' = ').at(-1)?.trim() ?? '');
    return match ? { value: Number(match[1]), base: match[2].trim() } : undefined;
  });
}
