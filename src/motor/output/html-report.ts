import {
  type ReportContent,
  type ReportFigure,
  type ReportSection,
  type ReportTable,
  type Shown,
  unknown,
} from './content';
import { type Drawings, drawnDirectly, isDrawn } from './drawings';
import { pageStyle } from './page-style';
import { cellText } from './text-report';
import { usualCautions } from './usual-cautions';

/**
 * Report as one self-contained HTML page without scripts, fonts or external images. Drawings are inserted as SVG
 * where given.
 */
export function htmlReport(content: ReportContent, drawings: Drawings = {}): string {
  const { title, kind, headline, keyFigures, sections } = content;
  const links = [...sections, { id: 'before-firing', title: 'Safety' }];
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escaped(`${title}: ${kind}`)}</title>
<style>${pageStyle}</style>
</head>
<body>
<a class="skip" href="#content">Skip to content</a>
<div class="sheet">
<header>
<div class="name">
<p class="kind">${escaped(kind)}</p>
<h1>${escaped(title)}</h1>
${headline.map(({ message, verdict }) => `<p class="headline${verdict === undefined ? '' : ` ${verdict}`}">${escaped(message)}</p>`).join('\n')}
</div>
${keyFigures.length === 0 ? '' : `<dl class="key">${keyFigures.map(([name, shown]) => `<div><dt>${escaped(name)}</dt><dd${classOf(shown)}>${escaped(cellText(shown))}</dd></div>`).join('')}</dl>`}
</header>
<nav aria-label="Sections of this report"><ul>${links.map(({ id, title: name }) => `<li><a href="#${id}">${escaped(name)}</a></li>`).join('')}</ul></nav>
<main id="content" tabindex="-1">
${sections.map((part) => htmlSection(part, drawings)).join('\n')}
<section class="before" id="before-firing" aria-labelledby="before-firing-title">
<h2 id="before-firing-title">Safety</h2>
${list('', usualCautions)}
</section>
</main>
<footer>Printed values are rounded; the JSON report contains full precision.</footer>
</div>
</body>
</html>
`;
}

function htmlSection(part: ReportSection, drawings: Drawings): string {
  const { id, title, lead, tables, figures, cautions, remarks } = part;
  const drawn = figures.map((figure) => htmlFigure(figure, drawings));
  const made = tables.map((table) => htmlTable(table));
  // In print a plot and its table are side by side.
  const beside = figures.length === 1 && drawn[0] !== '' && tables[0] !== undefined && isFacts(tables[0]);
  const matter = beside
    ? [`<div class="paired">${drawn[0]}\n${made[0]}</div>`, ...made.slice(1)]
    : [...drawn, ...made];
  return `<section id="${id}" aria-labelledby="${id}-title">
<h2 id="${id}-title">${escaped(title)}</h2>
${lead.map((text) => `<p>${escaped(text)}</p>`).join('\n')}
${matter.join('\n')}
${list(' class="cautions" aria-label="Cautions"', cautions)}
${list(' class="remarks"', remarks)}
</section>`;
}

function htmlFigure(figure: ReportFigure, drawings: Drawings): string {
  const { id, title, description } = figure;
  const drawing = drawings[id] ?? (isDrawn(figure) ? drawnDirectly(figure) : undefined);
  if (drawing === undefined) return '';
  const picture = (name: 'wide' | 'narrow'): string =>
    `<div class="${name}" role="img" aria-label="${escaped(`${title}. ${description}`)}">${drawing[name]}</div>`;
  return `<figure${isDrawn(figure) ? ' class="to-scale"' : ''}>${picture('wide')}${picture('narrow')}<figcaption>${escaped(description)}</figcaption></figure>`;
}

/** A table. On a narrow screen the rows of a table with more than two columns become blocks and keep their roles. */
export function htmlTable({ name, columns, rows }: ReportTable): string {
  const numeric = (j: number): string => (columns[j].numeric ? ' class="n"' : '');
  const head = columns.map(
    (column, j) => `<th scope="col" role="columnheader"${numeric(j)}>${escaped(column.name)}</th>`,
  );
  const body = rows.map((row) => {
    const cells = columns.map((column, j) => htmlCell(row[j], j, column.name, columns[j].numeric === true));
    return `<tr role="row">${cells.join('')}</tr>`;
  });
  const look = columns.length > 2 ? ' class="stack"' : isFacts({ columns }) ? ' class="facts"' : '';
  return `<table role="table"${look}>
<caption>${escaped(name)}</caption>
<thead role="rowgroup"><tr role="row">${head.join('')}</tr></thead>
<tbody role="rowgroup">${body.join('\n')}</tbody>
</table>`;
}

/** True for names with one number each, for which half of the page is sufficient. */
const isFacts = ({ columns }: Pick<ReportTable, 'columns'>): boolean =>
  columns.length === 2 && columns[1].numeric === true;

function htmlCell(cell: Shown | undefined, j: number, column: string, isNumeric: boolean): string {
  if (j === 0) return `<th scope="row" role="rowheader">${escaped(cellText(cell))}</th>`;
  const classes = [isNumeric ? 'n' : '', cell?.verdict ?? '', cell?.text === unknown.text ? 'unknown' : '']
    .filter((name) => name !== '')
    .join(' ');
  const label = ` data-label="${escaped(column)}"`;
  return `<td role="cell"${classes === '' ? '' : ` class="${classes}"`}${label}>${escaped(cellText(cell))}</td>`;
}

const longestFigure = 30;

/** Classes of a key result; a long text is set smaller than a figure. */
function classOf({ text, verdict }: Shown): string {
  const classes = [
    ...(verdict === undefined ? [] : [verdict]),
    ...(text.length > longestFigure ? ['sentence'] : []),
  ];
  return classes.length === 0 ? '' : ` class="${classes.join(' ')}"`;
}

const list = (attributes: string, items: readonly string[]): string =>
  items.length === 0
    ? ''
    : `<ul${attributes}>${items.map((item) => `<li>${escaped(item)}</li>`).join('')}</ul>`;

/** Text as HTML, also within an attribute. */
export const escaped = (text: string): string =>
  text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;').replace(/"/g, '&quot;');
