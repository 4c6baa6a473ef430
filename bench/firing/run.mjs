// node bench/firing/run.mjs [million rows, default 10]
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';

const folder = mkdtempSync(join(tmpdir(), 'firing-'));
const outfile = join(folder, 'reading.mjs');
await build({
  entryPoints: ['bench/firing/reading.ts'],
  bundle: true,
  platform: 'node',
  format: 'esm',
  outfile,
  banner: {
    js: "import { createRequire } from 'node:module'; const require = createRequire(import.meta.url);",
  },
});
await import(pathToFileURL(outfile).href);
rmSync(folder, { recursive: true });
