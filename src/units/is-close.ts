import { differenceOf, isSameKind } from './kind-rules';
import type { Kind } from './kinds';
import { finiteSi } from './parse';
import type { Quantity } from './quantity';
import { wrongKind } from './quantity-error';
import { isQuantity } from './quantity-mark';
import { unitOf } from './unit';

/** Tolerance within which two quantities are close. */
export interface ComparisonTolerance {
  /** Relative to the larger of the two; default 1e-9 where neither is given. */
  readonly rel?: number;
  /** Absolute: a difference of that kind, such as `delta_degC` for temperatures. */
  readonly abs?: Quantity;
}

/**
 * Tests whether two quantities of one kind agree within a tolerance. There is no test of exact equality, because
 * doubles are rounded.
 *
 * @throws MeopError `wrong-kind` where their kinds differ, `not-finite` where `rel` is not a number
 * @example isClose(q('1 in'), q('25.4 mm')) // => true
 */
export function isClose(a: Quantity, b: Quantity, { rel, abs }: ComparisonTolerance = {}): boolean {
  requireKind('a', a, a.kind ?? b.kind ?? 'dimensionless');
  requireKind('b', b, a.kind);
  if (abs) requireKind('abs', abs, differenceOf(a.kind));
  const relative = finiteSi(rel ?? (abs ? 0 : 1e-9), unitOf('1'), rel);
  const tolerance = Math.max(relative * Math.max(Math.abs(a.si), Math.abs(b.si)), abs?.si ?? 0);
  return Math.abs(a.si - b.si) <= tolerance;
}

function requireKind(field: string, given: Quantity, kind: Kind): void {
  if (!isQuantity(given) || !isSameKind(kind, given.kind)) throw wrongKind(given, kind, field, 'isClose');
}
