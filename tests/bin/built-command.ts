import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { build } from 'esbuild';

/** What a run of the command left. */
export interface Ran {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** The command, bundled from the sources. */
export interface BuiltCommand {
  readonly file: string;
  run(args: readonly string[], input?: string): Ran;
  remove(): void;
}

/** Bundles the command beside node_modules, so that packages resolve as from the sources. */
export async function builtCommand(): Promise<BuiltCommand> {
  const folder = mkdtempSync(resolve('node_modules', '.meop-command-'));
  const file = join(folder, 'meop.mjs'); // two folders below package.json, as in the package
  await build({
    entryPoints: ['src/bin/meop.ts'],
    bundle: true,
    platform: 'node',
    format: 'esm',
    target: 'node20',
    packages: 'external',
    outfile: file,
    logLevel: 'error',
  });
  return {
    file,
    run(args, input = '') {
      const { status, stdout, stderr } = spawnSync(process.execPath, [file, ...args], {
        input,
        encoding: 'utf8',
      });
      return { code: status, out: stdout, err: stderr };
    },
    remove: () => rmSync(folder, { recursive: true }),
  };
}
