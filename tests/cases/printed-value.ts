import { q } from '../../src/units';
import { si } from './read-case';

// Units that the library's quantities do not hold, such as mm/s/MPa^n: the check gives its number in that unit.
const unread = /\^n|\^-?\d+\.\d/;

/**
 * A value found, as the validation report prints it: in the unit that the case states, to two digits past the
 * tolerance. `found` is in SI where the case states a unit that the library reads, else a plain number.
 */
export function printedValue(stated: number | string, found: number, relTol: number): string {
  if (typeof stated === 'number') return rounded(found, relTol);
  const [, ...words] = stated.split(' ');
  const unit = words.join(' ');
  if (unit === '' || unread.test(unit)) return `${rounded(found, relTol)} ${unit}`.trim();
  const origin = unit.startsWith('deg') ? q(`0 ${unit}`).si : 0;
  return `${rounded((found - origin) / (si(`1 ${unit}`) - origin), relTol)} ${unit}`;
}

/** Relative difference of a printed value from the stated one, as the report prints it. */
export function printedError(stated: number | string, printed: string): string {
  const [wanted, found] = [Number.parseFloat(String(stated)), Number.parseFloat(printed)];
  if (found === wanted) return '0';
  if (wanted === 0) return printed;
  const percent = (100 * (found - wanted)) / Math.abs(wanted);
  if (Math.abs(percent) < 1e-6) return '< 0.000001 %';
  return `${Number(percent.toPrecision(2))} %`.replace('-', '−');
}

const rounded = (value: number, relTol: number): string => {
  const digits = Math.ceil(-Math.log10(Math.max(relTol, 1e-12))) + 2;
  return String(Number(value.toPrecision(Math.min(12, Math.max(5, digits)))));
};
