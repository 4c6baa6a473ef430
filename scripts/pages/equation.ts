/** An equation of a formula as a tree: what its text says, without brackets. */
export type Expression =
  | { readonly is: 'number'; readonly text: string }
  | { readonly is: 'symbol'; readonly name: string }
  | { readonly is: 'sum'; readonly terms: readonly { readonly minus: boolean; readonly of: Expression }[] }
  | { readonly is: 'product'; readonly factors: readonly Expression[] }
  | { readonly is: 'quotient'; readonly over: Expression; readonly under: Expression }
  | { readonly is: 'power'; readonly base: Expression; readonly exponent: Expression }
  | { readonly is: 'negative'; readonly of: Expression }
  | { readonly is: 'root'; readonly of: Expression }
  | { readonly is: 'call'; readonly name: string; readonly to: readonly Expression[] };

const functions = [
  'arcsin',
  'arccos',
  'arctan',
  'sinh',
  'sin',
  'cos',
  'tan',
  'cot',
  'exp',
  'ln',
  'min',
  'max',
  'erfc',
  'erf',
];
const superscripts = '⁰¹²³⁴⁵⁶⁷⁸⁹';

/**
 * Reads an expression such as `p·r / (2·t)`: products are written out, a quotient takes the factors before it, and the
 * symbols are those declared, which may hold a slash (`A/A*`).
 */
export function readExpression(text: string, declared: readonly string[]): Expression {
  const symbols = [...declared, 'π', 'e'].sort((a, b) => b.length - a.length);
  let at = 0;
  const blank = (): void => {
    while (text[at] === ' ') at++;
  };
  const fail = (what: string): never => {
    throw new Error(`${what} at ${at} of '${text}'`);
  };
  const take = (...marks: readonly string[]): string | undefined => {
    blank();
    const found = marks.find((mark) => text.startsWith(mark, at));
    if (found !== undefined) at += found.length;
    return found;
  };

  const sum = (): Expression => {
    const minus = take('−', '-') !== undefined;
    const first = product();
    const terms = [{ minus, of: first }];
    for (let sign = take('+', '−', '-'); sign !== undefined; sign = take('+', '−', '-'))
      terms.push({ minus: sign !== '+', of: product() });
    if (terms.length > 1) return { is: 'sum', terms };
    return minus ? { is: 'negative', of: first } : first;
  };

  const product = (): Expression => {
    let factors: Expression[] = [power()];
    for (let mark = take('·', '/'); mark !== undefined; mark = take('·', '/')) {
      const next = power();
      if (mark === '·') factors.push(next);
      else {
        // a / b·c / d is (a/b)·(c/d): a quotient takes what stands behind the one before.
        const from = factors.findLastIndex(({ is }) => is === 'quotient') + 1;
        const over = from < factors.length ? factors.slice(from) : factors;
        const before = from < factors.length ? factors.slice(0, from) : [];
        factors = [...before, { is: 'quotient', over: productOf(over), under: next }];
      }
    }
    return productOf(factors);
  };

  const power = (): Expression => {
    if (take('−', '-') !== undefined) return { is: 'negative', of: power() };
    const base = primary();
    return raised(base);
  };

  const raised = (base: Expression): Expression => {
    const exponent = exponentHere();
    return exponent === undefined ? base : { is: 'power', base, exponent };
  };

  const exponentHere = (): Expression | undefined => {
    if (text[at] === '^') {
      at++;
      return take('(') === undefined ? primary() : closed(sum());
    }
    let digits = '';
    while (at < text.length && superscripts.includes(text[at])) digits += superscripts.indexOf(text[at++]);
    return digits === '' ? undefined : { is: 'number', text: digits };
  };

  const closed = (inside: Expression): Expression =>
    take(')') === undefined ? fail('no closing bracket') : inside;

  const primary = (): Expression => {
    if (take('(') !== undefined) return closed(sum());
    if (take('√') !== undefined) return { is: 'root', of: primary() };
    blank();
    const rest = text.slice(at);
    const symbol = symbols.find(
      (name) => rest.startsWith(name) && !/^[\p{L}\p{M}\d_*′]/u.test(rest.slice(name.length)),
    );
    if (symbol !== undefined) {
      at += symbol.length;
      return { is: 'symbol', name: symbol };
    }
    const name = functions.find((each) => rest.startsWith(each));
    if (name !== undefined) {
      at += name.length;
      const exponent = exponentHere();
      if (take('(') === undefined) fail(`${name} without brackets`);
      const to = [sum()];
      while (take(',') !== undefined) to.push(sum());
      if (take(')') === undefined) fail('no closing bracket');
      const call: Expression = { is: 'call', name, to };
      return exponent === undefined ? call : { is: 'power', base: call, exponent };
    }
    const [digits] = /^\d+(?:\.\d+)?/.exec(rest) ?? fail('neither a symbol nor a number');
    at += digits.length;
    return { is: 'number', text: digits };
  };

  const whole = sum();
  blank();
  return at < text.length ? fail('something left over') : whole;
}

const productOf = (factors: readonly Expression[]): Expression =>
  factors.length === 1 ? factors[0] : { is: 'product', factors };

/** The sides of an equation, and the remark behind its comma. */
export interface EquationText {
  readonly left: string;
  readonly right: string;
  readonly remark: string;
}

/** Parts `C_F = …, π_e = p_e/p_c from A/A* = ε` at its first equals sign and at the comma outside brackets. */
export function partsOf(equation: string): EquationText {
  const middle = equation.indexOf(' = ');
  if (middle < 0) throw new Error(`no equation: '${equation}'`);
  let depth = 0;
  let end = equation.length;
  for (let i = middle; i < equation.length; i++) {
    if (equation[i] === '(') depth++;
    if (equation[i] === ')') depth--;
    if (depth === 0 && equation.startsWith(', ', i)) {
      end = i;
      break;
    }
  }
  return {
    left: equation.slice(0, middle),
    right: equation.slice(middle + 3, end),
    remark: equation.slice(end + 2),
  };
}
