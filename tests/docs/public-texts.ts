import { readdirSync, readFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import ts from 'typescript';
import { helpText, verbHelp, verbs } from '../../src/bin/command-line';
import {
  compare,
  demoMotor,
  flawEnvelope,
  readLog,
  reduceFiring,
  reductionInputs,
  report,
  reportPage,
  review,
} from '../../src/index';

/** A text that a user may read. */
export interface PublicText {
  /** The module, page or printed text it belongs to. */
  readonly place: string;
  /** Where it stands: `file:line`. */
  readonly at: string;
  readonly text: string;
}

const read = (file: string): string => readFileSync(file, 'utf8');
const below = (folder: string, ending: string): readonly string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith(ending))
    .map((name) => join(folder, name))
    .sort();
/** `src/motor` of every file below it. */
const moduleOf = (file: string): string => file.split(sep).slice(0, 2).join('/');
const isTwoWords = (text: string): boolean => /\S\s+\S/.test(text.trim());

/** String literals of two words or more, with '…' for what is interpolated, and doc comments of everything below `src`. */
export function sourceTexts(): readonly PublicText[] {
  return below('src', '.ts').flatMap((file) => {
    const code = read(file);
    const source = ts.createSourceFile(file, code, ts.ScriptTarget.Latest, true);
    const texts: PublicText[] = [];
    const comments = new Set<number>();
    const add = (position: number, text: string): void => {
      const { line } = source.getLineAndCharacterOfPosition(position);
      if (isTwoWords(text)) texts.push({ place: moduleOf(file), at: `${file}:${line + 1}`, text });
    };
    const visit = (node: ts.Node): void => {
      for (const { pos, end } of ts.getLeadingCommentRanges(code, node.pos) ?? []) {
        if (!code.startsWith('/**', pos) || comments.has(pos)) continue;
        comments.add(pos);
        add(pos, code.slice(pos + 3, end - 2).replace(/\n\s*\* ?/g, '\n'));
      }
      if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node))
        add(node.getStart(source), node.text);
      if (ts.isTemplateExpression(node))
        add(
          node.getStart(source),
          node.head.text + node.templateSpans.map(({ literal }) => `…${literal.text}`).join(''),
        );
      ts.forEachChild(node, visit);
    };
    visit(source);
    visit(source.endOfFileToken);
    return texts;
  });
}

/** README, CHANGELOG, DEVELOPERS and the pages below `docs`; the validation page is data. */
export function pageTexts(): readonly PublicText[] {
  return ['README.md', 'CHANGELOG.md', 'DEVELOPERS.md', ...below('docs', '.md')]
    .filter((page) => page !== join('docs', 'validation.md'))
    .map((page) => ({ place: page, at: page, text: read(page) }));
}

/** What the JSON Schema shows in an editor. */
export function schemaTexts(): readonly PublicText[] {
  const strings = (value: unknown): readonly string[] => {
    if (typeof value === 'string') return [value];
    return typeof value === 'object' && value !== null ? Object.values(value).flatMap(strings) : [];
  };
  const place = join('schema', 'motor.schema.json');
  return strings(JSON.parse(read(place)))
    .filter(isTwoWords)
    .map((text) => ({ place, at: place, text }));
}

/** What the demo motor's reports print, as text and as a page, and the help of every verb. */
export async function printedTexts(): Promise<readonly PublicText[]> {
  const motor = demoMotor();
  const judged = review(motor);
  const log = readLog(read(join('examples', 'motors', 'tern-54-firing.csv')));
  const comparison = compare(motor, { firing: reduceFiring(log, reductionInputs(motor)) });
  const page = await reportPage(judged, { comparison, flaws: flawEnvelope(motor) });
  const pageText = page
    .replace(/<(style|script)\b[\s\S]*?<\/\1>/g, '')
    .replace(/<[^>]*>/g, '\n')
    .replace(/&(?:#39|apos);/g, "'");
  const printed = (place: string, text: string): PublicText => ({ place, at: place, text });
  return [
    printed('the review of the demo motor', report(judged)),
    printed('the comparison of the demo motor', report(comparison)),
    printed('the page of the demo motor', pageText),
    printed('meop --help', helpText()),
    ...verbs.map((verb) => printed(`meop ${verb.name} --help`, verbHelp(verb))),
  ];
}
