// Builds the documentation into site/: npm run docs. Pages of docs/, the tables of formulas drawn from their
// declarations, the API from the sources; fails on any internal link that leads nowhere.
import {
  cpSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { dirname, join, posix } from 'node:path';
import process from 'node:process';
import { Application } from 'typedoc';
import { brokenLinks } from './pages/broken-links';
import { calculationCards, cardsPlaceholder } from './pages/calculation-cards';
import { formulaTable, placeholder } from './pages/formula-table';
import { escaped } from './pages/html-text';
import { from, type Group, layout } from './pages/layout';
import { renderMarkdown } from './pages/markdown';

const site = 'site';
rmSync(site, { recursive: true, force: true });
// Type errors are the business of npm run check; the tree of all heirs says nothing here.
const typedoc = await Application.bootstrapWithPlugins({
  out: join(site, 'api'),
  includeHierarchySummary: false,
  disableSources: true,
  skipErrorChecking: true,
});
const project = await typedoc.convert();
if (project !== undefined) {
  typedoc.validate(project);
  await typedoc.generateOutputs(project);
}
if (project === undefined || typedoc.logger.hasErrors() || typedoc.logger.hasWarnings()) {
  process.stderr.write('The API pages are not in order: see above.\n');
  process.exit(1);
}

const sources = readdirSync('docs', { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.md'))
  .sort();
const pageOf = (source: string): string =>
  source.replace(/README\.md$/, 'index.md').replace(/\.md$/, '.html');
const titleOf = (source: string): string => {
  const text = readFileSync(join('docs', source), 'utf8');
  return /^# (.+)$/m.exec(text)?.[1].replace(/[`*]/g, '') ?? source;
};
const group = (name: string, folder: string, order: readonly string[] = []): Group => ({
  name,
  entries: sources
    .filter((source) => dirname(source) === folder && source !== 'calculations.md')
    .sort((a, b) => rank(order, a) - rank(order, b) || a.localeCompare(b))
    .map((source) => ({ page: pageOf(source), name: titleOf(source) })),
});
const rank = (order: readonly string[], source: string): number => {
  const found = order.indexOf(posix.basename(source, '.md'));
  return found < 0 ? order.length : found;
};
const groups: readonly Group[] = [
  group('Start', '.', ['index', 'getting-started', 'validation']),
  group('How to', 'how-to', ['prompt', 'script', 'notebook', 'review', 'command', 'embed']),
  group('Theory', 'theory', [
    'units',
    'thermo',
    'nozzle',
    'structures',
    'burn-law-and-grain',
    'port-flow',
    'chamber-pressure',
    'firing',
  ]),
  group('Decisions', 'decisions', ['README']),
  {
    name: 'Reference',
    entries: [
      { page: 'calculations.html', name: 'Calculations' },
      { page: 'api/index.html', name: 'API' },
    ],
  },
];

/** Files of the repository that pages point at, each shown on a page of its own. */
const shown = new Set<string>();

function write(page: string, markdown: string, folder: string): void {
  const link = (address: string): string => {
    if (/^(?:[a-z]+:|#)/i.test(address)) return address;
    const [path, fragment] = address.split('#');
    const target = posix.normalize(posix.join(folder, path));
    const place = fragment === undefined ? '' : `#${fragment}`;
    if (target.startsWith('docs/') && target.endsWith('.md'))
      return `${from(page, pageOf(target.slice('docs/'.length)))}${place}`;
    const file =
      existsSync(target) && statSync(target).isDirectory() ? posix.join(target, 'README.md') : target;
    shown.add(file);
    return `${from(page, `repository/${file}.html`)}${place}`;
  };
  const apiPage = (module: string, name: string): string | undefined => {
    const found = ['functions', 'variables'].find((kind) =>
      existsSync(join(site, 'api', kind, `${module}.${name}.html`)),
    );
    return found === undefined ? undefined : from(page, `api/${found}/${module}.${name}.html`);
  };
  const tables = markdown
    .replace(placeholder, (_, module: string, names: string) =>
      formulaTable(module, names.trim().split(/\s+/), apiPage).replace(/\n+/g, '\n'),
    )
    .replace(cardsPlaceholder, (_, module: string) => calculationCards(module, apiPage));
  const file = join(site, page);
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(file, layout(page, renderMarkdown(tables, link), groups));
}

for (const source of sources)
  write(
    pageOf(source),
    readFileSync(join('docs', source), 'utf8'),
    posix.join('docs', posix.dirname(source)),
  );

// Pages of repository files may point at further ones.
const done = new Set<string>();
for (let next = [...shown]; next.length > 0; next = [...shown].filter((file) => !done.has(file)))
  for (const file of next) {
    done.add(file);
    if (!existsSync(file)) throw new Error(`a page points at ${file}, which is not there`);
    const text = readFileSync(file, 'utf8');
    write(
      `repository/${file}.html`,
      file.endsWith('.md')
        ? text
        : `# ${file}\n\n<pre tabindex="0"><code>${escaped(text).replace(/\n/g, '&#10;')}</code></pre>\n`,
      posix.dirname(file),
    );
  }
cpSync('scripts/pages/style.css', join(site, 'style.css'));
const katex = 'node_modules/katex/dist';
cpSync(join(katex, 'katex.min.css'), join(site, 'equations', 'katex.min.css'));
for (const font of readdirSync(join(katex, 'fonts')).filter((name) => name.endsWith('.woff2')))
  cpSync(join(katex, 'fonts', font), join(site, 'equations', 'fonts', font));

const broken = brokenLinks(site);
if (broken.length > 0) {
  process.stderr.write(`${broken.length} links lead nowhere:\n${broken.join('\n')}\n`);
  process.exit(1);
}
const count = readdirSync(site, { recursive: true, encoding: 'utf8' }).filter((name) =>
  name.endsWith('.html'),
).length;
process.stdout.write(`site/: ${count} pages, every internal link checked\n`);
