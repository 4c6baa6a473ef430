// node bench/units/run.mjs: bundles units.ts and runs it; figures go into README.md by hand.
import { mkdtempSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';

const here = fileURLToPath(new URL('.', import.meta.url));
const folder = mkdtempSync(join(here, 'built-')); // here, so that the peers are found in node_modules
try {
  const outfile = join(folder, 'units.mjs');
  await build({
    entryPoints: [join(here, 'units.ts')],
    bundle: true,
    platform: 'node',
    format: 'esm',
    packages: 'external',
    outfile,
  });
  await import(pathToFileURL(outfile).href);
} finally {
  rmSync(folder, { recursive: true });
}
