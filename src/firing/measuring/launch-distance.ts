import { fromSiValue, MeopError, type Quantity, type QuantityInput, readInput, unitOf } from '../../units';

/** Minimum distance that a published code requires at a launch. */
export interface LaunchDistance {
  readonly distance: Quantity<'length'>;
  /** Source table. */
  readonly basis: string;
  readonly caution: string;
}

// Upper bound of the row in N·s; ft for one motor, ft for several at once.
type Row = readonly [impulse: number, single: number, complex: number];
const tables: Readonly<
  Record<'certified' | 'research', { readonly basis: string; readonly rows: readonly Row[] }>
> = {
  certified: {
    basis: 'NFPA 1127, table 4.16.3 (as tabulated by a club; classes H to O)',
    rows: [
      [1280, 100, 200],
      [2560, 200, 300],
      [5120, 300, 500],
      [10_240, 500, 1000],
      [20_480, 1000, 1500],
      [40_960, 1500, 2000],
    ],
  },
  research: {
    basis: 'research safety code of a US rocketry association, May 2016 (as tabulated by a club)',
    rows: [
      [1280, 200, 250],
      [2560, 250, 350],
      [5120, 300, 500],
      [10_240, 500, 1000],
      [20_480, 1000, 1500],
      [40_960, 1500, 2000],
    ],
  },
};
const foot = 0.3048;

/**
 * Returns the minimum distance of people from the pad at a LAUNCH, by total impulse. No published table for the static
 * firing of home-made motors is known. A static firing requires at least this distance, people behind a barrier, and no
 * person in line with nozzle or head end (engineering practice, no published source).
 *
 * Sources: NFPA 1127, table 4.16.3; research safety code of May 2016; both as tabulated by a club's page.
 *
 * @throws MeopError `out-of-domain` beyond the tables: 160 to 40 960 N·s for certified motors, to 40 960 N·s for
 * research
 * @example launchDistance({ totalImpulse: '2000 N*s', motors: 'research' }).distance.in('ft') // => 250
 */
export function launchDistance(options: {
  readonly totalImpulse: QuantityInput<'impulse'>;
  /** `'certified'`: commercial motors; `'research'`: home-made motors. */
  readonly motors: 'certified' | 'research';
  /** True for several motors at once, or stages. Default false. */
  readonly complex?: boolean;
}): LaunchDistance {
  const { motors, complex = false } = options;
  const impulse = readInput('impulse', 'totalImpulse', options.totalImpulse, 'launchDistance').si;
  if (motors !== 'certified' && motors !== 'research')
    throw new MeopError(
      'unknown-name',
      `launchDistance: motors must be 'certified' or 'research', got '${String(motors)}'`,
      'motors',
      { value: motors },
    );
  const { rows, basis } = tables[motors];
  const least = motors === 'certified' ? 160 : 0;
  const row = rows.find(([bound]) => impulse <= bound);
  if (row === undefined || !(impulse > least))
    throw new MeopError(
      'out-of-domain',
      `launchDistance: totalImpulse must be more than ${least} and at most 40960 N·s (range of the table), got ${String(options.totalImpulse)}`,
      'totalImpulse',
      { value: options.totalImpulse, expected: `above ${least}, up to 40960 N·s` },
    );
  return {
    distance: fromSiValue(foot * row[complex ? 2 : 1], 'length', unitOf('ft')),
    basis,
    caution:
      'This distance applies to launches, not to static firings. For a static firing it is the minimum, with a barrier and away from the axis.',
  };
}
