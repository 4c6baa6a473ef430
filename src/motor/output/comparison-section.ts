import type { MotorComparison } from '../compare/comparison';
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

const mostUsed = 12;

/** What a firing says of the model and of the hardware. */
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
    title: 'What the firing says of the model',
    lead:
      patchReasons.length === 0
        ? diagnosis.length > 0
          ? diagnosis
          : ['The firing asks for no change of the document.']
        : ['The firing asks for these changes of the document:', ...patchReasons, ...diagnosis],
    tables: [
      {
        name: 'Prediction and record',
        columns: [
          { name: 'figure' },
          { name: 'predicted', numeric: true },
          { name: 'recorded', numeric: true },
          { name: 'recorded over predicted', numeric: true },
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
        name: 'Single causes that could explain the difference, the best first',
        columns: [
          { name: 'cause' },
          { name: 'factor', numeric: true },
          { name: 'explains', numeric: true },
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
    title: 'What the hardware saw',
    lead: [
      peakPressureUpperBound === undefined
        ? 'What pressure the hardware saw is not known.'
        : `The hardware saw up to ${peakPressureUpperBound}.`,
      `${capital(reuse.summary)}.`,
    ],
    tables: [
      {
        name: 'For and against using the hardware again: facts, no permission',
        columns: [{ name: 'fact' }, { name: 'speaks' }],
        rows: reuse.findings.map(({ finding, effect }) => [
          textCell(finding),
          { text: effect, ...(effect === 'neutral' ? {} : { verdict: effectVerdict[effect] }) },
        ]),
      },
      {
        name: 'Strength used, the most first',
        columns: [
          { name: 'part and mode' },
          { name: 'used', numeric: true },
          { name: 'applied', numeric: true },
          { name: 'allowable', numeric: true },
          { name: 'margin with its factor', numeric: true },
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

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** What a report on a comparison says. */
export function comparisonContent(found: MotorComparison): ReportContent {
  const { measured, predicted, reuse, peakPressureUpperBound, patchReasons, diagnosis, impliedArea } = found;
  const flaw = diagnosis.length > 0 ? impliedArea?.flaw : undefined;
  const asks =
    patchReasons.length > 0
      ? `The firing asks for ${patchReasons.length === 1 ? 'one change' : `${patchReasons.length} changes`} of the model`
      : diagnosis.length === 0
        ? 'The firing asks for no change of the model'
        : flaw === undefined
          ? 'No constant of the model explains the firing'
          : `The firing shows up to ${flaw.maxExcess} more burning area than the sound grain has, as a flaw does`;
  const verdict = reuse.findings.some(({ effect }) => effect === 'adverse') ? 'marginal' : 'pass';
  return {
    title: measured.record.title ?? predicted.title ?? 'Firing',
    kind: 'recorded firing beside its prediction',
    headline: [
      { message: `${asks}.`, ...(diagnosis.length > 0 && { verdict: 'marginal' as const }) },
      { message: `${capital(reuse.summary)}.`, verdict },
    ],
    verdict,
    keyFigures: [
      ...(peakPressureUpperBound === undefined
        ? []
        : [['pressure the hardware saw', shown(peakPressureUpperBound)] as const]),
      ...(measured.totalImpulse === undefined
        ? []
        : [['total impulse', shown(measured.totalImpulse.value)] as const]),
    ],
    sections: comparisonSections(found),
  };
}
