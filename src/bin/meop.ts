#!/usr/bin/env node
import { readFileSync } from 'node:fs';
import process from 'node:process';
import { text } from 'node:stream/consumers';
import { MeopError } from '../units';
import { helpText, readCommandLine, verbHelp } from './command-line';
import { openPrompt, runScript } from './prompt';
import { UsageError } from './verb';

function version(): string {
  const file: unknown = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8'));
  return typeof file === 'object' && file !== null && 'version' in file ? String(file.version) : '';
}

async function main(words: readonly string[]): Promise<number | undefined> {
  const [word] = words;
  if (word === '--help' || word === '-h') {
    process.stdout.write(helpText());
    return 0;
  }
  if (word === '--version') {
    process.stdout.write(`${version()}\n`);
    return 0;
  }
  if (word !== undefined) return runVerb(words);
  if (!process.stdin.isTTY) return runScript(await text(process.stdin));
  openPrompt(version());
  return undefined; // the prompt ends the process itself
}

async function runVerb(words: readonly string[]): Promise<number> {
  try {
    const { verb, files, options, help } = readCommandLine(words);
    if (!help) return await verb.run(files, options);
    process.stdout.write(verbHelp(verb));
    return 0;
  } catch (error) {
    if (error instanceof UsageError) {
      process.stderr.write(`meop: ${error.message}\nRun meop --help for the list of commands.\n`);
      return 2;
    }
    if (error instanceof MeopError || isFileError(error)) {
      process.stderr.write(`meop: ${error.message}\n`);
      return 1;
    }
    throw error;
  }
}

const isFileError = (error: unknown): error is NodeJS.ErrnoException =>
  error instanceof Error && 'syscall' in error;

// A reader that closes the pipe early, such as `head`, is not an error.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit(0);
  throw error;
});
const code = await main(process.argv.slice(2));
if (code !== undefined) process.exitCode = code;
