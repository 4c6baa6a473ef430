import { motorDocumentVersion } from './motor-schema';

/** Converts a document of one version to the next. */
export type Migration = (document: Readonly<Record<string, unknown>>) => Record<string, unknown>;

/**
 * Fields that version 2 renames, by the part that has them; `*` stands for every field of a part, or every item of
 * a list.
 */
const renamedInVersion2: readonly (readonly [part: string, from: string, to: string])[] = [
  ['closures.*', 'held', 'edgeSupport'],
  ['closures.*.joint', 'misplacement', 'positionTolerance'],
  ['closures.*.retainingRing', 'landLength', 'edgeMargin'],
  ['stand.anchors', 'spread', 'anchorSpacing'],
  ['instruments.*', 'proof', 'proofPressure'],
  ['instruments.*', 'overload', 'safeOverload'],
  ['propellant.burnLaw', 'rate', 'referenceRate'],
  ['propellant.burnLaw', 'atPressure', 'referencePressure'],
  ['propellant.burnLaw.bands.*', 'rate', 'referenceRate'],
  ['propellant.burnLaw.bands.*', 'atPressure', 'referencePressure'],
  ['ignition', 'closureBurstPressure', 'nozzleClosureBurstPressure'],
];

/** By the version they start from. */
const known: Readonly<Record<number, Migration>> = {
  1: (document) =>
    renamedInVersion2.reduce<Record<string, unknown>>((current, [part, from, to]) => {
      const changed = changedAt(current, part.split('.'), (owner) => renamedField(owner, from, to));
      return isRecord(changed) ? { ...changed } : current;
    }, document),
};

/**
 * Converts a document to the current version. A document without a version, with an unknown one, or that is not an
 * object is returned unchanged, and the schema rejects it.
 *
 * @example JSON.stringify(migrateMotorDocument({ version: 1, ignition: { closureBurstPressure: '1 MPag' } })) // => '{"version":2,"ignition":{"nozzleClosureBurstPressure":"1 MPag"}}'
 */
export function migrateMotorDocument(
  document: unknown,
  migrations: Readonly<Record<number, Migration>> = known,
  target: number = motorDocumentVersion,
): unknown {
  let current = document;
  while (isRecord(current) && typeof current.version === 'number' && current.version < target) {
    const step = migrations[current.version];
    if (step === undefined) return current;
    current = { ...step(current), version: current.version + 1 };
  }
  return current;
}

type Part = Readonly<Record<string, unknown>>;

const isRecord = (value: unknown): value is Part =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** The value with `change` applied to the parts that the path leads to; what is not there stays as it is. */
function changedAt(value: unknown, path: readonly string[], change: (part: Part) => Part): unknown {
  const [field, ...rest] = path;
  if (field === '*' && Array.isArray(value)) return value.map((item) => changedAt(item, rest, change));
  if (!isRecord(value)) return value;
  if (field === undefined) return change(value);
  return Object.fromEntries(
    Object.entries(value).map(([name, inside]) => [
      name,
      field === '*' || field === name ? changedAt(inside, rest, change) : inside,
    ]),
  );
}

/** The part with one field under its new name, at its place; as it is where it has both, and is then rejected by the schema. */
const renamedField = (part: Part, from: string, to: string): Part =>
  Object.hasOwn(part, from) && !Object.hasOwn(part, to)
    ? Object.fromEntries(Object.entries(part).map(([name, value]) => [name === from ? to : name, value]))
    : part;
