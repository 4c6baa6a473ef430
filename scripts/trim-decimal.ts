// Leaves out of the bundled decimal.js the methods that the library cannot reach: its methods hang on one prototype, so a
// bundler keeps the trigonometry of a hundred digits for the sake of a product. Reachability is by name and so never too
// small: a method stays where any kept code reads a property of its name.
import { readFileSync } from 'node:fs';
import type { Plugin } from 'esbuild';
import ts from 'typescript';

/** Every property name that code reads, writes or calls. */
function propertyNames(node: ts.Node, found: Set<string> = new Set()): ReadonlySet<string> {
  if (ts.isPropertyAccessExpression(node)) found.add(node.name.text);
  if (ts.isElementAccessExpression(node) && ts.isStringLiteral(node.argumentExpression))
    found.add(node.argumentExpression.text);
  ts.forEachChild(node, (child) => void propertyNames(child, found));
  return found;
}

interface Member {
  readonly statement: ts.ExpressionStatement;
  /** The names it is assigned to: `P.absoluteValue = P.abs = function …`. */
  readonly names: readonly string[];
  readonly value: ts.Expression;
}

/** The assignment of a method to the prototype `P`, or of a function to `Decimal`, as {@link Member}. */
function memberOf(statement: ts.Statement, owner: 'P' | 'Decimal'): Member | undefined {
  if (!ts.isExpressionStatement(statement)) return undefined;
  const names: string[] = [];
  let value: ts.Expression = statement.expression;
  while (
    ts.isBinaryExpression(value) &&
    value.operatorToken.kind === ts.SyntaxKind.EqualsToken &&
    ts.isPropertyAccessExpression(value.left) &&
    value.left.expression.getText() === owner
  ) {
    names.push(value.left.name.text);
    value = value.right;
  }
  const isMember = owner === 'P' ? ts.isFunctionExpression(value) : ts.isIdentifier(value);
  return names.length > 0 && isMember ? { statement, names, value } : undefined;
}

/** decimal.js without the methods that `users` cannot reach. */
export function trimmedDecimal(text: string, users: readonly string[]): string {
  const source = ts.createSourceFile('decimal.mjs', text, ts.ScriptTarget.Latest, true, ts.ScriptKind.JS);
  const methods = source.statements.flatMap((statement) => memberOf(statement, 'P') ?? []);
  const functions = new Map(
    source.statements.flatMap((one) =>
      ts.isFunctionDeclaration(one) && one.name ? [[one.name.text, one]] : [],
    ),
  );
  const clone = functions.get('clone')?.body;
  if (methods.length < 50 || clone === undefined)
    throw new Error('decimal.js is laid out otherwise than expected');
  const statics = clone.statements
    .flatMap((statement) => memberOf(statement, 'Decimal') ?? [])
    .filter(({ value }) => ts.isIdentifier(value) && functions.has(value.text));

  const droppable = new Set<ts.Node>([...methods, ...statics].map(({ statement }) => statement));
  const reached = new Set<string>(
    users.flatMap((user) => [
      ...propertyNames(ts.createSourceFile('user.ts', user, ts.ScriptTarget.Latest, true)),
    ]),
  );
  const kept = new Set<ts.Node>();
  const visit = (node: ts.Node): void => {
    if (droppable.has(node) && !kept.has(node)) return;
    if (ts.isPropertyAccessExpression(node)) reached.add(node.name.text);
    const called = ts.isIdentifier(node) ? functions.get(node.text) : undefined;
    if (called !== undefined && !kept.has(called)) keep(called);
    ts.forEachChild(node, visit);
  };
  const keep = (node: ts.Node): void => {
    kept.add(node);
    visit(node);
  };
  for (const statement of source.statements) if (!ts.isFunctionDeclaration(statement)) visit(statement);
  const members = [...methods, ...statics];
  for (let next = members; next.length > 0; ) {
    next = members.filter(
      ({ statement, names }) => !kept.has(statement) && names.some((name) => reached.has(name)),
    );
    for (const { statement } of next) keep(statement);
  }
  return [...droppable]
    .filter((statement) => !kept.has(statement))
    .sort((a, b) => b.pos - a.pos)
    .reduce((made, { pos, end }) => made.slice(0, pos) + made.slice(end), text);
}

/** The esbuild plugin of the build; `users` are the files that use decimal.js. */
export const trimDecimal = (users: readonly string[]): Plugin => ({
  name: 'trim-decimal',
  setup(build) {
    build.onLoad({ filter: /decimal\.js\/decimal\.mjs$/ }, ({ path }) => ({
      contents: trimmedDecimal(
        readFileSync(path, 'utf8'),
        users.map((user) => readFileSync(user, 'utf8')),
      ),
      loader: 'js',
    }));
  },
});
