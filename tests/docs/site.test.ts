import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { brokenLinks } from '../../scripts/pages/broken-links';
import { calculationCards, cardsPlaceholder } from '../../scripts/pages/calculation-cards';
import { formulaModules, formulaTable, placeholder } from '../../scripts/pages/formula-table';
import { escaped } from '../../scripts/pages/html-text';
import { layout } from '../../scripts/pages/layout';
import { renderMarkdown } from '../../scripts/pages/markdown';
import { calculations } from '../../src/units';
import { formulasOf } from '../formulas/found-formulas';

const theory = readdirSync('docs/theory').map((name) => ({
  name,
  text: readFileSync(join('docs/theory', name), 'utf8'),
}));

describe('the page of calculations', () => {
  const page = readFileSync('docs/calculations.md', 'utf8');
  const shown = page.replace(cardsPlaceholder, (_, module: string) =>
    calculationCards(module, (_module, name) => `api/${name}.html`),
  );
  test('shows the card of every calculation, with a link to its page', () => {
    expect(calculations().length).toBeGreaterThan(190);
    const missing = calculations().filter(
      ({ id, title }) =>
        !shown.includes(`<section id="${id}"><h3><a href="api/${id}.html"><code>${id}</code></a>: `) ||
        !shown.includes(escaped(title)),
    );
    expect(missing.map(({ id }) => id)).toEqual([]);
  });
  test('shows inputs with their kinds, and text as text', () => {
    expect(shown).toMatch(/wall +t +length \(mm\), above 0 mm +wall thickness/);
    expect(renderMarkdown(shown, (address) => address).html).toContain('<h3>');
  });
});

describe('theory pages', () => {
  test('show every formula once', () => {
    const listed = theory.flatMap(({ text }) =>
      [...text.matchAll(placeholder)].flatMap(([, module, names]) =>
        names
          .trim()
          .split(/\s+/)
          .map((name) => `${module}.${name}`),
      ),
    );
    const declared = Object.entries(formulaModules).flatMap(([module, exported]) =>
      formulasOf(exported).map(([name]) => `${module}.${name}`),
    );
    expect([...listed].sort()).toEqual([...declared].sort());
  });

  test.each(theory)('$name: its mathematics and its tables are set, and it names limits', ({ text }) => {
    const { html, title } = renderMarkdown(
      text.replace(placeholder, (_, module: string, names: string) =>
        formulaTable(module, names.trim().split(/\s+/), () => undefined),
      ),
      (address) => address,
    );
    expect(title.length).toBeGreaterThan(3);
    expect(html).toContain('<math');
    expect(html).toMatch(/<h2 id="limits">/);
    // Nothing is left of the marks that were to be set.
    expect(html.replace(/<annotation[\s\S]*?<\/annotation>/g, '').replace(/<[^>]+>/g, '')).not.toMatch(
      /\$|formulas of/,
    );
  });

  test('a row has name, equation, each symbol with unit, and source', () => {
    const html = formulaTable('structures', ['hoopStress'], () => 'api.html');
    expect(html).toContain('<a href="api.html"><code>hoopStress</code></a>');
    expect(html).toContain('<mfrac>');
    expect(html).toContain('mean radius of the wall');
    expect(html).toMatch(/<i>gauge pressure, \w+<\/i>/);
    expect(html).toContain('Roark');
    expect(() => formulaTable('structures', ['noSuch'], () => undefined)).toThrowError(/noSuch/);
  });
});

describe('Markdown', () => {
  const html = (text: string): string => renderMarkdown(text, (address) => `to/${address}`).html;
  test('headings have ids as code hosts make them, once each', () => {
    expect(html('# A b\n\n## Ö: c\n\n## Ö: c')).toMatch(/id="a-b"[\s\S]*id="ö-c"[\s\S]*id="ö-c-1"/);
  });
  test('code and prices are no mathematics', () => {
    expect(html('costs $5 and $6')).not.toContain('<math');
    expect(html('`$x$`')).not.toContain('<math');
    expect(html('$x^2$')).toContain('<math');
  });
  test('links go through the map', () => expect(html('[a](b.md#c)')).toContain('href="to/b.md#c"'));
  test('wrong TeX fails the build', () => expect(() => html('$\\frac{a}$')).toThrowError());
});

describe('links', () => {
  test('a missing page, a missing place and a way out of the site are found', () => {
    const folder = mkdtempSync(join(tmpdir(), 'links-'));
    mkdirSync(join(folder, 'sub'));
    writeFileSync(join(folder, 'sub', 'b.html'), '<p id="here">');
    const links = [
      'sub/b.html#here',
      'https://example.org/x',
      '#top',
      'sub/b.html#there',
      'c.html',
      '../out.html',
      'sub',
    ].map((href) => `<a href="${href}"></a>`);
    writeFileSync(join(folder, 'a.html'), `${links.join('')}<p id="top">`);
    expect(brokenLinks(folder)).toEqual([
      'a.html: sub/b.html#there has no such place',
      'a.html: c.html',
      'a.html: ../out.html',
      'a.html: sub has no index',
    ]);
    rmSync(folder, { recursive: true });
  });
  test('navigation goes by relative addresses', () => {
    const page = layout('theory/a.html', { html: '<h1>A</h1>\n', title: 'A', headings: [] }, [
      {
        name: 'G',
        entries: [
          { page: 'index.html', name: 'Home' },
          { page: 'theory/a.html', name: 'A' },
        ],
      },
    ]);
    expect(page).toContain('href="../index.html"');
    expect(page).toContain('href="a.html" aria-current="page"');
    expect(page).toContain('href="../style.css"');
  });
});
