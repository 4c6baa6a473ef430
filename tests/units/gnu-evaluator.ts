import { gnuRows } from './gnu-names';

// A small evaluator of quantity texts that shares no code with the library: its units are GNU Units' record.

/** What a text is worth in SI, and the same as an expression of GNU Units. */
export interface Evaluated {
  readonly si: number;
  readonly gnu: string;
}

const decimal = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?/;
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
  const whole = text.trim();
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
  const unit = rest.trim();
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
  const row = match && gnuRows.get(match[1]);
  if (!match || !row) return undefined;
  const plain = match[3]?.replace(/[^⁻]/gu, (c) => String(raised.indexOf(c))).replace('⁻', '-');
  const power = sign * Number(match[2] ?? plain ?? 1);
  return { si: row.value ** power, gnu: `(${row.gnu})^(${power})` };
}
