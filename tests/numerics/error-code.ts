import { MeopError } from '../../src/units/errors';

/** The code of the MeopError that `run` throws, or 'no error'. Anything else thrown is passed on. */
export function errorCode(run: () => unknown): string {
  try {
    run();
  } catch (error) {
    if (error instanceof MeopError) return error.code;
    throw error;
  }
  return 'no error';
}
