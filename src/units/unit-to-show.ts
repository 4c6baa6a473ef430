import { MeopError } from './errors';
import { accepts } from './kind-rules';
import type { Kind } from './kinds';
import { article, remedies, remedyFor } from './quantity-error';
import { type Unit, unitFor } from './unit';

/**
 * The unit that a text names, for something of a kind to be shown in.
 *
 * @throws MeopError `wrong-unit` where it measures another kind
 */
export function unitToShow(kind: Kind, text: string, subject: unknown): Unit {
  const unit = unitFor(kind, text);
  if (accepts(kind, unit.kind)) return unit;
  const out = remedies[`${unit.kind}<${kind}`] ?? remedyFor(unit.kind, kind);
  throw new MeopError(
    'wrong-unit',
    `${subject} is ${article(kind)} and cannot be shown in '${text}', ${article(unit.kind)}: ${out}`,
    'unit',
    { value: text, expected: kind },
  );
}
