/** A result with its own string, for messages, the prompt and notebooks. */
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
