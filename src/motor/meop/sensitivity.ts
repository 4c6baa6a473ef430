import { variance } from '../../numerics';
import { fromSiValue, unitFor } from '../../units';
import { prettyUnit } from '../../units/format';
import type { SampledMotors } from './monte-carlo';
import { lnPeakAt, type PeakInput, type PeakResponse, workState } from './peak-response';

/** Effect of one input on the peak pressure. */
export interface PeakSensitivity {
  /** Path in the document, or `grain temperature`. */
  readonly input: string;
  /** Nominal value and tolerance, as a string. */
  readonly value: string;
  /** Relative change of the peak pressure at the lower and at the upper limit. */
  readonly atLower: number;
  readonly atUpper: number;
  /** Relative change of pressure per relative change of the value; for the temperature per kelvin. */
  readonly slope: number;
  /** Share of the variance of the sampled pressures, from the square of their correlation. */
  readonly shareOfVariance: number;
}

/** Sensitivities of the peak pressure, largest first. */
export function peakSensitivities(
  response: PeakResponse,
  drawn: SampledMotors,
  temperature: { readonly nominal: number; readonly coldest: number; readonly hottest: number },
): readonly PeakSensitivity[] {
  const { inputs } = response;
  const work = workState(response);
  const none = new Float64Array(inputs.length);
  const base = lnPeakAt(response, none, temperature.nominal, work);
  const rows = inputs.map((input, i): PeakSensitivity => {
    const alone = (share: number): number => {
      const shares = new Float64Array(inputs.length);
      shares[i] = share;
      return lnPeakAt(response, shares, temperature.nominal, work) - base;
    };
    const [lower, upper] = [alone(-1), alone(1)];
    const relative = input.plusMinus / Math.abs(input.value.si);
    return {
      input: input.name,
      value: `${input.value} ± ${toleranceText(input)}`,
      atLower: Math.expm1(lower),
      atUpper: Math.expm1(upper),
      slope: Number.isFinite(relative) ? (upper - lower) / (2 * relative) : 0,
      shareOfVariance: explainedShare(column(drawn.shares, inputs.length, i), drawn.lnPeak),
    };
  });
  const { nominal, coldest, hottest } = temperature;
  const heated = (kelvin: number): number => lnPeakAt(response, none, kelvin, work) - base;
  if (hottest > coldest)
    rows.push({
      input: 'grain temperature',
      value: `${(coldest - 273.15).toFixed(1)} to ${(hottest - 273.15).toFixed(1)} °C`,
      atLower: Math.expm1(heated(coldest)),
      atUpper: Math.expm1(heated(hottest)),
      slope: heated(nominal + 1),
      shareOfVariance: explainedShare(drawn.temperature, drawn.lnPeak),
    });
  return rows.sort((a, b) => b.shareOfVariance - a.shareOfVariance);
}

const column = (rows: Float64Array, width: number, i: number): Float64Array =>
  Float64Array.from({ length: rows.length / width }, (_, k) => rows[k * width + i]);

/** A tolerance in the unit of its value, which may have an origin: a difference of two values. */
function toleranceText({ value, plusMinus }: PeakInput): string {
  const upper = fromSiValue(value.si + plusMinus, value.kind, unitFor(value.kind, value.unit));
  const difference = upper.in(value.unit) - value.in(value.unit);
  return `${Number(difference.toPrecision(3))} ${prettyUnit(value.unit)}`.trimEnd();
}

/** The square of the correlation of two series. */
function explainedShare(x: Float64Array, y: Float64Array): number {
  const [vx, vy] = [variance(x), variance(y)];
  if (!(vx > 0 && vy > 0)) return 0;
  const mean = (values: Float64Array): number => values.reduce((sum, v) => sum + v, 0) / values.length;
  const [mx, my] = [mean(x), mean(y)];
  let covariance = 0;
  for (let k = 0; k < x.length; k++) covariance += (x[k] - mx) * (y[k] - my);
  covariance /= x.length - 1;
  return (covariance * covariance) / (vx * vy);
}
