// Reads an equation's symbols independently of the library's own substitution: operators, brackets and spaces divide.

const dividers = /[·/()[\]{}+\-−–±√∛^=≈≤≥<>|,;:\s]+/u;
const superscripts = /[⁰¹²³⁴⁵⁶⁷⁸⁹⁻⁺]+$/u;
const number = /^[\d.]+(?:e\d*)?$/u;
const constants = ['π', 'e', '∞'];
const functions = [
  ...[
    'sin',
    'cos',
    'tan',
    'asin',
    'acos',
    'atan',
    'arcsin',
    'arccos',
    'arctan',
    'cot',
    'sinh',
    'cosh',
    'tanh',
  ],
  ...['ln', 'log', 'log10', 'log₁₀', 'lg', 'exp', 'min', 'max', 'abs', 'sqrt', 'erf', 'erfc', 'Σ', 'Δ'],
];
const words = ['with', 'where', 'and', 'or', 'for', 'if', 'else', 'otherwise', 'at', 'from', 'to'];

/** The equation without the remark behind it: `C = √x, x = p/q from A = ε` is about C. */
export const mainPart = (equation: string): string => equation.split(/,\s/u)[0];

/** The names in an equation but for `declared`; without numbers, exponents, constants, functions and words. */
export function symbolsIn(equation: string, declared: readonly string[] = []): readonly string[] {
  const known = new Set([...constants, ...functions, ...words]);
  return without(equation, declared)
    .split(dividers)
    .map((piece) => piece.replace(superscripts, ''))
    .filter((piece) => piece !== '' && !number.test(piece) && !known.has(piece));
}

/** How often a symbol stands alone in an equation, longer declared symbols that hold it put aside. */
export function occurrences(equation: string, symbol: string, declared: readonly string[]): number {
  const longer = declared.filter((other) => other.length > symbol.length);
  return without(equation, longer).split(alone(symbol)).length - 1;
}

const alone = (symbol: string): RegExp =>
  new RegExp(
    `(?<![\\p{L}\\d_.])${symbol.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}(?![\\p{L}\\p{M}\\d_₀-₉*′])`,
    'gu',
  );
const without = (equation: string, symbols: readonly string[]): string =>
  [...symbols]
    .sort((a, b) => b.length - a.length)
    .reduce((text, symbol) => text.replace(alone(symbol), ' '), equation);

/** The names that an equation defines: what stands left of an equals sign. */
export function definedIn(equation: string): readonly string[] {
  return [...equation.matchAll(/([^\s;=()]+)\s*[=≈]/gu)].map(([, name]) => name.replace(superscripts, ''));
}
