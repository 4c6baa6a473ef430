import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import axe from 'axe-core';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { reportPage } from '../../src/index';
import { chromium as installed } from '../package/packed';
import { matter, reviewed } from './reviewed-demo';

const executablePath = installed();

// Left out where there is no Chromium.
describe.skipIf(executablePath === undefined)('the page in a browser', () => {
  const folder = mkdtempSync(join(tmpdir(), 'meop-page-'));
  const address = pathToFileURL(join(folder, 'report.html')).href;
  let browser: Browser;
  beforeAll(async () => {
    writeFileSync(join(folder, 'report.html'), await reportPage(reviewed, matter));
    browser = await chromium.launch({ ...(executablePath && { executablePath }), args: ['--no-sandbox'] });
  }, 60_000);
  afterAll(async () => {
    await browser.close();
    rmSync(folder, { recursive: true });
  });

  interface Violation {
    readonly id: string;
    readonly impact: string;
    readonly nodes: readonly { readonly html: string }[];
  }
  async function open(width: number, colorScheme: 'light' | 'dark'): Promise<{ page: Page; said: string[] }> {
    const page = await browser.newPage({ viewport: { width, height: 900 }, colorScheme });
    const said: string[] = [];
    page.on('console', (message) => said.push(message.text()));
    page.on('pageerror', (error) => said.push(error.message));
    page.on('request', (request) => {
      if (request.url() !== address) said.push(`asks for ${request.url()}`);
    });
    await page.goto(address);
    return { page, said };
  }

  const looks = [390, 1280].flatMap((width) =>
    (['light', 'dark'] as const).map((scheme) => ({ width, scheme })),
  );
  test.each(looks)(
    '$width px, $scheme: no error, no request, no overflow, nothing serious for axe',
    async ({ width, scheme }) => {
      const { page, said } = await open(width, scheme);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
      // Nothing is cut off within the page either.
      const cut = await page.evaluate(() =>
        [...document.querySelectorAll('td, th, p, li, dd, figure')]
          .filter((element) => element.getBoundingClientRect().right > window.innerWidth + 1)
          .map((element) => element.textContent?.slice(0, 60)),
      );
      expect(cut).toEqual([]);
      await page.addScriptTag({ content: axe.source });
      const violations: readonly Violation[] = await page.evaluate(
        'axe.run().then((result) => result.violations)',
      );
      const serious = violations.filter(({ impact }) => impact === 'serious' || impact === 'critical');
      expect(serious.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
      expect(said).toEqual([]);
      await page.close();
    },
    60_000,
  );

  test('the plots are drawn, one for each width of page, in the colours of the page', async () => {
    const { page } = await open(390, 'dark');
    const shown = await page.evaluate(() =>
      [...document.querySelectorAll('figure')].map((figure) => {
        const drawings = [...figure.querySelectorAll('[role=img]')].filter((one) => one.clientHeight > 0);
        const path = drawings[0]?.querySelector(
          'path[stroke*="--plot-first"], path[fill*="--plot-second"], path.flaw',
        );
        const style = path ? getComputedStyle(path) : undefined;
        return { count: drawings.length, colours: `${style?.stroke} ${style?.fill}` };
      }),
    );
    expect(shown.length).toBe(6);
    for (const { count, colours } of shown) {
      expect(count).toBe(1);
      expect(colours).toMatch(/rgb\(229, 138, 99\)|rgb\(79, 190, 203\)/); // the two of the dark page's style
    }
    await page.close();
  });

  test('by keyboard: the first stop skips to the content, the next go through the parts', async () => {
    const { page } = await open(1280, 'light');
    await page.keyboard.press('Tab');
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Skip to content');
    await page.keyboard.press('Enter');
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('content');
    const broken = await page.evaluate(
      () =>
        [...document.querySelectorAll('a')].filter(({ hash }) => document.querySelector(hash) === null)
          .length,
    );
    expect(broken).toBe(0);
    await page.close();
  });

  test.each(['A4', 'Letter'] as const)(
    'prints on %s without losing a column',
    async (format) => {
      const { page } = await open(1280, 'dark');
      const pdf = await page.pdf({ format, preferCSSPageSize: false });
      expect(pdf.subarray(0, 5).toString()).toBe('%PDF-');
      const pages = pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0;
      expect(pages).toBeGreaterThan(3);
      expect(pages).toBeLessThan(20);
      // The width of the printed area: the paper less two margins of 14 mm, at 96 px to the inch.
      const width = Math.floor((((format === 'A4' ? 210 : 215.9) - 28) / 25.4) * 96);
      await page.setViewportSize({ width, height: 900 });
      await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
      // Paper is white: a tint would be printed as a grey veil, and a dark screen must not print dark.
      expect(await page.evaluate(() => getComputedStyle(document.body).backgroundColor)).toBe(
        'rgb(255, 255, 255)',
      );
      await page.close();
    },
    60_000,
  );
});
