import { createReadStream } from 'node:fs';
import process from 'node:process';
import { createInterface } from 'node:readline';
import type { Readable } from 'node:stream';
import { text } from 'node:stream/consumers';

/** A document as it came in. */
export interface IncomingDocument {
  /** Where it came from, for messages: `motors/a.json` or `standard input, line 3`. */
  readonly source: string;
  readonly text: string;
}

const named = (file: string): string => (file === '-' ? 'standard input' : file);
const opened = (file: string): Readable => (file === '-' ? process.stdin : createReadStream(file, 'utf8'));

/** The whole text of a file; of standard input where the name is `-`. */
export const readText = (file: string): Promise<string> => text(opened(file));

/**
 * The JSON documents in files, or on standard input where none is named. A first line that is a document by itself means
 * one document a line (NDJSON), read as they come; else the whole is one document.
 */
export async function* documents(files: readonly string[]): AsyncGenerator<IncomingDocument> {
  for (const file of files.length === 0 ? ['-'] : files) yield* documentsOf(file);
}

async function* documentsOf(file: string): AsyncGenerator<IncomingDocument> {
  const lines = createInterface({ input: opened(file), crlfDelay: Number.POSITIVE_INFINITY });
  const held: string[] = [];
  let isLineByLine: boolean | undefined;
  let count = 0;
  for await (const line of lines) {
    count++;
    if (isLineByLine === undefined && line.trim() !== '') isLineByLine = isWholeDocument(line);
    if (isLineByLine !== true) held.push(line);
    else if (line.trim() !== '') yield { source: `${named(file)}, line ${count}`, text: line };
  }
  if (isLineByLine !== true) yield { source: named(file), text: held.join('\n') };
}

function isWholeDocument(line: string): boolean {
  try {
    const value: unknown = JSON.parse(line);
    return typeof value === 'object' && value !== null;
  } catch {
    return false;
  }
}
