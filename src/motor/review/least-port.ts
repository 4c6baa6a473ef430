import { MeopError } from '../../units';
import type { Motor } from '../document';
import { motorRegression } from '../motor-grain';
import type { RegressionCache } from '../regression-cache';
import { placedValues, withValues } from '../varied-motor';

/** Minimum port area at the aft end before burning, over the tolerances of the grain [m²]. */
export function leastPort(motor: Motor, cache: RegressionCache): number | undefined {
  const aftPort = (of: Motor): number | undefined =>
    motorRegression(of, 'none', cache)
      .portArea.map(({ area }) => area.si[0])
      .filter((area) => area > 0)
      .at(-1);
  const nominal = aftPort(motor);
  if (nominal === undefined) return undefined;
  return placedValues(motor, ['grain'])
    .filter(({ path, plusMinus }) => plusMinus > 0 && path[1] === 'segments' && !path.includes('flaws'))
    .reduce((least, { path, value, plusMinus }) => {
      const changes = [value.si - plusMinus, value.si + plusMinus].map((si) => {
        try {
          return (aftPort(withValues(motor, [{ path, si }])) ?? nominal) - nominal;
        } catch (error) {
          if (error instanceof MeopError) return 0; // reported by MEOP: no grain exists at this limit
          throw error;
        }
      });
      return least + Math.min(0, ...changes);
    }, nominal);
}
