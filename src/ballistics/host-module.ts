// Modules of the host, found at run time: nothing is imported, so that the same files are fit for browsers.

interface Host {
  readonly process?: { readonly getBuiltinModule?: (name: string) => unknown };
}

/** A module of the host itself; `undefined` where there is no such host. */
export function hostModule(name: string): unknown {
  const host: Host = globalThis;
  return host.process?.getBuiltinModule?.(name);
}
