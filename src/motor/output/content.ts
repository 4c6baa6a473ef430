// What a report says, before it is written in any format: each number becomes text here, once, so that all formats print
// the same digits.
import { formatNumber, type Quantity } from '../../units';
import type { PlotSpec } from './plot-spec';

/** How a value is judged; said in words too, never by colour alone. */
export type Verdict = 'pass' | 'marginal' | 'fail';

/** A value as every format prints it. */
export interface Shown {
  readonly text: string;
  /** The value in full, in `unit` where it is a quantity. */
  readonly value?: number;
  readonly unit?: string;
  /** Of the quantity: says whether a pressure is gauge or absolute. */
  readonly kind?: string;
  readonly verdict?: Verdict;
}

/** A column of a table. */
export interface Column {
  readonly name: string;
  /** Numbers stand to the right. */
  readonly numeric?: boolean;
}

/** Rows under named columns. The first column names the row. */
export interface ReportTable {
  readonly name: string;
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly Shown[])[];
  /** Its cells are sentences: text prints a paragraph for each row. */
  readonly prose?: boolean;
}

/** A plot at any width, with what someone who cannot see it is told. */
export interface ReportFigure {
  readonly id: string;
  readonly title: string;
  readonly description: string;
  readonly spec: (width: number) => PlotSpec;
}

/** One part of a report. */
export interface ReportSection {
  readonly id: string;
  readonly title: string;
  /** What the part says, in sentences. */
  readonly lead: readonly string[];
  readonly tables: readonly ReportTable[];
  readonly figures: readonly ReportFigure[];
  /** What keeps it from being trusted as it stands. */
  readonly cautions: readonly string[];
  /** Plain remarks: sources, definitions, history. */
  readonly remarks: readonly string[];
}

/** A sentence of the headline, with how it judges. */
export interface HeadLine {
  readonly message: string;
  /** Where it judges something. */
  readonly verdict?: Verdict;
}

/** A headline of one sentence. */
export const headlineOf = (message: string, verdict?: Verdict): readonly HeadLine[] => [
  { message, ...(verdict !== undefined && { verdict }) },
];

/** The headline as one text. */
export const headlineText = ({ headline }: ReportContent): string =>
  headline.map(({ message }) => message).join(' ');

/** A whole report. */
export interface ReportContent {
  readonly title: string;
  readonly kind: string;
  /** What someone in a hurry reads: the answer, then what a recorded firing adds to it. */
  readonly headline: readonly HeadLine[];
  /** Where the report judges something; a prediction alone does not. */
  readonly verdict?: Verdict;
  /** The numbers that the job turns on. */
  readonly keyFigures: readonly (readonly [name: string, shown: Shown])[];
  readonly sections: readonly ReportSection[];
}

/** A section, of what it has. */
export function section(
  given: Pick<ReportSection, 'id' | 'title'> & Partial<ReportSection>,
): readonly ReportSection[] {
  const made: ReportSection = { lead: [], tables: [], figures: [], cautions: [], remarks: [], ...given };
  const { lead, tables, figures, cautions, remarks } = made;
  const filled = tables.filter(({ rows }) => rows.length > 0);
  const isEmpty = [lead, filled, figures, cautions, remarks].every(({ length }) => length === 0);
  return isEmpty ? [] : [{ ...made, tables: filled }];
}

/** Words. */
export const textCell = (text: string): Shown => ({ text });

/** A quantity to four figures, in the unit it carries. */
export const shown = (quantity: Quantity, verdict?: Verdict): Shown => ({
  text: quantity.format(),
  value: quantity.in(quantity.unit),
  unit: quantity.unit,
  kind: quantity.kind,
  ...(verdict !== undefined && { verdict }),
});

/** A quantity in the unit of another, where that unit fits. */
export const shownLike = (quantity: Quantity, other: Quantity): Shown =>
  quantity.kind === other.kind ? shown(quantity.to(other.unit)) : shown(quantity);

/** A plain number to so many figures. */
export const figure = (value: number, figures = 4): Shown => ({ text: formatNumber(value, figures), value });

/** A number with its sign and two places, as margins are written. */
export function signed(value: number, verdict?: Verdict): Shown {
  const rounded = Math.abs(value).toFixed(2);
  const sign = value < 0 ? '−' : '+'; // −0.00 is kept: the mode does not hold, if barely
  return { text: `${sign}${rounded}`, value, ...(verdict !== undefined && { verdict }) };
}

/** A share as a signed change in per cent. */
export const change = (value: number): Shown => ({
  text: `${value < 0 ? '−' : '+'}${(100 * Math.abs(value)).toFixed(1)} %`,
  value,
});

/** A share in per cent. */
export const percent = (value: number, places = 0): Shown => ({
  text: `${(100 * value).toFixed(places)} %`,
  value,
});

/** What is not known. */
export const unknown: Shown = { text: '–' };

/** How a margin is judged: close is below a tenth. */
export const verdictOf = (margin: number): Verdict =>
  margin < 0 ? 'fail' : margin < 0.1 ? 'marginal' : 'pass';

/** Facts as a table of two columns; those that are not known are left out. */
export function facts(
  name: string,
  rows: readonly (readonly [string, Shown | undefined])[],
  columns: readonly [string, string] = ['figure', 'value'],
): ReportTable {
  return {
    name,
    columns: [{ name: columns[0] }, { name: columns[1], numeric: true }],
    rows: rows.flatMap(([label, value]) => (value === undefined ? [] : [[textCell(label), value]])),
  };
}
