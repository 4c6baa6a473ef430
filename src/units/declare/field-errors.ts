import { shownValue } from '../error-message';
import { MeopError } from '../errors';
import { nearestName } from '../nearest-name';
import { type Place, pathTo } from './place';

/** The error for a value that is not an object with fields. */
export function notAnObject(given: unknown, fields: readonly string[], at: Place): MeopError {
  return new MeopError({
    code: 'missing-field',
    procedure: at.procedure,
    path: at.path || undefined,
    given,
    problem: `must be an object { ${fields.join(', ')} }, got ${shownValue(given)}`,
    expected: `an object { ${fields.join(', ')} }`,
  });
}

/** The error for a field that is not declared, with the nearest one that is. */
export function unknownField(field: string, fields: readonly string[], at: Place): MeopError {
  const near = nearestName(field, fields);
  return new MeopError({
    code: 'unknown-field',
    procedure: at.procedure,
    path: pathTo(at, field),
    given: pathTo(at, field),
    expected: fields.join(', '),
    remedy: near && `did you mean '${near}'?`,
  });
}

/** The error for a required field that is missing. */
export function missingField(field: string, meaning: string | undefined, at: Place): MeopError {
  return new MeopError({
    code: 'missing-field',
    procedure: at.procedure,
    path: pathTo(at, field),
    expected: meaning,
  });
}
