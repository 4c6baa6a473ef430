import * as z from 'zod/mini';
import { materialNames } from '../../structures';
import { namedKinds } from '../../units';
import { ownMaterial } from './material-field';
import { measureJson, measureName } from './measure';
import { motorSchema } from './motor-schema';

/**
 * The JSON Schema (draft 2020-12) of motor documents, made by zod from {@link motorSchema}. It ships as
 * `schema/motor.schema.json`; an editor completes a document that names it as its `$schema`.
 *
 * @example motorJsonSchema().title // => 'Motor document'
 */
export function motorJsonSchema(): Readonly<Record<string, unknown>> {
  const { $schema, $defs, ...motor } = z.toJSONSchema(motorSchema, { io: 'input', reused: 'ref' });
  const { $schema: _, ...material } = z.toJSONSchema(ownMaterial, { io: 'input' });
  const text = JSON.stringify([motor, $defs, material]);
  const kinds = namedKinds().filter((kind) => text.includes(`"#/$defs/${measureName(kind)}"`));
  const measures = Object.fromEntries(kinds.map((kind) => [measureName(kind), measureJson(kind)]));
  return {
    $schema,
    title: 'Motor document',
    ...motor,
    $defs: { ...$defs, 'material-name': { type: 'string', enum: materialNames() }, material, ...measures },
  };
}
