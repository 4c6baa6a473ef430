import { MeopError } from '../../units';
import { geometryProblems } from './geometry-checks';
import { meaningProblems } from './meaning-checks';
import { migrateMotorDocument } from './migrate';
import { type MotorDocument, type MotorParts, motorDocumentVersion, motorSchema } from './motor-schema';
import { type DocumentProblem, documentError, problemsOfIssues } from './problems';
import { rawAt } from './raw-value';

const isMotor = Symbol.for('meop.motor');

/** A motor as read from its document: every value a quantity with its tolerance. */
export interface Motor extends MotorParts {
  readonly [isMotor]: true;
  /** The document in today's form, quantities as texts: `JSON.stringify(motor)` writes it. */
  readonly document: MotorDocument;
  toJSON(): MotorDocument;
  toString(): string;
}

/** What the procedures take: a motor, or the document of one. */
export type MotorInput = Motor | MotorDocument;

/**
 * Reads a motor document: JSON text, what `JSON.parse` gave, or a typed literal. Everything is checked at once: names and
 * units, how the parts go together, what the floors below refuse.
 *
 * @throws MeopError `motor-document`, whose message lists every problem with its path and the way out and whose `value`
 * is the list
 * @example parseMotor(demoMotor()).name // => 'Tern-54'
 */
export function parseMotor(json: unknown): Motor {
  const read = readDocument(json);
  if (read.motor !== undefined) return read.motor;
  throw documentError(read.problems, 'parseMotor');
}

/**
 * Every problem of a motor document; none where it is sound. Never throws.
 *
 * @example motorProblems({ version: 2, name: 'Tern-54' }).length // => 5
 */
export function motorProblems(json: unknown): readonly DocumentProblem[] {
  return readDocument(json).problems;
}

/**
 * The motor itself, or the one that a document describes.
 *
 * @throws MeopError `motor-document`
 * @example motorOf(demoMotor()).name // => 'Tern-54'
 */
export function motorOf(input: MotorInput): Motor {
  return isMotor in input ? input : parseMotor(input);
}

interface Read {
  readonly motor?: Motor;
  readonly problems: readonly DocumentProblem[];
}

function readDocument(json: unknown): Read {
  const plain = plainJson(json);
  if ('problem' in plain) return { problems: [plain.problem] };
  const document = migrateMotorDocument(plain.value);
  const version = rawAt(document, ['version']);
  if (typeof version === 'number' && version > motorDocumentVersion)
    return {
      problems: [
        {
          path: 'version',
          code: 'newer-document',
          message: `${version} given; this library reads documents up to version ${motorDocumentVersion}: use a newer library`,
          value: version,
        },
      ],
    };
  const parsed = motorSchema.safeParse(document);
  const found = [
    ...(parsed.success ? [] : problemsOfIssues(parsed.error.issues)),
    ...geometryProblems(document),
    ...meaningProblems(document),
  ];
  const seen = new Set<string>();
  // The schema's word on a field comes first; what a check says of the same field would only repeat it.
  const problems = inOrder(found.filter(({ path }) => !seen.has(path) && seen.add(path)));
  if (!parsed.success || problems.length > 0) return { problems };
  return { motor: makeMotor(parsed.data, document), problems };
}

/** As the parts stand in a document, so that what is wrong with one part stands together. */
function inOrder(problems: readonly DocumentProblem[]): readonly DocumentProblem[] {
  const order = Object.keys(motorSchema.shape);
  const rank = ({ path }: DocumentProblem): number => order.indexOf(path.split(/[.[]/, 1)[0] ?? '');
  return [...problems].sort((a, b) => rank(a) - rank(b));
}

function makeMotor(parts: MotorParts, document: unknown): Motor {
  // True: the schema has accepted it.
  const written = document as MotorDocument;
  const made: Motor = {
    ...parts,
    [isMotor]: true,
    document: written,
    toJSON: () => written,
    toString: () => motorText(parts),
    ...{ [Symbol.for('nodejs.util.inspect.custom')]: () => motorText(parts) },
  };
  return made;
}

function motorText({ name, case: tube, nozzle, propellant, grain }: MotorParts): string {
  const segments = grain.segments.map(
    (one) =>
      `  ${one.count === undefined ? '' : `${one.count} × `}${one.shape}, ${one.outerDiameter.value} × ${one.length.value}`,
  );
  return [
    name,
    `  case ${tube.outsideDiameter.value} × ${tube.wall.value}, ${tube.material.name}`,
    `  throat ${nozzle.throatDiameter.value}, exit ${nozzle.exitDiameter.value}`,
    `  ${propellant.name}, ${propellant.density.value}`,
    ...segments,
  ].join('\n');
}

/** What the engine says is wrong with a text, with the line: a position in a long document finds nobody. */
function placed(says: string, text: string): string {
  const position = /at position (\d+)(?! \(line)/.exec(says);
  if (position === null) return says;
  const before = text.slice(0, Number(position[1])).split('\n');
  return `${says}: line ${before.length}, character ${(before.at(-1)?.length ?? 0) + 1}`;
}

/** The document as plain data: text is read as JSON, quantities become their texts, what is no JSON is refused. */
function plainJson(json: unknown): { readonly value: unknown } | { readonly problem: DocumentProblem } {
  const refused = (code: string, message: string): { readonly problem: DocumentProblem } => ({
    problem: { path: '', code, message },
  });
  if (typeof json === 'string') {
    try {
      return { value: JSON.parse(json) };
    } catch (error) {
      const why = error instanceof SyntaxError ? placed(error.message, json) : String(error);
      return refused('no-json', `the text is no JSON (${why}); expected is a motor document: an object`);
    }
  }
  try {
    const text = JSON.stringify(json, (_, value: unknown) =>
      typeof value === 'number' && !Number.isFinite(value) ? String(value) : value,
    );
    return text === undefined
      ? refused('no-json', `${String(json)} given; expected is a motor document: an object`)
      : { value: JSON.parse(text) };
  } catch (error) {
    if (error instanceof MeopError || error instanceof TypeError)
      return refused('no-json', `what is given cannot be written as JSON (${error.message})`);
    throw error;
  }
}
