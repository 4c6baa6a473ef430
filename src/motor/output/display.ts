import type { Regression } from '../../ballistics';
import { isRegression } from '../../ballistics/inputs';
import { type Cell, instance, procedure } from '../../units';
import { isReducedFiring } from '../given-firing';
import { escaped, htmlTable } from './html-report';
import { plotFiring } from './plot-firing';
import { plotFlawEnvelope } from './plot-flaw-envelope';
import { plotMargins } from './plot-margins';
import { plotRegression } from './plot-regression';
import type { PlotSpec } from './plot-spec';
import { report } from './report';
import { isComparison, isFlawEnvelope, isMeop, isReportable, isReview, type Reportable } from './reportable';
import { textTable } from './text-report';

/** Rows of a table; each row repeats the column names. */
export type DisplayRows = readonly Readonly<Record<string, Cell>>[];

/** Output for a notebook, which shows the first format that it supports. */
export interface Displayed {
  /** Content by media type. */
  readonly bundle: Readonly<Record<string, unknown>>;
  toString(): string;
}

type Displayable = Reportable | Regression | DisplayRows;

const isRows = (value: unknown): value is DisplayRows =>
  Array.isArray(value) &&
  value.length > 0 &&
  value.every((row) => typeof row === 'object' && row !== null && Object.keys(row).length > 0);

const isDisplayable = (value: unknown): value is Displayable =>
  isRows(value) || isRegression(value) || isReportable(value);

/**
 * Use it as the last expression of a cell.
 *
 * @example display([{ size: 'M6', pitch: '1 mm' }]).toString().split('\n').length // => 3
 */
export const display = /* @__PURE__ */ procedure({
  name: 'display',
  title: 'Output for a notebook',
  source: 'definition',
  subject: instance(
    'the result to show, or the rows of a table',
    'a firing, a reduced firing, a review, a MEOP, a comparison, a flaw envelope, a regression or a list of rows',
    isDisplayable,
  ),
  inputs: {},
  gives: 'text and HTML, and a plot where one is defined',
  example: "display([{ size: 'M6', pitch: '1 mm' }])",
  run: displayed,
});

function displayed(thing: Displayable): Displayed {
  if (isRows(thing)) return shownAs(rowsText(thing), rowsHtml(thing));
  if (isReview(thing)) {
    const text = report(thing);
    const plot = thing.margins.length > 0 ? plotMargins(thing) : undefined;
    return shownAs(text, `<pre>${escaped(text)}</pre>`, plot);
  }
  if (isMeop(thing))
    return shownAs(
      report(thing),
      `<pre>${escaped(report(thing))}</pre>`,
      plotFiring([thing.nominal.firing, thing.worstCase.firing]),
    );
  if (isComparison(thing))
    return shownAs(
      report(thing),
      `<pre>${escaped(report(thing))}</pre>`,
      plotFiring([thing.measured, thing.predicted]),
    );
  if (isFlawEnvelope(thing))
    return shownAs(report(thing), `<pre>${escaped(report(thing))}</pre>`, plotFlawEnvelope(thing));
  if (isReducedFiring(thing)) {
    const plot = thing.status === 'reduced' ? plotFiring(thing) : undefined;
    return shownAs(String(thing), `<pre>${escaped(String(thing))}</pre>`, plot);
  }
  if (isRegression(thing)) return shownAs(String(thing), escaped(String(thing)), plotRegression(thing));
  const plot = thing.pressure ?? thing.thrust;
  return shownAs(
    String(thing),
    `<pre>${escaped(String(thing))}</pre>`,
    plot === undefined ? undefined : plotFiring(thing),
  );
}

function shownAs(text: string, html: string, plot?: PlotSpec): Displayed {
  const bundle: Readonly<Record<string, unknown>> = {
    'text/plain': text,
    'text/html': html,
    ...(plot !== undefined && {
      'application/vnd.vegalite.v6+json': plot,
      'application/vnd.vegalite.v5+json': plot,
    }),
  };
  return {
    bundle,
    toString: () => text,
    ...{ [Symbol.for('Jupyter.display')]: () => bundle },
    ...{ [Symbol.for('nodejs.util.inspect.custom')]: () => text },
  };
}

const tableOf = (rows: DisplayRows) => {
  const names = [...new Set(rows.flatMap((row) => Object.keys(row)))];
  return {
    name: '',
    columns: names.map((name) => ({
      name,
      numeric: rows.every((row) => /^[-+−]?[\d.]/.test(String(row[name] ?? ''))),
    })),
    rows: rows.map((row) => names.map((name) => ({ text: String(row[name] ?? '') }))),
  };
};
const rowsText = (rows: DisplayRows): string => textTable(tableOf(rows)).join('\n');
const rowsHtml = (rows: DisplayRows): string => htmlTable(tableOf(rows));
