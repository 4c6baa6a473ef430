import type { Partly } from './document-types';
import type { Findings, ReadDocument } from './fit-check';
import type { MotorParts } from './motor-schema';

type History = NonNullable<MotorParts['history']>;
type Measurement = Partly<NonNullable<History['measurements']>[number]>;

/** What a measurement needs in the document: the part of the motor that it was taken on. */
const needs = {
  'hole length': { fields: ['joint'], what: 'radial bolts (joint)' },
  'screw length': { fields: ['joint', 'axialBolts'], what: 'bolts (joint or axialBolts)' },
  'groove burr': { fields: ['retainingRing'], what: 'a retaining ring (retainingRing)' },
  'thread gauge': { fields: ['thread'], what: 'a thread (thread)' },
} as const;

const hasNeed = (measure: string): measure is keyof typeof needs => Object.hasOwn(needs, measure);

/** Checks that the ledger is about parts that the document describes. */
export function checkHistory({ parts }: ReadDocument, found: Findings): void {
  parts.history?.measurements?.forEach((one, i) => {
    if (one === undefined) return;
    const at = ['history', 'measurements', i];
    checkMeasurement(one, at, parts, found);
  });
}

function checkMeasurement(
  one: Measurement,
  at: readonly (string | number)[],
  { closures, nozzle }: ReadDocument['parts'],
  { note }: Findings,
): void {
  if (!('part' in one) || one.part === undefined || one.measure === undefined) return;
  const { part, measure } = one;
  const end = part.startsWith('head') ? 'head' : 'aft';
  const missing = (what: string): void =>
    note([...at, 'part'], {
      code: 'does-not-fit',
      expected: `a part that the document describes: ${what} is not specified`,
      remedy: 'Correct the part of the measurement, or specify it',
    });
  if (hasNeed(measure)) {
    const { fields, what } = needs[measure];
    if (fields.every((field) => closures?.[end]?.[field] === undefined))
      missing(`${what} of the ${end} closure`);
  } else if (part === 'throat-insert' && nozzle?.insert === undefined) missing('nozzle.insert');
  else if (part !== 'case' && part !== 'throat-insert' && closures?.[end] === undefined)
    missing(`the ${end} closure`);
}
