// The content of a report, independent of its format. Each number is formatted here, once, so that all formats print
// the same digits.
import { formatNumber, type Quantity } from '../../units';
import type { ReviewVerdict } from '../review/verdict';
import type { PlotSpec } from './plot-spec';

/** Evaluation of a value. It is also printed in words, never shown by colour alone. */
export type Verdict = 'pass' | 'marginal' | 'fail';

/** A value as printed in every format. */
export interface Shown {
  readonly text: string;
  /** Value in full precision, in `unit` for a quantity. */
  readonly value?: number;
  readonly unit?: string;
  /** Kind of the quantity; distinguishes gauge from absolute pressure. */
  readonly kind?: string;
  readonly verdict?: Verdict;
}

/** A column of a table. */
export interface Column {
  readonly name: string;
  /** True for a column of numbers, which is aligned to the right. */
  readonly numeric?: boolean;
}

/** Rows under named columns. The first column names the row. */
export interface ReportTable {
  readonly name: string;
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly Shown[])[];
  /** True where cells are sentences; the text format prints a paragraph for each row. */
  readonly prose?: boolean;
}

/** A plot or a drawing of any width, with a description for readers who cannot see it. */
export type ReportFigure = {
  readonly id: string;
  readonly title: string;
  readonly description: string;
} & (
  | { readonly spec: (width: number) => PlotSpec }
  /** SVG for paper of a width [mm], which needs no plotting package. */
  | { readonly draw: (width: number) => string }
);

/** One section of a report. */
export interface ReportSection {
  readonly id: string;
  readonly title: string;
  /** Introduction, in full sentences. */
  readonly lead: readonly string[];
  readonly tables: readonly ReportTable[];
  readonly figures: readonly ReportFigure[];
  /** Conditions that limit the validity of the section. */
  readonly cautions: readonly string[];
  /** Notes: sources, definitions, history. */
  readonly remarks: readonly string[];
}

/** A sentence of the headline with its evaluation. */
export interface HeadLine {
  readonly message: string;
  /** Evaluation; absent for a neutral sentence. */
  readonly verdict?: Verdict;
}

/** Makes a headline of one sentence. */
export const headlineOf = (message: string, verdict?: Verdict): readonly HeadLine[] => [
  { message, ...(verdict !== undefined && { verdict }) },
];

/** Joins the headline to one string. */
export const headlineText = ({ headline }: ReportContent): string =>
  headline.map(({ message }) => message).join(' ');

/** A whole report. */
export interface ReportContent {
  readonly title: string;
  readonly kind: string;
  /** Summary: the main result, then the effect of a recorded firing. */
  readonly headline: readonly HeadLine[];
  /** Absent where nothing is evaluated, as in a prediction. */
  readonly verdict?: ReviewVerdict;
  /** Key results. */
  readonly keyFigures: readonly (readonly [name: string, shown: Shown])[];
  readonly sections: readonly ReportSection[];
}

/** Makes a section from the given parts; returns nothing if all are empty. */
export function section(
  given: Pick<ReportSection, 'id' | 'title'> & Partial<ReportSection>,
): readonly ReportSection[] {
  const made: ReportSection = { lead: [], tables: [], figures: [], cautions: [], remarks: [], ...given };
  const { lead, tables, figures, cautions, remarks } = made;
  const filled = tables.filter(({ rows }) => rows.length > 0);
  const isEmpty = [lead, filled, figures, cautions, remarks].every(({ length }) => length === 0);
  return isEmpty ? [] : [{ ...made, tables: filled }];
}

/** A string as a cell. */
export const textCell = (text: string): Shown => ({ text });

/** A quantity with four significant figures, in its own unit. */
export const shown = (quantity: Quantity, verdict?: Verdict): Shown => ({
  text: quantity.format(),
  value: quantity.in(quantity.unit),
  unit: quantity.unit,
  kind: quantity.kind,
  ...(verdict !== undefined && { verdict }),
});

/** A quantity in the unit of another where both are of one kind. */
export const shownLike = (quantity: Quantity, other: Quantity): Shown =>
  quantity.kind === other.kind ? shown(quantity.to(other.unit)) : shown(quantity);

/** A plain number with the given number of significant figures. */
export const figure = (value: number, figures = 4): Shown => ({ text: formatNumber(value, figures), value });

/** A number with its sign and two decimals, as for a margin of safety. */
export function signed(value: number, verdict?: Verdict): Shown {
  const rounded = Math.abs(value).toFixed(2);
  const sign = value < 0 ? '−' : '+'; // −0.00 is kept: a slightly negative margin fails
  return { text: `${sign}${rounded}`, value, ...(verdict !== undefined && { verdict }) };
}

/** A fraction as a signed change in per cent. */
export const change = (value: number): Shown => ({
  text: `${value < 0 ? '−' : '+'}${(100 * Math.abs(value)).toFixed(1)} %`,
  value,
});

/** A fraction in per cent. */
export const percent = (value: number, places = 0): Shown => ({
  text: `${(100 * value).toFixed(places)} %`,
  value,
});

/** Cell of an unknown value. */
export const unknown: Shown = { text: '–' };

/** Evaluation of a margin of safety; margins below 0.1 are marginal. */
export const verdictOf = (margin: number): Verdict =>
  margin < 0 ? 'fail' : margin < 0.1 ? 'marginal' : 'pass';

/** A table of two columns; rows with an unknown value are omitted. */
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
