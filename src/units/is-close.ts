import { accepts } from './kind-rules';
import { dimensionOfKind } from './kinds';
import type { Quantity } from './quantity';
import { wrongKind } from './quantity-error';

/** How near two quantities must be to count as close. */
export interface Closeness {
  /** Relative to the larger of the two; 1e-9 where neither is given. */
  readonly rel?: number;
  /** Absolute, of the same kind. */
  readonly abs?: Quantity;
}

/**
 * Whether two quantities of one kind agree within a tolerance. There is no exact equality: doubles do not have it.
 *
 * @throws MeopError `wrong-kind` where their kinds differ
 * @example isClose(q('1 in'), q('25.4 mm')) // => true
 */
export function isClose(a: Quantity, b: Quantity, { rel, abs }: Closeness = {}): boolean {
  if (!accepts(a.kind, b.kind) && !accepts(b.kind, a.kind)) throw wrongKind('b', b, a.kind, 'isClose');
  if (abs !== undefined && dimensionOfKind(abs.kind) !== dimensionOfKind(a.kind))
    throw wrongKind('abs', abs, a.kind, 'isClose');
  const tolerance = Math.max(
    (rel ?? (abs ? 0 : 1e-9)) * Math.max(Math.abs(a.si), Math.abs(b.si)),
    abs?.si ?? 0,
  );
  return Math.abs(a.si - b.si) <= tolerance;
}
