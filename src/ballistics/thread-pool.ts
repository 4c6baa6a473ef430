// Worker threads where the host has them.

import { MeopError, optional, procedure, ratio } from '../units';
import type { BatchModel } from './coupled/batch-rows';
import { hostModule } from './host-module';

/** A thread as its host gives it. */
interface Thread {
  postMessage(message: unknown): void;
  terminate(): unknown;
  ref(): void;
  unref(): void;
  on(event: 'message' | 'error' | 'exit', listener: (value: unknown) => void): unknown;
}
type ThreadMaker = new (url: URL, options: { readonly name: string }) => Thread;

/** Threads that run batches: started once, used by any number of {@link simulateMany}, then closed. */
export interface SimulationPool {
  /** Number of threads; 0 where the host has none, and batches run in a loop. */
  readonly threads: number;
  /** Ends the threads. Running batches fail. */
  close(): Promise<void>;
  /** For {@link simulateMany}: runs rows of variations on the next free thread. */
  run(models: readonly BatchModel[], rows: Float64Array): Promise<Float64Array>;
}

const maxThreads = 256;

/** Whether a value is a pool made by {@link simulationPool}. */
export const isPool = (value: unknown): value is SimulationPool =>
  typeof value === 'object' && value !== null && 'threads' in value && 'run' in value && 'close' in value;

interface Job {
  readonly message: { readonly models: readonly BatchModel[]; readonly rows: Float64Array };
  readonly resolve: (out: Float64Array) => void;
  readonly reject: (error: unknown) => void;
}

/**
 * Starts threads for {@link simulateMany}. An idle pool does not
 * keep the program alive. Where threads are not available (browsers, Node.js before 20.16, a bundle without the file of the
 * worker) the pool is empty and batches run in a loop, with the same results.
 *
 * @example typeof simulationPool // => 'function'
 */
export const simulationPool = /* @__PURE__ */ procedure({
  name: 'simulationPool',
  title: 'Threads for simulations',
  source: 'engineering practice, no published source',
  inputs: {
    threads: optional(
      ratio('N', 'number of threads; if omitted, that of the processors; 0: batches run in a loop', {
        min: 0,
        max: maxThreads,
        whole: true,
      }),
    ),
  },
  gives: 'a promise of the pool',
  example: { threads: 2 },
  asynchronous: true,
  run: ({ threads = processors() }): Promise<SimulationPool> => startPool(threads),
});

async function startPool(threads: number): Promise<SimulationPool> {
  const Maker = threadMaker();
  const url = Maker === undefined || threads === 0 ? undefined : await workerUrl(Maker);
  if (Maker === undefined || url === undefined) return noThreads;
  const free: Thread[] = [];
  const all = new Map<Thread, Job | undefined>();
  // What each thread was sent last: a model with its tables is sent once for a batch, not with every task.
  const known = new WeakMap<Thread, readonly BatchModel[]>();
  const queue: Job[] = [];
  let closed = false;

  const next = (): void => {
    while (queue.length > 0 && free.length > 0) {
      const thread = free.pop();
      const job = queue.shift();
      if (thread === undefined || job === undefined) return;
      all.set(thread, job);
      thread.ref();
      const { models, rows } = job.message;
      thread.postMessage(known.get(thread) === models ? { rows } : { models, rows });
      known.set(thread, models);
    }
  };
  const lost = (thread: Thread, error: unknown): void => {
    const job = all.get(thread);
    if (!all.delete(thread)) return;
    job?.reject(error);
    if (all.size === 0) for (const waiting of queue.splice(0)) waiting.reject(error);
  };
  for (let i = 0; i < threads; i++) {
    const thread = new Maker(url, { name: `simulation ${i + 1}` });
    all.set(thread, undefined);
    free.push(thread);
    thread.on('message', (value) => {
      if (!(value instanceof Float64Array)) return;
      const job = all.get(thread);
      all.set(thread, undefined);
      free.push(thread);
      thread.unref();
      job?.resolve(value);
      next();
    });
    thread.on('error', (error) => lost(thread, error));
    thread.on('exit', () =>
      lost(
        thread,
        new MeopError({ code: 'thread-ended', procedure: 'simulationPool', problem: 'a thread has ended' }),
      ),
    );
    thread.unref();
  }
  return {
    get threads() {
      return closed ? 0 : all.size;
    },
    run: (models, rows) =>
      new Promise((resolve, reject) => {
        if (closed || all.size === 0) {
          reject(poolClosed());
          return;
        }
        queue.push({ message: { models, rows }, resolve, reject });
        next();
      }),
    close: async () => {
      closed = true;
      await Promise.all([...all.keys()].map((thread) => thread.terminate()));
      for (const thread of [...all.keys()]) lost(thread, poolClosed());
    },
  };
}

const noThreads: SimulationPool = {
  threads: 0,
  run: () => Promise.reject(poolClosed()),
  close: () => Promise.resolve(),
};

const poolClosed = (): MeopError =>
  new MeopError({
    code: 'pool-closed',
    procedure: 'simulationPool',
    problem: 'the pool is closed or has no threads',
    remedy: 'Start a new one',
  });

function threadMaker(): ThreadMaker | undefined {
  const module = hostModule('node:worker_threads');
  if (typeof module !== 'object' || module === null || !('Worker' in module)) return undefined;
  return isMaker(module.Worker) ? module.Worker : undefined;
}

const isMaker = (value: unknown): value is ThreadMaker => typeof value === 'function';

function processors(): number {
  const module = hostModule('node:os');
  if (typeof module !== 'object' || module === null || !('availableParallelism' in module)) return 1;
  const count: unknown =
    typeof module.availableParallelism === 'function' ? module.availableParallelism() : 1;
  return typeof count === 'number' ? Math.min(16, count) : 1;
}

/** The file of the worker: in the folder of the file this code was built into, or in the folder above. */
async function workerUrl(Maker: ThreadMaker): Promise<URL | undefined> {
  const here = ownAddress();
  if (here === undefined || !here.startsWith('file:')) return undefined;
  for (const place of ['./simulate-worker.js', '../simulate-worker.js']) {
    const url = new URL(place, here);
    if (await starts(Maker, url)) return url;
  }
  return undefined;
}

/** Address of the file this code was built into; a CommonJS module has none, but knows its path. */
function ownAddress(): string | undefined {
  const address: string | undefined = import.meta.url;
  if (address !== undefined || typeof __filename !== 'string') return address;
  const module = hostModule('node:url');
  if (typeof module !== 'object' || module === null || !('pathToFileURL' in module)) return undefined;
  return typeof module.pathToFileURL === 'function' ? String(module.pathToFileURL(__filename)) : undefined;
}

/** Whether a worker can be started from a file, which it confirms by its first message. */
function starts(Maker: ThreadMaker, url: URL): Promise<boolean> {
  return new Promise((resolve) => {
    const thread = new Maker(url, { name: 'simulation trial' });
    const end = (found: boolean): void => {
      resolve(found);
      void thread.terminate();
    };
    thread.on('message', () => end(true));
    thread.on('error', () => end(false));
  });
}
