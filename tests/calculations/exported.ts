// Every function that a module of physics exports, found by itself.
import type { AnyCalculation } from '../../src/units';

const modules = import.meta.glob<object>(['../../src/*/index.ts', '!../../src/{bin,units,numerics}/**'], {
  eager: true,
});

type Callable = (...given: readonly unknown[]) => unknown;

const isCallable = (value: unknown): value is Callable => typeof value === 'function';

/** Whether an exported value is a formula or a procedure. */
export const isCalculation = (value: unknown): value is AnyCalculation & Callable =>
  isCallable(value) && 'gives' in value && 'exampleCall' in value;

/** Every exported function: its module, its name and itself. */
export const exportedFunctions = Object.entries(modules).flatMap(([path, module]) =>
  Object.entries(module)
    .filter((entry): entry is [string, Callable] => isCallable(entry[1]))
    .map(([name, value]) => ({ module: path.split('/').at(-2) ?? path, name, value })),
);
