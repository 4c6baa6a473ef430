import { refusal } from '../units/refusal';
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
  if (!(allowable.si >= 0)) throw refusal(`margin of '${mode}'`, 'allowable', allowable, 'zero or more');
}

function above(limit: number, field: string, si: number, value: unknown, mode: string): void {
  if (!(si > limit && Number.isFinite(si)))
    throw refusal(`margin of '${mode}'`, field, value, 'a value above zero and finite');
}
