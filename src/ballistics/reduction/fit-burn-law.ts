import { linearFit, median } from '../../numerics';
import {
  fromSiValue,
  inputs,
  length,
  list,
  MeopError,
  optional,
  printable,
  procedure,
  type Quantity,
  ratio,
  unitOf,
  type Values,
} from '../../units';
import { type BurnLaw, saintRobert } from '../burn-law';
import { ratePoint } from '../burn-law-inputs';
import { ambientAt, pressureOf, pressureRecord } from './firing-inputs';
import { ratesAlongBurn, traceInputs } from './rates-along-burn';

/** A firing as one point of a burn law: web/burn time at the effective pressure. */
const firingPoint = inputs(
  {
    ...pressureRecord,
    web: length('w', 'thickness of propellant burned', { example: '17 mm' }),
    exponent: optional(
      ratio('n', 'exponent of the effective pressure (mean of pⁿ)^(1/n), which has little effect'),
      0.35,
    ),
  },
  { meaning: 'a firing' },
);

/** A fitted burn law with its errors and outliers. */
export interface BurnLawFit {
  readonly law: BurnLaw;
  readonly exponent: number;
  /** Standard error of the exponent. */
  readonly exponentError: number;
  /** Rate at the geometric mean of the pressures, where its error is smallest. */
  readonly referenceRate: Quantity<'speed'>;
  /** Relative standard error of that rate. */
  readonly referenceRateError: number;
  readonly referencePressure: Quantity<'absolute pressure'>;
  /** Variance of ln a (in m/s and Pa), covariance, variance of n. The two are almost perfectly correlated. */
  readonly covariance: readonly [number, number, number];
  /** Root mean square of the residuals, in per cent of the rate. */
  readonly residualPercent: number;
  /** Indices of the points rejected as outliers, from 0. */
  readonly outliers: readonly number[];
  readonly pressures: Float64Array;
  readonly rates: Float64Array;
  readonly cautions: readonly string[];
  toString(): string;
}

const at = { procedure: 'fitBurnLaw', path: '' };

const fitInputs = {
  points: optional(list('measured burning rates', ratePoint, { min: 0 })),
  firings: optional(list('several firings, of which each gives one point', firingPoint, { min: 0 })),
  trace: optional(traceInputs),
};
type Given = Values<typeof fitInputs>;

/**
 * Fits r = a·pⁿ by least squares of ln r on ln p: to measured points, to several firings (web/burn time at the
 * effective pressure), or to the rate along one firing of a known grain. Outliers are rejected and reported.
 *
 * @throws MeopError `missing-field` for a record without pressure or ambient pressure, `too-few-points`, `out-of-domain` where all pressures are equal or the exponent is 1 or more
 * @example fitBurnLaw({ points: [{ pressure: '1 MPa', rate: '5 mm/s' }, { pressure: '4 MPa', rate: '10 mm/s' }] }).exponent.toFixed(6) // => '0.500000'
 */
export const fitBurnLaw = /* @__PURE__ */ procedure({
  name: at.procedure,
  title: 'Fit of a burn law to measurements',
  source:
    'Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), ch. 11 (law); ordinary least squares; outliers by their externally studentized residual (R. D. Cook and S. Weisberg, Residuals and Influence in Regression, 1982)',
  inputs: fitInputs,
  checks: [
    ({ points, firings, trace }) =>
      [points, firings, trace].filter((one) => one !== undefined).length === 1
        ? undefined
        : { code: 'missing-field', problem: 'exactly one of points, firings and trace is required' },
  ],
  gives: 'the burn law with the standard errors of its rate and exponent',
  example: {
    points: [
      { pressure: '1 MPa', rate: '5 mm/s' },
      { pressure: '4 MPa', rate: '10 mm/s' },
    ],
  },
  run: ({ points, firings = [], trace }: Given): BurnLawFit => {
    if (trace !== undefined) {
      const along = ratesAlongBurn(trace);
      // Neighbours on a trace share their errors: about twenty of them are equivalent to one independent point.
      return fitPoints(
        along.pressure,
        along.rate,
        along.cautions,
        Math.max(1, along.pressure.length / 20),
        false,
      );
    }
    const measured =
      points?.map(({ pressure, rate }) => ({ pressure: pressure.si, rate: rate.si })) ??
      firings.map(effectivePoint);
    return fitPoints(
      Float64Array.from(measured, ({ pressure }) => pressure),
      Float64Array.from(measured, ({ rate }) => rate),
      [],
      1,
      true,
    );
  },
});

/** Web/burn time at the effective pressure, between the 10 % points of pressure. */
function effectivePoint(
  { record, web, exponent, ambientPressure }: Values<typeof firingPoint.fields>,
  i: number,
): { readonly pressure: number; readonly rate: number } {
  const here = { ...at, path: `firings.${i}` };
  const trace = pressureOf(record, here);
  const { time, values: pressure } = trace;
  const edges = trace.edges(0.1, ambientAt(record, ambientPressure, here));
  let sum = 0;
  for (let k = edges.first + 1; k <= edges.last; k++)
    sum += 0.5 * (pressure[k] ** exponent + pressure[k - 1] ** exponent) * (time[k] - time[k - 1]);
  const mean = sum / (time[edges.last] - time[edges.first]);
  const point = { pressure: mean ** (1 / exponent), rate: web.si / (edges.end - edges.start) };
  if (point.pressure > 0 && point.rate > 0) return point;
  throw new MeopError({
    code: 'out-of-domain',
    procedure: at.procedure,
    path: here.path,
    problem: 'effective pressure and burning rate must be above zero',
  });
}

function fitPoints(
  pressures: Float64Array,
  rates: Float64Array,
  known: readonly string[],
  shared: number,
  rejects: boolean,
): BurnLawFit {
  if (pressures.length < 2)
    throw new MeopError({
      code: 'too-few-points',
      procedure: at.procedure,
      path: 'points',
      given: pressures.length,
      expected: 'at least 2 points; errors require 3',
    });
  const lnP = pressures.map(Math.log);
  const lnR = rates.map(Math.log);
  const outliers: number[] = [];
  let fit = lineThrough(lnP, lnR, outliers);
  while (rejects && pressures.length - outliers.length > 4) {
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
      `the ratio of maximum to minimum pressure is only ${span.toFixed(2)}, so the exponent is uncertain; add firings with other throat diameters`,
    );
  if (count <= 2) cautions.push('two points determine the law without an estimate of its error');
  for (const i of outliers)
    cautions.push(`point ${i} (${(pressures[i] / 1e6).toFixed(3)} MPa) is an outlier and was rejected`);
  const variance = scatter * scatter * shared;
  const exponentVariance = variance / spread;
  const levelVariance = variance / count;
  const reference = Math.exp(centre);
  const rate = Math.exp(level);
  const pressureOfSi = (si: number) =>
    fromSiValue<'absolute pressure'>(si, 'absolute pressure', unitOf('MPa'));
  const referenceRate = fromSiValue<'speed'>(rate, 'speed', unitOf('mm/s'));
  const referencePressure = pressureOfSi(reference);
  const law = saintRobert({
    referenceRate,
    referencePressure,
    exponent,
    characterisedFrom: pressureOfSi(Math.min(...pressures)),
    characterisedTo: pressureOfSi(Math.max(...pressures)),
    source: `fitted to ${count} points`,
  });
  const made = {
    law,
    exponent,
    exponentError: Math.sqrt(exponentVariance),
    referenceRate,
    referenceRateError: Math.sqrt(levelVariance),
    referencePressure,
    covariance: [
      levelVariance + centre * centre * exponentVariance,
      -centre * exponentVariance,
      exponentVariance,
    ] as const,
    residualPercent: 100 * fit.rms,
    outliers,
    pressures,
    rates,
    cautions,
  };
  return printable(made, () =>
    [
      `${law.toString()}`,
      `  n = ${exponent.toPrecision(4)} ± ${Math.sqrt(exponentVariance).toPrecision(2)}, residual ${(100 * fit.rms).toPrecision(3)} %`,
      ...cautions.map((caution) => `  caution: ${caution}`),
    ].join('\n'),
  );
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

function lineThrough(lnP: Float64Array, lnR: Float64Array, omitted: readonly number[]): LogLine {
  const x = lnP.filter((_, i) => !omitted.includes(i));
  const y = lnR.filter((_, i) => !omitted.includes(i));
  const centre = x.reduce((a, b) => a + b, 0) / x.length;
  const spread = x.reduce((sum, v) => sum + (v - centre) ** 2, 0);
  if (!(spread > 1e-12))
    throw new MeopError({
      code: 'out-of-domain',
      procedure: at.procedure,
      path: 'points',
      problem: 'all pressures are equal, so that the exponent cannot be determined',
    });
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
  omitted: readonly number[],
  all: LogLine,
): number | undefined {
  let worst: number | undefined;
  let most = 6;
  const typical =
    1.4826 * median(lnR.map((r, i) => Math.abs(r - all.level - all.exponent * (lnP[i] - all.centre))));
  for (let i = 0; i < lnP.length; i++) {
    if (omitted.includes(i)) continue;
    const others = lineThrough(lnP, lnR, [...omitted, i]);
    const predicted = others.level + others.exponent * (lnP[i] - others.centre);
    const leverage = 1 + 1 / others.count + (lnP[i] - others.centre) ** 2 / others.spread;
    // A minimum, so that points which lie on a line by coincidence do not reject all others.
    const deviation = Math.max(others.scatter, 0.3 * typical, 0.003) * Math.sqrt(leverage);
    const far = Math.abs(lnR[i] - predicted) / deviation;
    if (far > most) {
      most = far;
      worst = i;
    }
  }
  return worst;
}
