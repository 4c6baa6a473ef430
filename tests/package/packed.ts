import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readdirSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';

/** Where the packed library was installed, and the tarball it came from. */
export interface Packed {
  readonly folder: string;
  readonly tarball: string;
}

let packed: Packed | undefined;

/** Packs the library as npm would publish it and installs the tarball into an empty folder. */
export function installPacked(): Packed {
  if (packed) return packed;
  const folder = mkdtempSync(join(tmpdir(), 'meop-packed-'));
  const inherited = Object.entries(process.env).filter(
    ([name]) => !/^(?:npm_|VITEST|NODE_OPTIONS)/.test(name),
  );
  const env = Object.fromEntries(inherited);
  run('npm', ['pack', '--pack-destination', folder, '--silent'], resolve('.'), env);
  const name = readdirSync(folder).find((file) => file.endsWith('.tgz'));
  if (!name) throw new Error('npm pack left no tarball');
  const project = join(folder, 'project');
  mkdirSync(project);
  writeFileSync(
    join(project, 'package.json'),
    JSON.stringify({ name: 'user', private: true, type: 'module' }),
  );
  run(
    'npm',
    ['install', '--silent', '--no-audit', '--no-fund', '--prefer-offline', join(folder, name)],
    project,
    env,
  );
  packed = { folder: project, tarball: join(folder, name) };
  return packed;
}

/** Runs a program and returns what it printed. */
export function run(
  program: string,
  args: readonly string[],
  cwd: string,
  env: NodeJS.ProcessEnv = process.env,
  input?: string,
): string {
  try {
    return execFileSync(program, args, { cwd, env, encoding: 'utf8', ...(input !== undefined && { input }) });
  } catch (error) {
    const said = typeof error === 'object' && error !== null ? { ...error } : {};
    const [out, err] = ['stdout', 'stderr'].map((stream) => String(Reflect.get(said, stream) ?? ''));
    throw new Error(`${program} ${args.join(' ')} failed:\n${out}\n${err}`);
  }
}

/** A Chromium on this machine, where there is one. */
export function chromium(): string | undefined {
  return [
    process.env.MEOP_CHROMIUM,
    '/usr/bin/chromium',
    '/usr/bin/chromium-browser',
    '/usr/bin/google-chrome',
  ]
    .filter((path) => path !== undefined)
    .find((path) => existsSync(path));
}
