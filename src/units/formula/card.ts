import { shownIn } from '../shown-unit';
import { aligned } from '../table';
import type { FormulaMetadata } from './declaration';
import { domainText } from './domain';

/** A formula's card: equation, symbols with kinds and domains, source and a call to copy. */
export function cardText({
  id,
  title,
  equation,
  source,
  inputs,
  output,
  example,
  solvable,
}: FormulaMetadata): string {
  const rows = Object.entries(inputs).map(([field, given]) => {
    const unit = shownIn(given.kind, false).text;
    const what = given.kind === 'dimensionless' ? 'number' : `${given.kind} (${unit})`;
    const standard = given.standard === undefined ? '' : `; ${given.standard} in SI where left out`;
    return [field, given.symbol, what, `${given.meaning}, ${domainText(given)}${standard}`];
  });
  const call = Object.entries(example).map(
    ([field, value]) => `${field}: ${typeof value === 'number' ? value : `'${value}'`}`,
  );
  return [
    `${id}: ${title}`,
    ...[
      equation,
      ...aligned(rows),
      `gives ${output.symbol}, ${output.meaning} (${output.kind})`,
      ...(solvable.length > 0 ? [`solved for ${solvable.join(', ')} by ${id}.solveFor`] : []),
      `source: ${source}`,
      `${id}({ ${call.join(', ')} })`,
    ].map((line) => `  ${line}`),
  ].join('\n');
}
