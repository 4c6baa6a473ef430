import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import * as library from '../../src';
import { publicSymbols } from '../docs/public-symbols';
import { isCalculation } from './exported';
import { notYet, plainFunctions, publicValues } from './plain-functions';

// The basis of the library, on which calculations are made; the rest of `meop/units` is for those who declare.
const basis = new Set(
  [
    'absolute',
    'calculations',
    'formatNumber',
    'formula',
    'fromSiArray',
    'fromSiValue',
    'gauge',
    'isClose',
  ].concat(['isQuantity', 'MeopError', 'q', 'quantity', 'series', 'seriesOf', 'table']),
);
const waiting = new Set(Object.values(notYet).flatMap((names) => names.split(' ')));

describe('what the root exports', () => {
  it('is calculations, what is made with them, and listed values', () => {
    const others = Object.entries(library)
      .filter(([name, value]) => !isCalculation(value) && !basis.has(name))
      .map(([name]) => name)
      .filter((name) => !(name in plainFunctions) && !(name in publicValues) && !waiting.has(name));
    expect(others).toEqual([]);
  });
  it('has no function on plain SI numbers beside the calculations: that is their .si', () =>
    expect(Object.keys(library).filter((name) => name.endsWith('Si'))).toEqual([]));
  it('comes from one module each: no two modules export a name', () => {
    const modules = readdirSync('src').filter((name) => name !== 'bin' && !name.includes('.'));
    const symbols = publicSymbols(modules.map((name) => `src/${name}/index.ts`));
    const seen = new Map<string, string>();
    const twice = symbols.filter(({ name, module }) => {
      const other = seen.get(name);
      seen.set(name, module);
      return other !== undefined && other !== module;
    });
    // The kind that is declared has the name of the formula that computes it; the root exports the formula.
    expect(twice.map(({ name }) => name)).toEqual(['specificImpulse']);
  });
});
