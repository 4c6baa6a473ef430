import { MeopError } from '../../units';
import { boreOf, type MotorCase, wallOf } from './case-size';
import type { MotorClosures } from './closure-inputs';
import { geometryProblems } from './geometry-checks';
import { meaningProblems } from './meaning-checks';
import { migrateMotorDocument } from './migrate';
import { motorInputs } from './motor-inputs';
import { type MotorDocument, type MotorParts, motorDocumentVersion, wholeSchema } from './motor-schema';
import { problemsOf } from './parts';
import { type DocumentProblem, documentError, givenAt, type Path, problemOf } from './problems';
import { sizedClosure } from './ring-size';
import { runSchema } from './run-schema';

const isMotor = Symbol.for('meop.motor');

/** A motor as parsed from its document: every value a quantity with its tolerance. */
export interface Motor extends Omit<MotorParts, 'case' | 'closures'> {
  readonly case: MotorCase;
  readonly closures?: MotorClosures | undefined;
  readonly [isMotor]: true;
  /** The document in its current version, quantities as strings: `JSON.stringify(motor)` writes it. */
  readonly document: MotorDocument;
  toJSON(): MotorDocument;
  toString(): string;
}

/** Input of the procedures: a motor, or its document. */
export type MotorInput = Motor | MotorDocument;

/**
 * Parses a motor document: JSON text, a value from `JSON.parse`, or a typed literal. All checks are reported at
 * once: names and units, relations between parts, and the checks of lower layers.
 *
 * @throws MeopError `motor-document`, whose message lists every error with its path and a fix and whose `value` is
 * the list
 * @example parseMotor(demoMotor()).name // => 'Tern-54'
 */
export function parseMotor(json: unknown): Motor {
  return parsed(json, 'parseMotor');
}

function parsed(json: unknown, procedure: string): Motor {
  const { motor, problems } = readDocument(json);
  if (motor !== undefined) return motor;
  throw documentError(problems, procedure);
}

/**
 * Lists all errors of a motor document; empty for a valid one. Never throws.
 *
 * @example motorProblems({ version: 2, name: 'Tern-54' }).length // => 5
 */
export function motorProblems(json: unknown): readonly DocumentProblem[] {
  return readDocument(json).problems;
}

/**
 * Returns the given motor, or the one that a document describes.
 *
 * @throws MeopError `motor-document`
 * @example motorOf(demoMotor()).name // => 'Tern-54'
 */
export function motorOf(input: MotorInput): Motor {
  return readMotor(input, 'motorOf');
}

/** The motor that a calculation is given, or that of the document that it is given. @throws MeopError `motor-document` */
export const readMotor = (given: unknown, procedure: string): Motor =>
  isAMotor(given) ? given : parsed(given, procedure);

const isAMotor = (given: unknown): given is Motor =>
  typeof given === 'object' && given !== null && isMotor in given;

interface Read {
  readonly motor?: Motor;
  readonly problems: readonly DocumentProblem[];
}

function readDocument(json: unknown): Read {
  const plain = plainJson(json);
  if ('problem' in plain) return { problems: [plain.problem] };
  const document = migrateMotorDocument(plain.value);
  const version = givenAt(document, ['version']);
  if (typeof version === 'number' && version > motorDocumentVersion) {
    const error = new MeopError({
      code: 'newer-document',
      given: version,
      expected: `at most ${motorDocumentVersion}, the latest version that this library reads`,
      remedy: 'Use a newer version of the library',
    });
    return { problems: [problemOf(error, 'version')] };
  }
  const { whole, parts = {}, issues } = runSchema(wholeSchema(), document);
  const read = {
    json: document,
    parts,
    isSound: (path: Path, aside?: string) =>
      !issues.some(
        ({ path: place = [] }) =>
          path.every((key, i) => place[i] === key) && (aside === undefined || place[path.length] !== aside),
      ),
  };
  const found = [...issues.flatMap(problemsOf), ...geometryProblems(read), ...meaningProblems(read)];
  const seen = new Set<string>();
  // An error of the schema takes precedence; a check of the same field would only repeat it.
  const problems = inOrder(found.filter(({ path }) => !seen.has(path) && seen.add(path)));
  return whole === undefined || problems.length > 0
    ? { problems }
    : { motor: makeMotor(whole, document), problems };
}

/** In the order of the parts of the document, so that errors of one part are listed together. */
function inOrder(problems: readonly DocumentProblem[]): readonly DocumentProblem[] {
  const order = Object.keys(motorInputs.fields);
  const rank = ({ path }: DocumentProblem): number => order.indexOf(path.split(/[.[]/, 1)[0] ?? '');
  return [...problems].sort((a, b) => rank(a) - rank(b));
}

function makeMotor(parts: MotorParts, document: unknown): Motor {
  // True: the schema has accepted it.
  const written = document as MotorDocument;
  const { wall = wallOf(parts.case) } = parts.case;
  if (wall === undefined) throw new TypeError('a case without wall or inside diameter was accepted');
  const tube = { ...parts.case, wall };
  const { closures } = parts;
  const made: Motor = {
    ...parts,
    case: tube,
    closures: closures && {
      ...closures,
      head: sizedClosure(closures.head, boreOf(tube)),
      aft: sizedClosure(closures.aft, boreOf(tube)),
    },
    [isMotor]: true,
    document: written,
    toJSON: () => written,
    toString: () => motorText(made),
    ...{ [Symbol.for('nodejs.util.inspect.custom')]: () => motorText(made) },
  };
  return made;
}

function motorText({ name, case: tube, nozzle, propellant, grain }: Motor): string {
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

/** Error of the JSON parser with line and column instead of the position. */
function placed(report: string, text: string): string {
  const position = /at position (\d+)(?! \(line)/.exec(report);
  if (position === null) return report;
  const before = text.slice(0, Number(position[1])).split('\n');
  return `${report}: line ${before.length}, character ${(before.at(-1)?.length ?? 0) + 1}`;
}

/** The document as plain data: text is parsed as JSON, quantities become strings, and anything that is not JSON is rejected. */
function plainJson(json: unknown): { readonly value: unknown } | { readonly problem: DocumentProblem } {
  const refused = (expected: string, given?: unknown): { readonly problem: DocumentProblem } => ({
    problem: problemOf(
      new MeopError({ code: 'no-json', expected, ...(given !== undefined && { given }) }),
      '',
    ),
  });
  if (typeof json === 'string') {
    try {
      return { value: JSON.parse(json) };
    } catch (error) {
      const why = error instanceof SyntaxError ? placed(error.message, json) : String(error);
      return refused(`valid JSON (${why})`);
    }
  }
  try {
    const text = JSON.stringify(json, (_, value: unknown) =>
      typeof value === 'number' && !Number.isFinite(value) ? String(value) : value,
    );
    return text === undefined ? refused('an object: a motor document', json) : { value: JSON.parse(text) };
  } catch (error) {
    if (error instanceof MeopError || error instanceof TypeError)
      return refused(`convertible to JSON (${error.message})`);
    throw error;
  }
}
