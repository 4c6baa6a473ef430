import type { Firing } from '../../firing';
import { ambientSi } from '../../firing/ambient';
import { analysedRecord } from '../../firing/analysis/analysed-record';
import { linearFit, median } from '../../numerics';
import {
  type Argument,
  fromSiValue,
  MeopError,
  type Quantity,
  type QuantityInput,
  readInput,
  unitOf,
} from '../../units';
import { type BurnLaw, saintRobert } from '../burn-law';
import type { ratePoint } from '../burn-law-inputs';

type LawPoint = Argument<typeof ratePoint>;

import { ratesAlongBurn, type TraceInput } from './rates-along-burn';

/** A firing as one point of a burn law: web over burn time at the effective pressure. */
export interface FiringPoint {
  readonly record: Firing;
  /** Pressure around the motor. Default: that of the record; one of the two is needed. */
  readonly ambientPressure?: QuantityInput<'absolute pressure'>;
  /** Propellant thickness burned. */
  readonly web: QuantityInput<'length'>;
  /** Exponent for the effective pressure (mean of pⁿ)^(1/n). Default 0.35; it matters little. */
  readonly exponent?: number;
}

/** What a burn law is fitted to. */
export type BurnLawFitInput =
  | { readonly points: readonly LawPoint[] }
  | { readonly firings: readonly FiringPoint[] }
  | { readonly trace: TraceInput };

/** A fitted burn law, how well it is known, and what did not fit. */
export interface BurnLawFit {
  readonly law: BurnLaw;
  readonly exponent: number;
  /** Standard error of the exponent. */
  readonly exponentError: number;
  /** Rate at the geometric mean of the pressures, where it is known best. */
  readonly referenceRate: Quantity<'speed'>;
  /** As a share. */
  readonly referenceRateError: number;
  readonly referencePressure: Quantity<'absolute pressure'>;
  /** Of ln a (in m/s and Pa) and n: variance, covariance, variance. They are all but perfectly correlated. */
  readonly covariance: readonly [number, number, number];
  /** Root mean square of the residuals, in per cent of the rate. */
  readonly residualPercent: number;
  /** Points set aside as outliers, counted from 0. */
  readonly outliers: readonly number[];
  readonly pressures: Float64Array;
  readonly rates: Float64Array;
  readonly cautions: readonly string[];
  toString(): string;
}

/**
 * Fits r = a·pⁿ by least squares of ln r on ln p: to measured points, to several firings (web over burn time at the
 * effective pressure), or to the rate along one firing of a known grain. Points that the others disown are set aside
 * and named.
 *
 * Sources: Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), ch. 11 (law); ordinary least squares; outliers by
 * their externally studentized residual (R. D. Cook and S. Weisberg, Residuals and Influence in Regression, 1982).
 *
 * @throws MeopError `missing-field` for a record without pressure or ambient pressure, `too-few-points`, `out-of-domain` where all pressures are equal or the exponent comes out as 1 or more
 * @example fitBurnLaw({ points: [{ pressure: '1 MPa', rate: '5 mm/s' }, { pressure: '4 MPa', rate: '10 mm/s' }] }).exponent.toFixed(6) // => '0.500000'
 */
export function fitBurnLaw(input: BurnLawFitInput): BurnLawFit {
  if ('trace' in input) {
    const along = ratesAlongBurn(input.trace);
    // Neighbours on a trace share their errors: some twenty of them are worth counting as independent.
    return fitPoints(
      along.pressure,
      along.rate,
      along.cautions,
      Math.max(1, along.pressure.length / 20),
      false,
    );
  }
  const points = 'points' in input ? input.points.map(readPoint) : input.firings.map(firingPoint);
  return fitPoints(
    Float64Array.from(points, ({ pressure }) => pressure),
    Float64Array.from(points, ({ rate }) => rate),
    [],
    1,
    true,
  );
}

interface PointSi {
  readonly pressure: number;
  readonly rate: number;
}

function readPoint({ pressure, rate }: LawPoint, i: number): PointSi {
  return positive(
    {
      pressure: readInput('absolute pressure', `points[${i}].pressure`, pressure, 'fitBurnLaw').si,
      rate: readInput('speed', `points[${i}].rate`, rate, 'fitBurnLaw').si,
    },
    `points[${i}]`,
  );
}

function positive(point: PointSi, path: string): PointSi {
  if (point.pressure > 0 && point.rate > 0) return point;
  throw new MeopError('out-of-domain', `fitBurnLaw: ${path}: pressure and rate above 0 are expected`, path);
}

/** Web over burn time at the effective pressure, between the 10 % points of pressure. */
function firingPoint({ record, web, exponent = 0.35, ambientPressure }: FiringPoint, i: number): PointSi {
  const trace = analysedRecord(record).traces.pressure;
  const path = `firings[${i}]`;
  if (trace === undefined)
    throw new MeopError('missing-field', `fitBurnLaw: ${path}: the record has no pressure`, path);
  const { time, values: pressure } = trace;
  const edges = trace.edges(0.1, ambientSi(record, ambientPressure, `fitBurnLaw: ${path}`));
  let sum = 0;
  for (let k = edges.first + 1; k <= edges.last; k++)
    sum += 0.5 * (pressure[k] ** exponent + pressure[k - 1] ** exponent) * (time[k] - time[k - 1]);
  const mean = sum / (time[edges.last] - time[edges.first]);
  const thickness = readInput('length', `${path}.web`, web, 'fitBurnLaw').si;
  return positive({ pressure: mean ** (1 / exponent), rate: thickness / (edges.end - edges.start) }, path);
}

function fitPoints(
  pressures: Float64Array,
  rates: Float64Array,
  known: readonly string[],
  shared: number,
  setAside: boolean,
): BurnLawFit {
  if (pressures.length < 2)
    throw new MeopError(
      'too-few-points',
      `fitBurnLaw: ${pressures.length} points given; a law needs 2, its errors 3`,
      'points',
      {
        value: pressures.length,
      },
    );
  const lnP = pressures.map(Math.log);
  const lnR = rates.map(Math.log);
  const outliers: number[] = [];
  let fit = lineThrough(lnP, lnR, outliers);
  while (setAside && pressures.length - outliers.length > 4) {
    const worst = worstOutlier(lnP, lnR, outliers, fit);
    if (worst === undefined) break;
    outliers.push(worst);
    fit = lineThrough(lnP, lnR, outliers);
  }
  const { exponent, level, centre, scatter, spread, count } = fit;
  const cautions = [...known];
  const span = Math.exp(lnP.reduce((a, b) => Math.max(a, b)) - lnP.reduce((a, b) => Math.min(a, b)));
  if (span < 1.5)
    cautions.push(
      `the pressures span only ${span.toFixed(2)} to 1: the exponent rests on scatter; fire at other throats too`,
    );
  if (count <= 2) cautions.push('two points give a law and no measure of how good it is');
  for (const i of outliers)
    cautions.push(`point ${i} (${(pressures[i] / 1e6).toFixed(3)} MPa) is an outlier and was set aside`);
  const variance = scatter * scatter * shared;
  const exponentVariance = variance / spread;
  const levelVariance = variance / count;
  const reference = Math.exp(centre);
  const rate = Math.exp(level);
  const law = saintRobert({
    referenceRate: fromSiValue<'speed'>(rate, 'speed', unitOf('mm/s')),
    referencePressure: fromSiValue<'absolute pressure'>(reference, 'absolute pressure', unitOf('MPa')),
    exponent,
    characterisedFrom: fromSiValue<'absolute pressure'>(
      Math.min(...pressures),
      'absolute pressure',
      unitOf('MPa'),
    ),
    characterisedTo: fromSiValue<'absolute pressure'>(
      Math.max(...pressures),
      'absolute pressure',
      unitOf('MPa'),
    ),
    source: `fitted to ${count} points`,
  });
  const made: BurnLawFit = {
    law,
    exponent,
    exponentError: Math.sqrt(exponentVariance),
    referenceRate: fromSiValue(rate, 'speed', unitOf('mm/s')),
    referenceRateError: Math.sqrt(levelVariance),
    referencePressure: fromSiValue(reference, 'absolute pressure', unitOf('MPa')),
    covariance: [
      levelVariance + centre * centre * exponentVariance,
      -centre * exponentVariance,
      exponentVariance,
    ],
    residualPercent: 100 * fit.rms,
    outliers,
    pressures,
    rates,
    cautions,
    toString: () =>
      [
        `${law.toString()}`,
        `  n = ${exponent.toPrecision(4)} ± ${Math.sqrt(exponentVariance).toPrecision(2)}, scatter ${(100 * fit.rms).toPrecision(3)} %`,
        ...cautions.map((caution) => `  caution: ${caution}`),
      ].join('\n'),
  };
  return made;
}

interface LogLine {
  readonly exponent: number;
  /** ln r at the centre. */
  readonly level: number;
  /** Mean of ln p. */
  readonly centre: number;
  /** Standard deviation of ln r about the line; and the plain root mean square. */
  readonly scatter: number;
  readonly rms: number;
  /** Sum of squares of ln p about its mean. */
  readonly spread: number;
  readonly count: number;
}

function lineThrough(lnP: Float64Array, lnR: Float64Array, leftOut: readonly number[]): LogLine {
  const x = lnP.filter((_, i) => !leftOut.includes(i));
  const y = lnR.filter((_, i) => !leftOut.includes(i));
  const centre = x.reduce((a, b) => a + b, 0) / x.length;
  const spread = x.reduce((sum, v) => sum + (v - centre) ** 2, 0);
  if (!(spread > 1e-12))
    throw new MeopError(
      'out-of-domain',
      'fitBurnLaw: all pressures are equal: no exponent can be told',
      'points',
    );
  const line =
    x.length > 2
      ? linearFit({ columns: [x.map(() => 1), x.map((v) => v - centre)], observations: y })
      : { coefficients: [(y[0] + y[1]) / 2, (y[1] - y[0]) / (x[1] - x[0])], residuals: [0, 0] };
  const { coefficients, residuals } = line;
  const squares = Array.from(residuals).reduce((sum, r) => sum + r * r, 0);
  return {
    exponent: coefficients[1],
    level: coefficients[0],
    centre,
    scatter: x.length > 2 ? Math.sqrt(squares / (x.length - 2)) : 0,
    rms: Math.sqrt(squares / Math.max(1, x.length - 2)),
    spread,
    count: x.length,
  };
}

/** The point farthest from the line of the others, where it is beyond what chance does: six of their deviations. */
function worstOutlier(
  lnP: Float64Array,
  lnR: Float64Array,
  leftOut: readonly number[],
  all: LogLine,
): number | undefined {
  let worst: number | undefined;
  let most = 6;
  const typical =
    1.4826 * median(lnR.map((r, i) => Math.abs(r - all.level - all.exponent * (lnP[i] - all.centre))));
  for (let i = 0; i < lnP.length; i++) {
    if (leftOut.includes(i)) continue;
    const others = lineThrough(lnP, lnR, [...leftOut, i]);
    const predicted = others.level + others.exponent * (lnP[i] - others.centre);
    const leverage = 1 + 1 / others.count + (lnP[i] - others.centre) ** 2 / others.spread;
    // A floor, so that points which lie on a line by luck do not disown every other.
    const deviation = Math.max(others.scatter, 0.3 * typical, 0.003) * Math.sqrt(leverage);
    const far = Math.abs(lnR[i] - predicted) / deviation;
    if (far > most) {
      most = far;
      worst = i;
    }
  }
  return worst;
}
