import { type Firing, summarize } from '../firing';
import { fromSiArray, fromSiValue, MeopError, type Quantity, type Series, table, unitOf } from '../units';

/** One firing against another: `other` over `reference`, or the difference between them. */
export interface FiringComparison {
  /** Peak pressure of the other over that of the reference. */
  readonly peakPressureRatio: number | undefined;
  readonly peakThrustRatio: number | undefined;
  readonly totalImpulseRatio: number | undefined;
  /** Burn time of the other over that of the reference, by the 10 % rule of their summaries. */
  readonly burnTimeRatio: number | undefined;
  /** When the pressure of each peaked. */
  readonly timeOfPeak: { readonly reference: Quantity<'time'>; readonly other: Quantity<'time'> } | undefined;
  /** Times from the first 10 % point of each, on which the differences below stand. */
  readonly time: Series<'time'>;
  /** Other less reference. */
  readonly pressureDifference: Series<'pressure difference'> | undefined;
  readonly thrustDifference: Series<'force'> | undefined;
  /** Root mean square of the pressure difference over the reference's mean pressure. */
  readonly pressureDeviation: number | undefined;
  readonly thrustDeviation: number | undefined;
  /** Burning area that the other has more, by burned depth, where both know their area. */
  readonly addedArea: { readonly depth: Series<'length'>; readonly area: Series<'area'> } | undefined;
  toString(): string;
}

const points = 400;

/**
 * Compares two firings, predicted or measured in any pairing: a cracked motor with the sound one, a prediction with its
 * log. The traces are laid over each other at their first 10 % points, so that ignition delay does not count.
 *
 * @throws MeopError `nothing-to-compare` where the two have neither pressure nor thrust in common; `nothing-to-sum-up` where
 * one of them never rises above zero
 * @example compareFirings(firing({ origin: 'predicted', time: series([0, 1, 2], 's'), thrust: series([0, 5, 0], 'N') }), firing({ origin: 'measured', time: series([0, 1, 2], 's'), thrust: series([0, 6, 0], 'N') })).peakThrustRatio // => 1.2
 */
export function compareFirings(reference: Firing, other: Firing): FiringComparison {
  const hasPressure = reference.pressure !== undefined && other.pressure !== undefined;
  const hasThrust = reference.thrust !== undefined && other.thrust !== undefined;
  if (!hasPressure && !hasThrust)
    throw new MeopError(
      'nothing-to-compare',
      'compareFirings: the two firings have neither pressure nor thrust in common',
      'other',
    );
  // Times of both are taken on a trace that both have, or they would be laid over each other at unlike points.
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
  const made: FiringComparison = {
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
    toString: () => comparisonText(made),
    ...{ [Symbol.for('nodejs.util.inspect.custom')]: () => comparisonText(made) },
  };
  return made;
}

const withoutThrust = ({ thrust: _, ...rest }: Firing): Firing => rest;

/** Values at other abscissae, by straight lines; the end values outside. */
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

/** Burning area of the other less that of the reference at each depth that both reach. */
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

/** Depth and area while depth grows: in the tail-off it stands still. */
function byDepth(depth: Float64Array, area: Float64Array): Burned {
  const grows = (_: number, i: number): boolean => i === 0 || depth[i] > depth[i - 1];
  return { depth: depth.filter(grows), area: area.filter(grows) };
}

function comparisonText(made: FiringComparison): string {
  const percent = (value: number | undefined): string =>
    value === undefined
      ? 'not known'
      : `${value >= 1 ? '+' : '−'}${(100 * Math.abs(value - 1)).toFixed(1)} %`;
  const most = made.addedArea?.area.si.reduce((a, b) => Math.max(a, b), 0);
  return table([
    { figure: 'peak pressure', change: percent(made.peakPressureRatio) },
    { figure: 'peak thrust', change: percent(made.peakThrustRatio) },
    { figure: 'total impulse', change: percent(made.totalImpulseRatio) },
    { figure: 'burn time', change: percent(made.burnTimeRatio) },
    ...(made.timeOfPeak === undefined
      ? []
      : [{ figure: 'time of peak', change: `${made.timeOfPeak.reference} to ${made.timeOfPeak.other}` }]),
    ...(most === undefined
      ? []
      : [{ figure: 'most added area', change: String(fromSiValue<'area'>(most, 'area', unitOf('cm^2'))) }]),
  ]);
}
