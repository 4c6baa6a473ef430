import type { StrengthProperty } from './allowable';

/** What each strength is a limit of. */
export const strengthLimits: { readonly [P in StrengthProperty]: 'yield' | 'ultimate' } = {
  yield: 'yield',
  ultimate: 'ultimate',
  'shear yield': 'yield',
  'shear ultimate': 'ultimate',
  'bearing yield': 'yield',
  'bearing ultimate': 'ultimate',
  'compressive yield': 'yield',
};

/** Whether a strength is one of the sides of a hole. */
export const isBearing = (property: StrengthProperty): boolean =>
  property === 'bearing yield' || property === 'bearing ultimate';

/** Whether a strength can be estimated from the tensile strength. */
export const isEstimated = (property: StrengthProperty): boolean =>
  isBearing(property) || property === 'shear yield' || property === 'shear ultimate';
