import { MeopError } from './errors';
import { accepts } from './kind-rules';
import type { NamedKind } from './kinds';
import { parse, type SiInput } from './parse';
import { wrongKind } from './quantity-error';
import { isQuantity } from './quantity-mark';
import { shownUnits } from './shown-unit';
import { unitFor, unitOf } from './unit';

/**
 * What a parameter of a kind was given, as an SI double and the unit it came in.
 *
 * @throws MeopError `missing-field` or `wrong-kind` naming the field, and all that {@link q} throws
 */
export function readInput(kind: NamedKind, field: string, value: unknown, context: string): SiInput {
  if (value === undefined)
    throw new MeopError('missing-field', `${context}: ${field} is missing; ${kind} is expected`, field, {
      expected: kind,
    });
  if (typeof value === 'string') {
    try {
      return parse(value, kind);
    } catch (error) {
      if (!(error instanceof MeopError)) throw error;
      throw new MeopError(error.code, `${context}: ${field}: ${error.message}`, field, error);
    }
  }
  const number = isQuantity(value) ? value.si : value;
  if (typeof number === 'number' && !Number.isFinite(number))
    throw new MeopError(
      'not-finite',
      `${context}: ${field}: ${number} given; a finite number is expected`,
      field,
      { value },
    );
  if (isQuantity(value) && accepts(kind, value.kind))
    return { si: value.si, unit: unitFor(value.kind, value.unit) };
  if (typeof value !== 'number') throw wrongKind(field, value, kind, `${context}: ${field}`);
  if (kind !== 'dimensionless') throw bareNumber(kind, field, value, context);
  return { si: value, unit: unitOf('1') };
}

function bareNumber(kind: NamedKind, field: string, value: number, context: string): MeopError {
  const examples = shownUnits(kind).map(({ text }) => `'${value} ${text}'`);
  return new MeopError(
    'bare-number',
    `${context}: ${field}: ${value} has no unit; ${kind} is expected: write ${examples.join(' or ')}`,
    field,
    { value, expected: kind },
  );
}
