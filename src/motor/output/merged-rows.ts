import { mergeHeadAftRows } from '../merge-head-aft-rows';
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

/** Rows of head and aft that print the same as one row. */
export const mergedRows = <R extends NamedRow>(rows: readonly R[]): readonly R[] =>
  mergeHeadAftRows(rows, ({ mode, cells }) => [mode, ...cells.map(({ text }) => text)]);
