/** Rows of head and aft that say the same are one row of both. */
export function mergeHeadAftRows<R extends { readonly part: string }>(
  rows: readonly R[],
  said: (row: R) => readonly unknown[],
): readonly R[] {
  const key = (row: R): string =>
    JSON.stringify([row.part.replace(/^(?:head|aft) /, ''), ...said(row).map(String)]);
  const seen = new Map<string, number>();
  const kept: R[] = [];
  for (const row of rows) {
    const twin = seen.get(key(row));
    if (twin === undefined) {
      seen.set(key(row), kept.length);
      kept.push(row);
    } else kept[twin] = { ...kept[twin], part: row.part.replace(/^(?:head|aft) (.*)$/, 'head and aft $1') };
  }
  return kept;
}
