import { existsSync, mkdirSync } from 'node:fs';
import { homedir } from 'node:os';
import { dirname, join } from 'node:path';
import process from 'node:process';
import repl from 'node:repl';
import vm from 'node:vm';
import { library } from './library';
import { shown } from './shown';

const greeting = (version: string): string =>
  [
    `meop ${version}: the library is in scope. Quantities are strings with a unit: q('3/8 in').in('mm')`,
    "calculations() lists all calculations, calculations('stress') those that contain a word; the name of a formula prints its card.",
  ].join('\n');

/** Opens the prompt of Node.js with the library in scope; history persists between sessions. */
export function openPrompt(version: string): void {
  process.stdout.write(`${greeting(version)}\n`);
  const server = repl.start({ prompt: 'meop> ', writer: shown });
  Object.assign(server.context, library);
  const history = historyFile();
  if (history !== undefined) server.setupHistory(history, () => undefined);
  server.on('exit', () => process.exit());
}

/** Runs JavaScript from standard input and prints the value of its last expression; a promise is awaited. */
export async function runScript(source: string): Promise<number> {
  const context = vm.createContext({ ...library, console });
  try {
    const value: unknown = await vm.runInContext(source, context, { filename: 'stdin' });
    if (value !== undefined) process.stdout.write(`${shown(value)}\n`);
    return 0;
  } catch (error) {
    process.stderr.write(`${messageOf(error)}\n`);
    return 1;
  }
}

function messageOf(error: unknown): string {
  if (typeof error === 'object' && error !== null && 'message' in error) return String(error.message);
  return String(error);
}

// The state folder of the XDG base directory specification; MEOP_HISTORY overrides it, an empty value disables it.
function historyFile(): string | undefined {
  const { MEOP_HISTORY: chosen, XDG_STATE_HOME: state } = process.env;
  if (chosen === '') return undefined;
  const file = chosen ?? join(state ?? join(homedir(), '.local', 'state'), 'meop', 'history');
  try {
    if (!existsSync(dirname(file))) mkdirSync(dirname(file), { recursive: true });
    return file;
  } catch {
    return undefined; // without a writable home there is no history; the prompt works without it
  }
}
