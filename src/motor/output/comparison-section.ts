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
  unknown,
  type Verdict,
  verdictOf,
  words,
} from './content';
import { type Beside, measuredSection } from './measured-section';
import { named, namedOnce } from './named-rows';

const mostUsed = 12;

/** What a firing says of the model and of the hardware. */
export function comparisonSections(found: MotorComparison, beside: Beside = {}): readonly ReportSection[] {
  return [
    ...measuredSection(found.measured, { prediction: found.predicted, ...beside }),
    ...modelSection(found),
    ...hardwareSection(found),
  ];
}

function modelSection({ figures, difference, patch, patchReasons, lesson, cautions }: MotorComparison) {
  return section({
    id: 'model',
    title: 'What the firing says of the model',
    lead:
      patchReasons.length === 0
        ? lesson.length > 0
          ? lesson
          : ['The firing asks for no change of the document.']
        : ['The firing asks for these changes of the document:', ...patchReasons, ...lesson],
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
          words(row.figure),
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
          words(one.cause),
          figure(one.factor, 4),
          percent(one.explained),
          words(one.note),
        ]),
      },
    ],
    cautions,
    remarks:
      Object.keys(patch).length === 0 ? [] : [`As a JSON merge patch (RFC 7396): ${JSON.stringify(patch)}`],
  });
}

function hardwareSection({ pressureSeen, used, reuse }: MotorComparison) {
  return section({
    id: 'hardware',
    title: 'What the hardware saw',
    lead: [
      pressureSeen === undefined
        ? 'What pressure the hardware saw is not known.'
        : `The hardware saw up to ${pressureSeen}.`,
      `${capital(reuse.says)}.`,
    ],
    tables: [
      {
        name: 'For and against using the hardware again: facts, no permission',
        columns: [{ name: 'fact' }, { name: 'speaks' }],
        rows: reuse.facts.map(({ fact, speaks }) => [
          words(fact),
          { text: speaks, ...(speaks === 'neither' ? {} : { verdict: speaksVerdict[speaks] }) },
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
        rows: namedOnce(
          used.map((one) => ({
            ...named(one),
            cells: [
              { ...percent(one.used), ...(one.used >= 1 && { verdict: 'fails' as const }) },
              shown(one.applied),
              shownLike(one.allowable, one.applied),
              signed(one.marginOfSafety, verdictOf(one.marginOfSafety)),
            ],
          })),
        )
          .slice(0, mostUsed)
          .map(({ part, mode, cells }) => [words(`${part}: ${mode}`), ...cells]),
      },
    ],
  });
}

const speaksVerdict: Readonly<Record<'for' | 'against', Verdict>> = { for: 'holds', against: 'close' };

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** What a report on a comparison says. */
export function comparisonContent(found: MotorComparison): ReportContent {
  const { measured, predicted, reuse, pressureSeen, patchReasons, lesson, impliedArea } = found;
  const flaw = lesson.length > 0 ? impliedArea?.flaw : undefined;
  const asks =
    patchReasons.length > 0
      ? `The firing asks for ${patchReasons.length === 1 ? 'one change' : `${patchReasons.length} changes`} of the model`
      : lesson.length === 0
        ? 'The firing asks for no change of the model'
        : flaw === undefined
          ? 'No constant of the model explains the firing'
          : `The firing shows up to ${flaw.greatestExcess} more burning area than the sound grain has, as a flaw does`;
  const verdict = reuse.facts.some(({ speaks }) => speaks === 'against') ? 'close' : 'holds';
  return {
    title: measured.record.title ?? predicted.title ?? 'Firing',
    kind: 'recorded firing beside its prediction',
    headline: [
      { says: `${asks}.`, ...(lesson.length > 0 && { verdict: 'close' as const }) },
      { says: `${capital(reuse.says)}.`, verdict },
    ],
    verdict,
    keyFigures: [
      ...(pressureSeen === undefined ? [] : [['pressure the hardware saw', shown(pressureSeen)] as const]),
      ...(measured.totalImpulse === undefined
        ? []
        : [['total impulse', shown(measured.totalImpulse.value)] as const]),
    ],
    sections: comparisonSections(found),
  };
}
