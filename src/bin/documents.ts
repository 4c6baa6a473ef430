import { createReadStream } from 'node:fs';
import process from 'node:process';
import { createInterface } from 'node:readline';
import type { Readable } from 'node:stream';
import { text } from 'node:stream/consumers';
import { MeopError } from '../units';

/** A document as it came in. */
export interface IncomingDocument {
  /** Where it came from, for messages: `motors/a.json` or `standard input, line 3`. */
  readonly source: string;
  /** Its text. @throws MeopError `no-file` where the file cannot be read: the other files can be */
  read(): string;
}

const named = (file: string): string => (file === '-' ? 'standard input' : file);
const opened = (file: string): Readable => (file === '-' ? process.stdin : createReadStream(file, 'utf8'));

/** The whole text of a file; of standard input where the name is `-`. @throws MeopError `no-file` */
export async function readText(file: string): Promise<string> {
  try {
    return await text(opened(file));
  } catch (error) {
    throw unreadable(file, error);
  }
}

/**
 * The JSON documents in files, or on standard input where none is named. A first line that is a document by itself means
 * one document a line (NDJSON), read as they come; else the whole is one document.
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
      const line = count === 1 ? raw.replace(/^\uFEFF/, '') : raw; // a byte order mark is no JSON
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
  ENOENT: 'there is no such file',
  EISDIR: 'it is a folder',
  EACCES: 'it may not be read',
};

function unreadable(file: string, error: unknown): unknown {
  if (!(error instanceof Error && 'code' in error && 'syscall' in error)) return error;
  const why = reasons[String(error.code)] ?? error.message;
  return new MeopError(
    'no-file',
    `${named(file)}: ${why}; the name of a file that can be read is expected`,
    'file',
    {
      value: file,
    },
  );
}

function isWholeDocument(line: string): boolean {
  try {
    const value: unknown = JSON.parse(line);
    return typeof value === 'object' && value !== null;
  } catch {
    return false;
  }
}
