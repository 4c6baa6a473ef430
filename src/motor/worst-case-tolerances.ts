import type { Worse } from '../units';
import type { Motor } from './document';
import { type PlacedValue, placedValues, withValues } from './varied-motor';

/** The end of a tolerance: 1 the upper, −1 the lower. */
type Ends = { readonly [W in Worse]?: 1 | -1 };

const toleranced = (motor: Motor): readonly PlacedValue[] =>
  placedValues(motor).filter(({ plusMinus }) => plusMinus > 0);

const changesBy = (motor: Motor, ends: Ends) =>
  toleranced(motor).flatMap((one) => {
    const end = one.worse && ends[one.worse];
    return end === undefined ? [] : [{ ...one, si: one.value.si + end * one.plusMinus }];
  });

/** The motor with every size, strength and range at the worst-case limit declared for the review. */
export const atWorstCaseTolerances = (motor: Motor): Motor =>
  withValues(motor, changesBy(motor, { low: -1, high: 1 }));

/** The motor that {@link atWorstCaseTolerances} was given, from its result. */
export const nominalOf = (worst: Motor): Motor => withValues(worst, changesBy(worst, { low: 1, high: -1 }));

/** Values of which only the full simulation takes account, at the end of their tolerance with more pressure or thrust. */
export const worstCaseFiringValues = (motor: Motor) =>
  changesBy(motor, { 'firing low': -1, 'firing high': 1 });

/** Tolerances that no result takes into account, one line each; `counted` contains the names of those in the Monte Carlo. */
export const unusedTolerances = (motor: Motor, counted: ReadonlySet<string>): readonly string[] =>
  toleranced(motor).flatMap(({ name, worse }) =>
    worse !== 'neither' || counted.has(name)
      ? []
      : [`The tolerance of ${name} is neglected; the nominal value is used.`],
  );
