import { namedRows } from '../part-rows';
import type { ReuseReview } from '../reuse/reuse-result';
import { figure, type ReportSection, type Shown, section, shown, textCell, unknown } from './content';

/** The table of inspections between firings, which the review and the comparison share. */
export const inspectionTable = ({ inspections }: Pick<ReuseReview, 'inspections'>) => ({
  name: 'Inspection between firings, with the limits of this motor',
  prose: true,
  columns: [{ name: 'part' }, { name: 'inspection' }, { name: 'method and limit' }, { name: 'source' }],
  rows: namedRows(inspections, ({ inspection, instruction }) => [inspection, instruction]).map(
    ({ part, inspection, instruction, source }) => [
      textCell(part),
      textCell(inspection),
      textCell(instruction),
      textCell(source),
    ],
  ),
});

/** Section on the reuse of the hardware: cycles used, estimated life and inspections. */
export function reuseSection({ reuse }: { readonly reuse: ReuseReview }): readonly ReportSection[] {
  const { parts, heat, cautions } = reuse;
  return section({
    id: 'reuse',
    title: 'Reuse of the hardware',
    lead: [
      'A first-order estimate of life at the local stress of each feature, with factors of 20 on cycles and 2 on stress and strain.',
      ...(heat === undefined ? [] : [heat.statement]),
    ],
    tables: [
      {
        name: 'Cycles used and estimated life',
        prose: true,
        columns: [
          { name: 'part' },
          { name: 'firings', numeric: true },
          { name: 'proof tests', numeric: true },
          { name: 'estimate' },
        ],
        rows: namedRows(parts, ({ firings, proofs, statement }) => [firings, proofs, statement]).map(
          ({ part, firings, proofs, statement, remainingFirings }) => [
            textCell(part),
            figure(firings, 6),
            figure(proofs, 6),
            { text: statement, ...(remainingFirings === 0 && { verdict: 'fail' as const }) },
          ],
        ),
      },
      {
        name: 'Local stress of each feature at MEOP',
        columns: [
          { name: 'part and feature' },
          { name: 'nominal stress', numeric: true },
          { name: 'notch factor', numeric: true },
          { name: 'local stress', numeric: true },
          { name: 'planned firings when new', numeric: true },
          { name: 'basis of the factor' },
        ],
        rows: namedRows(
          parts.flatMap(({ features }) => features),
          ({ feature, nominal, notchFactor, plannedFirings }) => [
            feature,
            nominal,
            notchFactor,
            plannedFirings,
          ],
        ).map(({ part, feature, nominal, notchFactor, localStress, plannedFirings, basis }) => [
          textCell(`${part}: ${feature}`),
          shown(nominal),
          figure(notchFactor, 3),
          shown(localStress),
          firings(plannedFirings),
          textCell(basis),
        ]),
      },
      inspectionTable(reuse),
    ],
    cautions,
  });
}

// Beyond a thousand the estimate has no use as a number.
const firings = (count: number): Shown =>
  Number.isFinite(count) ? (count >= 1000 ? { text: '> 1000' } : figure(count, 4)) : unknown;
