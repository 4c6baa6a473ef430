import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';

const here = dirname(fileURLToPath(import.meta.url));
const options: ts.CompilerOptions = {
  target: ts.ScriptTarget.ES2022,
  module: ts.ModuleKind.ESNext,
  moduleResolution: ts.ModuleResolutionKind.Bundler,
  lib: ['lib.es2023.d.ts', 'lib.dom.d.ts'],
  types: [],
  strict: true,
  noEmit: true,
  skipLibCheck: true,
};

/** What the compiler prints for each snippet, one text an error; the snippets are checked in one program. */
export function compileErrors<Name extends string>(
  snippets: Readonly<Record<Name, string>>,
): ReadonlyMap<string, readonly string[]> {
  const sources = new Map(
    Object.entries<string>(snippets).map(([name, text], i) => [
      join(here, `snippet-${i}.ts`),
      { name, text },
    ]),
  );
  const host = ts.createCompilerHost(options);
  const { getSourceFile, fileExists, readFile } = host;
  host.getSourceFile = (path, version) => {
    const found = sources.get(path);
    return found ? ts.createSourceFile(path, found.text, version) : getSourceFile(path, version);
  };
  host.fileExists = (path) => sources.has(path) || fileExists(path);
  host.readFile = (path) => sources.get(path)?.text ?? readFile(path);
  const program = ts.createProgram([...sources.keys()], options, host);
  return new Map(
    [...sources].map(([path, { name }]) => {
      const file = program.getSourceFile(path);
      const found = [...program.getSyntacticDiagnostics(file), ...program.getSemanticDiagnostics(file)];
      return [name, found.map(({ messageText }) => ts.flattenDiagnosticMessageText(messageText, '\n'))];
    }),
  );
}
