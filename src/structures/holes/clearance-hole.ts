import {
  choice,
  fromSiValue,
  MeopError,
  named,
  optional,
  printable,
  procedure,
  type Quantity,
  unitFor,
} from '../../units';
import type { Provenance } from '../materials/datum';
import type { ThreadGeometry } from '../threads';
import { unifiedSizes } from '../threads/thread-sizes';
import { threads } from '../threads/thread-table';
import { type ClearanceFit, type ClearanceStandard, clearanceSeries } from './clearance-table';
import { drillDiameter } from './drill-sizes';

/** A clearance hole for a screw. */
export interface ClearanceHole {
  readonly diameter: Quantity<'length'>;
  /** Diametral clearance: the hole less the nominal diameter of the screw. */
  readonly clearance: Quantity<'length'>;
  readonly fit: ClearanceFit;
  readonly standard: ClearanceStandard;
  /** The inch drill that makes it, where the series is stated by drills. */
  readonly drill: string | undefined;
  /** The tolerance class of the hole, where the standard states one. */
  readonly tolerance: string | undefined;
  readonly source: string;
  readonly provenance: Provenance;
  readonly cautions: readonly string[];
  toString(): string;
}

/** The fit of clearance holes. */
export const clearanceFit = /* @__PURE__ */ choice(
  'fit of the clearance holes: close (fine), medium (normal) or free (coarse, loose)',
  ['close', 'medium', 'free'],
);

const name = 'clearanceHole';
const inch = 0.0254;

/**
 * The clearance hole of a screw: ISO 273 for a metric thread, ASME B18.2.8 for a unified one, or the drills of machine-screw
 * practice.
 *
 * @throws MeopError `out-of-domain` where the series has no hole for the screw
 * @example clearanceHole({ thread: 'M6' }).diameter.in('mm') // => 6.6
 */
export const clearanceHole = /* @__PURE__ */ procedure({
  name,
  title: 'Clearance hole of a screw',
  source: 'ISO 273; ASME B18.2.8; drill charts for machine screws',
  inputs: {
    thread: named('thread of the screw', threads, { example: 'M6' }),
    fit: optional(clearanceFit, 'medium'),
    standard: optional(
      choice('series of holes; that of the system of the thread where omitted', [
        'ISO 273',
        'ASME B18.2.8',
        'machine-screw practice',
      ]),
    ),
  },
  gives: 'the diameter of the hole, with its drill or tolerance class and its source',
  example: { thread: 'M6', fit: 'medium' },
  run: ({ thread, fit, standard }): ClearanceHole => holeOf(thread, fit, standard),
});

/** The clearance hole of a screw; `standard` where omitted is that of the system of the thread. */
export function holeOf(
  thread: ThreadGeometry,
  fit: ClearanceFit,
  standard: ClearanceStandard = thread.system === 'ISO metric' ? 'ISO 273' : 'ASME B18.2.8',
): ClearanceHole {
  const { rows, tolerance, source, provenance } = clearanceSeries[standard];
  const row = rows.find(([size]) => Math.abs(sizeOf(size) - thread.majorDiameter.si) < 1e-7);
  if (row === undefined)
    throw new MeopError({
      code: 'out-of-domain',
      procedure: name,
      path: 'thread',
      given: thread.name,
      expected: `a size of ${standard}: ${rows.map(([size]) => (typeof size === 'number' ? `M${size}` : size)).join(', ')}`,
      remedy: 'Specify the diameter of the hole',
    });
  const [, close, medium, free] = row;
  const hole = { close, medium, free }[fit];
  if (hole === undefined)
    throw new MeopError({
      code: 'out-of-domain',
      procedure: name,
      path: 'fit',
      given: fit,
      expected: `close or free, since ${standard} has no other`,
    });
  const metric = typeof hole === 'number';
  const length = (si: number): Quantity<'length'> =>
    fromSiValue(si, 'length', unitFor('length', metric ? 'mm' : 'in'));
  const diameter = length(metric ? hole / 1000 : (drillDiameter(hole) ?? Number.NaN));
  const found = {
    diameter,
    clearance: length(diameter.si - thread.majorDiameter.si),
    fit,
    standard,
    drill: metric ? undefined : hole,
    tolerance: tolerance[fit],
    source,
    provenance: provenance[fit],
    cautions:
      provenance[fit] === 'from memory'
        ? [
            `The ${fit} drill of ${standard} is quoted from memory, not verified. It is within 0.06 mm of a published list.`,
          ]
        : [],
  };
  return printable(found, () =>
    [
      `${fit} clearance hole of ${thread.name}: ${diameter}${found.drill === undefined ? '' : ` (drill ${found.drill})`}${found.tolerance === undefined ? '' : ` ${found.tolerance}`}, ${standard}`,
      ...found.cautions.map((caution) => `caution: ${caution}`),
    ].join('\n'),
  );
}

/** The nominal diameter of a size of a series [m]. */
function sizeOf(size: number | string): number {
  if (typeof size === 'number') return size / 1000;
  return (unifiedSizes.find(([known]) => known === size)?.[1] ?? Number.NaN) * inch;
}
