import { readFileSync } from 'node:fs';
import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import {
  parseMotor,
  quantity,
  type ReportFormat,
  type ReportJson,
  report,
  reportSchema,
  review,
} from '../../src/index';
import { matter, reviewed } from './reviewed-demo';

// Expected values here are other views of the same result: the formats against each other. No number comes from a run of ours.

const written = (format: ReportFormat): string => report(reviewed, { ...matter, format });
const ringed = review(parseMotor(readFileSync('examples/motors/plover-50.json', 'utf8')));
const ringedReport = (format: ReportFormat): string => report(ringed, { format });

function viewed(write: (format: ReportFormat) => string) {
  const json: ReportJson = reportSchema.parse(JSON.parse(write('json')));
  const cells = json.sections.flatMap((section) =>
    section.tables.flatMap((table) =>
      table.rows.flatMap((row) =>
        table.columns.map((column) => ({ section, table, column, ...row[column] })),
      ),
    ),
  );
  const numbers = [...Object.values(json.summary), ...cells].filter(({ value }) => value !== undefined);
  return { json, cells, numbers };
}

const unescaped = (html: string): string =>
  html
    .replace(/&lt;/g, '<')
    .replace(/&gt;/g, '>')
    .replace(/&quot;/g, '"')
    .replace(/&amp;/g, '&');
const plain = (text: string): string => text.replace(/ ✗$/, '');

describe.each([
  ['the demo motor with its firing and flaws', written],
  ['a motor with a retaining ring, a thread and a seal in a face', ringedReport],
] as const)('every format prints the same digits: %s', (_, written) => {
  const { json, cells, numbers } = viewed(written);

  test('there is something to compare', () => expect(numbers.length).toBeGreaterThan(150));

  test('a cell of the page is the cell of the JSON, in the same order', () => {
    const page = written('html');
    const body = [...page.matchAll(/<t[hd] (?:scope="row" role="rowheader"|role="cell")[^>]*>([^<]*)</g)];
    expect(body.map(([, text]) => plain(unescaped(text)))).toEqual(cells.map(({ text }) => text));
    const key = [...page.matchAll(/<dd[^>]*>([^<]*)</g)].map(([, text]) => plain(unescaped(text)));
    expect(key).toEqual(Object.values(json.summary).map(({ text }) => text));
  });

  test('a line of the CSV is the cell of the JSON, with the same value', () => {
    const { data, errors } = Papa.parse<Record<string, string>>(written('csv').trimEnd(), { header: true });
    expect(errors).toEqual([]);
    const values = cells.filter(({ column, table }) => column !== table.columns[0]);
    const all = [...Object.values(json.summary), ...values];
    expect(data.map(({ shown }) => shown)).toEqual(all.map(({ text }) => text));
    expect(data.map(({ value, unit, kind }) => [value, unit, kind])).toEqual(
      all.map(({ value, unit = '', kind = '' }) => [value === undefined ? '' : String(value), unit, kind]),
    );
  });

  test('a row of the Markdown is the row of the JSON', () => {
    const rows = written('markdown')
      .split('\n')
      .filter((line) => /^\| /.test(line))
      .map((line) => line.replace(/^\| | \|$/g, '').split(/(?<!\\) \| /));
    const expected = json.sections.flatMap(({ tables }) =>
      tables.flatMap(({ columns, rows: own }) => [
        columns,
        ...own.map((row) => columns.map((c) => row[c].text)),
      ]),
    );
    const read = (text: string): string => plain(unescaped(text.replace(/\\([\\`*_[\]|#])/g, '$1')));
    expect(rows.map((row) => row.map(read))).toEqual(expected);
  });

  test('the terminal shows every number', () => {
    const text = written('text').replace(/\s+/g, ' ');
    const missing = numbers.filter((cell) => !text.includes(cell.text));
    expect(missing.map((cell) => cell.text)).toEqual([]);
  });

  test('a text is its value rounded, never another number', () => {
    for (const { text, value = 0, unit, kind } of numbers) {
      const [, number = '', rest = ''] = /^([-+−]?[\d.]+(?:e[-+]\d+)?)\s?(.*)$/.exec(text) ?? [];
      const places = (/\.(\d+)/.exec(number)?.[1].length ?? 0) - Number(/e(.*)/.exec(number)?.[1] ?? 0);
      const scale = unit === undefined && rest === '%' ? 100 : 1;
      const error = Math.abs(Number(number.replace('−', '-')) - scale * value);
      expect(error, text).toBeLessThanOrEqual(0.5000001 * 10 ** -places);
      if (unit === undefined) continue;
      // The unit as people read it; gauge and absolute in words, where the unit does not say it.
      expect(rest, `${unit}, ${kind}`).toBe(
        quantity(kind as 'length', `1 ${unit as 'm'}`)
          .format()
          .replace('1 ', ''),
      );
    }
  });
});
