import type { MotorComparison } from '../compare/comparison';
import type { ReviewVerdict } from '../review/verdict';
import {
  figure,
  percent,
  type ReportContent,
  type ReportSection,
  section,
  shown,
  shownLike,
  signed,
  textCell,
  unknown,
  type Verdict,
  verdictOf,
} from './content';
import { type MeasuredContext, measuredSection } from './measured-section';
import { mergedRows, modeOf } from './mode-rows';
import { inspectionTable } from './reuse-section';

const mostUsed = 12;

/** Sections that compare a firing with the model and evaluate the hardware. */
export function comparisonSections(
  found: MotorComparison,
  beside: MeasuredContext = {},
): readonly ReportSection[] {
  return [
    ...measuredSection(found.measured, { prediction: found.predicted, ...beside }),
    ...modelSection(found),
    ...hardwareSection(found),
  ];
}

function modelSection({ figures, difference, patch, patchReasons, diagnosis, cautions }: MotorComparison) {
  return section({
    id: 'model',
    title: 'Comparison with the model',
    lead:
      patchReasons.length === 0
        ? diagnosis.length > 0
          ? diagnosis
          : ['The firing requires no change to the document.']
        : ['The firing implies these changes to the document:', ...patchReasons, ...diagnosis],
    tables: [
      {
        name: 'Predicted and measured values',
        columns: [
          { name: 'figure' },
          { name: 'predicted', numeric: true },
          { name: 'measured', numeric: true },
          { name: 'measured/predicted', numeric: true },
        ],
        rows: figures.map((row) => [
          textCell(row.figure),
          row.predicted === undefined ? unknown : shown(row.predicted),
          row.measured === undefined
            ? unknown
            : row.predicted === undefined
              ? shown(row.measured)
              : shownLike(row.measured, row.predicted),
          row.ratio === undefined ? unknown : figure(row.ratio, 3),
        ]),
      },
      {
        name: 'Possible single causes of the difference, best first',
        columns: [
          { name: 'cause' },
          { name: 'factor', numeric: true },
          { name: 'fraction explained', numeric: true },
          { name: 'note' },
        ],
        rows: (difference?.explanations ?? []).map((one) => [
          textCell(one.cause),
          figure(one.factor, 4),
          percent(one.explained),
          textCell(one.note),
        ]),
      },
    ],
    cautions,
    remarks:
      Object.keys(patch).length === 0 ? [] : [`As a JSON merge patch (RFC 7396): ${JSON.stringify(patch)}`],
  });
}

function hardwareSection({ peakPressureUpperBound, utilisations, reuse }: MotorComparison) {
  return section({
    id: 'hardware',
    title: 'Hardware after the firing',
    lead: [
      peakPressureUpperBound === undefined
        ? 'The maximum pressure on the hardware is not known.'
        : `Maximum pressure on the hardware: up to ${peakPressureUpperBound}.`,
      reuse.summary,
    ],
    tables: [
      {
        name: 'Findings for and against reuse of the hardware; not an approval',
        columns: [{ name: 'finding' }, { name: 'effect' }],
        rows: reuse.findings.map(({ finding, effect }) => [
          textCell(finding),
          { text: effect, ...(effect === 'neutral' ? {} : { verdict: effectVerdict[effect] }) },
        ]),
      },
      inspectionTable(reuse),
      {
        name: 'Strength utilisation, highest first',
        columns: [
          { name: 'part and mode' },
          { name: 'utilisation', numeric: true },
          { name: 'applied', numeric: true },
          { name: 'allowable', numeric: true },
          { name: 'margin of safety', numeric: true },
        ],
        rows: mergedRows(
          utilisations.map((one) => ({
            ...modeOf(one),
            cells: [
              { ...percent(one.utilisation), ...(one.utilisation >= 1 && { verdict: 'fail' as const }) },
              shown(one.applied),
              shownLike(one.allowable, one.applied),
              signed(one.marginOfSafety, verdictOf(one.marginOfSafety)),
            ],
          })),
        )
          .slice(0, mostUsed)
          .map(({ part, mode, cells }) => [textCell(`${part}: ${mode}`), ...cells]),
      },
    ],
  });
}

const effectVerdict: Readonly<Record<'favourable' | 'adverse', Verdict>> = {
  favourable: 'pass',
  adverse: 'marginal',
};

/**
 * Does not hold where a margin of safety is negative at the pressure reached; not judged where other adverse findings need an
 * inspection.
 */
export function comparisonVerdict({ utilisations, reuse }: MotorComparison): ReviewVerdict {
  if (utilisations.some(({ marginOfSafety }) => marginOfSafety < 0)) return 'does not hold';
  return reuse.findings.some(({ effect }) => effect === 'adverse') ? 'not judged' : 'holds';
}

/** Content of the report on a comparison. */
export function comparisonContent(found: MotorComparison): ReportContent {
  const { measured, predicted, reuse, peakPressureUpperBound, patchReasons, diagnosis, impliedArea } = found;
  const flaw = diagnosis.length > 0 ? impliedArea?.flaw : undefined;
  const asks =
    patchReasons.length > 0
      ? `The firing implies ${patchReasons.length === 1 ? 'one change' : `${patchReasons.length} changes`} to the model`
      : diagnosis.length === 0
        ? 'The firing requires no change to the model'
        : flaw === undefined
          ? 'No single model constant explains the difference'
          : `The firing implies up to ${flaw.maxExcess} more burning area than the flaw-free grain, consistent with a flaw`;
  const isAdverse = reuse.findings.some(({ effect }) => effect === 'adverse');
  return {
    title: measured.record.title ?? predicted.title ?? 'Firing',
    kind: 'comparison of a recorded firing with its prediction',
    headline: [
      { message: `${asks}.`, ...(diagnosis.length > 0 && { verdict: 'marginal' as const }) },
      { message: reuse.summary, verdict: isAdverse ? 'marginal' : 'pass' },
    ],
    verdict: comparisonVerdict(found),
    keyFigures: [
      ...(peakPressureUpperBound === undefined
        ? []
        : [['maximum pressure on the hardware', shown(peakPressureUpperBound)] as const]),
      ...(measured.totalImpulse === undefined
        ? []
        : [['total impulse', shown(measured.totalImpulse.value)] as const]),
    ],
    sections: comparisonSections(found),
  };
}
