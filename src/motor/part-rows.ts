import { type PartId, partAt, partName } from '../structures/failure-mode/part-name';

/** A row with the name of its part instead of the identifier. */
export type Named<R> = Omit<R, 'part'> & { readonly part: string };

/** Rows with their parts named; equal rows of head and aft are merged. */
export function namedRows<R extends { readonly part: PartId }>(
  rows: readonly R[],
  said: (row: R) => readonly unknown[],
): readonly Named<R>[] {
  const groups = new Map<string, readonly [R, ...R[]]>();
  for (const row of rows) {
    const key = JSON.stringify([partAt(row.part).name, ...said(row).map(String)]);
    const known = groups.get(key);
    groups.set(key, known === undefined ? [row] : [...known, row]);
  }
  return [...groups.values()].map((alike) => {
    const isBoth = new Set(alike.map(({ part }) => partAt(part).end)).size > 1;
    const [row] = alike;
    return { ...row, part: isBoth ? `head and aft ${partAt(row.part).name}` : partName(row.part) };
  });
}
