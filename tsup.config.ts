import { cpSync, existsSync, readdirSync } from 'node:fs';
import { defineConfig } from 'tsup';
import { pureInitializers } from './scripts/pure-initializers';
import { trimDecimal } from './scripts/trim-decimal';

// Every folder with an index is a subpath of the package; src/bin holds the command.
const modules = readdirSync('src').filter((name) => existsSync(`src/${name}/index.ts`));

// Packages whose used parts are built in; their licences are shipped beside.
const bundled = ['zod', 'papaparse', 'decimal.js'];
// Every file that uses decimal.js; tests/architecture.test.ts holds that there is no other.
const decimalUsers = ['src/units/exact-factor.ts'];

export default defineConfig([
  {
    entry: {
      index: 'src/index.ts',
      ...Object.fromEntries(modules.map((name) => [`${name}/index`, `src/${name}/index.ts`])),
    },
    format: ['esm', 'cjs'],
    target: 'es2022',
    platform: 'neutral',
    noExternal: bundled, // only what is used of them: a third of the time to load
    splitting: true, // one copy of each module, whichever subpaths a program imports
    dts: { compilerOptions: { ignoreDeprecations: '6.0' } },
    esbuildPlugins: [pureInitializers, trimDecimal(decimalUsers)],
    esbuildOptions(options, { format }) {
      // A CommonJS module has no address of its own: what looks for one finds none.
      if (format === 'cjs') options.define = { ...options.define, 'import.meta.url': 'undefined' };
    },
    outDir: 'dist',
    onSuccess: async () => {
      for (const name of bundled) {
        const licence = readdirSync(`node_modules/${name}`).find((file) => /^licen[cs]e/i.test(file));
        cpSync(`node_modules/${name}/${licence}`, `dist/licenses/${name}.txt`);
      }
    },
  },
  {
    // What a simulation thread runs; a file of its own, found beside the chunks.
    entry: { 'simulate-worker': 'src/ballistics/simulate-worker.ts' },
    format: ['esm'],
    target: 'es2022',
    platform: 'neutral',
    outDir: 'dist',
  },
  {
    // The command reads the built modules beside it. Bundled with them, its namespaces would make every
    // chunk keep every export, and no program that uses one formula would be small.
    entry: { 'bin/meop': 'src/bin/meop.ts' },
    format: ['esm'],
    target: 'es2022',
    platform: 'node',
    outDir: 'dist',
    esbuildPlugins: [
      {
        name: 'built-modules',
        setup(build) {
          build.onResolve({ filter: /^\.\.\/[a-z]+$/ }, ({ path }) => ({
            path: `${path}/index.js`,
            external: true,
          }));
        },
      },
    ],
  },
]);
