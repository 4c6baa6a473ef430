import * as z from 'zod/mini';
import { MeopError, optional, words } from '../../units';
import type { DocumentOf, ModelOf } from './document-types';
import { motorInputs } from './motor-inputs';
import { leaf, part } from './parts';
import { fieldsOf, schemasOf } from './schema-of';

/** The version of documents written by this library; older ones are migrated when read. */
export const motorDocumentVersion = 2;

type Fields = (typeof motorInputs)['fields'];

/** A motor document as written: the typed literal of a script, or the content of a JSON file. */
export interface MotorDocument extends DocumentOf<Fields> {
  /** Path or address of the JSON Schema of the document. */
  readonly $schema?: string | undefined;
  readonly version: typeof motorDocumentVersion;
}

/** The parts of a motor document as parsed: quantities with their tolerances. */
export interface MotorParts extends ModelOf<Fields> {
  readonly $schema?: string | undefined;
  readonly version: typeof motorDocumentVersion;
}

const version = () =>
  leaf(
    (given) => {
      if (given === motorDocumentVersion) return given;
      const expected = `${motorDocumentVersion} (document version)`;
      throw given === undefined
        ? new MeopError({ code: 'missing-field', expected })
        : new MeopError({
            code: 'unknown-name',
            expected,
            given,
            problem: `must be ${expected}, got ${JSON.stringify(given)}`,
          });
    },
    { description: 'version of the document format', const: motorDocumentVersion },
  );

let made: z.ZodMiniType<MotorParts, MotorDocument> | undefined;

/** The schema itself, made when the first document is read: it has some thousand parts, which an import would wait for. */
export function wholeSchema(): z.ZodMiniType<MotorParts, MotorDocument> {
  made ??= makeSchema();
  return made;
}

function makeSchema(): z.ZodMiniType<MotorParts, MotorDocument> {
  const { $schema } = schemasOf({
    $schema: optional(words('path or address of the JSON Schema of this document')),
  });
  const schema: z.core.$ZodType = part(
    { $schema, version: version(), ...fieldsOf(motorInputs) },
    motorInputs.meaning,
  );
  // True: the declared fields, and the two above them.
  return schema as z.ZodMiniType<MotorParts, MotorDocument>;
}

/**
 * The zod schema of a motor document: `motorSchema.safeParse(json)` returns the result of zod. `parseMotor` also checks
 * relations between parts and explains each error.
 *
 * @example motorSchema.safeParse({}).success // => false
 */
export const motorSchema: z.ZodMiniType<MotorParts, MotorDocument> = /* @__PURE__ */ z.lazy(wholeSchema);
