import { linesOf, written } from '../part-lines';
import type { Review } from '../review/review-result';
import {
  figure,
  type ReportSection,
  section,
  shown,
  shownLike,
  signed,
  textCell,
  unknown,
  verdictOf,
} from './content';
import { mergedRows, modeOf } from './mode-rows';
import { plotMargins } from './plot-margins';

const mostDrawn = 12;
const mostSteps = 10;

/** Every failure mode with its margin at MEOP. */
export function marginSection({ margins, meop }: Review): readonly ReportSection[] {
  if (margins.length === 0) return [];
  const rows = mergedRows(
    margins.map((one) => ({
      ...modeOf(one),
      marginOfSafety: one.marginOfSafety,
      cells: [
        signed(one.marginOfSafety, verdictOf(one.marginOfSafety)),
        shown(one.applied),
        shownLike(one.allowable, one.applied),
        figure(one.factor),
        one.failurePressure === undefined ? unknown : shown(one.failurePressure),
      ],
    })),
  );
  const drawn = rows.slice(0, mostDrawn).map(({ part, mode, marginOfSafety }) => ({
    mode: `${part}: ${mode}`,
    marginOfSafety,
  }));
  return section({
    id: 'margins',
    title: 'Margins',
    lead: [
      `Each mode at MEOP, ${meop.pressure}, with the least favourable sizes that the tolerances allow. The margin is what is left after the factor; zero is exactly enough.`,
    ],
    tables: [
      {
        name: 'Margins of safety, the least first',
        columns: [
          { name: 'part and mode' },
          { name: 'margin', numeric: true },
          { name: 'applied', numeric: true },
          { name: 'allowable', numeric: true },
          { name: 'factor', numeric: true },
          { name: 'reached at', numeric: true },
        ],
        rows: rows.map(({ part, mode, cells }) => [textCell(`${part}: ${mode}`), ...cells]),
      },
    ],
    figures: [
      {
        id: 'margins-plot',
        title: 'Margins of safety',
        description: `The least margins, the least of all at the top; a bar to the left of zero does not hold.`,
        spec: (width) => plotMargins(drawn, { width }),
      },
    ],
  });
}

/** The order in which things give way as pressure rises. */
export function failureSection({
  failureOrder,
  joints,
  retainingRings,
  threads,
}: Review): readonly ReportSection[] {
  if (failureOrder.length === 0) return [];
  const steps = mergedRows(
    failureOrder.map((one) => ({
      ...modeOf(one),
      cells: [shown(one.failurePressure), figure(one.meopRatio, 3)],
    })),
  );
  const firstAt = (end: 'head' | 'aft'): string | undefined =>
    failureOrder.find(({ part }) => part === `${end}-joint`)?.mode;
  const ends = ['head', 'aft'] as const;
  const cut = { 'retaining ring': retainingRings, thread: threads };
  const orders = written([
    ...ends.flatMap((end) => {
      const joint = joints[end];
      if (joint === undefined) return [];
      return linesOf(`${end}-joint`, [
        joint.bearingFirst
          ? 'the holes stretch before anything lets go, as they should'
          : 'something lets go before the holes stretch, which is not the preferred order',
      ]);
    }),
    ...Object.entries(cut).flatMap(([name, held]) =>
      ends.flatMap((end) => {
        const first = held[end] === undefined ? undefined : firstAt(end);
        return first === undefined
          ? []
          : [{ end, about: `joint, ${name}`, text: `what comes first is ${first}` }];
      }),
    ),
  ]);
  const rest = steps.length > mostSteps ? ' The first of them; the others stand with the margins.' : '';
  return section({
    id: 'failure-order',
    title: 'What gives way first',
    lead: [
      `The pressure that uses up each strength, without any factor: how the motor fails if pressure goes on rising.${rest}`,
    ],
    tables: [
      {
        name: 'As pressure rises',
        columns: [
          { name: 'part and mode' },
          { name: 'pressure above ambient', numeric: true },
          { name: 'times MEOP', numeric: true },
        ],
        rows: steps
          .slice(0, mostSteps)
          .map(({ part, mode, cells }) => [textCell(`${part}: ${mode}`), ...cells]),
      },
    ],
    remarks: orders,
  });
}

/** Where each mode's number comes from: what several modes share is written once, and numbered. */
export function sourceSection({ margins }: Review): readonly ReportSection[] {
  const sources: string[] = [];
  const numbered = (source: string): number => {
    if (!sources.includes(source)) sources.push(source);
    return sources.indexOf(source) + 1;
  };
  const rows = mergedRows(
    margins.map((one) => {
      const { formulas, sources: own } = one.explain();
      return {
        ...modeOf(one),
        cells: [textCell(formulas.join(', ')), textCell(own.map(numbered).join(', '))],
      };
    }),
  );
  return section({
    id: 'sources',
    title: 'Where the margins come from',
    tables: [
      {
        name: 'Formulas and sources',
        prose: true,
        columns: [{ name: 'part and mode' }, { name: 'formulas' }, { name: 'sources' }],
        rows: rows.map(({ part, mode, cells }) => [textCell(`${part}: ${mode}`), ...cells]),
      },
      {
        name: 'The sources by number',
        columns: [{ name: 'number' }, { name: 'source' }],
        rows: sources.map((source, i) => [textCell(String(i + 1)), textCell(source)]),
      },
    ],
  });
}
