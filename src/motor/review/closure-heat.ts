import type { Motor } from '../document';

/** A closure as parsed. */
export type Closure = NonNullable<NonNullable<Motor['closures']>['head']>;

/**
 * Assumed closure temperature: that of the case where the document specifies none and the strength at temperature
 * is known.
 */
export function closureHeat({ case: { wallTemperature } }: Motor, { material, temperature }: Closure) {
  if (temperature !== undefined) return temperature.value;
  return material.atTemperature === undefined ? undefined : wallTemperature?.value;
}
