import type { AnalysedRecord, CleanedChannel } from '../analysis/analysed-record';
import { maxOverrangeFactor } from '../saturation/bounds-without-second-channel';
import type { Clipping } from '../saturation/clipping';
import { type Estimate, estimate, type Recovery } from '../saturation/recovery';
import { smoothPeak } from './channel-health';
import type { ClippedIntegral } from './motor-numbers';
import type { ReductionInputsSi } from './reduction-inputs';

/**
 * Kernel: peak of a channel with its confidence interval: the reconstructed one, or the highest sample with noise and
 * calibration uncertainty. Where the channel may have been limited, `uncertainRecovery` is its reconstruction, and the
 * interval includes it.
 */
export function peakOf<K extends 'absolute pressure' | 'force'>(
  record: AnalysedRecord,
  kind: K,
  facts: ReductionInputsSi,
  clipping: Clipping | undefined,
  recovery: Recovery<'absolute pressure'> | Recovery<'force'> | undefined,
  uncertainRecovery?: Recovery<'absolute pressure'> | Recovery<'force'>,
): Estimate<K> | undefined {
  const channel: CleanedChannel = kind === 'force' ? 'thrust' : 'pressure';
  const trace = record.traces[channel];
  if (trace === undefined) return undefined;
  const rest = kind === 'force' ? 0 : facts.ambient;
  if (recovery && recovery.channel === channel) {
    const { value, low, high } = recovery.peak;
    const calibration = 1.96 * facts.calibrationUncertainty * (value.si - rest);
    return estimate(
      kind,
      value.si,
      value.si - Math.hypot(value.si - low.si, calibration),
      value.si + Math.hypot(high.si - value.si, calibration),
    );
  }
  const { time, values } = trace;
  const edges = trace.edges(0.1, rest);
  const smooth = smoothPeak(
    time.subarray(edges.first, edges.last + 1),
    values.subarray(edges.first, edges.last + 1),
    0.03 * (edges.end - edges.start),
  );
  const top = rest + edges.peak;
  const half = 1.96 * Math.hypot(smooth.deviation, facts.calibrationUncertainty * (smooth.value - rest));
  // The highest sample contains noise, and the smoothed one may lack a true spike. The interval includes both.
  const high = clipping?.certain ? rest + maxOverrangeFactor * edges.peak : top + half;
  return estimate(
    kind,
    top,
    Math.min(smooth.value, top) - half,
    uncertainRecovery?.channel === channel ? Math.max(high, uncertainRecovery.peak.high.si) : high,
  );
}

/** Kernel: uncertainty of the integral of a channel due to clipping. */
export function clippedIntegral(
  channel: CleanedChannel,
  clipping: Clipping | undefined,
  peak: { readonly high: { readonly si: number } } | undefined,
  recovery: Recovery<'absolute pressure'> | Recovery<'force'> | undefined,
): ClippedIntegral {
  if (clipping === undefined || !clipping.certain || peak === undefined) return { either: 0, above: 0 };
  const length = clipping.spans.reduce((sum, { from, to }) => sum + to - from, 0);
  if (recovery?.channel !== channel) return { either: 0, above: length * (peak.high.si - clipping.level) };
  const { low, high } = recovery.band;
  const width = high.si.reduce((sum, value, i) => sum + value - low.si[i], 0) / Math.max(1, high.length);
  return { either: (width / 2) * length, above: 0 };
}
