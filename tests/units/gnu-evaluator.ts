import { gnuRows } from './gnu-names';

// A small evaluator of quantity texts that shares no code with the library: its units are GNU Units' record.

/** What a text is worth in SI, and the same as an expression of GNU Units. */
export interface Evaluated {
  readonly si: number;
  readonly gnu: string;
}

const decimal = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?/;
const glyphs: Readonly<Record<string, string>> = Object.fromEntries(
  '¼1/4 ½1/2 ¾3/4 ⅐1/7 ⅑1/9 ⅒1/10 ⅓1/3 ⅔2/3 ⅕1/5 ⅖2/5 ⅗3/5 ⅘4/5 ⅙1/6 ⅚5/6 ⅛1/8 ⅜3/8 ⅝5/8 ⅞7/8'
    .split(' ')
    .map((row) => [row[0], row.slice(1)]),
);
const raised = '⁰¹²³⁴⁵⁶⁷⁸⁹';
const scales: Readonly<Record<string, 'tempC' | 'tempF'>> = {
  degC: 'tempC',
  '°C': 'tempC',
  '℃': 'tempC',
  degF: 'tempF',
  '°F': 'tempF',
  '℉': 'tempF',
};

/** The worth of a text, or `undefined` where these rules do not read it. */
export function evaluate(text: string): Evaluated | undefined {
  const trimmed = text
    .trim()
    .replace(/^−/, '-')
    .replace(/^([+-]?[\d.]+[eE])−/, '$1-');
  const whole = trimmed.replace(
    /^([+-]?)(\d*) ?([¼-¾⅐-⅞])/,
    (_, sign: string, before: string, glyph: string) =>
      [sign, before && `${before} `, glyphs[glyph]].join(''),
  );
  const match = decimal.exec(whole);
  if (!match) return undefined;
  let value = Number(match[0]);
  let rest = whole.slice(match[0].length);
  if (/^[+-]?\d+$/.test(match[0])) {
    const simple = /^\/(\d+)/.exec(rest);
    const mixed = /^ +(\d+)\/(\d+)/.exec(rest);
    if (simple) value /= Number(simple[1]);
    else if (mixed) value += (match[0].startsWith('-') ? -1 : 1) * (Number(mixed[1]) / Number(mixed[2]));
    rest = rest.slice((simple ?? mixed ?? [''])[0].length);
  }
  const unit = rest.trim().replace(/^[º˚]/, '°');
  const scale = Object.hasOwn(scales, unit) ? scales[unit] : undefined;
  if (scale === 'tempC') return { si: value + 273.15, gnu: `tempC(${value})` };
  if (scale === 'tempF') return { si: ((value + 459.67) * 5) / 9, gnu: `tempF(${value})` };
  const size = sizeOf(unit);
  return size && { si: value * size.si, gnu: `(${value}) * ${size.gnu}` };
}

function sizeOf(unit: string): Evaluated | undefined {
  if (unit === '') return { si: 1, gnu: '1' };
  const [above, below, ...more] = unit.split('/');
  if (more.length > 0) return undefined;
  const bracketed = below === undefined ? undefined : /^\s*\((.*)\)\s*$/s.exec(below);
  const factors = [
    ...above.split(/[*·⋅×]/).map((text) => factor(text, 1)),
    ...(below === undefined
      ? []
      : (bracketed ? bracketed[1].split(/[*·⋅×]/) : [below]).map((text) => factor(text, -1))),
  ];
  let si = 1;
  const expressions: string[] = [];
  for (const one of factors) {
    if (!one) return undefined;
    si *= one.si;
    expressions.push(one.gnu);
  }
  return { si, gnu: expressions.join(' * ') };
}

function factor(text: string, sign: 1 | -1): Evaluated | undefined {
  const match = /^(.+?)(?:\^([+-]?\d+(?:\.\d+)?)|(⁻?[⁰¹²³⁴⁵⁶⁷⁸⁹]+))?$/su.exec(text.trim());
  const name = match?.[1].replace(/^[µμ]/, 'u').replace(/^(Δ?)[º˚]/, '$1°') ?? '';
  const row = gnuRows.get(match?.[1] ?? '') ?? gnuRows.get(name);
  if (!match || !row) return undefined;
  const plain = match[3]?.replace(/[^⁻]/gu, (c) => String(raised.indexOf(c))).replace('⁻', '-');
  const power = sign * Number(match[2] ?? plain ?? 1);
  return { si: row.value ** power, gnu: `(${row.gnu})^(${power})` };
}
