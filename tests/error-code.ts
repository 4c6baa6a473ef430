import { MeopError } from '../src/units';

/** The code of the error that a call throws; 'no error' when it returns. Any other error is thrown on. */
export function codeOf(act: () => unknown): string {
  try {
    act();
  } catch (error) {
    if (error instanceof MeopError) return error.code;
    throw error;
  }
  return 'no error';
}
