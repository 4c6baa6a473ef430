import { unknownName } from '../../units';
import type { StressDatum } from '../materials/datum';
import { column, origin } from '../materials/shelf-entry';

const rows = {
  'grade 5': [18.6, 'ksi', 'SAE grade 5, 1/4 to 1 in'],
  'grade 7': [20.6, 'ksi', 'SAE grade 7'],
  'grade 8': [23.2, 'ksi', 'SAE grade 8'],
  '8.8': [129, 'MPa', 'ISO 8.8'],
  '9.8': [140, 'MPa', 'ISO 9.8'],
  '10.9': [162, 'MPa', 'ISO 10.9'],
  '12.9': [190, 'MPa', 'ISO 12.9'],
} as const;

/** A bolt class whose endurance strength is tabulated. */
export type BoltEnduranceName = keyof typeof rows;

/** Whether the table has a class. */
export const hasEndurance = (name: string): name is BoltEnduranceName => Object.hasOwn(rows, name);

/**
 * Endurance strength of a bolt with rolled threads under a repeated axial load. It includes the notch of the thread.
 *
 * @throws MeopError `unknown-name`
 * @example boltEndurance('8.8').value.in('MPa') // => 129
 */
export function boltEndurance(
  name: BoltEnduranceName | (string & Readonly<Record<never, never>>),
): StressDatum {
  if (!hasEndurance(name))
    throw unknownName(name, Object.keys(rows), 'bolt class', { procedure: 'boltEndurance', path: '' });
  const [value, unit, what] = rows[name];
  return column(
    unit,
    origin(
      'typical',
      `Shigley's Mechanical Engineering Design, 9th ed., table 8-17, ${what}, rolled threads`,
    ),
  )(value);
}
