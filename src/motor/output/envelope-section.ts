import type { FlawEnvelope } from '../envelope/flaw-envelope';
import { type ReportContent, type ReportSection, said, section, shown, words } from './content';
import { named, namedOnce } from './named-rows';
import { plotFlawEnvelope } from './plot-flaw-envelope';

const mostRows = 12;
const mostInWords = 6;

/** How large flaws may be before each mode gives way. */
export function envelopeSection(envelope: FlawEnvelope): readonly ReportSection[] {
  const { rows, soundPeak, cautions } = envelope;
  const limitRows = namedOnce(
    rows.map((row) => ({
      ...named(row),
      cells: [
        shown(row.reachedAt),
        ...row.limits.map(({ addedArea }) =>
          addedArea === undefined ? words('survives all') : shown(addedArea),
        ),
      ],
    })),
  ).slice(0, mostRows);
  const wordRows = namedOnce(
    rows.map((row) => ({
      ...named(row),
      cells: row.limits.map(({ says }) => words(says)),
    })),
  ).slice(0, mostInWords);
  const kinds = rows[0]?.limits.map(({ kind }) => kind) ?? [];
  return section({
    id: 'flaws',
    title: 'Flaws that the motor survives',
    lead: [
      `The flaw that lifts the peak from ${soundPeak}, that of the worst case without it, to where each strength is used up. No factor of safety is left there.`,
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
        rows: limitRows.map(({ part, mode, cells }) => [words(`${part}: ${mode}`), ...cells]),
      },
      {
        name: 'The first of those flaws in words',
        prose: true,
        columns: [{ name: 'part and mode' }, ...kinds.map((name) => ({ name }))],
        rows: wordRows.map(({ part, mode, cells }) => [words(`${part}: ${mode}`), ...cells]),
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
        ? said('No mode could be judged.', 'fails')
        : said(
            `The first to give way is ${first.part}, ${first.mode}, at ${first.reachedAt}: ${first.limits.map(({ kind, says }) => `${kind}: ${says}`).join('; ')}.`,
          ),
    ...(first === undefined && { verdict: 'fails' as const }),
    keyFigures: [['peak without the flaw', shown(envelope.soundPeak)]],
    sections: envelopeSection(envelope),
  };
}
