import { length } from '../units';

/** Lowest altitude of the standard atmosphere, in m. */
export const lowest = -5000;

/** Highest altitude of the standard atmosphere, in m. */
export const highest = 86000;

/** Altitude in the standard atmosphere. */
export const altitude = /* @__PURE__ */ length('z', 'altitude above mean sea level', {
  min: lowest,
  max: highest * (1 + 1e-12),
  example: '1000 m',
});
