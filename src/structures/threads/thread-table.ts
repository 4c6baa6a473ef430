import type { NamedTable } from '../../units';
import { type ThreadGeometry, threadGeometry, threadNames } from './thread-geometry';

/** Threads by designation, or as a user-defined geometry. */
export const threads = {
  what: 'thread',
  names: threadNames,
  usual: ['M3', 'M4', 'M5', 'M6', 'M8', '1/4-20', '#10-32'],
  find: threadGeometry,
  is: (value): value is ThreadGeometry =>
    typeof value === 'object' && value !== null && 'tensileStressArea' in value,
} as const satisfies NamedTable<ThreadGeometry>;
