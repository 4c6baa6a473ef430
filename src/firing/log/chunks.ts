import { MeopError } from '../../units';

/** Source of a log: its text, or a file or stream that supplies it in pieces. */
export type LogSource =
  | string
  | Blob
  | ReadableStream<Uint8Array | string>
  | AsyncIterable<Uint8Array | string>
  | Iterable<Uint8Array | string>;

/**
 * The text of a source in pieces, so that a log far larger than memory can be read. Bytes are decoded as UTF-8, or as
 * UTF-16 where a byte-order mark or the first letters indicate it. Invalid bytes become replacement characters, never
 * an error.
 */
export async function* textChunks(source: Exclude<LogSource, string>): AsyncGenerator<string> {
  let decoder: TextDecoder | undefined;
  let held = new Uint8Array(0);
  for await (const piece of pieces(source)) {
    if (typeof piece === 'string') yield piece;
    else if (decoder === undefined && held.length + piece.length < 4) held = joined(held, piece);
    else {
      const bytes = held.length > 0 ? joined(held, piece) : piece;
      held = new Uint8Array(0);
      decoder ??= new TextDecoder(encodingOf(bytes));
      yield decoder.decode(bytes, { stream: true });
    }
  }
  if (held.length > 0) {
    decoder ??= new TextDecoder(encodingOf(held));
    yield decoder.decode(held, { stream: true });
  }
  const rest = decoder?.decode();
  if (rest) yield rest;
}

// Without a mark, the zero byte next to each plain letter identifies UTF-16.
const encodingOf = ([a, b, c, d]: Uint8Array): string => {
  if ((a === 0xff && b === 0xfe) || (a > 0 && b === 0 && c > 0 && d === 0)) return 'utf-16le';
  if ((a === 0xfe && b === 0xff) || (a === 0 && b > 0 && c === 0 && d > 0)) return 'utf-16be';
  return 'utf-8';
};

function joined(first: Uint8Array, second: Uint8Array): Uint8Array<ArrayBuffer> {
  const both = new Uint8Array(first.length + second.length);
  both.set(first);
  both.set(second, first.length);
  return both;
}

function pieces(
  source: Exclude<LogSource, string>,
): AsyncIterable<Uint8Array | string> | Iterable<Uint8Array | string> {
  if (typeof Blob !== 'undefined' && source instanceof Blob) return fromReader(source.stream());
  if (typeof source === 'object' && source !== null) {
    if (Symbol.asyncIterator in source || Symbol.iterator in source) return source;
    if (isStream(source)) return fromReader(source);
  }
  throw new MeopError({
    code: 'log-source',
    procedure: 'readLog',
    path: 'source',
    given: source,
    expected: 'a string, a Blob or File, a ReadableStream, or an (async) iterable of strings or bytes',
  });
}

const isStream = (source: object): source is ReadableStream<Uint8Array | string> => 'getReader' in source;

// Not every browser can iterate over a ReadableStream.
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
