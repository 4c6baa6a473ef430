import { motorDocumentVersion } from './motor-schema';

/** Brings a document of one version to the form of the next. */
export type Migration = (document: Readonly<Record<string, unknown>>) => Record<string, unknown>;

/** By the version they start from; none yet, since there has been one version. */
const known: Readonly<Record<number, Migration>> = {};

/**
 * A document in today's form. One that carries no version, an unknown one, or is no object at all comes back as it is,
 * for the schema to refuse.
 *
 * @example JSON.stringify(migrateMotorDocument({ version: 1, name: 'Tern-54' })) // => '{"version":1,"name":"Tern-54"}'
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

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
