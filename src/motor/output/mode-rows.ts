import type { FailureMargin, PartId } from '../../structures';
import { type Named, namedRows } from '../part-rows';
import type { Shown } from './content';

/** A row of a table of failure modes. */
export interface ModeRow {
  readonly part: PartId;
  readonly mode: string;
  readonly cells: readonly Shown[];
}

/** Part and mode of a margin or a limit. */
export const modeOf = ({ part, mode }: Pick<FailureMargin, 'part' | 'mode'>) => ({ part, mode });

/** Rows with their parts named; rows of head and aft that print the same are merged. */
export const mergedRows = <R extends ModeRow>(rows: readonly R[]): readonly Named<R>[] =>
  namedRows(rows, ({ mode, cells }) => [mode, ...cells.map(({ text }) => text)]);
