import { fromSiValue, MeopError, named, printable, procedure, type Quantity, unitOf } from '../../units';
import { threads } from '../threads/thread-table';
import { drillDiameter } from './drill-sizes';
import { metricTapDrills, unifiedTapDrills } from './tap-drill-table';
import { threadPercentage } from './thread-percentage';

/** The tap drill of a thread. */
export interface TapDrill {
  readonly diameter: Quantity<'length'>;
  /** Name of the inch drill; `undefined` for a metric thread. */
  readonly drill: string | undefined;
  /** Height of thread that it leaves, 0 to 1; see {@link threadPercentage}. */
  readonly threadHeight: number;
  readonly source: string;
  toString(): string;
}

const sources = {
  metric: 'ISO 2306 tap drills, read in the table of a public CAD program',
  unified: 'Tap drills for machine screws, a public chart, agreeing with a list in millimetres',
} as const;

/**
 * The tap drill of a standard thread, with the height of thread that it leaves. A drilled hole is 0.02 to 0.1 mm larger than
 * its drill (engineering practice, no published source).
 *
 * @throws MeopError `out-of-domain` where the tables have no drill for the thread
 * @example tapDrill({ thread: 'M5' }).diameter.in('mm') // => 4.2
 */
export const tapDrill = /* @__PURE__ */ procedure({
  name: 'tapDrill',
  title: 'Tap drill of a thread',
  source: 'ISO 2306; drill charts for machine screws',
  inputs: { thread: named('thread to tap', threads, { example: 'M5' }) },
  gives: 'the drill and the height of thread that it leaves',
  example: { thread: 'M5' },
  working: ({ thread }, { diameter }: TapDrill) => [
    threadPercentage.explain({ diameter: thread.majorDiameter, pitch: thread.pitch, drill: diameter }),
  ],
  run: ({ thread }): TapDrill => {
    const metric = metricTapDrills.find(([known]) => known === thread.name)?.[1];
    const drill = unifiedTapDrills.find(([known]) => known === thread.name)?.[1];
    const si = metric !== undefined ? metric / 1000 : drill === undefined ? undefined : drillDiameter(drill);
    if (si === undefined)
      throw new MeopError({
        code: 'out-of-domain',
        procedure: 'tapDrill',
        path: 'thread',
        given: thread.name,
        expected: 'a metric thread from M1.6 to M20 or a unified thread from #0 to 1/2 in',
        remedy: 'Compute the drill with threadPercentage.solveFor',
      });
    const diameter: Quantity<'length'> = fromSiValue(
      si,
      'length',
      unitOf(metric === undefined ? 'in' : 'mm'),
    );
    const threadHeight = threadPercentage.si({
      diameter: thread.majorDiameter.si,
      pitch: thread.pitch.si,
      drill: si,
    });
    return printable(
      { diameter, drill, threadHeight, source: metric === undefined ? sources.unified : sources.metric },
      () =>
        `tap drill of ${thread.name}: ${diameter}${drill === undefined ? '' : ` (drill ${drill})`}, ${(100 * threadHeight).toFixed(0)} % of the height of the thread`,
    );
  },
});
