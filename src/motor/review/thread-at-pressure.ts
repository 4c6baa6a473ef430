import { findRoot } from '../../numerics';
import {
  customThread,
  type Margin,
  reviewThreadedClosure,
  type ThreadedClosureReview,
  type ThreadGeometry,
} from '../../structures';
import { fromSiValue, MeopError, type Quantity, unitOf } from '../../units';
import type { Motor } from '../document';
import type { MotorSettings } from '../settings';
import type { Closure } from './closure-heat';
import { narrowestCase, pressureAreaDiameter, weakestCase } from './worst-sizes';

/** A closure with a thread of its own. */
export type Threaded = Closure & { readonly thread: NonNullable<Closure['thread']> };

/** The thread as cut: where the bore is wider than the minor diameter may be, the case's thread is the lower for it. */
export function threadAsCut(motor: Motor, { thread }: Threaded): ThreadGeometry & { isPartial: boolean } {
  const whole = customThread({ majorDiameter: thread.majorDiameter.value, pitch: thread.pitch.value });
  const { bore } = weakestCase(motor);
  const isPartial = bore.si > whole.limits.internalMinorMax.si;
  return { ...whole, isPartial, ...(isPartial && { limits: { ...whole.limits, internalMinorMax: bore } }) };
}

/** The closure at any pressure, so hot. */
export interface ThreadAt {
  (pressure: number): ThreadedClosureReview;
  readonly temperature: Quantity<'temperature'> | undefined;
}

export function threadAt(
  motor: Motor,
  closure: Threaded,
  { factors }: MotorSettings,
  temperature: Quantity<'temperature'> | undefined,
): ThreadAt {
  const { isPartial: _, ...thread } = threadAsCut(motor, closure);
  const outsideDiameter = narrowestCase(motor);
  const { engagement, reliefDiameter } = closure.thread;
  const { material, wallTemperature } = motor.case;
  const at = (pressure: number): ThreadedClosureReview =>
    reviewThreadedClosure({
      pressure: gauge(pressure),
      thread,
      engagement: engagement.value,
      caseOutsideDiameter: outsideDiameter,
      caseMaterial: material,
      closureMaterial: closure.material,
      sealDiameter: pressureAreaDiameter(motor, closure),
      ...(reliefDiameter && { reliefDiameter: reliefDiameter.value }),
      ...(wallTemperature && { caseTemperature: wallTemperature.value }),
      ...(temperature && { closureTemperature: temperature }),
      factors,
    });
  return Object.assign(at, { temperature });
}

/** The review at a pressure [Pa]; where the case opens so far that the threads part, that just before, and the pressure at which they do. */
export function meshed(
  at: ThreadAt,
  pressure: number,
): { readonly review: ThreadedClosureReview; readonly partsAt?: Quantity<'gauge pressure'> } {
  const review = unlessParted(at, pressure);
  if (review !== undefined) return { review };
  at(least); // throws where the thread cannot be at any pressure
  const { lower } = findRoot((p) => (unlessParted(at, p) === undefined ? 1 : -1), {
    lower: least,
    upper: pressure,
    tolerance: 1e-9 * pressure,
  });
  return { review: at(lower), partsAt: gauge(lower) };
}

/** The pressure that uses a mode up: the more the case opens, the less thread is left, so that it comes sooner than in proportion. */
export function usedUpAt(at: ThreadAt, { mode, applied, allowable }: Margin, pressure: number) {
  const over = (p: number): number => {
    const found = unlessParted(at, p)?.margins.find((one) => one.mode === mode);
    return found === undefined ? 1 : found.applied.si / found.allowable.si - 1;
  };
  const inProportion = (pressure * allowable.si) / applied.si;
  const upper = Math.max(pressure, inProportion);
  // A case that does not open, but for rounding.
  if (over(upper) <= 0) return gauge(upper);
  return gauge(findRoot(over, { lower: least, upper, tolerance: 1e-9 * upper }).root);
}

const least = 1; // [Pa]

function unlessParted(at: ThreadAt, pressure: number): ThreadedClosureReview | undefined {
  try {
    return at(pressure);
  } catch (error) {
    if (error instanceof MeopError && error.code === 'out-of-domain' && error.path === 'thread')
      return undefined;
    throw error;
  }
}

const gauge = (si: number): Quantity<'gauge pressure'> => fromSiValue(si, 'gauge pressure', unitOf('MPa'));
