import { type Firing, summarize } from '../firing';
import { firingInput } from '../firing/firing';
import {
  fromSiArray,
  fromSiValue,
  MeopError,
  printable,
  procedure,
  type Quantity,
  type Series,
  table,
  unitOf,
} from '../units';

/** Comparison of two firings: `other`/`reference`, or the difference between them. */
export interface FiringComparison {
  /** Peak pressure of the other/that of the reference. */
  readonly peakPressureRatio: number | undefined;
  readonly peakThrustRatio: number | undefined;
  readonly totalImpulseRatio: number | undefined;
  /** Burn time of the other/that of the reference, by the 10 % rule of their summaries. */
  readonly burnTimeRatio: number | undefined;
  /** Time of peak pressure of each. */
  readonly timeOfPeak: { readonly reference: Quantity<'time'>; readonly other: Quantity<'time'> } | undefined;
  /** Times of the differences below, from the first 10 % point of each firing. */
  readonly time: Series<'time'>;
  /** Pressure of the other minus that of the reference. */
  readonly pressureDifference: Series<'pressure difference'> | undefined;
  readonly thrustDifference: Series<'force'> | undefined;
  /** Root mean square of the pressure difference/mean pressure of the reference. */
  readonly pressureDeviation: number | undefined;
  readonly thrustDeviation: number | undefined;
  /** Additional burning area of the other, by burned depth, where the area of both is known. */
  readonly addedArea: { readonly depth: Series<'length'>; readonly area: Series<'area'> } | undefined;
  toString(): string;
}

const points = 400;

/**
 * Compares two firings, predicted or measured in any combination: a cracked motor with the flaw-free one, a prediction with its
 * log. The traces are aligned at their first 10 % points, so that ignition delay has no effect.
 *
 * @throws MeopError `nothing-to-compare` where the two have neither pressure nor thrust in common; `nothing-to-sum-up` where
 * one of them never rises above zero
 * @example compareFirings({ reference: firing({ origin: 'predicted', time: series([0, 1, 2], 's'), thrust: series([0, 5, 0], 'N') }), other: firing({ origin: 'measured', time: series([0, 1, 2], 's'), thrust: series([0, 6, 0], 'N') }) }).peakThrustRatio // => 1.2
 */
export const compareFirings = /* @__PURE__ */ procedure({
  name: 'compareFirings',
  title: 'Comparison of two firings',
  source: 'engineering practice, no published source',
  inputs: {
    reference: { ...firingInput, meaning: 'firing that the other is compared with' },
    other: { ...firingInput, meaning: 'other firing' },
  },
  gives: 'ratios of peaks, impulse and burn time, and the differences of the traces over time',
  example:
    "compareFirings({ reference: firing({ origin: 'predicted', time: series([0, 1, 2], 's'), thrust: series([0, 5, 0], 'N') }), other: firing({ origin: 'measured', time: series([0, 1, 2], 's'), thrust: series([0, 6, 0], 'N') }) })",
  run: comparison,
});

function comparison({
  reference,
  other,
}: {
  readonly reference: Firing;
  readonly other: Firing;
}): FiringComparison {
  const hasPressure = reference.pressure !== undefined && other.pressure !== undefined;
  const hasThrust = reference.thrust !== undefined && other.thrust !== undefined;
  if (!hasPressure && !hasThrust)
    throw new MeopError({
      code: 'nothing-to-compare',
      procedure: 'compareFirings',
      path: 'other',
      problem: 'the two firings have neither pressure nor thrust in common',
    });
  // Times of both are those of a trace that both have, so that they are aligned at corresponding points.
  const a = summarize(hasThrust ? reference : withoutThrust(reference));
  const b = summarize(hasThrust ? other : withoutThrust(other));
  const ratio = (x: { readonly si: number } | undefined, y: { readonly si: number } | undefined) =>
    x === undefined || y === undefined || x.si === 0 ? undefined : y.si / x.si;
  const before = Math.min(
    a.tenPercent.start.si - reference.time.si[0],
    b.tenPercent.start.si - other.time.si[0],
  );
  const after = Math.max(
    reference.time.si[reference.time.length - 1] - a.tenPercent.start.si,
    other.time.si[other.time.length - 1] - b.tenPercent.start.si,
  );
  const time = Float64Array.from({ length: points + 1 }, (_, i) => -before + ((before + after) * i) / points);
  const onTime = (record: Firing, start: number, values: Float64Array): Float64Array =>
    resampled(record.time.si, values, time, start);
  const pressures =
    reference.pressure && other.pressure
      ? {
          one: onTime(reference, a.tenPercent.start.si, reference.pressure.si),
          two: onTime(other, b.tenPercent.start.si, other.pressure.si),
        }
      : undefined;
  const thrusts =
    reference.thrust && other.thrust
      ? {
          one: onTime(reference, a.tenPercent.start.si, reference.thrust.si),
          two: onTime(other, b.tenPercent.start.si, other.thrust.si),
        }
      : undefined;
  const made: FiringComparison = printable(
    {
      peakPressureRatio: ratio(a.peakPressure, b.peakPressure),
      peakThrustRatio: ratio(a.peakThrust, b.peakThrust),
      totalImpulseRatio: ratio(a.totalImpulse, b.totalImpulse),
      burnTimeRatio: ratio(a.burnTime ?? a.actionTime, b.burnTime ?? b.actionTime),
      timeOfPeak:
        a.timeOfPeakPressure && b.timeOfPeakPressure
          ? { reference: a.timeOfPeakPressure, other: b.timeOfPeakPressure }
          : undefined,
      time: fromSiArray('time', time),
      pressureDifference:
        pressures && fromSiArray('pressure difference', difference(pressures.one, pressures.two)),
      thrustDifference: thrusts && fromSiArray('force', difference(thrusts.one, thrusts.two)),
      pressureDeviation: pressures && deviation(pressures.one, pressures.two),
      thrustDeviation: thrusts && deviation(thrusts.one, thrusts.two),
      addedArea: addedArea(reference, other),
    },
    () => comparisonText(made),
  );
  return made;
}

const withoutThrust = ({ thrust: _, ...rest }: Firing): Firing => rest;

/** Values at other abscissae by linear interpolation; the end values outside. */
function resampled(x: Float64Array, values: Float64Array, at: Float64Array, shift: number): Float64Array {
  let k = 0;
  return at.map((wanted) => {
    const t = wanted + shift;
    while (k < x.length - 2 && t > x[k + 1]) k++;
    if (t <= x[0]) return values[0];
    if (t >= x[x.length - 1]) return values[values.length - 1];
    return values[k] + ((t - x[k]) / (x[k + 1] - x[k])) * (values[k + 1] - values[k]);
  });
}

const difference = (one: Float64Array, two: Float64Array): Float64Array =>
  two.map((value, i) => value - one[i]);

function deviation(one: Float64Array, two: Float64Array): number | undefined {
  const square = two.reduce((sum, value, i) => sum + (value - one[i]) ** 2, 0) / two.length;
  const mean = one.reduce((sum, value) => sum + Math.abs(value), 0) / one.length;
  return mean > 0 ? Math.sqrt(square) / mean : undefined;
}

/** Burning area of the other minus that of the reference at each depth that both reach. */
function addedArea(reference: Firing, other: Firing): FiringComparison['addedArea'] {
  if (!reference.web || !reference.burningArea || !other.web || !other.burningArea) return undefined;
  const one = byDepth(reference.web.si, reference.burningArea.si);
  const two = byDepth(other.web.si, other.burningArea.si);
  const deepest = Math.min(one.depth[one.depth.length - 1], two.depth[two.depth.length - 1]);
  const depth = Float64Array.from({ length: points + 1 }, (_, i) => (deepest * i) / points);
  const at = ({ depth: known, area }: Burned): Float64Array => resampled(known, area, depth, 0);
  return {
    depth: fromSiArray('length', depth),
    area: fromSiArray('area', difference(at(one), at(two)), 'cm^2'),
  };
}

interface Burned {
  readonly depth: Float64Array;
  readonly area: Float64Array;
}

/** Depth and area while depth increases: in the tail-off it is constant. */
function byDepth(depth: Float64Array, area: Float64Array): Burned {
  const grows = (_: number, i: number): boolean => i === 0 || depth[i] > depth[i - 1];
  return { depth: depth.filter(grows), area: area.filter(grows) };
}

function comparisonText(made: FiringComparison): string {
  const percent = (value: number | undefined): string =>
    value === undefined ? 'unknown' : `${value >= 1 ? '+' : '−'}${(100 * Math.abs(value - 1)).toFixed(1)} %`;
  const max = made.addedArea?.area.si.reduce((a, b) => Math.max(a, b), 0);
  return table([
    { figure: 'peak pressure', change: percent(made.peakPressureRatio) },
    { figure: 'peak thrust', change: percent(made.peakThrustRatio) },
    { figure: 'total impulse', change: percent(made.totalImpulseRatio) },
    { figure: 'burn time', change: percent(made.burnTimeRatio) },
    ...(made.timeOfPeak === undefined
      ? []
      : [{ figure: 'time of peak', change: `${made.timeOfPeak.reference} to ${made.timeOfPeak.other}` }]),
    ...(max === undefined
      ? []
      : [{ figure: 'maximum added area', change: String(fromSiValue<'area'>(max, 'area', unitOf('cm^2'))) }]),
  ]);
}
