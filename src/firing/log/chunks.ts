import { MeopError } from '../../units';

/** Where a log may come from: its text, or a file or stream that gives it piece by piece. */
export type LogSource =
  | string
  | Blob
  | ReadableStream<Uint8Array | string>
  | AsyncIterable<Uint8Array | string>
  | Iterable<Uint8Array | string>;

/**
 * The text of a source, piece by piece, so that a log far larger than memory can be read. Bytes are taken as UTF-8, or
 * as UTF-16 where a byte-order mark says so; bytes that are no text become replacement characters, never an error.
 */
export async function* textChunks(source: Exclude<LogSource, string>): AsyncGenerator<string> {
  let decoder: TextDecoder | undefined;
  for await (const piece of pieces(source)) {
    if (typeof piece === 'string') yield piece;
    else {
      decoder ??= new TextDecoder(encodingOf(piece));
      yield decoder.decode(piece, { stream: true });
    }
  }
  const rest = decoder?.decode();
  if (rest) yield rest;
}

const encodingOf = (bytes: Uint8Array): string =>
  bytes[0] === 0xff && bytes[1] === 0xfe
    ? 'utf-16le'
    : bytes[0] === 0xfe && bytes[1] === 0xff
      ? 'utf-16be'
      : 'utf-8';

function pieces(
  source: Exclude<LogSource, string>,
): AsyncIterable<Uint8Array | string> | Iterable<Uint8Array | string> {
  if (typeof Blob !== 'undefined' && source instanceof Blob) return fromReader(source.stream());
  if (typeof source === 'object' && source !== null) {
    if (Symbol.asyncIterator in source || Symbol.iterator in source) return source;
    if (isStream(source)) return fromReader(source);
  }
  throw new MeopError(
    'log-source',
    'readLog: source: a text, a Blob or File, a ReadableStream, or an (async) iterable of text or bytes is expected',
    'source',
    { value: typeof source, expected: 'text or a stream of text or bytes' },
  );
}

const isStream = (source: object): source is ReadableStream<Uint8Array | string> => 'getReader' in source;

// Not every browser lets a ReadableStream be iterated over.
async function* fromReader<T>(stream: ReadableStream<T>): AsyncGenerator<T> {
  const reader = stream.getReader();
  try {
    for (;;) {
      const { done, value } = await reader.read();
      if (done) return;
      yield value;
    }
  } finally {
    await reader.cancel().catch(() => undefined);
  }
}
