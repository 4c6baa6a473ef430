import { partName } from '../../structures';
import type { FlawEnvelope } from '../envelope/flaw-envelope';
import { headlineOf, type ReportContent, type ReportSection, section, shown, textCell } from './content';
import { mergedRows, modeOf } from './mode-rows';
import { plotFlawEnvelope } from './plot-flaw-envelope';

const maxRows = 12;
const mostInWords = 6;

/** Section on the critical flaw size of each failure mode. */
export function envelopeSection(envelope: FlawEnvelope): readonly ReportSection[] {
  const { rows, flawFreePeakPressure, cautions } = envelope;
  const limitRows = mergedRows(
    rows.map((row) => ({
      ...modeOf(row),
      cells: [
        shown(row.failurePressure),
        ...row.limits.map(({ addedArea }) =>
          addedArea === undefined ? textCell('does not fail') : shown(addedArea),
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
    title: 'Flaw tolerance',
    lead: [
      `Flaw that raises the worst-case peak pressure from ${flawFreePeakPressure} (without the flaw) until the stress equals the allowable. No factor of safety is included.`,
    ],
    figures: [
      {
        id: 'flaws-plot',
        title: 'Peak pressure against added burning area',
        description: 'Worst-case peak gauge pressure against the burning area added by a flaw.',
        spec: (width) => plotFlawEnvelope(envelope, { width }),
      },
    ],
    tables: [
      {
        name: 'Critical added burning area of each failure mode',
        columns: [
          { name: 'part and mode' },
          { name: 'failure pressure', numeric: true },
          ...kinds.map((kind) => ({ name: kind, numeric: true })),
        ],
        rows: limitRows.map(({ part, mode, cells }) => [textCell(`${part}: ${mode}`), ...cells]),
      },
      {
        name: 'Critical flaw sizes of the modes that fail first',
        prose: true,
        columns: [{ name: 'part and mode' }, ...kinds.map((name) => ({ name }))],
        rows: wordRows.map(({ part, mode, cells }) => [textCell(`${part}: ${mode}`), ...cells]),
      },
    ],
    cautions,
  });
}

/** Content of the report on a flaw envelope. */
export function envelopeContent(envelope: FlawEnvelope): ReportContent {
  const [first] = envelope.rows;
  return {
    title: envelope.name,
    kind: 'flaw tolerance of a motor',
    headline:
      first === undefined
        ? headlineOf('No failure mode could be evaluated.', 'fail')
        : headlineOf(
            `The first mode to fail is ${partName(first.part)}, ${first.mode}, at ${first.failurePressure}. Critical flaws: ${first.limits.map(({ kind, message }) => `${kind}: ${message}`).join('; ')}.`,
          ),
    ...(first === undefined && { verdict: 'not judged' as const }),
    keyFigures: [['peak pressure without flaw', shown(envelope.flawFreePeakPressure)]],
    sections: envelopeSection(envelope),
  };
}
