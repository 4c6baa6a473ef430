import { randomStream } from '../../numerics';
import { lnPeakAt, type PeakResponse, workState } from './peak-response';

/** Options of the Monte Carlo. */
export interface DrawOptions {
  readonly samples: number;
  readonly seed: number;
  readonly distribution: 'uniform' | 'normal';
  /** Limits of grain temperature [K], sampled uniformly. */
  readonly temperatures: readonly [coldest: number, hottest: number];
}

/** Monte Carlo samples: the fraction of each tolerance, the temperature, and ln of the peak pressure. */
export interface SampledMotors {
  /** Sample by sample: input i of sample k is at `k * inputs + i`. */
  readonly shares: Float64Array;
  readonly temperature: Float64Array;
  readonly lnPeak: Float64Array;
}

/** Samples motors and computes the peak pressure of each. The same seed gives the same samples. */
export function sampleMotors(response: PeakResponse, options: DrawOptions): SampledMotors {
  const { samples, distribution, temperatures } = options;
  const [coldest, hottest] = temperatures;
  const width = response.inputs.length;
  const stream = randomStream(options.seed);
  const shares = new Float64Array(samples * width);
  const temperature = new Float64Array(samples);
  const lnPeak = new Float64Array(samples);
  // A tolerance is two standard deviations, truncated at three; one sample in 370 would be outside.
  const draw = (): number =>
    distribution === 'uniform'
      ? 2 * stream.uniform() - 1
      : Math.max(-1.5, Math.min(1.5, 0.5 * stream.normal()));
  const work = workState(response);
  for (let k = 0; k < samples; k++) {
    const own = shares.subarray(k * width, (k + 1) * width);
    for (let i = 0; i < width; i++) {
      // Every segment has dimensions of its own; their effects on the burning area add up.
      const { copies } = response.inputs[i];
      let sum = 0;
      for (let copy = 0; copy < copies; copy++) sum += draw();
      own[i] = sum / copies;
    }
    temperature[k] = coldest + stream.uniform() * (hottest - coldest);
    lnPeak[k] = lnPeakAt(response, own, temperature[k], work);
  }
  return { shares, temperature, lnPeak };
}

/** Index of the sample of a given rank, lowest first. */
export function indexAtPercentile(values: Float64Array, share: number): number {
  const order = Array.from(values, (_, k) => k).sort((a, b) => values[a] - values[b]);
  return order[Math.min(values.length - 1, Math.ceil(share * values.length) - 1)];
}
