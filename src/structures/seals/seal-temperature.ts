import { type QuantityInput, readInput } from '../../units';
import type { Material, MaterialName } from '../materials';
import { datumCaution } from '../materials/datum';
import { materialOf } from '../materials/library';
import type { SealCheck } from './gland-limits';

/** What a seal is made of and how cold and hot it gets. */
export interface Temperatures {
  readonly compound?: Material | MaterialName;
  readonly coldest?: QuantityInput<'temperature'>;
  readonly hottest?: QuantityInput<'temperature'>;
}

/** Whether a seal bears its temperatures. */
export interface SealTemperatures {
  readonly compound: Material;
  readonly checks: readonly SealCheck[];
  /** Growth in volume from 20 °C to the hottest, as a fraction. */
  readonly swell: number;
  readonly cautions: readonly string[];
}

const room = 293.15;

/** Whether the compound serves at the temperatures, and how much it swells. */
export function sealTemperatures(
  procedure: string,
  { compound = 'FKM', coldest, hottest }: Temperatures,
): SealTemperatures {
  const record = materialOf(compound);
  const limits = record.serviceTemperature;
  const checks: SealCheck[] = [];
  const cautions: string[] = [];
  const celsius = (kelvin: number): string => `${(kelvin - 273.15).toFixed(0)} °C`;
  const read = (field: string, value: QuantityInput<'temperature'>): number =>
    readInput('temperature', field, value, procedure).si;
  const add = (check: string, at: number, limit: 'min' | 'max'): void => {
    if (limits === undefined) {
      cautions.push(`${record.name} has no service temperatures: ${check} is not judged`);
      return;
    }
    const { value, ...origin } = limits[limit];
    checks.push({
      check,
      passes: limit === 'min' ? at >= value.si : at <= value.si,
      message: `${celsius(at)}, ${record.name} serves ${limit === 'min' ? 'from' : 'to'} ${celsius(value.si)}`,
      source: origin.source,
    });
    const note = datumCaution(`the ${limit === 'min' ? 'lowest' : 'highest'} temperature of ${record.name}`, {
      ...origin,
      basis: 'S', // a service limit is no average strength
    });
    if (note !== undefined) cautions.push(note);
  };
  if (coldest !== undefined) add('coldest', read('coldest', coldest), 'min');
  let swell = 0;
  if (hottest !== undefined) {
    const at = read('hottest', hottest);
    add('hottest', at, 'max');
    if (record.thermalExpansion) swell = Math.max(0, 3 * record.thermalExpansion.value.si * (at - room));
  }
  return { compound: record, checks, swell, cautions };
}
