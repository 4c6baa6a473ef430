import type { Input, Inputs } from '../declare/input';
import { isParameter } from '../declare/optional';
import { aligned } from '../table';
import type { CalculationMetadata } from './declaration';

/** Card of a calculation: equation, inputs with kinds and domains, result, source and a typical call. */
export function cardText(facts: CalculationMetadata): string {
  const { id, title, equation, source, inputs, subject, gives, exampleCall, solvable } = facts;
  const rows = [...(subject ? [row('first', subject)] : []), ...inputRows(inputs)];
  return [
    `${id}: ${title}`,
    ...[
      ...(equation === undefined ? [] : [equation]),
      ...aligned(rows),
      `gives ${gives}`,
      ...(solvable.length > 0 ? [`solved for ${solvable.join(', ')} by ${id}.solveFor`] : []),
      `source: ${source}`,
      exampleCall,
    ].map((line) => `  ${line}`),
  ].join('\n');
}

/** One row per input, with those of a group below it: field, symbol, accepted values, meaning. */
export function inputRows(inputs: Inputs, indent = ''): readonly (readonly string[])[] {
  return Object.entries(inputs).flatMap(([field, input]) => [
    row(indent + field, input),
    ...('fields' in input ? inputRows(Object(input.fields), `${indent}  `) : []),
  ]);
}

function row(field: string, input: Input): readonly string[] {
  const absent = {
    required: () => '',
    optional: () => '; may be left out',
    standard: () => `; assumed ${code(input.absent())} where left out`,
  };
  return [
    field,
    isParameter(input) ? input.symbol : '',
    input.takes(),
    `${input.meaning}${absent[input.need]()}`,
  ];
}

/** A call with its argument as code. */
export const callText = (id: string, example: unknown): string => `${id}(${code(example)})`;

function code(value: unknown): string {
  if (typeof value === 'string') return `'${value}'`;
  if (Array.isArray(value)) return `[${value.map(code).join(', ')}]`;
  if (typeof value !== 'object' || value === null || 'si' in value) return String(value);
  return `{ ${Object.entries(value)
    .map(([field, one]) => `${field}: ${code(one)}`)
    .join(', ')} }`;
}
