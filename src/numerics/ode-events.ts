/** Events of an integration: zero crossings of a function of the solution inside a step. */
import { MeopError } from '../units/errors';
import { denseState, type StepWorkspace } from './ode-step';
import { findRoot } from './root';

/** A function of the solution whose zero crossing is an event. */
export interface OdeEvent {
  readonly name?: string;
  /** The function. It must be continuous and must not keep or change `y`. */
  readonly value: (t: number, y: Float64Array) => number;
  /** Direction of the crossings. Default `either`. */
  readonly direction?: 'rising' | 'falling' | 'either';
  /** True if the event ends the integration. Default true. */
  readonly terminal?: boolean;
}

/** An event of an integration. */
export interface OdeEventRecord {
  /** Index of the event in the given list. */
  readonly index: number;
  readonly name: string | undefined;
  readonly t: number;
  readonly y: Float64Array;
}

/** Last known values of the event functions, and scratch for one step. */
export interface EventWatch {
  readonly events: readonly OdeEvent[];
  readonly checks: number;
  readonly before: Float64Array;
  /** Two end states and dense rows of the step. */
  readonly rows: Float64Array;
  readonly state: Float64Array;
}

interface Crossing {
  readonly index: number;
  /** Fraction of the step at which the event occurs. */
  readonly theta: number;
}

export function makeEventWatch(events: readonly OdeEvent[], checks: number, n: number): EventWatch {
  return {
    events,
    checks,
    before: new Float64Array(events.length),
    rows: new Float64Array(5 * n),
    state: new Float64Array(n),
  };
}

/** Initialises the event functions. A function that is zero at the start has no event until its next crossing. */
export function beginEvents(watch: EventWatch, t: number, y: Float64Array): void {
  for (let e = 0; e < watch.events.length; e++) watch.before[e] = eventValue(watch, e, t, y);
}

/**
 * Crossings in the step just attempted, in order of time, up to and including the first terminal one. Each
 * function is evaluated at `checks` equal parts of the step, including its end.
 */
export function scanEvents(
  watch: EventWatch,
  ws: StepWorkspace,
  t: number,
  h: number,
  end: number,
): Crossing[] {
  const { events, checks, before, rows, state } = watch;
  const { n } = ws;
  const found: Crossing[] = [];
  rows.set(ws.y, 0);
  rows.set(ws.next, n);
  rows.set(ws.dense, 2 * n);
  for (let part = 1; part <= checks; part++) {
    const theta = part / checks;
    const time = part === checks ? end : t + theta * h;
    if (part === checks) state.set(ws.next);
    else denseState(rows, 0, n, theta, state);
    for (let e = 0; e < events.length; e++) {
      const last = before[e];
      const value = eventValue(watch, e, time, state);
      before[e] = value;
      const rising = last < 0 && value >= 0;
      const falling = last > 0 && value <= 0;
      const direction = events[e].direction ?? 'either';
      if ((rising && direction !== 'falling') || (falling && direction !== 'rising')) {
        found.push({
          index: e,
          theta: value === 0 ? theta : crossing(watch, e, n, t, h, (part - 1) / checks, theta, last, value),
        });
        // The search has used the scratch state: restore it for the remaining functions.
        if (part === checks) state.set(ws.next);
        else denseState(rows, 0, n, theta, state);
      }
    }
  }
  if (found.length > 1) found.sort((a, b) => a.theta - b.theta || a.index - b.index);
  const stop = found.findIndex(({ index }) => events[index].terminal ?? true);
  return stop < 0 ? found : found.slice(0, stop + 1);
}

/** Root in (from, to] on the dense output, on the far side: an integration restarted there is past the event. */
function crossing(
  watch: EventWatch,
  e: number,
  n: number,
  t: number,
  h: number,
  from: number,
  to: number,
  valueFrom: number,
  valueTo: number,
): number {
  const { rows, state } = watch;
  const at = (theta: number) => {
    // The end values are given; dense output differs from them by rounding.
    if (theta === from) return valueFrom;
    if (theta === to) return valueTo;
    denseState(rows, 0, n, theta, state);
    return eventValue(watch, e, t + theta * h, state);
  };
  const result = findRoot(at, { lower: from, upper: to });
  return result.status === 'exact' ? result.root : result.upper;
}

function eventValue(watch: EventWatch, e: number, t: number, y: Float64Array): number {
  const value = watch.events[e].value(t, y);
  if (Number.isNaN(value)) {
    const name = watch.events[e].name ?? `events[${e}]`;
    throw new MeopError({
      code: 'not-finite',
      path: `events[${e}].value`,
      problem: `the event function ${name} returned NaN at t = ${t}`,
    });
  }
  return value;
}
