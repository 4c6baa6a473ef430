import { type Grain, type Regression, regress } from '../ballistics';

/** Cache of regressions; equal grains are computed once. */
export type RegressionCache = Map<string, Regression>;

/** The regression of a grain, from the cache where an equal one has been computed. */
export function cachedRegression(
  grain: Grain,
  key: string,
  accuracy: number,
  cache: RegressionCache,
): Regression {
  // A closed form is exact for any requested accuracy.
  const asked = grain.flaws.length > 0 ? accuracy : 1e-3;
  const name = `${asked} ${key}`;
  const known = cache.get(name);
  if (known !== undefined) return known;
  const made = regress(grain, { accuracy: asked });
  cache.set(name, made);
  return made;
}
