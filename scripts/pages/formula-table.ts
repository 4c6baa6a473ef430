import katex from 'katex';
import * as ballistics from '../../src/ballistics';
import * as nozzle from '../../src/nozzle';
import * as structures from '../../src/structures';
import * as thermo from '../../src/thermo';
import type { AnyFormula } from '../../src/units';
import { domainText } from '../../src/units/declare/domain';
import { shownIn } from '../../src/units/shown-unit';
import { equationTex, symbolTex } from './equation-tex';
import { escaped } from './html-text';

/** The modules that declare formulas. */
export const formulaModules: Readonly<Record<string, object>> = { thermo, nozzle, structures, ballistics };

/** A placeholder of a page: `<!-- formulas of structures: hoopStress longitudinalStress -->`. */
export const placeholder = /<!-- formulas of (\w+): ([\w\s]+?) -->/g;

/**
 * TeX as HTML: KaTeX's own layout beside the MathML that is read aloud, since roots and brackets of MathML do not
 * stretch where no mathematical font is installed.
 */
export const typeset = (tex: string, displayMode: boolean): string =>
  katex.renderToString(tex, {
    displayMode,
    fleqn: true,
    throwOnError: true,
    strict: 'ignore',
  });

/** The formula that a module exports under a name. */
export function formulaOf(module: string, name: string): AnyFormula {
  const found = Object.entries(formulaModules[module] ?? {}).find(([each]) => each === name)?.[1];
  if (typeof found !== 'function' || !('equation' in found && found.equation !== undefined))
    throw new Error(`no formula ${name} in ${module}`);
  return found;
}

/** The HTML table of formulas: name, equation, symbols with units, source. `apiPage` gives the address of a name. */
export function formulaTable(
  module: string,
  names: readonly string[],
  apiPage: (module: string, name: string) => string | undefined,
): string {
  const rows = names.map((name) => row(formulaOf(module, name), apiPage(module, name)));
  return `<div class="wide" tabindex="0"><table class="formulas">
<thead><tr><th scope="col">Formula</th><th scope="col">Equation and symbols</th><th scope="col">Source</th></tr></thead>
<tbody>
${rows.join('\n')}
</tbody></table></div>`;
}

function row(
  { id, title, equation, source, inputs, output }: AnyFormula,
  address: string | undefined,
): string {
  const { tex, remark } = equationTex(
    equation,
    output.symbol,
    Object.values(inputs).map(({ symbol }) => symbol),
  );
  const name = `<code>${id}</code>`;
  const symbols = [
    symbolRow(output.symbol, output.kind, output.meaning),
    ...Object.entries(inputs).map(([field, given]) =>
      symbolRow(
        given.symbol,
        given.kind,
        `${given.meaning} (<code>${field}</code>, ${escaped(domainText(given.kind, given.domain))}${given.standard === undefined ? '' : `; ${given.standard} in SI where left out`})`,
      ),
    ),
  ];
  return `<tr id="${id}"><th scope="row">${escaped(title)}<br>${address === undefined ? name : `<a href="${address}">${name}</a>`}</th>
<td><div class="equation" tabindex="0">${typeset(tex, true)}${remark === '' ? '' : `<p>with ${escaped(remark)}</p>`}</div><ul class="symbols">
${symbols.join('\n')}
</ul></td>
<td class="source">${escaped(source)}</td></tr>`;
}

function symbolRow(symbol: string, kind: AnyFormula['output']['kind'], meaning: string): string {
  const unit = kind === 'dimensionless' ? 'number' : `${kind}, ${shownIn(kind, false).text}`;
  return `<li>${typeset(symbolTex(symbol, 'in a line'), false)} <span>${meaning} <i>${escaped(unit)}</i></span></li>`;
}
