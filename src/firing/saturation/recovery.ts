import { formatNumber, fromSiValue, type Quantity, type Series, unitOf } from '../../units';
import type { Firing } from '../firing';
import type { Clipping } from './clipping';

/** A value and the interval that holds it with the stated confidence. */
export interface Estimate<K extends 'absolute pressure' | 'force' | 'impulse' | 'pressure integral'> {
  readonly value: Quantity<K>;
  readonly low: Quantity<K>;
  readonly high: Quantity<K>;
  /** 0.95 unless said otherwise. */
  readonly confidence: number;
}

/** What one way of recovering a peak gives. */
export interface PeakBound<K extends 'absolute pressure' | 'force'> {
  readonly method:
    | 'thrust coefficient'
    | 'mass balance'
    | 'parabola through the shoulders'
    | 'shape of a prediction';
  readonly peak: Estimate<K>;
  readonly note: string;
}

/** The line between thrust and pressure that a recovery rests on. */
export interface RecoveryFit {
  /** Means of both channels fitted. */
  readonly points: number;
  /** Scatter about the line as a share of the largest thrust fitted. */
  readonly relativeScatter: number;
  /** N. */
  readonly residuals: Float64Array;
  /** Slope of thrust on pressure, m²: efficiency times vacuum thrust coefficient times throat area. */
  readonly slope: number;
  /** N, thrust at no pressure. */
  readonly constant: number;
  /** Change of throat area over the burn, as a share. */
  readonly throatGrowth: number;
  /** How far beyond the largest good value of the clipped channel the peak lies: 1 is not at all. */
  readonly extrapolation: number;
}

/** The channel that a kind stands for. */
export interface ChannelOfKind {
  readonly 'absolute pressure': 'pressure';
  readonly force: 'thrust';
}

/** A clipped channel, made good as far as it can be. */
export interface Recovery<K extends 'absolute pressure' | 'force'> {
  /** Tells which of the two it is. */
  readonly channel: ChannelOfKind[K];
  /** The record with the clipped stretches filled in; the rest is untouched. */
  readonly record: Firing;
  readonly clipping: Clipping;
  readonly peak: Estimate<K>;
  /** Times of the clipped stretches, with the recovered value and its 95 % band. */
  readonly band: {
    readonly time: Series<'time'>;
    readonly value: Series<K>;
    readonly low: Series<K>;
    readonly high: Series<K>;
  };
  /** Undefined where only one channel was there. */
  readonly fit: RecoveryFit | undefined;
  /** Every way that the facts allowed, the one used first. */
  readonly bounds: readonly PeakBound<K>[];
  readonly cautions: readonly string[];
  toString(): string;
}

/** The same in SI, for one channel. */
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

/** What a method hands over: values at the record's times with a band, and its peak. */
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

export function recoveryText<K extends 'absolute pressure' | 'force'>(recovery: Recovery<K>): string {
  const { channel, clipping, peak, fit, bounds, cautions } = recovery;
  const when = clipping.spans.map(({ from, to }) => `${from.toFixed(3)} to ${to.toFixed(3)} s`).join(', ');
  return [
    `${channel} recovered, clipped ${when} (${clipping.evidence})`,
    `  peak ${peak.value}, 95 % between ${peak.low} and ${peak.high}`,
    ...(fit
      ? [
          `  line through ${fit.points} means of both channels, scatter ${formatNumber(100 * fit.relativeScatter)} %, drawn out ${formatNumber(fit.extrapolation)} times`,
        ]
      : []),
    ...bounds.map(({ method, peak: p }) => `  by ${method}: ${p.value} (${p.low} to ${p.high})`),
    ...cautions.map((caution) => `  caution: ${caution}`),
  ].join('\n');
}
