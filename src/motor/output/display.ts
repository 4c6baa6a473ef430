import type { Regression } from '../../ballistics';
import type { Cell } from '../../units';
import { escaped, htmlTable } from './html-report';
import { plotFiring } from './plot-firing';
import { plotFlawEnvelope } from './plot-flaw-envelope';
import { plotMargins } from './plot-margins';
import { plotRegression } from './plot-regression';
import type { PlotSpec } from './plot-spec';
import { type Reportable, report } from './report';
import { textTable } from './text-report';

/** Rows of a table; each row repeats the column names. */
export type DisplayRows = readonly Readonly<Record<string, Cell>>[];

/** Output for a notebook, which shows the first format that it supports. */
export interface Displayed {
  /** Content by media type. */
  readonly bundle: Readonly<Record<string, unknown>>;
  toString(): string;
}

/**
 * Formats a firing, a reduced firing, a review, a regression or the rows of a table for a notebook: as text and
 * HTML, and as a plot where one is defined. Use it as the last expression of a cell.
 *
 * @example display([{ size: 'M6', pitch: '1 mm' }]).toString().split('\n').length // => 3
 */
export function display(thing: Reportable | Regression | DisplayRows): Displayed {
  if (isRows(thing)) return shownAs(rowsText(thing), rowsHtml(thing));
  if ('margins' in thing) {
    const text = report(thing);
    const plot = thing.margins.length > 0 ? plotMargins(thing) : undefined;
    return shownAs(text, `<pre>${escaped(text)}</pre>`, plot);
  }
  if ('worstCase' in thing)
    return shownAs(
      report(thing),
      `<pre>${escaped(report(thing))}</pre>`,
      plotFiring([thing.nominal.firing, thing.worstCase.firing]),
    );
  if ('reuse' in thing)
    return shownAs(
      report(thing),
      `<pre>${escaped(report(thing))}</pre>`,
      plotFiring([thing.measured, thing.predicted]),
    );
  if ('flawFreePeakPressure' in thing)
    return shownAs(report(thing), `<pre>${escaped(report(thing))}</pre>`, plotFlawEnvelope(thing));
  if ('record' in thing) {
    const plot = thing.status === 'reduced' ? plotFiring(thing) : undefined;
    return shownAs(String(thing), `<pre>${escaped(String(thing))}</pre>`, plot);
  }
  if ('wallExposure' in thing) return shownAs(String(thing), escaped(String(thing)), plotRegression(thing));
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

const isRows = (thing: object): thing is DisplayRows => Array.isArray(thing);
