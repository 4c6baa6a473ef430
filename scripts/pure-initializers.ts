// Marks module-level initializers as free of side effects, so that a bundler drops what a program does not use.
// The built modules share chunks; within a chunk a bundler keeps every constant whose initializer calls, reads a property
// or spreads, because it cannot know that nothing else happens. Nothing else happens anywhere in src: so each such
// initializer is wrapped in a call marked pure. The source stays free of it.
import { readFileSync } from 'node:fs';
import type { Plugin } from 'esbuild';
import ts from 'typescript';

const impure: ReadonlySet<ts.SyntaxKind> = new Set([
  ts.SyntaxKind.CallExpression,
  ts.SyntaxKind.NewExpression,
  ts.SyntaxKind.PropertyAccessExpression,
  ts.SyntaxKind.ElementAccessExpression,
  ts.SyntaxKind.SpreadAssignment,
  ts.SyntaxKind.SpreadElement,
  ts.SyntaxKind.TemplateExpression,
  ts.SyntaxKind.ComputedPropertyName,
]);

function mayActOnLoad(node: ts.Node): boolean {
  if (ts.isFunctionLike(node) || ts.isTypeNode(node)) return false;
  return impure.has(node.kind) || (ts.forEachChild(node, mayActOnLoad) ?? false);
}

// A call that is marked already, with arguments that cannot act, needs no wrapping; nor does an empty map.
function isMarked(node: ts.Expression, source: ts.SourceFile): boolean {
  if (/^new (?:Map|Set)\(\)$/.test(node.getText(source))) return true;
  const marked = node.getFullText(source).trimStart().startsWith('/* @__PURE__ */');
  return marked && ts.isCallExpression(node) && !node.arguments.some(mayActOnLoad);
}

interface Edit {
  readonly from: number;
  readonly until: number;
  readonly text: string;
}

function wrapped(initializer: ts.Expression, source: ts.SourceFile): Edit[] {
  const from = initializer.getStart(source);
  return [
    { from, until: from, text: '/* @__PURE__ */ (() => (' },
    { from: initializer.end, until: initializer.end, text: '))()' },
  ];
}

// A class with a computed member name counts as acting, too: it becomes a constant.
function classEdits(statement: ts.ClassDeclaration, source: ts.SourceFile): Edit[] {
  const computed = statement.members.some(
    ({ name }) => name !== undefined && ts.isComputedPropertyName(name),
  );
  const keyword = statement.getChildren(source).find(({ kind }) => kind === ts.SyntaxKind.ClassKeyword);
  if (!computed || !statement.name || !keyword) return [];
  const exported = statement.modifiers?.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword)
    ? 'export '
    : '';
  const name = statement.name.text;
  return [
    {
      from: statement.getStart(source),
      until: keyword.getStart(source),
      text: `${exported}const ${name} = /* @__PURE__ */ (() => { `,
    },
    {
      from: statement.end,
      until: statement.end,
      text: ` return Object.defineProperty(${name}, 'name', { value: '${name}' }); })();`,
    },
  ];
}

/** Names taken out of an object, each a constant of its own: a pattern reads properties, and so is never dropped. */
function takenApart(
  { pos, end }: ts.VariableDeclaration,
  pattern: ts.BindingPattern,
  initializer: ts.Expression,
  source: ts.SourceFile,
): Edit {
  const whole = initializer.getText(source);
  const constants = pattern.elements.map((element) => {
    if (!ts.isBindingElement(element) || !ts.isIdentifier(element.name) || element.initializer)
      throw new Error(`a pattern at module level holds plain names only: ${pattern.getText(source)}`);
    const name = element.name.text;
    const body = element.dotDotDotToken
      ? `{ const ${pattern.getText(source)} = ${whole}; return ${name}; }`
      : `(${whole}).${(element.propertyName ?? element.name).getText(source)}`;
    return `${name} = /* @__PURE__ */ (() => ${body})()`;
  });
  return { from: pos, until: end, text: ` ${constants.join(', ')}` };
}

/** The source with every initializer that could act on load wrapped. */
export function withPureInitializers(text: string, file: string): string {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
  const edits = source.statements.flatMap((statement): Edit[] => {
    if (ts.isClassDeclaration(statement)) return classEdits(statement, source);
    if (!ts.isVariableStatement(statement)) return [];
    return statement.declarationList.declarations.flatMap((declaration) => {
      const { name, initializer } = declaration;
      if (!initializer || ts.isFunctionLike(initializer)) return [];
      if (!ts.isIdentifier(name)) return [takenApart(declaration, name, initializer, source)];
      return mayActOnLoad(initializer) && !isMarked(initializer, source) ? wrapped(initializer, source) : [];
    });
  });
  return edits
    .sort((a, b) => b.from - a.from)
    .reduce((made, { from, until, text: added }) => made.slice(0, from) + added + made.slice(until), text);
}

/** The esbuild plugin of the build. */
export const pureInitializers: Plugin = {
  name: 'pure-initializers',
  setup(build) {
    build.onLoad({ filter: /\/src\/.*\.ts$/ }, ({ path }) => ({
      contents: withPureInitializers(readFileSync(path, 'utf8'), path),
      loader: 'ts',
    }));
  },
};
