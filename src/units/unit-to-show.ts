import { MeopError } from './errors';
import { accepts } from './kind-rules';
import type { Kind } from './kinds';
import { article, remedies, remedyFor } from './quantity-error';
import { type Unit, unitFor } from './unit';

/**
 * The unit of a string, to show a quantity of a kind.
 *
 * @throws MeopError `wrong-unit` where it measures another kind
 */
export function unitToShow(kind: Kind, text: string, subject: unknown): Unit {
  const unit = unitFor(kind, text);
  if (accepts(kind, unit.kind)) return unit;
  throw new MeopError({
    code: 'wrong-unit',
    path: 'unit',
    given: text,
    note: article(unit.kind),
    expected: `a unit of ${article(kind)}, since ${subject} is one`,
    remedy: remedies[`${unit.kind}<${kind}`] ?? remedyFor(unit.kind, kind),
  });
}
