import type { Motor } from '../document';

/** A closure as read. */
export type Closure = NonNullable<NonNullable<Motor['closures']>['head']>;

/** How hot the closure is taken: as the case where the document does not say and its strength while hot is known. */
export function closureHeat({ case: { wallTemperature } }: Motor, { material, temperature }: Closure) {
  if (temperature !== undefined) return temperature.value;
  return material.atTemperature === undefined ? undefined : wallTemperature?.value;
}
