// Exported functions that are not calculations, each with what it is instead.

const document = 'reads or writes a document: it takes any JSON, and reports what is wrong with it';
const tableLookUp = 'gives an entry of a table by its name, or the names';

/** Functions that stay plain, by name. */
export const plainFunctions: Readonly<Record<string, string>> = {
  parseMotor: document,
  motorOf: document,
  motorProblems: document,
  migrateMotorDocument: document,
  patchMotor: document,
  motorJsonSchema: document,
  demoMotor: 'gives the document of the motor of the examples',
  calibrate: 'its argument is named by the channels of the log, each a declared calibration',
  readLog: 'gives a log or the promise of one; its column map is a document with a schema of its own',
  speciesNames: tableLookUp,
  boltClassNames: tableLookUp,
  factorSetNames: tableLookUp,
  factorSet: tableLookUp,
  modeName: tableLookUp,
  governing: 'picks a margin of a list',
  marginTable: 'prints margins',
  partName: tableLookUp,
  graphiteRanges: tableLookUp,
  datum: 'makes a value with its origin, as q makes a quantity',
  material: tableLookUp,
  boltClass: tableLookUp,
  oRing: tableLookUp,
  drillSize: tableLookUp,
  nutFactor: tableLookUp,
  tighteningMethod: tableLookUp,
  boltEndurance: tableLookUp,
  pipeThread: tableLookUp,
  threadGeometry: tableLookUp,
  materialNames: tableLookUp,
  threadNames: tableLookUp,
  retainingRingSize: tableLookUp,
  retainingRingNames: tableLookUp,
  publishedPropellant: tableLookUp,
  publishedPropellants: tableLookUp,
};

/** What the root exports that is neither a function nor a type, each with what it is. */
export const publicValues: Readonly<Record<string, string>> = {
  constants: 'physical constants with their sources',
  motorSchema: 'the schema of the motor document',
  motorDocumentVersion: 'its version',
  reportSchema: 'the JSON Schema of a report',
};

/** Functions that have not been made calculations yet, by module: this list only shrinks. */
export const notYet: Readonly<Record<string, string>> = {};
