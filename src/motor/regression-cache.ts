import { type Grain, type Regression, regress } from '../ballistics';

/** Regressions of grains that are alike are worked out once. */
export type RegressionCache = Map<string, Regression>;

/** The regression of a grain, from the cache where one like it has been worked out. */
export function cachedRegression(
  grain: Grain,
  key: string,
  accuracy: number,
  cache: RegressionCache,
): Regression {
  // A closed form is exact whatever is asked.
  const asked = grain.flaws.length > 0 ? accuracy : 1e-3;
  const name = `${asked} ${key}`;
  const known = cache.get(name);
  if (known !== undefined) return known;
  const made = regress(grain, { accuracy: asked });
  cache.set(name, made);
  return made;
}
