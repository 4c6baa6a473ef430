import type { Motor } from '../document';

/** A closure as parsed. */
export type Closure = NonNullable<NonNullable<Motor['closures']>['head']>;

/**
 * Assumed temperature of a closure or of a plate on it: that of the case where the document specifies none and the strength at temperature
 * is known.
 */
export function closureHeat(
  { case: { wallTemperature } }: Motor,
  { material, temperature }: Pick<Closure, 'material' | 'temperature'>,
) {
  if (temperature !== undefined) return temperature.value;
  return material.atTemperature === undefined ? undefined : wallTemperature?.value;
}
