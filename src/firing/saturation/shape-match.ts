import { fitNonlinear } from '../../numerics';
import type { RestingTrace } from '../analysis/analysed-trace';
import { valueAt } from '../analysis/trace-values';

/**
 * Kernel: peak of a clipped channel from the shape of a predicted one. The prediction is scaled in height and time and
 * shifted until it fits the samples below the clipping level. Undefined where the fit does not converge to a plausible
 * scale.
 */
export function peakFromShape(
  measured: RestingTrace & { readonly good: Uint8Array },
  predicted: RestingTrace,
  level: number,
): { readonly value: number; readonly scatter: number } | undefined {
  const shape = predicted.trace.edges(0.1, predicted.rest);
  const seen = measured.trace.edges(0.1, measured.rest);
  const { time, values } = measured.trace;
  const points: number[] = [];
  const stride = Math.max(1, Math.floor((seen.last - seen.first) / 300));
  for (let i = seen.first; i <= seen.last; i += stride) if (measured.good[i] === 1) points.push(i);
  if (points.length < 6) return undefined;
  const height = level - measured.rest;
  const model = (parameters: Float64Array, t: number): number => {
    const [scale, shift, stretch] = parameters;
    const at = shape.start + (t - seen.start - shift) / stretch;
    return scale * (valueAt(predicted.trace.time, predicted.trace.values, at) - predicted.rest);
  };
  const fit = fitNonlinear({
    count: points.length,
    initial: [(1.2 * height) / shape.peak, 0, (seen.end - seen.start) / (shape.end - shape.start)],
    residuals: (parameters, out) => {
      for (let k = 0; k < points.length; k++) {
        const i = points[k];
        out[k] = (model(parameters, time[i]) - (values[i] - measured.rest)) / height;
      }
    },
  });
  const [scale, , stretch] = fit.parameters;
  if (!(scale > 0 && stretch > 0.2 && stretch < 5)) return undefined;
  const scatter = Math.sqrt(fit.sumOfSquares / Math.max(1, fit.degreesOfFreedom));
  return { value: Math.max(level, measured.rest + scale * shape.peak), scatter };
}
