import { linearFit } from '../../numerics';

/**
 * Thrust as a function of chamber pressure: F = slope·p·(1 + growth·s) + constant, with p absolute and s the fraction
 * of the pressure integral elapsed. This is exact for a nozzle that flows full: slope = efficiency·vacuum thrust
 * coefficient·throat area, constant = −exit area·ambient pressure.
 *
 * Source: Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), ch. 3 (quoted from memory, not verified) with F
 * = C_F·p·A_t.
 */
export interface ThrustLine {
  readonly slope: number;
  /** Relative change of throat area over the whole burn. */
  readonly growth: number;
  readonly constant: number;
  /** Covariance of slope, slope·growth and constant, row by row. */
  readonly covariance: Float64Array;
  /** Scatter about the line of the fitted means, N. */
  readonly scatter: number;
  /** Scatter/largest thrust fitted. */
  readonly relativeScatter: number;
  readonly degreesOfFreedom: number;
  /** Largest pressure and thrust that were fitted. */
  readonly pressureUpTo: number;
  readonly thrustUpTo: number;
  /** Residuals of the fitted means, N. */
  readonly residuals: Float64Array;
}

/** Prior knowledge of the nozzle. */
export interface NozzlePrior {
  readonly ambient: number;
  /** Throat area in m², where it was measured. */
  readonly throatArea?: number | undefined;
  readonly expansionRatio?: number | undefined;
  /** Growth of the throat area: `'fit'`: free; `'little'`: zero within about 1 %; `'none'`: zero. */
  readonly growth: 'fit' | 'little' | 'none';
}

/** Pressure, thrust and fraction of the pressure integral of the samples where both channels are valid. */
export interface ValidSamples {
  readonly pressure: Float64Array;
  readonly thrust: Float64Array;
  readonly share: Float64Array;
  /** Standard deviation of one sample of each channel. */
  readonly pressureNoise: number;
  readonly thrustNoise: number;
}

const maxMeans = 80;
const rounds = 12;

/** Kernel: fits the line to means of the valid samples; undefined where they are too few or do not rise together. */
export function fitThrustLine(good: ValidSamples, known: NozzlePrior): ThrustLine | undefined {
  const { pressure, thrust, share, pressureNoise, thrustNoise } = inMeans(good);
  const m = pressure.length;
  if (m < 2) return undefined;
  const largest = thrust.reduce((a, b) => Math.max(a, b));
  const { ambient, throatArea, expansionRatio, growth } = known;
  // The thrust at zero pressure is −ε·p_a·A_t, and A_t is about slope/1.6 (vacuum C_F of small nozzles, 1.3 to 1.9).
  const area = throatArea ?? Number.NaN;
  const ratio = expansionRatio ?? 5;
  const ratioDeviation = expansionRatio === undefined ? 3 : 0.15 * expansionRatio;
  const firstSlope = largest / pressure.reduce((a, b) => Math.max(a, b));
  const throat = Number.isNaN(area) ? firstSlope / 1.6 : area;
  const prior = {
    constant: -ratio * ambient * throat,
    deviation: ratioDeviation * ambient * throat + 0.002 * largest,
  };
  let scatter = 0.01 * largest;
  let residuals = new Float64Array(m);
  let fit: ReturnType<typeof linearFit> | undefined;
  // Noise in the pressure would flatten the line, so the pressures are moved towards it by their share of the noise
  // (alternating least squares, which converges to Deming's line: W. E. Deming, Statistical Adjustment of Data, 1943).
  let adjusted = pressure;
  // The priors are weighted against the scatter, which results from the fit itself.
  for (let round = 0; round < rounds; round++) {
    const growthDeviation = growth === 'fit' ? 0.3 : growth === 'little' ? 0.01 : 1e-9;
    const weights = new Float64Array(m + 2).fill(1);
    weights[m] = (scatter / prior.deviation) ** 2;
    weights[m + 1] = (scatter / (growthDeviation * firstSlope * pressure[m - 1])) ** 2;
    fit = linearFit({
      columns: [
        extended(adjusted, 0, 0),
        extended(
          adjusted.map((p, i) => p * (share[i] - 0.5)),
          0,
          pressure[m - 1],
        ),
        extended(new Float64Array(m).fill(1), 1, 0),
      ],
      observations: extended(thrust, prior.constant, 0),
      weights,
      scatter: 'known',
    });
    const [a, b, c] = fit.coefficients;
    residuals = thrust.map((f, i) => f - pressure[i] * (a + b * (share[i] - 0.5)) - c);
    const squares = residuals.reduce((sum, r) => sum + r * r, 0);
    // A few means may lie on a line by chance, so the scatter is at least their noise.
    const least = Math.hypot(thrustNoise, a * pressureNoise, 1e-4 * largest);
    scatter = Math.max(Math.sqrt(squares / Math.max(1, m - 2)), least);
    const ofPressure = (a * pressureNoise) ** 2;
    const part = ofPressure > 0 ? ofPressure / (ofPressure + thrustNoise ** 2) / a : 0;
    const moved = residuals;
    adjusted = pressure.map((p, i) => p + part * moved[i]);
  }
  if (fit === undefined || !(fit.coefficients[0] > 0)) return undefined;
  const [middle, slopeGrowth, constant] = fit.coefficients;
  return {
    // The fit is centred on half the burn; the result refers to its start.
    slope: middle - 0.5 * slopeGrowth,
    growth: slopeGrowth / (middle - 0.5 * slopeGrowth),
    constant,
    covariance: fit.covariance.map((v) => v * scatter * scatter),
    scatter,
    relativeScatter: scatter / largest,
    degreesOfFreedom: Math.max(1, m - 2),
    pressureUpTo: pressure.reduce((a, b) => Math.max(a, b)),
    thrustUpTo: largest,
    residuals,
  };
}

function extended(values: Float64Array, first: number, second: number): Float64Array {
  const longer = new Float64Array(values.length + 2);
  longer.set(values);
  longer[values.length] = first;
  longer[values.length + 1] = second;
  return longer;
}

/** Means of runs of samples, which average out the noise. */
function inMeans(good: ValidSamples): ValidSamples {
  const n = good.pressure.length;
  const means = Math.min(n, maxMeans);
  const at = (values: Float64Array): Float64Array =>
    Float64Array.from({ length: means }, (_, k) => {
      const from = Math.floor((k * n) / means);
      const to = Math.floor(((k + 1) * n) / means);
      let sum = 0;
      for (let i = from; i < to; i++) sum += values[i];
      return sum / (to - from);
    });
  const root = Math.sqrt(n / means);
  return {
    pressure: at(good.pressure),
    thrust: at(good.thrust),
    share: at(good.share),
    pressureNoise: good.pressureNoise / root,
    thrustNoise: good.thrustNoise / root,
  };
}

/** Kernel: thrust on the line and its standard deviation from the fit. */
export function thrustOnLine(
  line: ThrustLine,
  pressure: number,
  share: number,
): { value: number; deviation: number } {
  const value = line.slope * pressure * (1 + line.growth * share) + line.constant;
  return { value, deviation: deviationOfThrust(line, pressure, share) };
}

/** Kernel: pressure for a thrust on the line, and its standard deviation from the fit. */
export function pressureOnLine(
  line: ThrustLine,
  thrust: number,
  share: number,
): { value: number; deviation: number } {
  const perPressure = line.slope * (1 + line.growth * share);
  const value = (thrust - line.constant) / perPressure;
  return { value, deviation: deviationOfThrust(line, value, share) / perPressure };
}

function deviationOfThrust({ covariance }: ThrustLine, pressure: number, share: number): number {
  const row = [pressure, pressure * (share - 0.5), 1];
  let variance = 0;
  for (let i = 0; i < 3; i++) for (let j = 0; j < 3; j++) variance += row[i] * row[j] * covariance[3 * i + j];
  return Math.sqrt(Math.max(0, variance));
}
