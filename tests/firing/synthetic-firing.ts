import type { RandomStream } from '../../src/numerics';

/** An invented firing whose truth is known: an analytic pressure curve, thrust by a nozzle that flows full. */
export interface SyntheticFiring {
  readonly time: Float64Array;
  readonly pressure: Float64Array;
  readonly thrust: Float64Array;
  readonly ambient: number;
  readonly throatDiameter: number;
  readonly expansionRatio: number;
  /** Truth at the sampled times, absolute pressure in Pa and thrust in N. */
  readonly truePeakPressure: number;
  readonly truePeakThrust: number;
  readonly trueImpulse: number;
  readonly clippedAt: number;
}

export interface SyntheticOptions {
  readonly rate: number;
  /** Largest gauge pressure the pressure channel can tell, as a share of the true peak; 1 or more for none. */
  readonly clip: number;
  readonly noise: number;
  readonly drift: number;
  /** Converter steps over the channel's range; 0 for none. */
  readonly steps: number;
  readonly gap: boolean;
  readonly cutOff: boolean;
}

const ambient = 101_325;

/** Pressure above ambient as a share of its peak, over a burn of one unit of time with its tail. */
function course(kind: number, tilt: number, x: number): number {
  const rise = 1 - Math.exp(-Math.max(0, x) / 0.02);
  const tail = x < 1 ? 1 : Math.exp(-(x - 1) / 0.03);
  const at = Math.min(1, Math.max(0, x));
  const body =
    kind === 0
      ? 1 - tilt * (2 * at - 1) ** 2 // arch
      : kind === 1
        ? 1 - tilt * (1 - at) // progressive
        : kind === 2
          ? 1 - tilt * at // regressive
          : 1 - 0.5 * tilt * (1 + Math.cos(2 * Math.PI * at)) ** 2 * 0.5; // hump
  return x <= 0 ? 0 : rise * body * tail;
}

/** Draws a firing of one of four courses and records it as a stand would. */
export function syntheticFiring(random: RandomStream, options: SyntheticOptions): SyntheticFiring {
  const { rate, clip, noise, drift, steps } = options;
  const kind = Math.floor(4 * random.uniform());
  const tilt = 0.15 + 0.5 * random.uniform();
  const peak = (2 + 6 * random.uniform()) * 1e6;
  const burn = 0.8 + 3 * random.uniform();
  const throatDiameter = (6 + 14 * random.uniform()) * 1e-3;
  const throatArea = (Math.PI / 4) * throatDiameter ** 2;
  const expansionRatio = 3 + 5 * random.uniform();
  const vacuum = 1.45 + 0.25 * random.uniform();
  const efficiency = 0.9 + 0.08 * random.uniform();
  const before = 1.5;
  const length =
    before + burn * (options.cutOff ? 1.0 + 0.06 * random.uniform() : 1.3) + (options.cutOff ? 0 : 2);
  const count = Math.floor(length * rate);
  const gapAt = before + burn * (0.2 + 0.6 * random.uniform());
  const gapLength = options.gap ? 0.03 * burn : 0;
  const thrustOf = (p: number): number =>
    p <= 0 ? 0 : Math.max(0, throatArea * (efficiency * vacuum * (p + ambient) - expansionRatio * ambient));
  const truth: number[] = [];
  const time: number[] = [];
  let trueImpulse = 0;
  let truePeak = 0;
  const phase = random.uniform() / rate;
  const fine = Math.max(1, Math.ceil(4000 / rate));
  for (let i = 0; i < count * fine; i++) {
    const t = phase + i / (rate * fine);
    const p = peak * course(kind, tilt, (t - before) / burn);
    trueImpulse += thrustOf(p) / (rate * fine);
    truePeak = Math.max(truePeak, p);
    if (i % fine !== 0 || (t > gapAt && t < gapAt + gapLength)) continue;
    time.push(t);
    truth.push(p);
  }
  const clippedAt = clip < 1 ? clip * truePeak : Number.POSITIVE_INFINITY;
  const thrustPeak = thrustOf(truePeak);
  const pressureRange = clip < 1 ? clippedAt : 1.3 * truePeak;
  const quantised = (value: number, range: number): number =>
    steps > 0 ? (Math.round((value / range) * steps) / steps) * range : value;
  const pressure = truth.map((p, i) => {
    const read = p * 1 + noise * truePeak * random.normal() + 0.3 * drift * truePeak * (time[i] / length);
    return Math.min(clippedAt, quantised(read, pressureRange)) + ambient;
  });
  const thrust = truth.map((p, i) =>
    quantised(
      thrustOf(p) + noise * thrustPeak * random.normal() + drift * thrustPeak * (time[i] / length),
      1.3 * thrustPeak,
    ),
  );
  return {
    time: Float64Array.from(time),
    pressure: Float64Array.from(pressure),
    thrust: Float64Array.from(thrust),
    ambient,
    throatDiameter,
    expansionRatio,
    truePeakPressure: truePeak + ambient,
    truePeakThrust: thrustPeak,
    trueImpulse,
    clippedAt: clippedAt + ambient,
  };
}
