import { MeopError } from './errors';
import { accepts } from './kind-rules';
import { kindFacts, type NamedKind } from './kinds';
import { parse, type SiInput } from './parse';
import { wrongKind } from './quantity-error';
import { isQuantity } from './quantity-mark';
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
      throw located(error, field, context);
    }
  }
  if (isQuantity(value)) {
    if (!accepts(kind, value.kind)) throw wrongKind(field, value, kind, `${context}: ${field}`);
    if (!Number.isFinite(value.si)) throw notFinite(field, value.si, value, context);
    return { si: value.si, unit: unitFor(value.kind, value.unit) };
  }
  if (typeof value === 'number' && kind === 'dimensionless') {
    if (!Number.isFinite(value)) throw notFinite(field, value, value, context);
    return { si: value, unit: unitOf('1') };
  }
  if (typeof value === 'number') throw bareNumber(kind, field, value, context);
  throw wrongKind(field, value, kind, `${context}: ${field}`);
}

function notFinite(field: string, si: number, value: unknown, context: string): MeopError {
  const message = `${context}: ${field}: ${si} given; a finite number is expected`;
  return new MeopError('not-finite', message, field, { value });
}

function bareNumber(kind: NamedKind, field: string, value: number, context: string): MeopError {
  const facts = kindFacts(kind);
  const units = facts
    ? `'${value} ${facts.metric}'${facts.us === facts.metric ? '' : ` or '${value} ${facts.us}'`}`
    : 'a unit';
  return new MeopError(
    'bare-number',
    `${context}: ${field}: ${value} has no unit; ${kind} is expected: write ${units}`,
    field,
    {
      value,
      expected: kind,
    },
  );
}

function located(error: unknown, field: string, context: string): unknown {
  if (!(error instanceof MeopError)) return error;
  return new MeopError(error.code, `${context}: ${field}: ${error.message}`, field, error);
}
