import type { Firing } from '../../firing';
import { analysedRecord } from '../../firing/analysis/analysed-record';
import type { AnalysedTrace } from '../../firing/analysis/analysed-trace';
import { firingInput } from '../../firing/firing';
import { findMinimum } from '../../numerics';
import {
  fromSiValue,
  MeopError,
  optional,
  printable,
  procedure,
  type Quantity,
  ratio,
  table,
  unitOf,
  type Values,
} from '../../units';
import { causeNames, causes, type DifferenceCause, sameTrace } from './difference-causes';
import { ambientAt, pressureRecord } from './firing-inputs';

/** The extent to which one cause alone explains a measured trace. */
export interface DifferenceExplanation {
  readonly id: DifferenceCause;
  /** Name of the cause. */
  readonly cause: string;
  /** Factor on the predicted value. */
  readonly factor: number;
  /** Root mean square of the remaining difference/measured peaks. */
  readonly residual: number;
  /** Fraction of the difference that it explains; 1 is all of it. */
  readonly explained: number;
  readonly note: string;
}

/** Comparison of a prediction with its firing. */
export interface PredictionDifference {
  /** Time shift that aligns the 10 % points of prediction and firing. */
  readonly shift: Quantity<'time'>;
  /** Measured/predicted; undefined where either lacks the channel. */
  readonly peakPressureRatio: number | undefined;
  readonly peakThrustRatio: number | undefined;
  readonly impulseRatio: number | undefined;
  readonly burnTimeRatio: number;
  /** Root mean square difference/measured peaks. */
  readonly residual: number;
  /** The best first. */
  readonly explanations: readonly DifferenceExplanation[];
  readonly cautions: readonly string[];
  toString(): string;
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

const at = { procedure: 'explainDifference', path: '' };

const differenceInputs = {
  predicted: firingInput,
  measured: firingInput,
  exponent: optional(
    ratio('n', 'pressure exponent of the burn law; 0.35 is assumed, with a caution, if omitted', {
      above: -2,
      below: 1,
    }),
  ),
  ambientPressure: pressureRecord.ambientPressure,
};
type Given = Values<typeof differenceInputs>;

/**
 * Compares a predicted and a measured firing, aligned at their 10 % points, and finds for each single cause the factor that
 * explains the measured traces best, and to what extent.
 *
 * Near equilibrium a factor f on area, c* or (inverse) throat area gives p·f^(1/(1−n)) and a time shorter by f^(n/(1−n));
 * one on the rate p·f^(1/(1−n)) and a time shorter by f^(1/(1−n)). Pressure alone does not distinguish area from c* and throat;
 * thrust distinguishes the throat, which scales it too.
 *
 * @throws MeopError `missing-field` where the two have no channel in common or a pressure has no ambient pressure
 * @example ((a) => explainDifference({ predicted: a, measured: a }).residual)(firing({ origin: 'measured', time: series([0, 1, 2, 3, 4, 5, 6], 's'), thrust: series([0, 0, 10, 10, 0, 0, 0], 'N') })) // => 0
 */
export const explainDifference = /* @__PURE__ */ procedure({
  name: at.procedure,
  title: 'Possible causes of a difference between prediction and firing',
  source:
    'logarithmic derivatives of the equilibrium pressure, Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), ch. 11',
  inputs: differenceInputs,
  gives: 'ratios of the two firings and, for each single cause, the factor that explains the difference best',
  example:
    "explainDifference({ predicted: firing({ origin: 'predicted', time: series([0, 1, 2, 3, 4, 5, 6], 's'), thrust: series([0, 0, 12, 10, 0, 0, 0], 'N') }), measured: firing({ origin: 'measured', time: series([0, 1, 2, 3, 4, 5, 6], 's'), thrust: series([0, 0, 10, 10, 0, 0, 0], 'N') }), exponent: 0.32 })",
  run: explanationOf,
});

function explanationOf({ predicted, measured, ...options }: Given): PredictionDifference {
  const { exponent = 0.35 } = options;
  const pressure = pair(predicted, measured, 'pressure', options.ambientPressure);
  const thrust = pair(predicted, measured, 'thrust', undefined);
  const lead = pressure ?? thrust;
  if (lead === undefined)
    throw new MeopError({
      code: 'missing-field',
      procedure: at.procedure,
      path: 'measured',
      expected: 'pressure or thrust, in both firings',
    });
  const misfit = (timeFactor: number, pressureFactor: number, thrustFactor: number): number => {
    const parts = [
      ...(pressure ? [rms(pressure, timeFactor, pressureFactor)] : []),
      ...(thrust ? [rms(thrust, timeFactor, thrustFactor)] : []),
    ];
    return Math.sqrt(parts.reduce((sum, part) => sum + part * part, 0) / parts.length);
  };
  const residual = misfit(1, 1, 1);
  const explanations = causes(exponent)
    .map(({ id, scale, note }) => {
      const of = (logFactor: number): number => {
        const { time, p, f } = scale(Math.exp(logFactor));
        return misfit(time, p, f);
      };
      const best = bestOf(of);
      return {
        id,
        cause: causeNames[id],
        factor: Math.exp(best.x),
        residual: best.value,
        explained: residual > 0 ? 1 - best.value / residual : 0,
        note,
      };
    })
    .sort((a, b) => a.residual - b.residual);
  const cautions: string[] = [];
  if (options.exponent === undefined) cautions.push('exponent not specified; assumed 0.35');
  if (!thrust) cautions.push('without thrust, area, c* and throat cannot be distinguished');
  if (residual < 0.01) cautions.push('the difference from the prediction is less than 1 %');
  else if (explanations[0].explained < 0.5)
    cautions.push(
      'no single cause explains half of the difference; several may act together, or one may change during the burn (a flaw, throat erosion)',
    );
  const [first, second] = explanations;
  if (residual >= 0.01 && second.residual < 1.15 * first.residual)
    cautions.push(
      sameTrace(first.id) && sameTrace(second.id)
        ? 'burning area and characteristic velocity have the same effect on pressure and thrust, and no trace distinguishes them; weigh the propellant (c* from pressure integral, throat and mass) or measure the grain'
        : `${first.cause} and ${second.cause} explain the difference about equally well; weigh and measure to distinguish them`,
    );
  const made: PredictionDifference = printable(
    {
      shift: fromSiValue<'time'>(lead.measured.start - lead.predicted.start, 'time', unitOf('s')),
      peakPressureRatio: pressure && pressure.measured.peak / pressure.predicted.peak,
      peakThrustRatio: thrust && thrust.measured.peak / thrust.predicted.peak,
      impulseRatio: thrust && integral(thrust.measured) / integral(thrust.predicted),
      burnTimeRatio: (lead.measured.end - lead.measured.start) / (lead.predicted.end - lead.predicted.start),
      residual,
      explanations,
      cautions,
    },
    () => differenceText(made),
  );
  return made;
}

function bestOf(f: (x: number) => number): { readonly x: number; readonly value: number } {
  // The misfit has local minima where edges cross: the global one is located by steps first.
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
  around: Quantity<'absolute pressure'> | undefined,
): TracePair | undefined {
  const { [channel]: a } = analysedRecord(predicted).traces;
  const { [channel]: b } = analysedRecord(measured).traces;
  if (a === undefined || b === undefined) return undefined;
  const rest = (record: Firing): number =>
    channel === 'pressure' ? ambientAt(record, record.ambientPressure ?? around, at) : 0;
  return { predicted: traceAbove(a, rest(predicted)), measured: traceAbove(b, rest(measured)) };
}

function traceAbove({ time, values, edges }: AnalysedTrace, rest: number): Trace {
  const { start, end, peak } = edges(0.1, rest);
  return { time, values, rest, start, end, peak };
}

/** Root mean square of (measured − scaled prediction)/measured peak, over both burns. */
function rms({ predicted, measured }: TracePair, timeFactor: number, valueFactor: number): number {
  const length = Math.max(measured.end - measured.start, (predicted.end - predicted.start) * timeFactor);
  let squares = 0;
  for (let k = 0; k <= points; k++) {
    const t = (1.1 * length * k) / points - 0.02 * length;
    const p = valueFactor * (valueAt(predicted, predicted.start + t / timeFactor) - predicted.rest);
    const m = valueAt(measured, measured.start + t) - measured.rest;
    squares += (m - p) ** 2;
  }
  return Math.sqrt(squares / (points + 1)) / measured.peak;
}

function valueAt({ time, values, rest }: Trace, t: number): number {
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
    value === undefined ? [] : [`  ${name} measured/predicted: ${value.toFixed(3)}`];
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
