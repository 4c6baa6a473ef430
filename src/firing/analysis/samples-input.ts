import { type Conflict, instance } from '../../units';

// By its name, so that arrays of another realm, such as a notebook's, are arrays too.
const isSamples = (value: unknown): value is Float64Array =>
  Object.prototype.toString.call(value) === '[object Float64Array]';

/** Numbers of a trace. */
export const samples = (meaning: string) => instance(meaning, 'a Float64Array', isSamples);

/** The conflict of a trace whose values are not as many as its times. */
export const sameLength = ({
  time,
  values,
}: {
  readonly time: Float64Array;
  readonly values: Float64Array;
}): Conflict | undefined =>
  time.length === values.length && time.length > 0
    ? undefined
    : {
        code: 'length-mismatch',
        path: 'values',
        given: values.length,
        expected: `as many values as times, ${time.length}, and at least 1`,
      };
