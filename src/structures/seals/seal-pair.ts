import type { Quantity } from '../../units';
import { type FieldsOf, requireFields } from '../../units/known-fields';
import { type ORingGland, type ORingGlandInput, oRingGland } from './o-ring-gland';

/** Two seals one behind the other, each judged at the full pressure. */
export interface SealPair {
  readonly primary: ORingGland;
  readonly backup: ORingGland;
  /** The diameter the pressure may act on: the greater bore, should the primary seal leak. */
  readonly sealDiameter: Quantity<'length'>;
  /** Whether each holds alone. */
  readonly passes: boolean;
  readonly cautions: readonly string[];
  toString(): string;
}

const sealPairFields: FieldsOf<Parameters<typeof sealPair>[0]> = { primary: 'required', backup: 'required' };

/**
 * A primary and a backup seal. The backup is judged as if the primary had failed; the end force is to be taken on the
 * greater of their bores.
 *
 * @throws MeopError as {@link oRingGland} does
 * @example sealPair({ primary: { ring: '228', bore: '2.5 in', grooveDiameter: '2.278 in', grooveWidth: '0.19 in', closureDiameter: '2.496 in' }, backup: { ring: '228', bore: '2.5 in', grooveDiameter: '2.278 in', grooveWidth: '0.19 in', closureDiameter: '2.496 in' } }).sealDiameter.in('in') // => 2.5
 */
export function sealPair(options: {
  readonly primary: ORingGlandInput;
  readonly backup: ORingGlandInput;
}): SealPair {
  requireFields('sealPair', options, sealPairFields);
  const { primary, backup } = options;
  const [first, second] = [oRingGland(primary), oRingGland(backup)];
  const cautions = [
    ...first.cautions.map((caution) => `primary: ${caution}`),
    ...second.cautions.map((caution) => `backup: ${caution}`),
    'a backup seal is proved only by a leak check between the two; gas trapped there can hide a leak of the primary',
  ];
  const text = (): string =>
    [`primary ${String(first)}`, '', `backup ${String(second)}`, `caution: ${cautions.at(-1)}`].join('\n');
  return {
    primary: first,
    backup: second,
    sealDiameter: first.bore.max.si >= second.bore.max.si ? first.bore.max : second.bore.max,
    passes: first.passes && second.passes,
    cautions,
    toString: text,
    ...{ [Symbol.for('nodejs.util.inspect.custom')]: text },
  };
}
