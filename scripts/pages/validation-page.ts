import { type CaseFile, caseFiles, expectedNumbers } from '../../tests/cases/every-case';
import { notRecorded } from '../../tests/cases/not-recorded';
import { printedError } from '../../tests/cases/printed-value';
import type { Case } from '../../tests/cases/read-case';

/** The validation report: every stated value of the case files beside what its check found. */
export function validationPage(found: ReadonlyMap<string, string>): string {
  const sections = caseFiles.map((file) => section(file, found));
  const values = caseFiles.flatMap(({ cases }) => cases.flatMap(expectedNumbers)).length;
  return `${[
    '# Validation',
    `Every check value that the tests hold the library to, with what the library finds beside it: ${found.size} of ${values} values in ${caseFiles.length} files. The tests write this page (\`npm run validation\`), and fail where it no longer says what they find.`,
    'A check value is worth as much as its origin, so each case names its source and how that source is known. *Published, seen* was read in print or in a copy of it; *computed with* a named program of that version is independent arithmetic on published equations; *from memory* is what it says, and worth a look at the source before anything hangs on it. *Common practice* has no source.',
    'The error is relative to the stated value, and follows from the digits printed here. *Allowed* is the relative difference that the case accepts, which a test may tighten: mostly the last digit that the source prints. Values that no test records stand under their case with the reason.',
    contents(found),
    ...sections,
    beyond,
  ].join('\n\n')}\n`;
}

const anchor = (title: string): string =>
  title
    .toLowerCase()
    .replace(/[^\w -]/g, '')
    .replaceAll(' ', '-');

const contents = (found: ReadonlyMap<string, string>): string =>
  [
    '| Subject | Cases | Values |',
    '| --- | --- | --- |',
    ...caseFiles.map(({ title, cases }) => {
      const values = cases.flatMap((one) => shown(one, found)).length;
      return `| [${title}](#${anchor(title)}) | ${cases.length} | ${values} |`;
    }),
  ].join('\n');

interface Row {
  readonly name: string;
  readonly stated: number | string;
  readonly ours: string;
}

const shown = (one: Case, found: ReadonlyMap<string, string>): readonly Row[] =>
  expectedNumbers(one).flatMap(([name, stated]) => {
    const ours = found.get(`${one.id} ${name}`);
    return ours === undefined ? [] : [{ name, stated, ours }];
  });

function section({ title, oneTable, cases }: CaseFile, found: ReadonlyMap<string, string>): string {
  if (oneTable) return [`## ${title}`, wideTable(cases, found)].join('\n\n');
  const topics = [...new Set(cases.map(({ topic }) => topic))];
  return [
    `## ${title}`,
    ...topics.flatMap((topic) => [
      `### ${topic}`
        .replaceAll('-', ' ')
        .replace(/^### (.)/, (_, first: string) => `### ${first.toUpperCase()}`),
      ...cases.filter((one) => one.topic === topic).map((one) => block(one, found)),
    ]),
  ].join('\n\n');
}

function block(one: Case, found: ReadonlyMap<string, string>): string {
  const rows = shown(one, found);
  const left = expectedNumbers(one).filter(([name]) => !found.has(`${one.id} ${name}`));
  return [
    `#### ${one.id}`,
    `${plain(one.what)}. Source: ${plain(one.source)} (${plain(one.provenance)}). Allowed: ${one.relTol}.`,
    ...(rows.length === 0
      ? []
      : [
          [
            '| Value | Expected | Ours | Error |',
            '| --- | --- | --- | --- |',
            ...rows.map(
              ({ name, stated, ours }) => `| ${name} | ${stated} | ${ours} | ${printedError(stated, ours)} |`,
            ),
          ].join('\n'),
        ]),
    ...(left.length === 0
      ? []
      : [
          `Without a record (${notRecorded(one.id)}): ${left.map(([name, stated]) => `${name} ${stated}`).join(', ')}.`,
        ]),
  ].join('\n\n');
}

function wideTable(cases: readonly Case[], found: ReadonlyMap<string, string>): string {
  const [first] = cases;
  const names = Object.keys(first.expected);
  const line = (parts: readonly string[]): string => `| ${parts.join(' | ')} |`;
  return [
    `${plain(first.what)}. Source: ${plain(first.source)} (${plain(first.provenance)}). Each cell: the stated value → ours.`,
    [
      line(['Case', ...names]),
      line(['---', ...names.map(() => '---')]),
      ...cases.map((one) => {
        const rows = shown(one, found);
        const cell = (name: string): string => {
          const row = rows.find((each) => each.name === name);
          return row === undefined ? '' : `${row.stated} → ${row.ours}`;
        };
        return line([one.id, ...names.map(cell)]);
      }),
    ].join('\n'),
  ].join('\n\n');
}

// What Markdown would take as markup stays as it is written.
const plain = (text: string): string => text.replace(/[*_<>|^~$]/g, '\\$&').replace(/\.$/, '');

const beyond = `## Checks beyond this list

These compare with other programs' results or with high-precision arithmetic, value by value, in the tests themselves:

- the closed forms of gas dynamics against 60-digit decimal arithmetic ([tests/thermo/precision.test.ts](../tests/thermo/precision.test.ts));
- shells, plates and holes against finite elements ([tests/fea](../tests/fea/README.md));
- unit conversions against GNU Units ([tests/units/gnu-units.test.ts](../tests/units/gnu-units.test.ts));
- every formula for dimensional homogeneity, invariance of units, its inverses, and rejection of what it cannot take ([tests/formulas/formula-checks.test.ts](../tests/formulas/formula-checks.test.ts)).`;
