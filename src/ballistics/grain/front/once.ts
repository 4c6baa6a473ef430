/** A value that is computed when it is first read. */
export function once<T>(make: () => T): () => T {
  let kept: { readonly value: T } | undefined;
  return () => {
    kept ??= { value: make() };
    return kept.value;
  };
}
