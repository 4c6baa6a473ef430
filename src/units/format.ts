import { coherentText } from './dimension';
import { MeopError } from './errors';
import { exactAtom } from './exact-factor';
import { dimensionOfKind, type Kind } from './kinds';
import { shownIn } from './shown-unit';
import { fromSi, toSi, type Unit, unitOf } from './unit';
import { superscripts } from './unit-table';

/** Options of formatting a quantity. */
export interface FormatOptions {
  /** Unit; default: the unit of the quantity. */
  readonly unit?: string;
  /** Significant figures, 1 to 17; default 4. */
  readonly figures?: number;
  /** If true, groups of three digits are separated by a thin space; default false. */
  readonly groups?: boolean;
}

/**
 * Formats a number with the given significant figures, without trailing noise or zeros.
 *
 * @throws MeopError `figures-range` where `figures` is not an integer from 1 to 17.
 * @example formatNumber(6.894757293168361, 4) // => '6.895'
 */
export function formatNumber(value: number, figures = 4, groups = false): string {
  if (!Number.isInteger(figures) || figures < 1 || figures > 17)
    throw new MeopError({
      code: 'figures-range',
      path: 'figures',
      given: figures,
      expected: 'a whole number from 1 to 17',
    });
  if (value === 0 || !Number.isFinite(value)) return String(value);
  const magnitude = Math.abs(value);
  if (magnitude < 1e-4 || magnitude >= 1e9) return Number(value.toPrecision(figures)).toExponential();
  // Digits left of the decimal point are kept: 12345 psi must not print as 12350 psi.
  const whole = Math.floor(Math.log10(magnitude)) + 1;
  const text = whole >= figures ? value.toFixed(0) : String(Number(value.toPrecision(figures)));
  return groups ? text.replace(/\B(?=(\d{3})+(?=\.|$))(?<!\.\d*)/g, '\u2009') : text;
}

/** The unit as printed: `kg/m³`, `N·m`, `°C`. */
export function prettyUnit(text: string): string {
  if (text === '1') return '';
  return text
    .replace(/\^(-?\d+)(?![.\d])/g, (_, n: string) =>
      [...n].map((c) => (c === '-' ? '⁻' : superscripts[Number(c)])).join(''),
    )
    .replace(/\*/g, '·')
    .replace('delta_', 'Δ')
    .replace(/\bdeg(?=[CFR]?\b)/g, '°');
}

const counted = /^(?:gauge|absolute)/; // with a reference suffix: psig, psia

/** The printed text: `6.895 MPa gauge`. */
export function formatSi(si: number, kind: Kind, unit: Unit, options: FormatOptions = {}): string {
  const text = formatNumber(fromSi(si, unit), options.figures, options.groups);
  const symbol = prettyUnit(unit.text);
  const space = symbol === '' || symbol === '°' ? '' : ' ';
  const [reference] = counted.exec(unit.kind === kind ? '' : kind) ?? []; // the unit psig already states the reference
  return `${text}${space}${symbol}${reference ? ` ${reference}` : ''}`;
}

/**
 * The coherent SI unit of a kind: the unit in which it is shown, if that is coherent except for a mega prefix,
 * otherwise base units.
 */
export function coherentUnit(kind: Kind): string {
  if (kind === 'angle') return 'rad';
  const { text, factor, divisor } = shownIn(kind, false);
  if (factor === divisor) return text;
  return text.startsWith('MPa') ? text.slice(1) : coherentText(dimensionOfKind(kind));
}

/**
 * The shortest string in this unit that parses back to the same SI bits, or the string in SI where there is none.
 * A gauge or absolute pressure has its suffix (`psig`), because it could otherwise be parsed as the other.
 */
export function machineText(si: number, given: Unit, kind: Kind): string {
  const pascal = counted.test(kind) ? `Pa${kind[0]}` : undefined;
  const saying = given.text + kind[0];
  const unit = pascal && given.kind === 'pressure' ? unitOf(exactAtom(saying) ? saying : pascal) : given;
  const value = fromSi(si, unit);
  for (const digits of [15, 16, 17]) {
    const short = Number(value.toPrecision(digits));
    if (toSi(short, unit) === si) return `${short} ${unit.machineText}`.replace(/ 1$/, '');
  }
  return `${si} ${pascal ?? (unit.kind === 'pressure difference' ? 'Pad' : coherentUnit(unit.kind))}`;
}

/** Text escaped for HTML. */
export const escaped = (text: string): string => text.replace(/&/g, '&amp;').replace(/</g, '&lt;');
