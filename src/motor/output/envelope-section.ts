import { partName } from '../../structures';
import type { FlawEnvelope } from '../envelope/flaw-envelope';
import { headlineOf, type ReportContent, type ReportSection, section, shown, textCell } from './content';
import { mergedRows, modeOf } from './mode-rows';
import { plotFlawEnvelope } from './plot-flaw-envelope';

const maxRows = 12;
const mostInWords = 6;

/** How large flaws may be before each mode gives way. */
export function envelopeSection(envelope: FlawEnvelope): readonly ReportSection[] {
  const { rows, flawFreePeakPressure, cautions } = envelope;
  const limitRows = mergedRows(
    rows.map((row) => ({
      ...modeOf(row),
      cells: [
        shown(row.failurePressure),
        ...row.limits.map(({ addedArea }) =>
          addedArea === undefined ? textCell('survives all') : shown(addedArea),
        ),
      ],
    })),
  ).slice(0, maxRows);
  const wordRows = mergedRows(
    rows.map((row) => ({
      ...modeOf(row),
      cells: row.limits.map(({ message }) => textCell(message)),
    })),
  ).slice(0, mostInWords);
  const kinds = rows[0]?.limits.map(({ kind }) => kind) ?? [];
  return section({
    id: 'flaws',
    title: 'Flaws that the motor survives',
    lead: [
      `The flaw that lifts the peak from ${flawFreePeakPressure}, that of the worst case without it, to where each strength is used up. No factor of safety is left there.`,
    ],
    figures: [
      {
        id: 'flaws-plot',
        title: 'Peak pressure by added burning area',
        description: 'Peak pressure above ambient at the worst case over the burning area that a flaw adds.',
        spec: (width) => plotFlawEnvelope(envelope, { width }),
      },
    ],
    tables: [
      {
        name: 'The least flaw at which each mode gives way, as added burning area',
        columns: [
          { name: 'part and mode' },
          { name: 'at pressure', numeric: true },
          ...kinds.map((kind) => ({ name: kind, numeric: true })),
        ],
        rows: limitRows.map(({ part, mode, cells }) => [textCell(`${part}: ${mode}`), ...cells]),
      },
      {
        name: 'The first of those flaws in words',
        prose: true,
        columns: [{ name: 'part and mode' }, ...kinds.map((name) => ({ name }))],
        rows: wordRows.map(({ part, mode, cells }) => [textCell(`${part}: ${mode}`), ...cells]),
      },
    ],
    cautions,
  });
}

/** What a report on a flaw envelope says. */
export function envelopeContent(envelope: FlawEnvelope): ReportContent {
  const [first] = envelope.rows;
  return {
    title: envelope.name,
    kind: 'flaws that a motor survives',
    headline:
      first === undefined
        ? headlineOf('No mode could be judged.', 'fail')
        : headlineOf(
            `The first to give way is ${partName(first.part)}, ${first.mode}, at ${first.failurePressure}: ${first.limits.map(({ kind, message }) => `${kind}: ${message}`).join('; ')}.`,
          ),
    ...(first === undefined && { verdict: 'fail' as const }),
    keyFigures: [['peak without the flaw', shown(envelope.flawFreePeakPressure)]],
    sections: envelopeSection(envelope),
  };
}
