import { type NamedTable, unknownName } from '../../units';
import type { Provenance } from '../materials/datum';

const nasa = 'NASA figures in a table of the accuracy of preload methods';
const machinery = "Machinery's Handbook, 31st ed., accuracy of bolt preload application methods";

const rows = {
  'torque, unlubricated': [0.35, nasa],
  'torque, cadmium plated': [0.3, nasa],
  'torque, lubricated': [0.25, nasa],
  'torque wrench': [0.25, machinery],
  'by feel': [0.35, machinery],
  'turn of nut': [0.15, machinery],
  'hydraulic tensioner': [0.15, nasa],
  'load-indicating washer': [0.1, nasa],
  ultrasonic: [0.1, nasa],
  'yield-sensing wrench': [0.08, machinery],
  elongation: [0.05, nasa],
} as const;

/** How a bolt is tightened, which determines the scatter of its preload. */
export type TighteningMethodName = keyof typeof rows;

/** The scatter of a method of tightening, with its origin. */
export interface TighteningMethod {
  readonly method: TighteningMethodName;
  /** Plus and minus, as a fraction of the nominal preload. */
  readonly scatter: number;
  readonly source: string;
  readonly provenance: Provenance;
}

const isMethod = (name: string): name is TighteningMethodName => Object.hasOwn(rows, name);
const methodNames = (): readonly TighteningMethodName[] => Object.keys(rows).filter(isMethod);

/**
 * The scatter of a method of tightening.
 *
 * @throws MeopError `unknown-name`
 * @example tighteningMethod('torque, lubricated').scatter // => 0.25
 */
export function tighteningMethod(
  method: TighteningMethodName | (string & Readonly<Record<never, never>>),
): TighteningMethod {
  if (!isMethod(method))
    throw unknownName(method, methodNames(), 'method of tightening', {
      procedure: 'tighteningMethod',
      path: '',
    });
  const [scatter, source] = rows[method];
  return { method, scatter, source, provenance: 'published' };
}

/** Methods of tightening by name, or one with the user's own scatter. */
export const tighteningMethods: NamedTable<TighteningMethod, TighteningMethodName> = {
  what: 'method of tightening',
  names: methodNames,
  get usual() {
    return methodNames();
  },
  find: tighteningMethod,
  is: (value): value is TighteningMethod =>
    typeof value === 'object' && value !== null && typeof Reflect.get(value, 'scatter') === 'number',
};
