import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import {
  demoMotor,
  MeopError,
  marginOfSafety,
  meop,
  partName,
  predict,
  type ReportFormat,
  type ReportJson,
  report,
  reportSchema,
  review,
} from '../../src/index';
import { csvLine } from '../../src/motor/output/csv-report';
import { comparison, flaws, matter, measured, reviewed } from './reviewed-demo';

// Expected values here are other views of the same result: the report against the functions it reports
// on. No number comes from a run of ours.

const written = (format: ReportFormat): string => report(reviewed, { ...matter, format });
const json: ReportJson = reportSchema.parse(JSON.parse(written('json')));

const unescaped = (html: string): string =>
  html
    .replace(/&lt;/g, '<')
    .replace(/&gt;/g, '>')
    .replace(/&quot;/g, '"')
    .replace(/&amp;/g, '&');

describe('the report says what the functions say', () => {
  const firing = predict(demoMotor());
  const table = (name: string) => {
    const found = json.sections.flatMap(({ tables }) => tables).find((one) => one.name === name);
    if (found === undefined) throw new Error(`no table ${name}`);
    return found;
  };

  test('mass burned, impulse and peak are those of the simulation', () => {
    const nominal = new Map(table('Nominal values').rows.map((row) => [row.figure.text, row.value.value]));
    expect(nominal.get('propellant burned')).toBe(firing.balance.burned.in('kg'));
    expect(nominal.get('peak pressure, absolute')).toBe(firing.peakPressure.in('MPa'));
    expect(nominal.get('total impulse')).toBe(firing.totalImpulse.in('N*s'));
    expect(json.summary['total impulse'].value).toBe(firing.totalImpulse.in('N*s'));
    expect(json.summary.MEOP).toMatchObject({
      value: meop(demoMotor()).pressure.in('MPa'),
      unit: 'MPa',
      kind: 'gauge pressure',
    });
  });

  test('every margin stands in the table once, alone or as one of head and aft, with its own numbers', () => {
    const { rows } = table('Margins of safety, lowest first');
    const margins = reviewed.margins.map(({ part, mode, marginOfSafety: value }) => ({ part, mode, value }));
    for (const { part, mode, value } of margins) {
      const name = `${partName(part)}: ${mode}`;
      const both = `${partName(part).replace(/^(?:head|aft) /, 'head and aft ')}: ${mode}`;
      const own = rows.filter((row) => [name, both].includes(row['part and mode'].text));
      expect(own.length, name).toBe(1);
      expect(own[0].MS.text).toBe(`${value < 0 ? '−' : '+'}${Math.abs(value).toFixed(2)}`);
    }
    const values = rows.map((row) => Number(row.MS.value));
    expect(values).toEqual([...values].sort((a, b) => a - b));
  });

  test('a margin is that of its formula, and its hand calculation prints the same number', () => {
    for (const margin of reviewed.margins) {
      const { applied, allowable, factor } = margin;
      expect(marginOfSafety.si({ applied: applied.si, allowable: allowable.si, factor })).toBeCloseTo(
        margin.marginOfSafety,
        12,
      );
      const lines = [
        ...String(margin.explain()).matchAll(/^ *MS = (?:.*= )?([-−]?[\d.]+)(?: {2}margin of safety)?$/gm),
      ];
      const [, printed = ''] = lines.at(-1) ?? [];
      const places = printed.split('.')[1]?.length ?? 0;
      const value = Number(printed.replace('−', '-'));
      expect(
        Math.abs(value - margin.marginOfSafety),
        `${margin.part}: ${margin.mode}: ${printed}`,
      ).toBeLessThan(0.51 * 10 ** -places);
    }
  });

  test('a motor that does not hold says so in every format', () => {
    const motor = demoMotor();
    const weak = review({ ...motor, case: { ...motor.case, wall: '0.8 mm' }, closures: {} });
    expect(weak.verdict).toBe('does not hold');
    for (const format of ['text', 'markdown', 'html', 'json'] as const)
      expect(report(weak, { format }).replace(/\s+/g, ' ')).toContain(weak.verdictSentence);
    expect(report(weak, { format: 'csv' })).toContain('summary,,verdict,value,does not hold');
    expect(report(weak)).toMatch(/−\d\.\d\d ✗/);
    expect(report(weak, { format: 'html' })).toMatch(/class="n fail"[^>]*>−\d\.\d\d ✗/);
    expect(JSON.parse(report(reviewed, { format: 'json' })).verdict).toBe('holds');
    expect(json.verdict).toBe('does not hold'); // its recorded firing exceeded the margins
    expect(JSON.parse(report(weak, { format: 'json' })).verdict).toBe('does not hold');
  });
});

describe('what a report holds', () => {
  test.each(['text', 'markdown', 'html'] as const)('%s ends with the usual cautions', (format) => {
    const text = written(format).replace(/\s+/g, ' ');
    for (const word of [
      'not an approval to fire',
      'behind a barrier',
      'national associations',
      'licensed or certified',
    ])
      expect(text.lastIndexOf(word)).toBeGreaterThan(0.9 * text.length - 2000);
    expect(json.beforeFiring.length).toBeGreaterThan(3);
  });

  test('the schema refuses what is not a report', () => {
    expect(reportSchema.safeParse(json).success).toBe(true);
    expect(reportSchema.safeParse({ ...json, version: 3 }).success).toBe(false);
    expect(reportSchema.safeParse({ ...json, more: 1 }).success).toBe(false);
    expect(reportSchema.safeParse({ ...json, summary: { MEOP: { value: 1 } } }).success).toBe(false);
  });

  test.each([
    ['a comparison', comparison],
    ['a flaw envelope', flaws],
    ['MEOP', reviewed.meop],
    ['a reduced firing', measured],
    ['a firing', reviewed.prediction],
  ])('%s is reported in every format', (_, subject) => {
    expect(reportSchema.safeParse(JSON.parse(report(subject, { format: 'json' }))).success).toBe(true);
    for (const format of ['text', 'markdown', 'html', 'csv'] as const)
      expect(report(subject, { format }).length).toBeGreaterThan(300);
  });

  test('the page asks for nothing from elsewhere', () => {
    const page = written('html');
    expect(page).not.toMatch(/<script|<link|<img|@import|url\((?!#)|src=|https?:\/\/(?!www\.w3\.org)/);
  });

  test('another format is refused', () => {
    expect(() => report(reviewed, { format: 'pdf' as 'text' })).toThrow(MeopError);
  });

  test('names are text: markup, quotes and spreadsheet formulas do not run', () => {
    const name = `=1+1 <b onload="x">&amp; | *bold* [a](b)`;
    const odd = review({ ...demoMotor(), name });
    const page = report(odd, { format: 'html' });
    expect(page).toContain('=1+1 &lt;b onload=&quot;x&quot;&gt;&amp;amp; | *bold* [a](b)');
    expect(page).not.toContain('<b ');
    expect(report(odd, { format: 'markdown' })).toContain('\\| \\*bold\\* \\[a\\](b)');
    expect(JSON.parse(report(odd, { format: 'json' })).title).toBe(name);
  });

  test('any cells come back from a CSV line; those that a spreadsheet would run come back quoted', () => {
    fc.assert(
      fc.property(fc.array(fc.string({ unit: 'binary' }), { minLength: 2 }), (given) => {
        const [read] = Papa.parse<string[]>(csvLine(given), { newline: '\r\n', delimiter: ',' }).data;
        expect(read.map((cell, i) => (cell === given[i] ? cell : cell.replace(/^'/, '')))).toEqual(given);
        for (const cell of read) expect(cell).not.toMatch(/^[=@]/);
      }),
    );
  });
});

describe('what a page of a review says first', () => {
  const page = written('html');
  const part = (id: string) => json.sections.find((section) => section.id === id);

  test('the answer, then what the firing adds, each with its own verdict', () => {
    const lines = [...page.matchAll(/<p class="headline ?(\w*)">([^<]*)</g)].map(([, verdict, message]) => ({
      verdict,
      message: unescaped(message),
    }));
    expect(lines.map(({ verdict }) => verdict)).toEqual(['pass', '', 'fail']);
    expect(lines[2].message).toContain('findings argue against reusing this hardware');
    expect(lines.map(({ message }) => message).join(' ')).toBe(json.headline);
  });

  test('the tiles hold what the firing reached, judged against MEOP', () => {
    expect(json.summary['peak pressure when fired']).toMatchObject({
      value: comparison.peakPressureUpperBound?.in('MPa'),
      verdict: 'fail',
    });
    const against = comparison.reuse.findings.filter(({ effect }) => effect === 'adverse');
    expect(json.summary['findings against reuse'].value).toBe(against.length);
  });

  test('as many cautions and assumptions as the page lists', () => {
    const { cautions = [], remarks = [] } = part('cautions') ?? {};
    expect(part('glance')?.lead[1]).toMatch(
      new RegExp(
        `^These results carry ${cautions.length} cautions and depend on ${remarks.length} assumptions`,
      ),
    );
  });

  test('the numbered sources of a mode are those of its margin', () => {
    const [modes, sources] = part('sources')?.tables ?? [];
    const byNumber = new Map(sources?.rows.map((row) => [row.number.text, row.source.text]));
    for (const row of modes?.rows ?? []) {
      const name = row['part and mode'].text.replace(/^head and aft /, 'head ');
      const margin = reviewed.margins.find(({ part: of, mode }) => `${partName(of)}: ${mode}` === name);
      const found = row.sources.text.split(', ').map((number) => byNumber.get(number));
      expect(found, name).toEqual(margin?.explain().sources);
    }
  });
});

describe('a document that leaves parts out', () => {
  const { closures, temperatureRange: _, ...rest } = demoMotor();
  const bare = JSON.parse(JSON.stringify({ ...rest, closures: { head: closures?.head } }));
  const exact = JSON.parse(JSON.stringify(bare), (_key, value) =>
    typeof value === 'object' && value !== null && 'plusMinus' in value ? value.value : value,
  );
  // Omitted, a law of erosive burning is assumed with a tolerance.
  exact.propellant.erosiveBurning = { law: 'none' };
  const json = JSON.parse(report(review(exact), { format: 'json' }));

  test('is not said to hold: the end that nobody described comes first', () => {
    expect(json.headline).toContain('Not judged: aft closure (closures.aft not specified');
    expect(json.headline).toContain(' and 2 more.');
    expect(json.verdict).toBe('not judged');
  });

  test('without a tolerance it says that the worst case is the nominal motor', () => {
    expect(meop(exact).notIncluded.join()).toContain('the worst case equals the nominal motor');
    expect(JSON.stringify(json)).toContain('All Monte Carlo samples equal the nominal motor');
    expect(meop(demoMotor()).notIncluded.join()).not.toContain('equals the nominal motor');
  });
});
