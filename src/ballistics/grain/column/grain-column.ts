import { either, instance, list, optional, procedure, type Values } from '../../../units';
import { type Regression, regressGrain, regressInputs } from '../front';
import { segmentGap } from '../grain-inputs';
import { misfit } from '../misfit';
import { type Grain, grainValue } from '../shapes';
import { sumOfSegments } from './column-regression';

/** A stack of grains in one case, head end first. */
export interface GrainColumn {
  readonly segments: readonly Grain[];
  /** Gap after each segment but the last [m]. */
  readonly gaps: readonly number[];
  /** Overall length, gaps included [m]. */
  readonly length: number;
  toString(): string;
}

/**
 * The grains may differ.
 *
 * @example String(grainColumn({ segments: [endBurner({ outerDiameter: '40 mm', length: '60 mm' })] })) // => 'column of 1 grain'
 */
export const grainColumn = /* @__PURE__ */ procedure({
  name: 'grainColumn',
  title: 'Column of grains in one case, with spacers between them',
  source: 'geometry',
  inputs: {
    segments: list('grains, head end first', grainValue),
    spacers: optional(
      either('gap between adjacent segments: one for all, or one for each; none if omitted', [
        segmentGap,
        list('gaps, head end first', segmentGap, { min: 0 }),
      ]),
    ),
  },
  checks: [
    ({ segments: { length: grains }, spacers }) =>
      misfit(
        spacers === undefined || !isList(spacers) || spacers.length === grains - 1,
        'spacers',
        isList(spacers) ? spacers.map(String) : spacers,
        `one length or a list of ${grains - 1}, one for each gap`,
      ),
  ],
  gives: 'the column',
  example: "grainColumn({ segments: [endBurner({ outerDiameter: '40 mm', length: '60 mm' })] })",
  run: ({ segments, spacers }): GrainColumn => {
    const gaps = segments.slice(1).map((_, i) => (isList(spacers) ? spacers[i].si : (spacers?.si ?? 0)));
    const whole = segments.reduce((sum, s) => sum + s.length.si, 0) + gaps.reduce((sum, g) => sum + g, 0);
    const text = (): string => `column of ${segments.length} grain${segments.length === 1 ? '' : 's'}`;
    const listed = (): string => [text(), ...segments.map((segment) => `  ${segment}`)].join('\n');
    return {
      segments,
      gaps,
      length: whole,
      toString: text,
      ...{ [Symbol.for('nodejs.util.inspect.custom')]: listed },
    };
  },
});

type Spacer = ReturnType<typeof segmentGap.read>;
const isList = (given: Spacer | readonly Spacer[] | undefined): given is readonly Spacer[] =>
  Array.isArray(given);

/** Regression of a column: the sum over its grains, and the regression of each grain. */
export interface ColumnRegression extends Regression {
  readonly segments: readonly Regression[];
}

const isColumn = (value: unknown): value is GrainColumn =>
  typeof value === 'object' && value !== null && 'segments' in value && 'gaps' in value;

/**
 * All grains burn at the same rate, so areas and volumes add at equal depth. Equal grains are computed once.
 *
 * @example regressColumn(grainColumn({ segments: [endBurner({ outerDiameter: '40 mm', length: '60 mm' })] })).burnout.in('mm') // => 60
 */
export const regressColumn = /* @__PURE__ */ procedure({
  name: 'regressColumn',
  title: 'Burnback of a column of grains',
  source: 'law of Piobert (1839); sum over the grains',
  subject: instance('the column', 'a column', isColumn, {
    remedy: 'Make one with grainColumn; for a single grain, use regress',
  }),
  inputs: regressInputs,
  gives: 'the sum over its grains, and the regression of each grain',
  example:
    "regressColumn(grainColumn({ segments: [endBurner({ outerDiameter: '40 mm', length: '60 mm' })] }))",
  run: regressSegments,
});

function regressSegments(column: GrainColumn, options: Values<typeof regressInputs>): ColumnRegression {
  const { onProgress } = options;
  const kinds = [...new Set(column.segments)];
  const done = new Map<Grain, Regression>();
  kinds.forEach((grain, i) => {
    const progress =
      onProgress === undefined ? {} : { onProgress: (f: number) => onProgress((i + f) / kinds.length) };
    done.set(grain, regressGrain(grain, { ...options, ...progress }));
  });
  let position = 0;
  const placed = column.segments.flatMap((grain, i) => {
    const regression = done.get(grain);
    if (regression === undefined) return [];
    const segment = { regression, position };
    position += grain.length.si + (column.gaps[i] ?? 0);
    return [segment];
  });
  return { ...sumOfSegments(placed), segments: placed.map(({ regression }) => regression) };
}
