// A small evaluator of written arithmetic, so that tests can do the sums that an explanation shows.

const superscripts: Readonly<Record<string, number>> = { '²': 2, '³': 3, '⁴': 4 };
const functions: Readonly<Record<string, (...values: readonly number[]) => number>> = {
  ln: Math.log,
  exp: Math.exp,
  sin: Math.sin,
  cos: Math.cos,
  tan: Math.tan,
  min: Math.min,
  max: Math.max,
};
const token = /\s*(\d+(?:\.\d+)?(?:e[-+]?\d+)?|[a-zπ]+|[-−+·/^(),√²³⁴])/gy;

/** The value of an expression: numbers, + − · / ^, powers, roots, brackets, π, e and the usual functions. */
export function evaluate(text: string): number {
  token.lastIndex = 0;
  const tokens: string[] = [];
  while (token.lastIndex < text.trimEnd().length) {
    const at = token.lastIndex;
    const found = token.exec(text);
    if (found === null) throw new Error(`'${text.slice(at)}' of '${text}' is not understood`);
    tokens.push(found[1]);
  }
  let next = 0;
  const take = (...wanted: readonly string[]): string | undefined =>
    wanted.includes(tokens[next]) ? tokens[next++] : undefined;
  const need = (wanted: string): void => {
    if (take(wanted) === undefined) throw new Error(`'${wanted}' is missing in '${text}'`);
  };
  const sum = (): number => {
    let value = product();
    for (;;) {
      const sign = take('+', '−', '-');
      if (sign === undefined) return value;
      value += sign === '+' ? product() : -product();
    }
  };
  const product = (): number => {
    let value = signed();
    for (;;) {
      const sign = take('·', '/');
      if (sign === undefined) return value;
      value = sign === '·' ? value * signed() : value / signed();
    }
  };
  const signed = (): number => (take('−', '-') === undefined ? power() : -signed());
  const power = (): number => {
    const base = atom();
    const raised = take('²', '³', '⁴');
    if (raised !== undefined) return base ** superscripts[raised];
    return take('^') === undefined ? base : base ** signed();
  };
  const bracket = (): readonly number[] => {
    need('(');
    const values = [sum()];
    while (take(',') !== undefined) values.push(sum());
    need(')');
    return values;
  };
  const atom = (): number => {
    if (take('√') !== undefined) return Math.sqrt(atom());
    if (take('π') !== undefined) return Math.PI;
    if (tokens[next] === '(') return bracket()[0];
    const word = tokens[next++];
    if (Object.hasOwn(functions, word)) return functions[word](...bracket());
    if (word === 'e') return Math.E;
    const value = Number(word);
    if (Number.isNaN(value)) throw new Error(`'${word}' of '${text}' is not understood`);
    return value;
  };
  const value = sum();
  if (next < tokens.length) throw new Error(`'${tokens.slice(next).join(' ')}' is left over of '${text}'`);
  return value;
}

/** What is to the right of the first equals sign. */
export const rightSide = (equation: string): string => equation.slice(equation.indexOf('=') + 1);
