// Writes the declarations of calculations into the built type declarations, as the comments that an editor shows: the
// title, equation, result, source and example above each calculation, and what each input means above its field.
import { readFileSync, writeFileSync } from 'node:fs';
import ts from 'typescript';
import type { CalculationMetadata, Input, Inputs } from '../src/units';

/** A calculation, as far as its comment goes. */
export type Described = Pick<
  CalculationMetadata,
  'id' | 'title' | 'source' | 'inputs' | 'equation' | 'gives' | 'exampleCall'
>;

interface Insertion {
  readonly at: number;
  readonly text: string;
}

/** The text of a declaration file with the comments of the calculations that it declares. */
export function withHoverComments(text: string, calculations: ReadonlyMap<string, Described>): string {
  const source = ts.createSourceFile('module.d.ts', text, ts.ScriptTarget.ES2022, true);
  const insertions: Insertion[] = [];
  for (const statement of source.statements) {
    if (!ts.isVariableStatement(statement)) continue;
    for (const { name, type } of statement.declarationList.declarations) {
      const described = ts.isIdentifier(name) ? calculations.get(name.text) : undefined;
      if (described === undefined || type === undefined || !ts.isTypeReferenceNode(type)) continue;
      insertions.push(heading(statement, text, described));
      for (const part of type.typeArguments ?? [])
        if (ts.isTypeLiteralNode(part)) insertions.push(...fieldComments(part, described.inputs, source));
    }
  }
  return insertions
    .sort((a, b) => b.at - a.at)
    .reduce((whole, { at, text: inserted }) => whole.slice(0, at) + inserted + whole.slice(at), text);
}

/** The comment above a calculation: in front of the lines that its own comment has. */
function heading(statement: ts.VariableStatement, text: string, described: Described): Insertion {
  const { title, equation, gives, source, exampleCall } = described;
  const lines = [
    `${title}.`,
    ...(equation === undefined ? [] : ['', `    ${equation}`]),
    '',
    `Gives ${gives}.`,
    `Source: ${source}.`,
  ];
  const [own] = ts.getLeadingCommentRanges(text, statement.getFullStart()) ?? [];
  if (own === undefined || !text.startsWith('/**', own.pos))
    return { at: statement.getStart(), text: comment([...lines, '', '@example', exampleCall], '') };
  return {
    at: own.pos + 3,
    text: `\n${lines.map((line) => ` * ${safe(line)}`.trimEnd()).join('\n')}\n *`,
  };
}

function fieldComments(
  fields: ts.TypeLiteralNode,
  inputs: Inputs,
  source: ts.SourceFile,
): readonly Insertion[] {
  return fields.members.flatMap((member): readonly Insertion[] => {
    if (!ts.isPropertySignature(member) || !member.name) return [];
    const input = inputs[member.name.getText(source)];
    if (input === undefined) return [];
    const { line, character } = source.getLineAndCharacterOfPosition(member.getStart(source));
    const indent = ' '.repeat(character);
    const nested = typeArgumentOf(member.type);
    return [
      { at: source.getPositionOfLineAndCharacter(line, character), text: comment(fieldLines(input), indent) },
      ...(nested && 'fields' in input ? fieldComments(nested, Object(input.fields), source) : []),
    ];
  });
}

/** The fields of a group within the type of its field. */
function typeArgumentOf(type: ts.TypeNode | undefined): ts.TypeLiteralNode | undefined {
  if (type === undefined || !ts.isTypeReferenceNode(type)) return undefined;
  return type.typeArguments?.find((part) => ts.isTypeLiteralNode(part));
}

function fieldLines(input: Input): readonly string[] {
  const { meaning, example } = input;
  const given =
    typeof example === 'string' ? `'${example}'` : typeof example === 'number' ? String(example) : undefined;
  const start = meaning.charAt(0).toUpperCase() + meaning.slice(1);
  return [`${start}. Takes ${input.takes()}.${given === undefined ? '' : ` For example ${given}.`}`];
}

const safe = (line: string): string => line.replaceAll('*/', '*\u200b/');

const comment = (lines: readonly string[], indent: string): string =>
  lines.length === 1
    ? `/** ${safe(lines[0] ?? '')} */\n${indent}`
    : `/**\n${lines.map((line) => `${indent} * ${safe(line)}`.trimEnd()).join('\n')}\n${indent} */\n${indent}`;

/** Rewrites declaration files in place. */
export function writeHoverComments(files: readonly string[], calculations: Iterable<Described>): void {
  const known = new Map([...calculations].map((one) => [one.id, one]));
  for (const file of files) writeFileSync(file, withHoverComments(readFileSync(file, 'utf8'), known));
}
