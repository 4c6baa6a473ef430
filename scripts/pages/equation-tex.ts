import { type Expression, partsOf, readExpression } from './equation';

/** TeX of a formula's equation; the remark behind it stays as words. */
export function equationTex(
  equation: string,
  output: string,
  inputs: readonly string[],
): { readonly tex: string; readonly remark: string } {
  const { left, right, remark } = partsOf(equation);
  const remarked = [...remark.matchAll(/(\S+) (?:=|from) /gu)].map(([, name]) => name);
  const side = left === output ? symbolTex(left) : tex(readExpression(left, inputs));
  return { tex: `${side} = ${tex(readExpression(right, [...inputs, ...remarked]))}`, remark };
}

/** TeX of one symbol as formulas declare it: `σ_h`, `c*_del`, `ΔT`, `A/A*`, `p02/p01`. */
export function symbolTex(symbol: string, place: 'in an equation' | 'in a line' = 'in an equation'): string {
  if (/[·(√]/.test(symbol)) {
    const names = symbol.split(/[·()√/]+/u).filter(Boolean);
    return tex(readExpression(symbol, names));
  }
  const slash = symbol.indexOf('/');
  if (slash > 0) {
    const [over, under] = [symbolTex(symbol.slice(0, slash)), symbolTex(symbol.slice(slash + 1))];
    return place === 'in a line' ? `${over}/${under}` : `\\frac{${over}}{${under}}`;
  }
  const [, before, letters, digits, mark, below] =
    /^([∫Δ]?)(\p{L}\p{M}*(?:\p{L}\p{M}*)*)(\d*)([*′]?)(?:_(.+))?$/u.exec(symbol) ?? [];
  if (letters === undefined) throw new Error(`no symbol: '${symbol}'`);
  const sub = [digits, below].filter(Boolean).map(subscript).join('');
  const prefix = before === 'Δ' ? '\\Delta ' : before === '∫' ? '\\int ' : '';
  const power = mark === '*' ? '^{*}' : mark === '′' ? "'" : '';
  const end = before === '∫' ? '\\,dt' : '';
  return `${prefix}${nameTex(letters)}${power}${sub === '' ? '' : `_{${sub}}`}${end}`;
}

const subscript = (text: string): string =>
  text
    .split(',')
    .map((part) => (/^\p{L}{2,}$/u.test(part) ? `\\mathrm{${part}}` : part))
    .join(',');

function nameTex(letters: string): string {
  const plain = letters.normalize('NFD');
  if (plain.endsWith('\u0307')) return `\\dot{${plain.slice(0, -1)}}`;
  return letters.length > 1 ? `\\mathrm{${letters}}` : letters;
}

/** TeX of an expression; brackets stand only where the tree needs them. */
export function tex(expression: Expression): string {
  switch (expression.is) {
    case 'number':
      return expression.text;
    case 'symbol':
      if (expression.name === 'π') return '\\pi';
      return symbolTex(expression.name);
    case 'sum':
      return expression.terms
        .map(
          ({ minus, of }, i) =>
            `${minus ? (i === 0 ? '-' : ' - ') : i === 0 ? '' : ' + '}${of.is === 'sum' ? bracketed(of) : tex(of)}`,
        )
        .join('');
    case 'product':
      return expression.factors.map(factor).join('');
    case 'quotient':
      return `\\frac{${tex(expression.over)}}{${tex(expression.under)}}`;
    case 'power': {
      const { base, exponent } = expression;
      // sin² β rather than (sin β)².
      if (base.is === 'call') return `${callName(base.name)}^{${tex(exponent)}}${argument(base.to)}`;
      return `${atom(base) ? `{${tex(base)}}` : bracketed(base)}^{${small(exponent)}}`;
    }
    case 'negative':
      return `-${expression.of.is === 'sum' ? bracketed(expression.of) : tex(expression.of)}`;
    case 'root':
      return `\\sqrt{${tex(expression.of)}}`;
    case 'call':
      return expression.name === 'exp'
        ? `\\exp${argument(expression.to)}`
        : `${callName(expression.name)}${argument(expression.to)}`;
  }
}

const callName = (name: string): string => (name.startsWith('erf') ? `\\operatorname{${name}}` : `\\${name}`);
const argument = (to: readonly Expression[]): string => `\\left(${to.map(tex).join(',\\; ')}\\right)`;
const bracketed = (expression: Expression): string => `\\left(${tex(expression)}\\right)`;

const atom = (expression: Expression): boolean =>
  expression.is === 'number' || (expression.is === 'symbol' && !/[/Δ∫]/.test(expression.name));

function factor(expression: Expression, i: number, all: readonly Expression[]): string {
  const text =
    expression.is === 'sum' || (expression.is === 'negative' && i > 0)
      ? bracketed(expression)
      : tex(expression);
  if (i === 0) return text;
  // Digits behind anything, and a fraction behind a number, would run together.
  const touching = /^\d/.test(text) || (all[i - 1].is === 'number' && expression.is === 'quotient');
  return `${touching ? ' \\cdot ' : ' \\, '}${text}`;
}

// A fraction in an exponent is small: on one line where both parts are short.
function small(exponent: Expression): string {
  const negative = exponent.is === 'negative' ? exponent.of : exponent;
  if (negative.is !== 'quotient') return tex(exponent);
  const part = (one: Expression): string =>
    one.is === 'sum' || one.is === 'product' ? bracketed(one) : tex(one);
  const simple = [negative.over, negative.under].every(
    ({ is }) => is === 'number' || is === 'symbol' || is === 'sum',
  );
  if (!simple) return tex(exponent);
  return `${exponent.is === 'negative' ? '-' : ''}${part(negative.over)}/${part(negative.under)}`;
}
