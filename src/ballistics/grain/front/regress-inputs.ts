import { callback, count, instance, optional, ratio } from '../../../units';

const isSignal = (value: unknown): value is AbortSignal =>
  typeof value === 'object' && value !== null && 'throwIfAborted' in value;

/** Options of a regression. */
export const regressInputs = {
  accuracy: optional(
    ratio('ε', 'required relative error of the burning area, root mean square over depth', {
      min: 1e-6,
      max: 0.1,
    }),
    1e-3,
  ),
  steps: optional(count('n', 'number of depths in the table', { min: 20, max: 5000 }), 300),
  stations: optional(
    count('n_s', 'number of stations along the axis for port area and perimeter', { max: 200 }),
    9,
  ),
  signal: optional(
    instance('aborts the calculation, which then throws its abort reason', 'an AbortSignal', isSignal),
  ),
  onProgress: optional(callback<(fraction: number) => void>('called with the progress, from 0 to 1')),
};
