import { posix } from 'node:path';
import { escaped } from './html-text';
import type { Rendered } from './markdown';

/** One entry of the navigation: the page's place on the site and its short name. */
export interface Entry {
  readonly page: string;
  readonly name: string;
}

/** The groups of the navigation, in order. */
export interface Group {
  readonly name: string;
  readonly entries: readonly Entry[];
}

/** Address of one place of the site as seen from a page. */
export const from = (page: string, target: string): string =>
  posix.relative(posix.dirname(page), target) || '.';

/** A whole page around its content. */
export function layout(page: string, { html, title, headings }: Rendered, groups: readonly Group[]): string {
  const link = ({ page: target, name }: Entry): string =>
    `<li><a href="${from(page, target)}"${target === page ? ' aria-current="page"' : ''}>${escaped(name)}</a></li>`;
  const navigation = groups
    .map(({ name, entries }) => `<h2>${escaped(name)}</h2>\n<ul>${entries.map(link).join('\n')}</ul>`)
    .join('\n');
  const contents =
    headings.length < 3
      ? ''
      : `<nav class="contents" aria-label="On this page"><ul>${headings
          .map(({ id, text }) => `<li><a href="#${id}">${escaped(text)}</a></li>`)
          .join('\n')}</ul></nav>`;
  // The contents follow the title.
  const body = html.replace(/<\/h1>\n/, (end) => `${end}${contents}`);
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<title>${escaped(title)} – meop</title>
<link rel="icon" href="data:,">
${
  html.includes('katex-html')
    ? `<link rel="stylesheet" href="${from(page, 'equations/katex.min.css')}">
`
    : ''
}<link rel="stylesheet" href="${from(page, 'style.css')}">
</head>
<body>
<a class="skip" href="#content">Skip to the page</a>
<header><a class="home" href="${from(page, 'index.html')}">meop</a></header>
<details class="menu"><summary>Pages</summary><nav aria-label="Pages, short">${navigation.replaceAll('h2>', 'h3>')}</nav></details>
<div class="columns">
<nav class="side" aria-label="Pages">${navigation}</nav>
<main id="content">
${body}
</main>
</div>
<footer><p>Analysis only. A calculation is no permission: test remotely, behind a barrier, within the law and the codes of the national associations, with hardware reviewed by someone licensed or certified.</p></footer>
</body>
</html>
`;
}
