import type { ReportContent, ReportTable } from './content';
import { cellText } from './text-report';
import { usualCautions } from './usual-cautions';

/** A report as Markdown with tables. */
export function markdownReport(content: ReportContent): string {
  const parts = [
    `# ${escaped(`${content.title}: ${content.kind}`)}`,
    ...content.headline.map(({ message }) => escaped(message)),
    list(content.keyFigures.map(([name, { text }]) => `${escaped(name)}: **${escaped(text)}**`)),
    ...content.sections.flatMap(({ title, lead, tables, cautions, remarks }) => [
      `## ${escaped(title)}`,
      ...lead.map(escaped),
      ...tables.map((table) => markdownTable(table)),
      list(cautions.map((text) => `**Caution:** ${escaped(text)}`)),
      list(remarks.map(escaped)),
    ]),
    '## Safety',
    list(usualCautions.map(escaped)),
  ];
  return `${parts.filter((part) => part !== '').join('\n\n')}\n`;
}

const list = (items: readonly string[]): string => items.map((item) => `- ${item}`).join('\n');

function markdownTable({ columns, rows }: ReportTable): string {
  const line = (cells: readonly string[]): string => `| ${cells.map(escaped).join(' | ')} |`;
  return [
    line(columns.map(({ name }) => name)),
    `|${columns.map(({ numeric }) => (numeric ? '---:' : '---')).join('|')}|`,
    ...rows.map((row) => line(columns.map((_, j) => cellText(row[j])))),
  ].join('\n');
}

// Characters that Markdown, or HTML within it, would interpret as markup.
const escaped = (text: string): string =>
  text
    .replace(/[\\`*_[\]|#]/g, '\\$&')
    .replace(/&/g, '&amp;')
    .replace(/</g, '&lt;')
    .replace(/\n/g, ' ');
