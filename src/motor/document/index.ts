/**
 * The motor document: its zod schema, a parser that reports all errors at once, JSON Schema and migration. Imports
 * lower layers.
 *
 * @example motorProblems('{').length // => 1
 * @module
 */

export type { Measured, MeasureInput } from './document-types';
export { motorJsonSchema } from './json-schema';
export { strengthProblems } from './material-checks';
export { type Migration, migrateMotorDocument } from './migrate';
export { type MotorDocument, type MotorParts, motorDocumentVersion, motorSchema } from './motor-schema';
export { type Motor, type MotorInput, motorOf, motorProblems, parseMotor } from './parse-motor';
export type { DocumentProblem } from './problems';
