import * as firing from '../../src/firing';
import * as motor from '../../src/motor';
import type { AnyCalculation } from '../../src/units';
import { formulaModules } from './formula-table';
import { escaped } from './html-text';

const modules: Readonly<Record<string, object>> = { ...formulaModules, firing, motor };

/** A placeholder of a page: `<!-- cards of structures -->`. */
export const cardsPlaceholder = /<!-- cards of (\w+) -->/g;

const isCalculation = (value: unknown): value is AnyCalculation =>
  typeof value === 'function' && 'gives' in value && 'exampleCall' in value;

/** The calculations that a module exports, in alphabetical order. */
export const calculationsOf = (module: string): readonly AnyCalculation[] =>
  Object.values(modules[module] ?? {})
    .filter(isCalculation)
    .sort((a, b) => a.id.localeCompare(b.id));

/** The cards of every calculation of a module, as the prompt prints them. */
export function calculationCards(
  module: string,
  apiPage: (module: string, name: string) => string | undefined,
): string {
  return calculationsOf(module)
    .map((one) => {
      const [, ...lines] = String(one).split('\n');
      const address = apiPage(module, one.id);
      const name = `<code>${one.id}</code>`;
      const head = address === undefined ? name : `<a href="${address}">${name}</a>`;
      const card = lines.map((line) => escaped(line.slice(2))).join('&#10;');
      return `<section id="${one.id}"><h3>${head}: ${escaped(one.title)}</h3><pre tabindex="0"><code>${card}</code></pre></section>`;
    })
    .join('\n');
}
