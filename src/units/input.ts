import { MeopError } from './errors';
import { accepts } from './kind-rules';
import type { NamedKind } from './kinds';
import { parse, type SiInput } from './parse';
import { article, unitRemedy, wrongKind } from './quantity-error';
import { isQuantity } from './quantity-mark';
import { shownUnits } from './shown-unit';
import { unitFor, unitOf } from './unit';

/**
 * The value of a parameter of a kind, as an SI double and the unit given.
 *
 * @throws MeopError `missing-field` or `wrong-kind` naming the field, and the errors of {@link q}
 */
export function readInput(kind: NamedKind, path: string, value: unknown, procedure: string): SiInput {
  if (value === undefined)
    throw new MeopError({ code: 'missing-field', procedure, path, expected: article(kind) });
  if (typeof value === 'string') {
    try {
      return parse(value, kind);
    } catch (error) {
      throw error instanceof MeopError ? error.within(procedure, path, unitRemedy(kind)) : error;
    }
  }
  const number = isQuantity(value) ? value.si : value;
  if (typeof number === 'number' && !Number.isFinite(number))
    throw new MeopError({
      code: 'not-finite',
      procedure,
      path,
      given: number,
      expected: 'a finite number',
    });
  if (isQuantity(value) && accepts(kind, value.kind))
    return { si: value.si, unit: unitFor(value.kind, value.unit) };
  if (typeof value !== 'number') throw wrongKind(value, kind, path, procedure);
  if (kind !== 'dimensionless') throw bareNumber(kind, path, value, procedure);
  return { si: value, unit: unitOf('1') };
}

function bareNumber(kind: NamedKind, path: string, given: number, procedure: string): MeopError {
  const examples = shownUnits(kind).map(({ text }) => `'${given} ${text}'`);
  return new MeopError({
    code: 'bare-number',
    procedure,
    path,
    given,
    expected: `${article(kind)} with its unit`,
    remedy: `Write ${examples.join(' or ')}`,
  });
}
