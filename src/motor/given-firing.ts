import type { Firing, ReducedFiring } from '../firing';
import { isFiring } from '../firing/firing';

/** A firing, or its reduction. */
export type GivenFiring = Firing | ReducedFiring;

/** True for a reduced firing. */
export const isReducedFiring = (value: unknown): value is ReducedFiring =>
  typeof value === 'object' &&
  value !== null &&
  'status' in value &&
  'record' in value &&
  isFiring(value.record);

/** True for a firing or its reduction. */
export const isGivenFiring = (value: unknown): value is GivenFiring =>
  isFiring(value) || isReducedFiring(value);
