/**
 * The file that a simulation thread runs: rows of variations in, rows of results out. Imports the kernel only.
 *
 * @module
 */
import { type BatchModel, runRows } from './coupled/batch-rows';
import { hostModule } from './host-module';

/** The thread's end of the channel to the main thread. */
interface Port {
  on(event: 'message', listener: (message: Request) => void): unknown;
  postMessage(message: unknown, transfer?: readonly ArrayBufferLike[]): void;
}
/** What {@link simulationPool} sends. */
interface Request {
  /** Omitted where they are those of the previous request. */
  readonly models?: readonly BatchModel[];
  readonly rows: Float64Array;
}

const module = hostModule('node:worker_threads');
if (typeof module === 'object' && module !== null && 'parentPort' in module && isPort(module.parentPort)) {
  const port = module.parentPort;
  let last: readonly BatchModel[] = [];
  port.on('message', ({ models = last, rows }) => {
    last = models;
    const out = runRows(models, rows);
    port.postMessage(out, [out.buffer]);
  });
  port.postMessage('ready');
}

function isPort(value: unknown): value is Port {
  return typeof value === 'object' && value !== null && 'postMessage' in value;
}
