import type { Firing } from '../../firing';
import { ambientSi } from '../../firing/ambient';
import { analysedRecord } from '../../firing/analysis/analysed-record';
import type { AnalysedTrace } from '../../firing/analysis/analysed-trace';
import { findMinimum } from '../../numerics';
import { fromSiValue, MeopError, type Quantity, type QuantityInput, table, unitOf } from '../../units';
import { refusal } from '../../units/refusal';

/** A single cause that could make a firing differ from its prediction. */
export type DifferenceCause = 'burning area' | 'throat area' | 'characteristic velocity' | 'burning rate';

/** How well one cause alone explains a measured trace. */
export interface DifferenceExplanation {
  readonly cause: DifferenceCause;
  /** What the predicted value must be multiplied by. */
  readonly factor: number;
  /** Root mean square of what it leaves over, as a share of the measured peaks. */
  readonly residual: number;
  /** Share of the difference that it takes away: 1 is all of it. */
  readonly explained: number;
  readonly note: string;
}

/** A prediction against its firing. */
export interface PredictionDifference {
  /** Shift that puts the 10 % point of the prediction on that of the firing. */
  readonly shift: Quantity<'time'>;
  /** Measured over predicted; undefined where a channel is missing from either. */
  readonly peakPressureRatio: number | undefined;
  readonly peakThrustRatio: number | undefined;
  readonly impulseRatio: number | undefined;
  readonly burnTimeRatio: number;
  /** Root mean square difference as a share of the measured peaks. */
  readonly residual: number;
  /** The best first. */
  readonly explanations: readonly DifferenceExplanation[];
  readonly cautions: readonly string[];
  toString(): string;
}

/** What is known beyond the two records. */
export interface DifferenceOptions {
  /** Of the burn law. Default 0.35, with a caution. */
  readonly exponent?: number;
  /** Pressure around the motor, for a record that does not say it and whose pressure is compared. */
  readonly ambientPressure?: QuantityInput<'absolute pressure'>;
}

interface Trace {
  readonly time: Float64Array;
  readonly values: Float64Array;
  readonly rest: number;
  readonly start: number;
  readonly end: number;
  readonly peak: number;
}

const points = 400;

/**
 * Compares a predicted and a measured firing, aligned at their 10 % points, and asks of each single cause which factor on
 * it would explain the measured traces best, and how well.
 *
 * Near equilibrium a factor f on area, c* or (inverse) throat area gives p·f^(1/(1−n)) and a time shorter by f^(n/(1−n));
 * one on the rate p·f^(1/(1−n)) and a time shorter by f^(1/(1−n)). Pressure alone cannot tell area from c* and throat;
 * thrust tells the throat, which it scales too.
 *
 * Source: logarithmic derivatives of the equilibrium pressure, Sutton & Biblarz, Rocket Propulsion Elements, 7th ed.
 * (2001), ch. 11.
 *
 * @throws MeopError `missing-field` where the two have no channel in common or a pressure no ambient pressure, `out-of-domain` for an exponent not below 1
 * @example ((a) => explainDifference(a, a).residual)(firing({ origin: 'measured', time: series([0, 1, 2, 3, 4, 5, 6], 's'), thrust: series([0, 0, 10, 10, 0, 0, 0], 'N') })) // => 0
 */
export function explainDifference(
  predicted: Firing,
  measured: Firing,
  options: DifferenceOptions = {},
): PredictionDifference {
  const { exponent = 0.35 } = options;
  if (!(exponent < 1 && exponent > -2))
    throw refusal('explainDifference', 'exponent', exponent, 'below 1 and above -2');
  const pressure = pair(predicted, measured, 'pressure', options.ambientPressure);
  const thrust = pair(predicted, measured, 'thrust', undefined);
  const lead = pressure ?? thrust;
  if (lead === undefined)
    throw new MeopError(
      'missing-field',
      'explainDifference: predicted and measured have neither pressure nor thrust in common',
      'measured',
    );
  const misfit = (timeFactor: number, pressureFactor: number, thrustFactor: number): number => {
    const parts = [
      ...(pressure ? [rms(pressure, timeFactor, pressureFactor)] : []),
      ...(thrust ? [rms(thrust, timeFactor, thrustFactor)] : []),
    ];
    return Math.sqrt(parts.reduce((sum, part) => sum + part * part, 0) / parts.length);
  };
  const residual = misfit(1, 1, 1);
  const explanations = causes(exponent)
    .map(({ cause, scale, note }) => {
      const of = (logFactor: number): number => {
        const { time, p, f } = scale(Math.exp(logFactor));
        return misfit(time, p, f);
      };
      const best = bestOf(of);
      return {
        cause,
        factor: Math.exp(best.x),
        residual: best.value,
        explained: residual > 0 ? 1 - best.value / residual : 0,
        note,
      };
    })
    .sort((a, b) => a.residual - b.residual);
  const cautions: string[] = [];
  if (options.exponent === undefined) cautions.push('the burn-law exponent is not given: 0.35 taken');
  if (!thrust) cautions.push('without thrust, area, c* and throat cannot be told apart');
  if (residual < 0.01) cautions.push('the prediction is within 1 %: there is little to explain');
  else if (explanations[0].explained < 0.5)
    cautions.push(
      'no single cause explains half of the difference: several at once, or one that changes during the burn (a flaw, an eroding throat)',
    );
  const [first, second] = explanations;
  if (residual >= 0.01 && second.residual < 1.15 * first.residual)
    cautions.push(
      sameTrace(first.cause) && sameTrace(second.cause)
        ? 'burning area and characteristic velocity change pressure and thrust alike, and no trace tells them apart: the propellant weighed does (c* from pressure integral, throat and mass), or the grain measured'
        : `${first.cause} and ${second.cause} explain it about equally well: weigh and measure to decide`,
    );
  const made: PredictionDifference = {
    shift: fromSiValue(lead.measured.start - lead.predicted.start, 'time', unitOf('s')),
    peakPressureRatio: pressure && pressure.measured.peak / pressure.predicted.peak,
    peakThrustRatio: thrust && thrust.measured.peak / thrust.predicted.peak,
    impulseRatio: thrust && integral(thrust.measured) / integral(thrust.predicted),
    burnTimeRatio: (lead.measured.end - lead.measured.start) / (lead.predicted.end - lead.predicted.start),
    residual,
    explanations,
    cautions,
    toString: () => differenceText(made),
    ...{ [Symbol.for('nodejs.util.inspect.custom')]: () => differenceText(made) },
  };
  return made;
}

const sameTrace = (cause: DifferenceCause): boolean =>
  cause === 'burning area' || cause === 'characteristic velocity';

/** How times, pressure and thrust go with a factor on each cause. */
function causes(n: number): readonly {
  readonly cause: DifferenceCause;
  readonly scale: (f: number) => { readonly time: number; readonly p: number; readonly f: number };
  readonly note: string;
}[] {
  const up = 1 / (1 - n);
  return [
    {
      cause: 'burning area',
      scale: (f) => ({ time: f ** (-n * up), p: f ** up, f: f ** up }),
      note: 'more surface than drawn: flaws, a bore too long, ends not inhibited',
    },
    {
      cause: 'throat area',
      scale: (f) => ({ time: f ** (n * up), p: f ** -up, f: f ** (1 - up) }),
      note: 'measure the throat, before and after',
    },
    {
      cause: 'characteristic velocity',
      // Thrust goes with pressure; what tells it from the area is the propellant weighed.
      scale: (f) => ({ time: f ** (-n * up), p: f ** up, f: f ** up }),
      note: 'c* follows from pressure integral, throat and weighed propellant',
    },
    {
      cause: 'burning rate',
      scale: (f) => ({ time: f ** -up, p: f ** up, f: f ** up }),
      note: 'batch, grain temperature or particle size: same impulse in another time',
    },
  ];
}

function bestOf(f: (x: number) => number): { readonly x: number; readonly value: number } {
  // The misfit has side valleys where edges pass each other: the valley is found by steps first.
  let start = 0;
  for (let x = -0.7; x <= 0.7001; x += 0.05) if (f(x) < f(start)) start = x;
  const found = findMinimum(f, {
    lower: start - 0.06,
    upper: start + 0.06,
    relativeTolerance: 1e-5,
    absoluteTolerance: 1e-6,
  });
  return { x: found.x, value: found.value };
}

interface TracePair {
  readonly predicted: Trace;
  readonly measured: Trace;
}

function pair(
  predicted: Firing,
  measured: Firing,
  channel: 'pressure' | 'thrust',
  around: QuantityInput<'absolute pressure'> | undefined,
): TracePair | undefined {
  const { [channel]: a } = analysedRecord(predicted).traces;
  const { [channel]: b } = analysedRecord(measured).traces;
  if (a === undefined || b === undefined) return undefined;
  const rest = (record: Firing): number =>
    channel === 'pressure' ? ambientSi(record, record.ambientPressure ?? around, 'explainDifference') : 0;
  return { predicted: traceAbove(a, rest(predicted)), measured: traceAbove(b, rest(measured)) };
}

function traceAbove({ time, values, edges }: AnalysedTrace, rest: number): Trace {
  const { start, end, peak } = edges(0.1, rest);
  return { time, values, rest, start, end, peak };
}

/** Root mean square of measured less scaled prediction, as a share of the measured peak, over both burns. */
function rms({ predicted, measured }: TracePair, timeFactor: number, valueFactor: number): number {
  const length = Math.max(measured.end - measured.start, (predicted.end - predicted.start) * timeFactor);
  let squares = 0;
  for (let k = 0; k <= points; k++) {
    const t = (1.1 * length * k) / points - 0.02 * length;
    const p = valueFactor * (at(predicted, predicted.start + t / timeFactor) - predicted.rest);
    const m = at(measured, measured.start + t) - measured.rest;
    squares += (m - p) ** 2;
  }
  return Math.sqrt(squares / (points + 1)) / measured.peak;
}

function at({ time, values, rest }: Trace, t: number): number {
  const n = time.length;
  if (t < time[0] || t > time[n - 1]) return rest;
  let low = 0;
  let high = n - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (time[middle] <= t) low = middle;
    else high = middle;
  }
  return values[low] + ((t - time[low]) / (time[high] - time[low])) * (values[high] - values[low]);
}

function integral({ time, values, rest }: Trace): number {
  let sum = 0;
  for (let i = 1; i < time.length; i++)
    sum += 0.5 * (values[i] + values[i - 1] - 2 * rest) * (time[i] - time[i - 1]);
  return sum;
}

function differenceText(difference: PredictionDifference): string {
  const { explanations, cautions, residual, burnTimeRatio } = difference;
  const ratio = (name: string, value: number | undefined): string[] =>
    value === undefined ? [] : [`  ${name} measured over predicted: ${value.toFixed(3)}`];
  return [
    `difference ${(100 * residual).toFixed(1)} % of peak, root mean square`,
    ...ratio('peak pressure', difference.peakPressureRatio),
    ...ratio('peak thrust', difference.peakThrustRatio),
    ...ratio('impulse', difference.impulseRatio),
    ...ratio('burn time', burnTimeRatio),
    table(
      explanations.map(({ cause, factor, explained, note }) => ({
        cause,
        factor: factor.toFixed(3),
        explains: `${(100 * explained).toFixed(0)} %`,
        note,
      })),
    ),
    ...cautions.map((caution) => `  caution: ${caution}`),
  ].join('\n');
}
