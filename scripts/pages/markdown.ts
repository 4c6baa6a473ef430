import { Marked } from 'marked';
import { typeset } from './formula-table';
import { escaped } from './html-text';

/** A page's HTML, its title and the second-level headings. */
export interface Rendered {
  readonly html: string;
  readonly title: string;
  readonly headings: readonly { readonly id: string; readonly text: string }[];
}

/** Renders Markdown; `link` maps each relative address to its place on the site, and `$…$` is mathematics. */
export function renderMarkdown(markdown: string, link: (address: string) => string): Rendered {
  const ids = new Map<string, number>();
  const headings: { id: string; text: string }[] = [];
  let title = '';
  const marked = new Marked({
    renderer: {
      heading({ tokens, depth, text }) {
        const plain = text.replace(/[`*]/g, '');
        const id = unique(ids, slug(plain));
        if (depth === 1) title = plain;
        if (depth === 2) headings.push({ id, text: plain });
        return `<h${depth} id="${id}">${this.parser.parseInline(tokens)}</h${depth}>\n`;
      },
      link({ href, tokens }) {
        return `<a href="${escaped(link(href))}">${this.parser.parseInline(tokens)}</a>`;
      },
      table(token) {
        const cells = (row: typeof token.header, tag: string): string =>
          row.map((cell) => `<${tag}>${this.parser.parseInline(cell.tokens)}</${tag}>`).join('');
        return `<div class="wide" tabindex="0"><table>
<thead><tr>${cells(token.header, 'th')}</tr></thead>
<tbody>${token.rows.map((row) => `<tr>${cells(row, 'td')}</tr>`).join('\n')}</tbody></table></div>\n`;
      },
      code({ text, lang }) {
        return `<pre tabindex="0"><code${lang ? ` class="language-${escaped(lang)}"` : ''}>${escaped(text)}</code></pre>\n`;
      },
    },
    extensions: [
      {
        name: 'mathBlock',
        level: 'block',
        start: (text) => text.indexOf('$$'),
        tokenizer(text) {
          const match = /^\$\$\n?([\s\S]+?)\n?\$\$(?:\n|$)/.exec(text);
          return match ? { type: 'mathBlock', raw: match[0], text: match[1] } : undefined;
        },
        renderer: ({ text }) => `<div class="equation" tabindex="0">${typeset(text, true)}</div>\n`,
      },
      {
        name: 'math',
        level: 'inline',
        start: (text) => text.indexOf('$'),
        tokenizer(text) {
          const match = /^\$(?!\s|\$)((?:\\.|[^$\\\n])+?)(?<!\s)\$(?!\d)/.exec(text);
          return match ? { type: 'math', raw: match[0], text: match[1] } : undefined;
        },
        renderer: ({ text }) => typeset(text, false),
      },
    ],
  });
  const html = marked.parse(markdown, { async: false });
  return { html, title, headings };
}

/** The id of a heading, as code hosts make it. */
const slug = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}\s_-]/gu, '')
    .trim()
    .replace(/\s/g, '-');

function unique(ids: Map<string, number>, id: string): string {
  const count = ids.get(id) ?? 0;
  ids.set(id, count + 1);
  return count === 0 ? id : `${id}-${count}`;
}
