import { formatNumber, fromSiValue, type Quantity, type Series, unitOf } from '../../units';
import type { Firing } from '../firing';
import type { Clipping } from './clipping';

/** A value with its confidence interval. */
export interface Estimate<K extends 'absolute pressure' | 'force' | 'impulse' | 'pressure integral'> {
  readonly value: Quantity<K>;
  readonly low: Quantity<K>;
  readonly high: Quantity<K>;
  /** Confidence level; 0.95 unless stated otherwise. */
  readonly confidence: number;
}

/** Peak by one method of reconstruction. */
export interface PeakBound<K extends 'absolute pressure' | 'force'> {
  readonly method:
    | 'thrust coefficient'
    | 'mass balance'
    | 'parabola through the shoulders'
    | 'shape of a prediction';
  readonly peak: Estimate<K>;
  readonly note: string;
}

/** The line between thrust and pressure on which a reconstruction is based. */
export interface RecoveryFit {
  /** Number of means of both channels that were fitted. */
  readonly points: number;
  /** Scatter about the line/largest thrust fitted. */
  readonly relativeScatter: number;
  /** Residuals of the fit, N. */
  readonly residuals: Float64Array;
  /** Slope of thrust on pressure, m²: efficiency times vacuum thrust coefficient times throat area. */
  readonly slope: number;
  /** Thrust at zero pressure, N. */
  readonly constant: number;
  /** Relative change of throat area over the burn. */
  readonly throatGrowth: number;
  /** Peak/largest valid value of the clipped channel; 1 means no extrapolation. */
  readonly extrapolation: number;
}

/** The channel that belongs to a kind. */
export interface ChannelOfKind {
  readonly 'absolute pressure': 'pressure';
  readonly force: 'thrust';
}

/** Reconstruction of a clipped channel. */
export interface Recovery<K extends 'absolute pressure' | 'force'> {
  /** The reconstructed channel. */
  readonly channel: ChannelOfKind[K];
  /** The record with reconstructed values in the clipped intervals; other values are unchanged. */
  readonly record: Firing;
  readonly clipping: Clipping;
  readonly peak: Estimate<K>;
  /** Times of the clipped intervals, with the reconstructed value and its 95 % confidence interval. */
  readonly band: {
    readonly time: Series<'time'>;
    readonly value: Series<K>;
    readonly low: Series<K>;
    readonly high: Series<K>;
  };
  /** Undefined where there is only one channel. */
  readonly fit: RecoveryFit | undefined;
  /** Results of all applicable methods, the one used first. */
  readonly bounds: readonly PeakBound<K>[];
  readonly cautions: readonly string[];
  toString(): string;
}

/** Data for the reconstruction of one channel, SI. */
export interface RecoverFacts {
  readonly ambient: number;
  readonly throatArea: number | undefined;
  readonly expansionRatio: number | undefined;
  readonly throatGrowth: 'fit' | 'little' | 'none';
  readonly propellantMass: number | undefined;
  readonly characteristicVelocity: number | undefined;
  readonly massBalanceUncertainty: number;
  readonly prediction: Firing | undefined;
}

/** Result of one method: values at the times of the record with their confidence interval, and the peak. */
export interface RecoveredBand {
  readonly method: PeakBound<'force'>['method'];
  readonly value: Float64Array;
  readonly deviation: Float64Array;
  readonly peak: { readonly value: number; readonly low: number; readonly high: number };
  readonly fit?: Recovery<'force'>['fit'];
  readonly note: string;
  readonly cautions: readonly string[];
}

export function estimate<K extends 'absolute pressure' | 'force' | 'impulse' | 'pressure integral'>(
  kind: K,
  value: number,
  low: number,
  high: number,
): Estimate<K> {
  const unit = unitOf(
    { 'absolute pressure': 'MPa', force: 'N', impulse: 'N*s', 'pressure integral': 'MPa*s' }[kind],
  );
  const of = (si: number): Quantity<K> => fromSiValue<K>(si, kind, unit);
  return { value: of(value), low: of(low), high: of(high), confidence: 0.95 };
}

export function recoveryText<K extends 'absolute pressure' | 'force'>(
  recovery: Omit<Recovery<K>, 'toString'>,
): string {
  const { channel, clipping, peak, fit, bounds, cautions } = recovery;
  const when = clipping.spans.map(({ from, to }) => `${from.toFixed(3)} to ${to.toFixed(3)} s`).join(', ');
  return [
    `${channel} reconstructed, clipped ${when} (${clipping.evidence})`,
    `  peak ${peak.value}, 95 % confidence interval ${peak.low} to ${peak.high}`,
    ...(fit
      ? [
          `  line through ${fit.points} means of both channels, scatter ${formatNumber(100 * fit.relativeScatter)} %, extrapolation ${formatNumber(fit.extrapolation)} times`,
        ]
      : []),
    ...bounds.map(({ method, peak: p }) => `  by ${method}: ${p.value} (${p.low} to ${p.high})`),
    ...cautions.map((caution) => `  caution: ${caution}`),
  ].join('\n');
}
