import type { AnalysedRecord } from '../analysis/analysed-record';
import { interpolated } from '../cleaning/resample';
import { type BurnSamples, burnSamples } from './burn-samples';
import type { Clipping } from './clipping';
import { alignToLine, typicalLag } from './lag';
import type { RecoveredBand, RecoverFacts } from './recovery';
import { adaptiveParabola } from './smooth';
import { fitThrustLine, pressureOnLine, type ThrustLine, thrustOnLine } from './thrust-line';

/** Extrapolation of the line beyond the data above which a caution is added. */
const farOut = 1.5;

/**
 * Reconstructs one channel by the line between thrust and pressure; undefined where the other channel is not
 * sufficient.
 */
export function throughThrustLine(
  record: AnalysedRecord,
  channel: 'pressure' | 'thrust',
  clipping: Clipping,
  otherClipping: Clipping | undefined,
  facts: RecoverFacts,
): RecoveredBand | undefined {
  const { pressure, thrust } = record.traces;
  if (pressure === undefined || thrust === undefined) return undefined;
  const driver = channel === 'pressure' ? 'thrust' : 'pressure';
  const asRead = burnSamples(pressure, thrust, {
    ambient: facts.ambient,
    driver,
    pressureClipping: channel === 'pressure' ? clipping : otherClipping,
    thrustClipping: channel === 'thrust' ? clipping : otherClipping,
  });
  const samples = alignToLine(asRead, (each) => fitGood(each, facts));
  const driverGood = driver === 'thrust' ? samples.thrustGood : samples.pressureGood;
  const channelGood = driver === 'thrust' ? samples.pressureGood : samples.thrustGood;
  const lost = channelGood.reduce((sum, good) => sum + 1 - good, 0);
  const bothLost = channelGood.reduce((sum, good, i) => sum + (1 - good) * (1 - driverGood[i]), 0);
  if (lost === 0 || bothLost > 0.2 * lost) return undefined;
  const all = fitGood(samples, facts);
  if (all === undefined) return undefined;
  const lower = fitGood(belowShoulders(samples, channel, clipping, facts.ambient), facts);
  const { time } = samples;
  const raw = driver === 'thrust' ? samples.thrust : samples.pressure;
  const length = time[time.length - 1] - time[0];
  const spacing = length / Math.max(1, time.length - 1);
  const noise = driver === 'thrust' ? samples.thrustNoise : samples.pressureNoise;
  const smooth = adaptiveParabola(time, raw, {
    narrowest: 4.5 * spacing,
    widest: Math.max(4.5 * spacing, Math.min(0.1 * length, 0.4 * spanOf(clipping))),
    noise,
  });
  const untimed = timingError(samples, facts.ambient, spacing);
  const drawn = (line: ThrustLine): Drawn => drawOut(line, channel, samples, channelGood, smooth, untimed);
  const first = drawn(all);
  const second = lower && drawn(lower);
  // The rounded shoulders of a soft limit would lower the line.
  const bends =
    second !== undefined &&
    second.peak - first.peak > Math.max(0.03 * first.peak, second.deviation[second.best]);
  const { line, value, deviation, best, goodUpTo } = bends ? second : first;
  const extrapolation = value[best] / goodUpTo;
  const cautions = [
    ...(extrapolation > farOut
      ? [
          `The ${channel} is extrapolated to ${extrapolation.toFixed(2)} times its largest valid value. The interval assumes that the nozzle behaves the same there.`,
        ]
      : []),
    ...(bends
      ? [`The ${channel} compresses below its limit. Only values well below the limit were fitted.`]
      : []),
    ...(line.relativeScatter > 0.03
      ? [
          `Thrust and pressure fit their line only within ${(100 * line.relativeScatter).toFixed(1)} %. Check for lag, friction or a zero error.`,
        ]
      : []),
    ...(bothLost > 0
      ? [
          `The ${driver} is also clipped during part of the interval. There the confidence interval is too low.`,
        ]
      : []),
    ...(Math.abs(line.growth) > 0.1
      ? [
          `The best fit includes a change of throat area by ${(100 * line.growth).toFixed(0)} % over the burn. Measure the throat.`,
        ]
      : []),
  ];
  const at = record.time.si;
  return {
    method: 'thrust coefficient',
    value: interpolated(time, value, at),
    deviation: interpolated(time, deviation, at),
    peak: {
      value: value[best],
      low: Math.max(clipping.level, value[best] - deviation[best]),
      high: value[best] + deviation[best],
    },
    fit: {
      points: line.residuals.length,
      relativeScatter: line.relativeScatter,
      residuals: line.residuals,
      slope: line.slope,
      constant: line.constant,
      throatGrowth: line.growth,
      extrapolation,
    },
    note: `line of thrust on pressure, ${line.residuals.length} means of valid samples of both channels`,
    cautions,
  };
}

interface Drawn {
  readonly line: ThrustLine;
  readonly value: Float64Array;
  /** Half-width of the 95 % confidence interval. */
  readonly deviation: Float64Array;
  /** Index of the highest value among the invalid samples. */
  readonly best: number;
  readonly peak: number;
  readonly goodUpTo: number;
}

/** The clipped channel by a line, at all samples, from the smoothed other channel. */
function drawOut(
  line: ThrustLine,
  channel: 'pressure' | 'thrust',
  { time, share }: BurnSamples,
  channelGood: Uint8Array,
  smooth: ReturnType<typeof adaptiveParabola>,
  untimed: number,
): Drawn {
  const value = new Float64Array(time.length);
  const deviation = new Float64Array(time.length);
  const t95 = 1.96 + 2.4 / line.degreesOfFreedom;
  const goodUpTo = channel === 'pressure' ? line.pressureUpTo : line.thrustUpTo;
  const perDriver = channel === 'pressure' ? 1 / line.slope : line.slope;
  let best = -1;
  for (let i = 0; i < time.length; i++) {
    const on =
      channel === 'pressure'
        ? pressureOnLine(line, smooth.values[i], share[i])
        : thrustOnLine(line, smooth.values[i], share[i]);
    // The line is an idealisation, and zeros drift: 0.2 % of the value and 0.5 % of the extrapolated part are added
    // (engineering judgement of this library; tests/firing checks the coverage of the interval on synthetic firings).
    const beyond = Math.hypot(0.005 * Math.max(0, on.value - goodUpTo), 0.002 * on.value);
    value[i] = on.value;
    const late = channel === 'pressure' ? untimed / line.slope : untimed;
    deviation[i] = t95 * Math.hypot(on.deviation, smooth.deviation[i] * perDriver, beyond, late);
    if (channelGood[i] === 0 && (best < 0 || value[i] > value[best])) best = i;
  }
  return { line, value, deviation, best, peak: value[best], goodUpTo };
}

/**
 * Standard deviation of thrust due to the unknown lag between the channels, N: loggers read them in turn, and lines and
 * amplifiers lag. Where valid samples both rise and fall, the lag appears as scatter and cancels. Where they only rise
 * or only fall, it shifts the whole line and is not detectable.
 */
function timingError(samples: BurnSamples, ambient: number, spacing: number): number {
  const { time, pressure, thrust, pressureGood, thrustGood } = samples;
  let change = 0;
  let count = 0;
  const top = (values: Float64Array, good: Uint8Array): number =>
    values.reduce((most, value, i) => (good[i] === 1 && value > most ? value : most), 0);
  const minThrust = 0.08 * top(thrust, thrustGood);
  const minPressure = ambient + 0.125 * (top(pressure, pressureGood) - ambient);
  for (let i = 1; i < time.length - 1; i++) {
    if (pressureGood[i] === 0 || thrustGood[i] === 0) continue;
    if (thrust[i] < minThrust || pressure[i] < minPressure) continue;
    change += (thrust[i + 1] - thrust[i - 1]) / (time[i + 1] - time[i - 1]);
    count++;
  }
  return count === 0 ? 0 : Math.abs(change / count) * Math.hypot(typicalLag, spacing / Math.sqrt(3));
}
/** The samples without those in the upper 20 % below the limit, where a soft limit compresses. */
function belowShoulders(
  samples: BurnSamples,
  channel: 'pressure' | 'thrust',
  { level }: Clipping,
  ambient: number,
): BurnSamples {
  const values = channel === 'pressure' ? samples.pressure : samples.thrust;
  const rest = channel === 'pressure' ? ambient : 0;
  const good = channel === 'pressure' ? samples.pressureGood : samples.thrustGood;
  const lower = good.map((each, i) => (values[i] < rest + 0.8 * (level - rest) ? each : 0));
  return channel === 'pressure' ? { ...samples, pressureGood: lower } : { ...samples, thrustGood: lower };
}

const spanOf = (clipping: Clipping): number =>
  clipping.spans.reduce((sum, { from, to }) => sum + to - from, 0);

/**
 * The line through the valid samples of both channels while the nozzle flows full: the lowest eighth of the pressure is
 * excluded.
 */
function fitGood(samples: BurnSamples, facts: RecoverFacts): ThrustLine | undefined {
  const { pressure, thrust, pressureGood, thrustGood, share } = samples;
  let pressureTop = 0;
  let thrustTop = 0;
  for (let i = 0; i < pressure.length; i++) {
    if (pressureGood[i] === 0 || thrustGood[i] === 0) continue;
    pressureTop = Math.max(pressureTop, pressure[i] - facts.ambient);
    thrustTop = Math.max(thrustTop, thrust[i]);
  }
  const keep: number[] = [];
  for (let i = 0; i < pressure.length; i++)
    if (
      pressureGood[i] === 1 &&
      thrustGood[i] === 1 &&
      pressure[i] - facts.ambient > 0.125 * pressureTop &&
      thrust[i] > 0.08 * thrustTop
    )
      keep.push(i);
  const index = Int32Array.from(keep);
  const pick = (values: Float64Array): Float64Array => Float64Array.from(index, (i) => values[i]);
  return fitThrustLine(
    {
      pressure: pick(pressure),
      thrust: pick(thrust),
      share: pick(share),
      pressureNoise: samples.pressureNoise,
      thrustNoise: samples.thrustNoise,
    },
    {
      ambient: facts.ambient,
      throatArea: facts.throatArea,
      expansionRatio: facts.expansionRatio,
      growth: facts.throatGrowth,
    },
  );
}
