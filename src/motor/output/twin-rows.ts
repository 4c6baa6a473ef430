import type { ReviewMargin } from '../review/review-result';
import type { Shown } from './content';

/** A row of a table of failure modes. */
export interface NamedRow {
  readonly part: string;
  readonly mode: string;
  readonly cells: readonly Shown[];
}

/** Part and mode of what has them. */
export const named = ({ part, mode }: Pick<ReviewMargin, 'part' | 'mode'>) => ({ part, mode });

/** Rows of head and aft that print the same are one row of both. */
export function withTwins<R extends NamedRow>(rows: readonly R[]): readonly R[] {
  const printed = ({ part, mode, cells }: NamedRow): string =>
    JSON.stringify([part.replace(/^(?:head|aft) /, ''), mode, cells.map(({ text }) => text)]);
  const seen = new Map<string, number>();
  const kept: R[] = [];
  for (const row of rows) {
    const twin = seen.get(printed(row));
    if (twin === undefined) {
      seen.set(printed(row), kept.length);
      kept.push(row);
    } else kept[twin] = { ...kept[twin], part: row.part.replace(/^(?:head|aft) (.*)$/, 'head and aft $1') };
  }
  return kept;
}
