import { MeopError, unitOf } from '../../units';
import type { MeasuredKind } from '../calibration/calibration';
import { type HeaderCell, isRawUnit } from './header-cell';

/** Content of a column of a log, as far as its heading indicates it. */
export type ColumnRole = 'pressure' | 'thrust' | 'temperature';

const roles: readonly (readonly [RegExp, ColumnRole])[] = [
  [/press|^p[ct]?[-_ ]?\d*$|chamber/i, 'pressure'],
  [/thrust|force|load|^f\d*$|^lc[-_ ]?\d*$/i, 'thrust'],
  [/temp|thermo|^tc[-_ ]?\d*$/i, 'temperature'],
];
// Atmospheric pressure is not chamber pressure.
const surroundings = /ambient|baro|atmo/i;
const kindsOfRole: Readonly<Record<ColumnRole, MeasuredKind>> = {
  pressure: 'gauge pressure',
  thrust: 'force',
  temperature: 'temperature',
};

/** The role that a name indicates; undefined where it indicates none. */
export function roleOfName(name: string): ColumnRole | undefined {
  if (surroundings.test(name)) return undefined;
  return roles.find(([pattern]) => pattern.test(name))?.[1];
}

export const kindOfName = (name: string): MeasuredKind | undefined => {
  const role = roles.find(([pattern]) => pattern.test(name))?.[1];
  return role && kindsOfRole[role];
};

/** Roles of all headings: by their names, and where no name indicates pressure or thrust, by their units. */
export function rolesOf(headers: readonly HeaderCell[]): readonly (ColumnRole | undefined)[] {
  const named = headers.map(({ name }) => roleOfName(name));
  return headers.map(({ name, unit }, i) => {
    if (named[i] !== undefined || unit === undefined || surroundings.test(name)) return named[i];
    const kind = kindOfUnit(unit);
    const role = kind === 'force' ? 'thrust' : kind?.endsWith('pressure') ? 'pressure' : undefined;
    return role !== undefined && !named.includes(role) ? role : undefined;
  });
}

const timeName =
  /^(t|time|timestamp|stamp|clock|elapsed|millis|micros|date|datetime|uptime)\b|^(ms|us|µs|s|sec)$/i;

/**
 * Index of the time heading, counted from 0; -1 where there is none. A date column next to a time of day is not it, nor
 * are the stamps of a terminal next to those of the device.
 */
export function timeHeading(headers: readonly HeaderCell[]): number {
  const words = headers.map(({ name }) =>
    name.replace(/([a-z])([A-Z])/g, '$1 $2').replace(/[_\-.:/]+/g, ' '),
  );
  const found = words.findIndex((name) => timeName.test(name) && !/^date$/i.test(name));
  if (found >= 0) return found;
  const second = words.findIndex((name) => /^(date|received)$/i.test(name));
  if (second >= 0) return second;
  // 'Zeit (s)': a unit of time indicates it in any language, where only one column has one.
  const timed = headers.flatMap(({ unit }, i) => (unit && kindOfUnit(unit) === 'time' ? [i] : []));
  return timed.length === 1 ? timed[0] : -1;
}

function kindOfUnit(unit: string): string | undefined {
  if (isRawUnit(unit)) return undefined;
  try {
    return unitOf(unit).kind;
  } catch (error) {
    if (error instanceof MeopError) return undefined;
    throw error;
  }
}
