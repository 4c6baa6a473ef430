// node bench/structures/run.mjs
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';

const folder = mkdtempSync(join(tmpdir(), 'joint-'));
const outfile = join(folder, 'joint.mjs');
await build({
  entryPoints: ['bench/structures/joint.ts'],
  bundle: true,
  platform: 'node',
  format: 'esm',
  outfile,
});
await import(pathToFileURL(outfile).href);
rmSync(folder, { recursive: true });
