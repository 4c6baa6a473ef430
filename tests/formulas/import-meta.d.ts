/** What the test runner adds to `import.meta`: the modules that match, loaded when asked or at once. */
interface ImportMeta {
  glob<Module>(patterns: string | readonly string[]): Readonly<Record<string, () => Promise<Module>>>;
  glob<Module>(
    patterns: string | readonly string[],
    options: { readonly eager: true },
  ): Readonly<Record<string, Module>>;
}
