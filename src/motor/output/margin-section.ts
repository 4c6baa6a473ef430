import { failureOrderText } from '../../structures/failure-mode/failure-order';
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

/** Section on the margin of safety of every failure mode at MEOP. */
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
    title: 'Margins of safety',
    lead: [
      `Margins of safety at MEOP (${meop.pressure}) with worst-case dimensions. MS = allowable / (FS × applied) − 1; the requirement is MS ≥ 0.`,
    ],
    tables: [
      {
        name: 'Margins of safety, lowest first',
        columns: [
          { name: 'part and mode' },
          { name: 'MS', numeric: true },
          { name: 'applied', numeric: true },
          { name: 'allowable', numeric: true },
          { name: 'FS', numeric: true },
          { name: 'failure pressure', numeric: true },
        ],
        rows: rows.map(({ part, mode, cells }) => [textCell(`${part}: ${mode}`), ...cells]),
      },
    ],
    figures: [
      {
        id: 'margins-plot',
        title: 'Margins of safety',
        description: `Lowest margins of safety, the minimum at the top. Bars to the left of zero are negative margins.`,
        spec: (width) => plotMargins(drawn, { width }),
      },
    ],
  });
}

/** Section on the failure sequence with increasing pressure. */
export function failureSection({ failureOrder, failureOrders }: Review): readonly ReportSection[] {
  if (failureOrder.length === 0) return [];
  const steps = mergedRows(
    failureOrder.map((one) => ({
      ...modeOf(one),
      cells: [textCell(one.consequence), shown(one.failurePressure), figure(one.meopRatio, 3)],
    })),
  );
  const orders = written(
    (['head', 'aft'] as const).flatMap((end) => {
      const order = failureOrders[end];
      return order === undefined ? [] : linesOf(`${end}-joint`, [failureOrderText(order)]);
    }),
  );
  const rest = steps.length > mostSteps ? ' Lowest pressures only; see the margin table for all modes.' : '';
  return section({
    id: 'failure-order',
    title: 'Failure sequence',
    lead: [
      `Chamber pressure at which each applied load equals its allowable, without a factor of safety.${rest}`,
    ],
    tables: [
      {
        name: 'Failure pressures, lowest first',
        columns: [
          { name: 'part and mode' },
          { name: 'consequence' },
          { name: 'failure pressure', numeric: true },
          { name: '× MEOP', numeric: true },
        ],
        rows: steps
          .slice(0, mostSteps)
          .map(({ part, mode, cells }) => [textCell(`${part}: ${mode}`), ...cells]),
      },
    ],
    remarks: orders,
  });
}

/** Section on the sources of each margin. Sources shared by several modes are listed once and numbered. */
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
    title: 'Sources of the margins',
    tables: [
      {
        name: 'Formulas and sources',
        prose: true,
        columns: [{ name: 'part and mode' }, { name: 'formulas' }, { name: 'sources' }],
        rows: rows.map(({ part, mode, cells }) => [textCell(`${part}: ${mode}`), ...cells]),
      },
      {
        name: 'List of sources',
        columns: [{ name: 'number' }, { name: 'source' }],
        rows: sources.map((source, i) => [textCell(String(i + 1)), textCell(source)]),
      },
    ],
  });
}
