import { fitNonlinear } from '../../numerics';
import { burnEdges, valueAt } from '../cleaning/burn-edges';

/**
 * Kernel: peak of a clipped channel from the shape of a predicted one: the prediction is stretched in height and time and
 * shifted until it meets the samples below the clipped level. Undefined where it does not settle.
 */
export function peakFromShape(
  measured: {
    readonly time: Float64Array;
    readonly values: Float64Array;
    readonly good: Uint8Array;
    readonly rest: number;
  },
  predicted: { readonly time: Float64Array; readonly values: Float64Array; readonly rest: number },
  level: number,
): { readonly value: number; readonly scatter: number } | undefined {
  const shape = burnEdges(predicted.time, predicted.values, { threshold: 0.1, rest: predicted.rest });
  const seen = burnEdges(measured.time, measured.values, { threshold: 0.1, rest: measured.rest });
  const points: number[] = [];
  const stride = Math.max(1, Math.floor((seen.last - seen.first) / 300));
  for (let i = seen.first; i <= seen.last; i += stride) if (measured.good[i] === 1) points.push(i);
  if (points.length < 6) return undefined;
  const height = level - measured.rest;
  const model = (parameters: Float64Array, t: number): number => {
    const [scale, shift, stretch] = parameters;
    const at = shape.start + (t - seen.start - shift) / stretch;
    return scale * (valueAt(predicted.time, predicted.values, at) - predicted.rest);
  };
  const fit = fitNonlinear({
    count: points.length,
    initial: [(1.2 * height) / shape.peak, 0, (seen.end - seen.start) / (shape.end - shape.start)],
    residuals: (parameters, out) => {
      for (let k = 0; k < points.length; k++) {
        const i = points[k];
        out[k] = (model(parameters, measured.time[i]) - (measured.values[i] - measured.rest)) / height;
      }
    },
  });
  const [scale, , stretch] = fit.parameters;
  if (!(scale > 0 && stretch > 0.2 && stretch < 5)) return undefined;
  const scatter = Math.sqrt(fit.sumOfSquares / Math.max(1, fit.degreesOfFreedom));
  return { value: Math.max(level, measured.rest + scale * shape.peak), scatter };
}
