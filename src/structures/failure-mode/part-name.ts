import { unknownName } from '../../units';

// What each end of the motor has is named with it, so that head and aft can be written as one.
const parts = {
  case: { end: undefined, name: 'case' },
  closure: { end: undefined, name: 'closure' },
  joint: { end: undefined, name: 'joint' },
  'head-closure': { end: 'head', name: 'closure' },
  'aft-closure': { end: 'aft', name: 'closure' },
  'head-joint': { end: 'head', name: 'joint' },
  'aft-joint': { end: 'aft', name: 'joint' },
  'throat-insert': { end: undefined, name: 'throat insert' },
  'nozzle-retainer': { end: undefined, name: 'nozzle retainer' },
  stand: { end: undefined, name: 'stand' },
  restraint: { end: undefined, name: 'restraint' },
} as const;

/** A part that a failure mode belongs to, by identifier. */
export type PartId = keyof typeof parts;

/** The end of the motor that a part is at, and what the part is called there. */
export const partAt = (part: PartId): { readonly end: 'head' | 'aft' | undefined; readonly name: string } =>
  parts[part];

/**
 * The name of a part as people read it.
 *
 * @example partName('head-joint') // => 'head joint'
 */
export function partName(part: PartId): string {
  if (!Object.hasOwn(parts, part))
    throw unknownName(part, Object.keys(parts), 'part', { procedure: 'partName', path: '' });
  const { end, name } = parts[part];
  return end === undefined ? name : `${end} ${name}`;
}
