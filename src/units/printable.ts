/** A result with its own text: what it prints as in a message, at the prompt and in a notebook. */
export function printable<R extends object>(result: R, text: () => string): R & { toString(): string } {
  return {
    ...result,
    toString: text,
    ...{
      [Symbol.for('nodejs.util.inspect.custom')]: text,
      [Symbol.for('Jupyter.display')]: () => ({ 'text/plain': text() }),
    },
  };
}
