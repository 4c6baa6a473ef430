// See record-gnu-units.sh. Each row of gnu-units.json is one of our unit texts and the same in GNU Units' language;
// this fills in what GNU Units makes of it: a number and SI base units.
import { execFileSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';

const path = new URL('gnu-units.json', import.meta.url);
const { rows } = JSON.parse(readFileSync(path, 'utf8'));
const [version] = execFileSync('units', ['--version'], { encoding: 'utf8' }).split('\n');

// One process answers every line; an empty second line asks for the definition.
const input = rows.map(({ gnu }) => `${gnu}\n\n`).join('');
const answers = execFileSync('units', ['-q', '-1', '-t', '-o', '%.17g'], { input, encoding: 'utf8' })
  .trim()
  .split('\n');
if (answers.length !== rows.length) throw new Error(`${answers.length} answers to ${rows.length} rows`);

const recorded = rows.map(({ unit, gnu }, i) => {
  const reduced = answers[i].split(' = ').at(-1)?.trim() ?? '';
  const match = /^([\d.e+-]+)(.*)$/.exec(reduced);
  if (!match) throw new Error(`${unit} (${gnu}): ${answers[i]}`);
  return { unit, gnu, value: Number(match[1]), base: match[2].trim() };
});
const lines = recorded
  .map((row) => `    ${JSON.stringify(row, undefined, 1).replace(/\n */g, ' ')}`)
  .join(',\n');
writeFileSync(path, `{\n  "source": "${version}, Debian's package units",\n  "rows": [\n${lines}\n  ]\n}\n`);
