import type { ReportContent, ReportTable, Shown } from './content';
import { usualCautions } from './usual-cautions';

const lineWidth = 100;

/** Report for a terminal: plain text with aligned columns. */
export function textReport(content: ReportContent): string {
  const title = `${content.title}: ${content.kind}`;
  const lines = [
    title,
    '═'.repeat(widthOf(title)),
    ...content.headline.flatMap(({ message }) => wrapped(message)),
    ...(content.keyFigures.length > 0 ? ['', ...pairs(content.keyFigures)] : []),
  ];
  for (const { title: name, lead, tables, cautions, remarks } of content.sections) {
    lines.push('', name, '─'.repeat(widthOf(name)), ...lead.flatMap((text) => wrapped(text)));
    for (const table of tables) lines.push(...(table.prose ? proseTable(table) : textTable(table)));
    lines.push(...cautions.flatMap((text) => wrapped(`caution: ${text}`, '  ')));
    lines.push(...remarks.flatMap((text) => wrapped(text, '  ')));
  }
  lines.push('', 'Safety', '──────');
  lines.push(...usualCautions.flatMap((text) => wrapped(`• ${text}`, '  ')));
  return `${lines.join('\n')}\n`;
}

function pairs(rows: ReportContent['keyFigures']): string[] {
  const width = Math.max(...rows.map(([name]) => widthOf(name)));
  return rows.map(([name, { text }]) => `  ${padded(name, width)}  ${text}`);
}

/** A table of sentences: one paragraph per row. */
function proseTable({ columns, rows }: ReportTable): string[] {
  const [, ...others] = columns;
  return rows.flatMap(([first, ...rest]) =>
    wrapped(
      `${cellText(first)}: ${rest.map((cell, j) => `${others[j].name}: ${cellText(cell)}`).join('; ')}`,
      '  ',
    ),
  );
}

const longestFirst = 46;
const shortestLast = 34;

/** A table with aligned columns, as lines. Long text in the first and last column is wrapped. */
export function textTable({ columns, rows }: ReportTable): string[] {
  const texts = rows.map((row) => columns.map((_, j) => cellText(row[j])));
  const widths = columns.map(({ name }, j) =>
    Math.max(widthOf(name), ...texts.map((row) => widthOf(row[j]))),
  );
  const last = columns.length - 1;
  if (last > 1) widths[0] = Math.min(widths[0], longestFirst);
  if (last === 1) widths[0] = Math.min(widths[0], Math.max(longestFirst, lineWidth - widths[1] - 2));
  const others = widths.slice(0, -1).reduce((sum, width) => sum + width + 2, 0);
  if (last > 0 && !columns[last].numeric)
    widths[last] = Math.min(widths[last], Math.max(shortestLast, lineWidth - others));
  const lines = (cells: readonly string[]): string[] => {
    const broken = cells.map((text, j) => wrapped(text, '', widths[j]));
    const height = Math.max(...broken.map(({ length }) => length));
    return Array.from({ length: height }, (_, k) =>
      broken
        .map((parts, j) => padded(parts[k] ?? '', widths[j], columns[j].numeric))
        .join('  ')
        .trimEnd(),
    );
  };
  const head = lines(columns.map(({ name }) => name));
  const body = texts.flatMap(lines);
  return [...head, '╌'.repeat(Math.max(...[...head, ...body].map(widthOf))), ...body];
}

/** A cell as printed. A failed check is marked with a symbol, because text has no colour. */
export const cellText = (cell: Shown | undefined): string =>
  cell === undefined ? '' : cell.verdict === 'fail' ? `${cell.text} ✗` : cell.text;

// Characters as counted by a terminal: combining marks have no width.
const widthOf = (text: string): number => [...text.replace(/\p{M}/gu, '')].length;

function padded(text: string, width: number, right = false): string {
  const space = ' '.repeat(Math.max(0, width - widthOf(text)));
  return right ? space + text : text + space;
}

function wrapped(text: string, indent = '', width = lineWidth): string[] {
  const lines: string[] = [];
  for (const word of text.split(/\s+/)) {
    const last = lines.at(-1);
    if (last !== undefined && widthOf(last) + 1 + widthOf(word) <= width)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(lines.length === 0 ? word : `${indent}${word}`);
  }
  return lines;
}
