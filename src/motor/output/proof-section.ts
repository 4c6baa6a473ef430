import type { Review } from '../review/review-result';
import { proofLine } from '../review/review-text';
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

const mostRows = 10;

/** Section on the proof test. */
export function proofSection({ proof }: Pick<Review, 'proof'>): readonly ReportSection[] {
  const { margins, nearYield, atTemperature, checks, cautions } = proof;
  const rows = mergedRows(
    margins.slice(0, Math.max(2 * mostRows, nearYield.length)).map((one) => ({
      ...modeOf(one),
      cells: [
        signed(one.marginOfSafety, verdictOf(one.marginOfSafety)),
        shown(one.applied),
        shownLike(one.allowable, one.applied),
        one.failurePressure === undefined ? unknown : shown(one.failurePressure),
      ],
    })),
  );
  const hot = mergedRows(
    atTemperature.map((one) => ({
      ...modeOf(one),
      cells: [
        figure(one.stressRatio, 3),
        figure(one.shownFactor, 3),
        shown(one.requiredPressure),
        textCell(
          one.yieldsBefore === undefined
            ? 'yes'
            : `no: ${one.yieldsBefore.mode} at ${one.yieldsBefore.failurePressure}`,
        ),
      ],
    })),
  );
  return section({
    id: 'proof',
    title: 'Proof test',
    lead: [proofLine(proof), ...checks.map(({ message }) => `Proof pressure: ${message}.`)],
    tables: [
      {
        name: 'Margins against yield at proof pressure, lowest first',
        columns: [
          { name: 'part and mode' },
          { name: 'MS', numeric: true },
          { name: 'applied', numeric: true },
          { name: 'allowable', numeric: true },
          { name: 'failure pressure', numeric: true },
        ],
        rows: rows
          .slice(0, Math.max(mostRows, nearYield.length))
          .map(({ part, mode, cells }) => [textCell(`${part}: ${mode}`), ...cells]),
      },
      {
        name: 'Strength in the firing that the test shows, by the stress ratio of UG-99(b)',
        columns: [
          { name: 'part and mode' },
          { name: 'stress ratio', numeric: true },
          { name: 'factor shown', numeric: true },
          { name: 'required test pressure', numeric: true },
          { name: 'can be proved cold' },
        ],
        rows: hot.map(({ part, mode, cells }) => [textCell(`${part}: ${mode}`), ...cells]),
      },
    ],
    cautions,
    remarks: [
      'A proof test shows assembly, gross defects and leaks. It does not show strength at elevated temperature, thermal stress, erosion, seals at temperature, ageing or growth of flaws.',
      'Seals are evaluated at MEOP only.',
    ],
  });
}
