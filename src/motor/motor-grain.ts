import { columnRegression, type Regression, withFlaws } from '../ballistics';
import { q } from '../units';
import type { Motor } from './document';
import { flawOf } from './document/flaw-inputs';
import { grainOf } from './document/segment-grain';
import { cachedRegression, type RegressionCache } from './regression-cache';

/** Flaws included: those of the document, those and the assumed one, or none. */
export type FlawSet = 'as documented' | 'with the assumed flaw' | 'none';

type Segment = Motor['grain']['segments'][number];

/** Number of flaws of the first segment of each kind. */
function flawsOf(motor: Motor, index: number, choice: FlawSet) {
  const { segments, assumedFlaw } = motor.grain;
  const own = choice === 'none' ? [] : (segments[index].flaws ?? []);
  const assumed =
    choice === 'with the assumed flaw' && assumedFlaw?.segment === index + 1 ? [assumedFlaw.flaw] : [];
  return [...own, ...assumed];
}

/** Relative error of the burning area of a flawed grain: for a prediction, and for each of many variations. */
export const flawAccuracy = { prediction: 2e-3, variation: 5e-3 } as const;

/** The column of a motor in which the first segments of the first kind have another regression. */
export function columnWith(
  motor: Motor,
  column: Regression,
  changed: Regression,
  count: number,
  cache: RegressionCache,
): Regression {
  const spacing = motor.grain.spacing?.value.si ?? 0;
  let position = 0;
  let left = count;
  const segments = motor.grain.segments.flatMap((segment, i) => {
    const grain = grainOf(segment);
    return Array.from({ length: segment.count ?? 1 }, () => {
      const regression =
        i === 0 && left-- > 0
          ? changed
          : cachedRegression(grain, keyOf(segment, []), flawAccuracy.variation, cache);
      const placed = { regression, position: q(position, 'm') };
      position += grain.length.si + spacing;
      return placed;
    });
  });
  return count === 0
    ? column
    : segments.length === 1
      ? segments[0].regression
      : columnRegression({ segments });
}

/** Regressions of the segments of each kind, in the order of the document. */
export const segmentRegressions = (
  motor: Motor,
  choice: FlawSet,
  cache: RegressionCache,
): readonly (readonly Regression[])[] =>
  motor.grain.segments.map((segment, i) => {
    const flaws = flawsOf(motor, i, choice);
    return Array.from({ length: segment.count ?? 1 }, (_, copy) => {
      const own = copy === 0 ? flaws : [];
      const sound = grainOf(segment);
      const grain = own.length > 0 ? withFlaws(sound, { flaws: own.map(flawOf) }) : sound;
      return cachedRegression(grain, keyOf(segment, own), flawAccuracy.prediction, cache);
    });
  });

/** The regression of a motor's grain column. */
export function motorRegression(
  motor: Motor,
  choice: FlawSet = 'as documented',
  cache: RegressionCache = new Map(),
  accuracy: number = flawAccuracy.prediction,
): Regression {
  const spacing = motor.grain.spacing?.value.si ?? 0;
  let position = 0;
  const segments = motor.grain.segments.flatMap((segment, i) => {
    const flaws = flawsOf(motor, i, choice);
    return Array.from({ length: segment.count ?? 1 }, (_, copy) => {
      const own = copy === 0 ? flaws : [];
      const sound = grainOf(segment);
      const grain = own.length > 0 ? withFlaws(sound, { flaws: own.map(flawOf) }) : sound;
      const regression = cachedRegression(grain, keyOf(segment, own), accuracy, cache);
      const placed = { regression, position: q(position, 'm') };
      position += grain.length.si + spacing;
      return placed;
    });
  });
  return segments.length === 1 ? segments[0].regression : columnRegression({ segments });
}

/** Key that is equal for equal segments. */
const keyOf = ({ count: _, flaws: __, notes: ___, ...shape }: Segment, flaws: readonly unknown[]): string =>
  JSON.stringify([shape, flaws]);
