import type { Quantity } from '../../units';
import { consequenceOf, isMeasurable } from './consequence';
import type { FailureMargin } from './failure-margin';
import type { FailureLimit } from './failure-mode';
import type { FailureModeId } from './mode-name';

/**
 * The required ratio of the pressure of separation to that of a measurable permanent set. Each of the two pressures is uncertain by
 * about 10 %; engineering practice, no published source.
 */
export const requiredWarningRatio = 1.2;

/** Whether a mode is a warning, a separation, or neither. */
export type PlaceInOrder = 'warning' | 'separation' | 'neither';

/** The place of a mode in the failure order. */
export function placeInOrder(id: FailureModeId, limit: FailureLimit): PlaceInOrder {
  const consequence = consequenceOf(id, limit);
  if (consequence === 'separates') return 'separation';
  return consequence === 'stretches' && isMeasurable(id) ? 'warning' : 'neither';
}

/** A mode and the pressure, or any measure in proportion to it, at which it reaches its limit. */
export interface OrderedMode {
  readonly id: FailureModeId;
  readonly limit: FailureLimit;
  /** Pressure at the limit, without a factor of safety. */
  readonly at: number;
}

/** What separates first, what stretches first, and whether the second is a warning of the first. */
export interface OrderOf<M> {
  /** The first mode with a permanent set. */
  readonly firstStretch: M | undefined;
  /** The first mode with a permanent set that can be measured. */
  readonly firstWarning: M | undefined;
  /** The first mode at which a part breaks or comes apart. */
  readonly firstSeparation: M | undefined;
  /** Pressure of the first separation/pressure of the first measurable permanent set. */
  readonly warningRatio: number | undefined;
  /** Whether a measurable permanent set precedes separation by the required ratio. */
  readonly warns: boolean;
}

/** The failure order of a joint. */
export type FailureOrder = OrderOf<Driven>;

/** The order of any modes, from their limits. */
export function orderOf<M extends OrderedMode>(modes: readonly M[]): OrderOf<M> {
  const first = (counts: (mode: M) => boolean): M | undefined =>
    modes.reduce<M | undefined>(
      (soonest, mode) => (counts(mode) && (soonest === undefined || mode.at < soonest.at) ? mode : soonest),
      undefined,
    );
  const stretches = ({ id, limit }: M): boolean => consequenceOf(id, limit) === 'stretches';
  const firstWarning = first(({ id, limit }) => placeInOrder(id, limit) === 'warning');
  const firstSeparation = first(({ id, limit }) => placeInOrder(id, limit) === 'separation');
  const warningRatio =
    firstWarning === undefined || firstSeparation === undefined
      ? undefined
      : firstSeparation.at / firstWarning.at;
  return {
    firstStretch: first(stretches),
    firstWarning,
    firstSeparation,
    warningRatio,
    warns: warningRatio !== undefined && warningRatio >= requiredWarningRatio,
  };
}

type Driven = FailureMargin & { readonly failurePressure: Quantity<'gauge pressure'> };

const isDriven = (margin: FailureMargin): margin is Driven => margin.failurePressure !== undefined;

/** The failure order of the modes that chamber pressure drives. */
export function failureOrder(margins: readonly FailureMargin[]): FailureOrder {
  const { firstStretch, firstWarning, firstSeparation, ...rest } = orderOf(
    margins
      .filter(isDriven)
      .map((margin) => ({ id: margin.id, limit: margin.limit, at: margin.failurePressure.si, margin })),
  );
  return {
    firstStretch: firstStretch?.margin,
    firstWarning: firstWarning?.margin,
    firstSeparation: firstSeparation?.margin,
    ...rest,
  };
}

/** The failure order in sentences. */
export function failureOrderText({
  firstStretch,
  firstWarning,
  firstSeparation,
  warningRatio,
  warns,
}: FailureOrder): string {
  const at = ({ mode, failurePressure }: NonNullable<FailureOrder['firstStretch']>): string =>
    `${mode}, at ${failurePressure}`;
  const stretch = firstStretch === undefined ? 'none evaluated' : at(firstStretch);
  const separation = firstSeparation === undefined ? 'none evaluated' : at(firstSeparation);
  return `First permanent set: ${stretch}. First separation: ${separation}. ${warning()}`;

  function warning(): string {
    if (firstSeparation === undefined) return 'The failure order is not known.';
    if (firstWarning === undefined || warningRatio === undefined || warningRatio <= 1)
      return 'No measurable permanent set precedes separation: the joint separates without warning.';
    const ratio = `The separation pressure is ${(Math.floor(100 * warningRatio) / 100).toFixed(2)} times that of the first measurable permanent set (${at(firstWarning)}; required ≥ ${requiredWarningRatio})`;
    return warns
      ? `${ratio}: the joint warns before it separates.`
      : `${ratio}: the joint can separate without warning.`;
  }
}
