import { createReadStream } from 'node:fs';
import process from 'node:process';
import { createInterface } from 'node:readline';
import type { Readable } from 'node:stream';
import { text } from 'node:stream/consumers';
import { MeopError } from '../units';

/** An input document. */
export interface IncomingDocument {
  /** Origin of the document, for messages: `motors/a.json` or `standard input, line 3`. */
  readonly source: string;
  /** The content. @throws MeopError `no-file` where the file cannot be read; other files are still processed */
  read(): string;
}

const named = (file: string): string => (file === '-' ? 'standard input' : file);
const opened = (file: string): Readable => (file === '-' ? process.stdin : createReadStream(file, 'utf8'));

/** The content of a file, or of standard input where the name is `-`. @throws MeopError `no-file` */
export async function readText(file: string): Promise<string> {
  try {
    return await text(opened(file));
  } catch (error) {
    throw unreadable(file, error);
  }
}

/**
 * The JSON documents in files, or on standard input if no file is named. If the first line is a complete document,
 * each line is one document (NDJSON), read as it arrives; otherwise the whole input is one document.
 */
export async function* documents(files: readonly string[]): AsyncGenerator<IncomingDocument> {
  for (const file of files.length === 0 ? ['-'] : files) yield* documentsOf(file);
}

async function* documentsOf(file: string): AsyncGenerator<IncomingDocument> {
  const held: string[] = [];
  let isLineByLine: boolean | undefined;
  let count = 0;
  try {
    const lines = createInterface({ input: opened(file), crlfDelay: Number.POSITIVE_INFINITY });
    for await (const raw of lines) {
      count++;
      const line = count === 1 ? raw.replace(/^\uFEFF/, '') : raw; // a byte order mark is not valid JSON
      if (isLineByLine === undefined && line.trim() !== '') isLineByLine = isWholeDocument(line);
      if (isLineByLine !== true) held.push(line);
      else if (line.trim() !== '') yield { source: `${named(file)}, line ${count}`, read: () => line };
    }
  } catch (error) {
    const problem = unreadable(file, error);
    yield {
      source: named(file),
      read() {
        throw problem;
      },
    };
    return;
  }
  if (isLineByLine !== true) yield { source: named(file), read: () => held.join('\n') };
}

const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'file not found',
  EISDIR: 'it is a folder',
  EACCES: 'permission denied',
};

function unreadable(file: string, error: unknown): unknown {
  if (!(error instanceof Error && 'code' in error && 'syscall' in error)) return error;
  const why = reasons[String(error.code)] ?? error.message;
  return new MeopError({
    code: 'no-file',
    path: named(file),
    given: file,
    problem: `cannot be read (${why})`,
  });
}

/** The message of an error in a document, without its origin, which the command prints itself. */
export function messageIn(source: string, error: MeopError): string {
  if (error.path === source) return error.at('', '').statement;
  return error.procedure === 'parseMotor' ? error.statement : error.message;
}

function isWholeDocument(line: string): boolean {
  try {
    const value: unknown = JSON.parse(line);
    return typeof value === 'object' && value !== null;
  } catch {
    return false;
  }
}
