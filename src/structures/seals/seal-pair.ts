import { inputs, MeopError, printable, procedure, type Quantity } from '../../units';
import { glandInputs, glandOf, type ORingGland } from './o-ring-gland';

/** Two seals in series, each evaluated at the full pressure. */
export interface SealPair {
  readonly primary: ORingGland;
  readonly backup: ORingGland;
  /** Diameter on which the pressure may act: the larger bore, in case the primary seal leaks. */
  readonly sealDiameter: Quantity<'length'>;
  /** Whether each satisfies its checks alone. */
  readonly passes: boolean;
  readonly cautions: readonly string[];
  toString(): string;
}

const gland = {
  ring: '228',
  bore: '2.5 in',
  grooveDiameter: '2.278 in',
  grooveWidth: '0.19 in',
  closureDiameter: '2.496 in',
} as const;

/**
 * The backup seal is evaluated as if the primary seal had failed; the end force acts on the larger of their bores.
 *
 * @example sealPair({ primary: { ring: '228', bore: '2.5 in', grooveDiameter: '2.278 in', grooveWidth: '0.19 in', closureDiameter: '2.496 in' }, backup: { ring: '228', bore: '2.5 in', grooveDiameter: '2.278 in', grooveWidth: '0.19 in', closureDiameter: '2.496 in' } }).sealDiameter.in('in') // => 2.5
 */
export const sealPair = /* @__PURE__ */ procedure({
  name: 'sealPair',
  title: 'Primary and backup O-ring in series',
  source: 'Geometry; the limits of each check with its source',
  inputs: {
    primary: inputs(glandInputs, { meaning: 'seal nearest the gas' }),
    backup: inputs(glandInputs, { meaning: 'seal behind it' }),
  },
  gives: 'both seals, each at the full pressure',
  example: { primary: gland, backup: gland },
  run: ({ primary, backup }): SealPair => {
    const [first, second] = [evaluated(primary, 'primary'), evaluated(backup, 'backup')];
    const cautions = [
      ...first.cautions.map((caution) => `primary: ${caution}`),
      ...second.cautions.map((caution) => `backup: ${caution}`),
      'A backup seal is proven only by a leak check between the two. Gas trapped there can hide a leak of the primary seal.',
    ];
    const sealDiameter = first.bore.max.si >= second.bore.max.si ? first.bore.max : second.bore.max;
    const passes = first.passes && second.passes;
    return printable({ primary: first, backup: second, sealDiameter, passes, cautions }, () =>
      [`primary ${String(first)}`, '', `backup ${String(second)}`, `caution: ${cautions.at(-1)}`].join('\n'),
    );
  },
});

/** A seal of the pair; its errors name which. */
function evaluated(seal: Parameters<typeof glandOf>[0], which: 'primary' | 'backup'): ORingGland {
  try {
    return glandOf(seal);
  } catch (error) {
    throw error instanceof MeopError ? error.within('sealPair', which) : error;
  }
}
