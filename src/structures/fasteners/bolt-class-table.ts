import type { NamedTable } from '../../units';
import { boltClass, boltClassNames } from './bolt-class';
import type { BoltClassName } from './bolt-table';

/** Bolt classes by name. The entry is the name itself, since the strengths of a class depend on the diameter. */
export const boltClasses: NamedTable<BoltClassName, BoltClassName> = {
  what: 'bolt class',
  names: boltClassNames,
  usual: ['8.8', '10.9', '12.9', 'A2-70', 'A4-80', 'grade 5', 'grade 8', 'A574'],
  find: (name) => boltClass(name).name,
  is: (value): value is BoltClassName => boltClassNames().some((name) => name === value),
};
