import { MeopError } from '../src/units/errors';

/** The error of the library that a call throws; `undefined` when it returns. Any other error is thrown on. */
export function errorOf(act: () => unknown): MeopError | undefined {
  try {
    act();
  } catch (error) {
    if (error instanceof MeopError) return error;
    throw error;
  }
  return undefined;
}

/** The code of the error that a call throws; 'no error' when it returns. */
export const codeOf = (act: () => unknown): string => errorOf(act)?.code ?? 'no error';

/** The code of the error that a call throws and the field that it names; 'no error' when it returns. */
export function codeAndPathOf(act: () => unknown): string {
  const error = errorOf(act);
  return error ? `${error.code} ${error.path}` : 'no error';
}
