import type { QuantityInput } from '../../../units';
import { type FieldsOf, requireFields } from '../../../units/known-fields';
import { type Regression, type RegressOptions, regress } from '../front';
import { readLength, refused, requireFit } from '../measure';
import { type Grain, requireGrain } from '../shapes';
import { columnRegression } from './column-regression';

/** A stack of grains in one case, head end first. */
export interface GrainColumn {
  readonly segments: readonly Grain[];
  /** Gap after each segment but the last [m]. */
  readonly gaps: readonly number[];
  /** Overall length, gaps included [m]. */
  readonly length: number;
  toString(): string;
}

const fields: FieldsOf<Parameters<typeof grainColumn>[0]> = { segments: 'required', spacers: 'optional' };

/**
 * Stacks grains in one case, head end first, with spacers between them. The grains may differ.
 *
 * @throws MeopError `grain-measure` when there is no segment, or when the number of spacers is not that of the gaps
 * @example String(grainColumn({ segments: [endBurner({ outerDiameter: '40 mm', length: '60 mm' })] })) // => 'column of 1 grain'
 */
export function grainColumn(options: {
  /** The grains, head end first. */
  readonly segments: readonly Grain[];
  /** Gap between adjacent segments: one length for all, or one for each gap [length, zero or more]. Default 0 mm. */
  readonly spacers?: QuantityInput<'length'> | readonly QuantityInput<'length'>[];
}): GrainColumn {
  requireFields('grainColumn', options, fields);
  const { segments, spacers = '0 mm' } = options;
  requireFit(Array.isArray(segments), 'grainColumn', 'segments', segments, 'a list of grains');
  segments.forEach((grain, i) => {
    requireGrain('grainColumn', `segments[${i}]`, grain);
  });
  const joints = segments.length - 1;
  if (joints < 0) throw refused('grainColumn', 'segments', segments, 'a list of at least one grain');
  const list: readonly QuantityInput<'length'>[] = isList(spacers)
    ? spacers
    : Array.from({ length: joints }, () => spacers);
  if (list.length !== joints)
    throw refused('grainColumn', 'spacers', spacers, `one length or a list of ${joints}, one for each gap`);
  const gaps = list.map((gap, i) => readLength('grainColumn', `spacers[${i}]`, gap, 'zero'));
  const length = segments.reduce((sum, s) => sum + s.length.si, 0) + gaps.reduce((sum, g) => sum + g, 0);
  const text = (): string => `column of ${segments.length} grain${segments.length === 1 ? '' : 's'}`;
  const listed = (): string => [text(), ...segments.map((segment) => `  ${segment}`)].join('\n');
  return {
    segments,
    gaps,
    length,
    toString: text,
    ...{ [Symbol.for('nodejs.util.inspect.custom')]: listed },
  };
}

const isList = (
  spacers: QuantityInput<'length'> | readonly QuantityInput<'length'>[],
): spacers is readonly QuantityInput<'length'>[] => Array.isArray(spacers);

/** Regression of a column: the sum over its grains, and the regression of each grain. */
export interface ColumnRegression extends Regression {
  readonly segments: readonly Regression[];
}

/**
 * Computes the burnback of a column. All grains burn at the same rate, so areas and volumes add at equal depth. Equal
 * grains are computed once.
 *
 * @throws MeopError as {@link regress}
 * @example regressColumn(grainColumn({ segments: [endBurner({ outerDiameter: '40 mm', length: '60 mm' })] })).burnout.in('mm') // => 60
 */
export function regressColumn(column: GrainColumn, options: RegressOptions = {}): ColumnRegression {
  requireFit(
    Array.isArray(column?.segments),
    'regressColumn',
    'column',
    column,
    'a column made by grainColumn',
    'Use regress for a single grain',
  );
  const { onProgress } = options;
  const kinds = [...new Set(column.segments)];
  const done = new Map<Grain, Regression>();
  kinds.forEach((grain, i) => {
    const progress =
      onProgress === undefined ? {} : { onProgress: (f: number) => onProgress((i + f) / kinds.length) };
    done.set(grain, regress(grain, { ...options, ...progress }));
  });
  let position = 0;
  const placed = column.segments.flatMap((grain, i) => {
    const regression = done.get(grain);
    if (regression === undefined) return [];
    const segment = { regression, position };
    position += grain.length.si + (column.gaps[i] ?? 0);
    return [segment];
  });
  return { ...columnRegression(placed), segments: placed.map(({ regression }) => regression) };
}
