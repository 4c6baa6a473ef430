import ts from 'typescript';

/** A public symbol with its documentation comment. */
export interface PublicSymbol {
  readonly name: string;
  readonly module: string;
  readonly comment: string;
  readonly examples: readonly string[];
}

/** Every symbol that a module index exports, with its comment and examples. */
export function publicSymbols(entries: readonly string[]): readonly PublicSymbol[] {
  const options: ts.CompilerOptions = {
    target: ts.ScriptTarget.ES2022,
    module: ts.ModuleKind.ESNext,
    moduleResolution: ts.ModuleResolutionKind.Bundler,
    strict: true,
    skipLibCheck: true,
    types: [],
  };
  const program = ts.createProgram([...entries], options);
  const checker = program.getTypeChecker();
  const symbols: PublicSymbol[] = [];
  for (const entry of entries) {
    const source = program.getSourceFile(entry);
    const module = source && checker.getSymbolAtLocation(source);
    if (!module) throw new Error(`${entry} is not a module`);
    for (const exported of checker.getExportsOfModule(module)) {
      const symbol = exported.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(exported) : exported;
      symbols.push({
        name: exported.name,
        module: entry,
        comment: ts.displayPartsToString(symbol.getDocumentationComment(checker)),
        examples: symbol
          .getJsDocTags(checker)
          .filter((tag) => tag.name === 'example')
          .map((tag) => ts.displayPartsToString(tag.text)),
      });
    }
  }
  return symbols;
}
