import {
  choice,
  flag,
  fromSiValue,
  impulse,
  MeopError,
  optional,
  procedure,
  type Quantity,
  unitOf,
} from '../../units';

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
 * @example launchDistance({ totalImpulse: '2000 N*s', motors: 'research' }).distance.in('ft') // => 250
 */
export const launchDistance = /* @__PURE__ */ procedure({
  name: 'launchDistance',
  title: 'Minimum distance of people from the pad at a launch',
  source: "NFPA 1127, table 4.16.3; research safety code of May 2016; both as tabulated by a club's page",
  inputs: {
    totalImpulse: impulse('I', 'total impulse', { above: 0, example: '2000 N*s' }),
    motors: choice('commercial motors (certified) or home-made motors (research)', ['certified', 'research']),
    complex: optional(flag('several motors at once, or stages'), false),
  },
  gives: 'the distance, its source and its limits',
  example: { totalImpulse: '2000 N*s', motors: 'research' },
  run: ({ totalImpulse, motors, complex }): LaunchDistance => {
    const { rows, basis } = tables[motors];
    const above = motors === 'certified' ? 160 : 0;
    const row = rows.find(([bound]) => totalImpulse.si <= bound);
    if (row === undefined || !(totalImpulse.si > above))
      throw new MeopError({
        code: 'out-of-domain',
        procedure: 'launchDistance',
        path: 'totalImpulse',
        given: totalImpulse,
        expected: `more than ${above} and at most 40960 N·s (range of the table)`,
      });
    return {
      distance: fromSiValue(foot * row[complex ? 2 : 1], 'length', unitOf('ft')),
      basis,
      caution:
        'This distance applies to launches, not to static firings. For a static firing it is the minimum, with a barrier and away from the axis.',
    };
  },
});
