import type { Quantity } from '../../units';
import { type Material, material } from '../materials';
import { datumCaution } from '../materials/datum';
import type { SealCheck } from './gland-limits';

/** The rubber of a seal and its temperatures. */
export interface Temperatures {
  /** FKM where it is undefined. */
  readonly compound: Material | undefined;
  readonly coldest: Quantity<'temperature'> | undefined;
  readonly hottest: Quantity<'temperature'> | undefined;
}

/** The check of a seal against its temperatures. */
export interface SealTemperatures {
  readonly compound: Material;
  readonly checks: readonly SealCheck[];
  /** Growth in volume from 20 °C to the maximum temperature, as a fraction. */
  readonly swell: number;
  readonly cautions: readonly string[];
}

const room = 293.15;

/** Checks the service temperatures of the compound, and computes its thermal growth. */
export function sealTemperatures({ compound, coldest, hottest }: Temperatures): SealTemperatures {
  const record = compound ?? material('FKM');
  const limits = record.serviceTemperature;
  const checks: SealCheck[] = [];
  const cautions: string[] = [];
  const celsius = (kelvin: number): string => `${(kelvin - 273.15).toFixed(0)} °C`;
  const add = (check: string, at: number, limit: 'min' | 'max'): void => {
    if (limits === undefined) {
      cautions.push(`${record.name} has no service temperatures: the ${check} temperature is not evaluated.`);
      return;
    }
    const { value, ...origin } = limits[limit];
    checks.push({
      check,
      passes: limit === 'min' ? at >= value.si : at <= value.si,
      message: `${celsius(at)}, ${limit === 'min' ? 'minimum' : 'maximum'} service temperature of ${record.name} ${celsius(value.si)}`,
      source: origin.source,
    });
    const note = datumCaution(`the ${limit === 'min' ? 'lowest' : 'highest'} temperature of ${record.name}`, {
      ...origin,
      basis: 'S', // a service limit is no average strength
    });
    if (note !== undefined) cautions.push(note);
  };
  if (coldest !== undefined) add('coldest', coldest.si, 'min');
  let swell = 0;
  if (hottest !== undefined) {
    const at = hottest.si;
    add('hottest', at, 'max');
    if (record.thermalExpansion) swell = Math.max(0, 3 * record.thermalExpansion.value.si * (at - room));
  }
  return { compound: record, checks, swell, cautions };
}
