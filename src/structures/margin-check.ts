import { MeopError } from '../units';
import type { Margin } from './margin';

/** Checks the values of a margin. @throws MeopError `out-of-domain` */
export function checkMargin({
  mode,
  applied,
  allowable,
  factor,
}: Pick<Margin, 'mode' | 'applied' | 'allowable' | 'factor'>): void {
  above(0, 'applied', applied.si, applied, mode);
  above(0, 'factor', factor, factor, mode);
  if (!(allowable.si >= 0)) throw outside('allowable', allowable, 'zero or more', mode);
}

function above(limit: number, field: string, si: number, value: unknown, mode: string): void {
  if (!(si > limit && Number.isFinite(si)))
    throw outside(field, value, 'a value above zero and finite', mode);
}

const outside = (path: string, given: unknown, expected: string, mode: string): MeopError =>
  new MeopError({ code: 'out-of-domain', procedure: `margin of '${mode}'`, path, given, expected });
