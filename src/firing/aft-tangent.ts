import type { AnalysedTrace } from './analysis/analysed-trace';
import { valueAt } from './analysis/trace-values';
import { integral } from './trace-integral';

/**
 * Returns the time of web burnout by the aft tangent-bisector construction: one tangent to the trace at the end of the
 * plateau, one to the steep fall, and the point where the bisector of the angle between them meets the trace. The
 * construction depends on the scales of the axes. Here the pressure is divided by its peak and the time by the action
 * time.
 *
 * The tangents are least-squares lines. The steep one is fitted between 80 % and 40 % of the value of the plateau line
 * at the knee; the plateau line is fitted to the 15 % of the action time that ends where the fall begins. Returns
 * `undefined` where there is no such fall: a trace without a knee shows no web burnout.
 *
 * Source: Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), fig. 11-13 (definition quoted from memory, not
 * verified).
 */
export function aftTangentBurnout(trace: AnalysedTrace): number | undefined {
  const { peak, start: rise, end: fall } = trace.edges(0.1, 0);
  const span = fall - rise;
  if (!(span > 0)) return undefined;
  // The level of the plateau near its end: the mean over the third quarter of the action time separates it from the
  // tail.
  let knee = lastAbove(trace, 0.5 * meanOver(trace, rise + 0.5 * span, rise + 0.8 * span), rise, fall);
  let plateau: Line | undefined;
  let tail: Line | undefined;
  for (let pass = 0; pass < 6; pass++) {
    const end = fallStart(trace, knee, rise, span);
    plateau = leastSquaresLine(trace, Math.max(rise, end - 0.15 * span), end);
    if (plateau === undefined) return undefined;
    const level = at(plateau, knee);
    const from = lastAbove(trace, 0.8 * level, rise, fall);
    const to = lastAbove(trace, 0.4 * level, rise, fall);
    tail = leastSquaresLine(trace, from, to) ?? through(from, valueOn(trace, from), to, valueOn(trace, to));
    if (tail === undefined || !(tail.slope < plateau.slope)) return undefined;
    const meet = (plateau.offset - tail.offset) / (tail.slope - plateau.slope);
    if (!(meet > rise && meet <= fall)) return undefined;
    if (Math.abs(meet - knee) < 1e-9 * span) break;
    knee = meet;
  }
  if (plateau === undefined || tail === undefined) return undefined;
  return onBisector(trace, plateau, tail, knee, peak, span);
}

interface Line {
  readonly slope: number;
  readonly offset: number;
}

const valueOn = ({ time, values }: AnalysedTrace, t: number): number => valueAt(time, values, t);

const at = ({ slope, offset }: Line, t: number): number => offset + slope * t;

function through(t1: number, v1: number, t2: number, v2: number): Line | undefined {
  if (!(t2 > t1)) return undefined;
  const slope = (v2 - v1) / (t2 - t1);
  return { slope, offset: v1 - slope * t1 };
}

const meanOver = (trace: AnalysedTrace, from: number, to: number): number =>
  integral(trace, from, to) / (to - from);

/** Last time before `fall` at which the trace is above a level, searching backwards from the tail. */
function lastAbove(trace: AnalysedTrace, level: number, rise: number, fall: number): number {
  const { time, values } = trace;
  let i = time.length - 1;
  while (i > 0 && time[i] > fall) i--;
  while (i > 0 && values[i] < level && time[i] > rise) i--;
  if (i >= time.length - 1 || values[i] === values[i + 1] || values[i + 1] >= level) return time[i];
  return time[i] + ((level - values[i]) / (values[i + 1] - values[i])) * (time[i + 1] - time[i]);
}

/** Time at which the trace departs from its plateau, searching backwards from the knee until the trace is straight. */
function fallStart(trace: AnalysedTrace, knee: number, rise: number, span: number): number {
  const step = 0.005 * span;
  let t = knee;
  for (let i = 0; i < 60 && t - 4 * step > rise; i++) {
    const back = (valueOn(trace, t - 4 * step) - valueOn(trace, t - 2 * step)) / (2 * step);
    const here = (valueOn(trace, t - step) - valueOn(trace, t)) / step;
    const level = Math.max(valueOn(trace, t), 1e-300);
    // Slopes that differ by less than one and a half levels per action time count as equal.
    if ((here - back) * span < 1.5 * level) return t;
    t -= step;
  }
  return t;
}

/** Least-squares line through the trace at a hundred even points, so that uneven sampling has no influence. */
function leastSquaresLine(trace: AnalysedTrace, from: number, to: number): Line | undefined {
  if (!(to > from)) return undefined;
  const n = 101;
  const middle = 0.5 * (from + to);
  let sum = 0;
  let moment = 0;
  let square = 0;
  for (let i = 0; i < n; i++) {
    const t = from + ((to - from) * i) / (n - 1);
    const v = valueOn(trace, t);
    sum += v;
    moment += v * (t - middle);
    square += (t - middle) ** 2;
  }
  const slope = moment / square;
  return { slope, offset: sum / n - slope * middle };
}

function onBisector(
  trace: AnalysedTrace,
  plateau: Line,
  tail: Line,
  knee: number,
  peak: number,
  span: number,
): number {
  const scale = span / peak;
  const along = Math.atan(plateau.slope * scale);
  const down = Math.atan(tail.slope * scale);
  // The bisector of the angle below the knee: halfway between the plateau, followed backwards, and the fall.
  const angle = (along + Math.PI + (down + 2 * Math.PI)) / 2;
  const dt = Math.cos(angle) * span;
  const dv = Math.sin(angle) * peak;
  const kneeValue = at(plateau, knee);
  const above = (s: number): number => valueOn(trace, knee + s * dt) - (kneeValue + s * dv);
  if (above(0) >= 0) return knee;
  let high = 1e-4;
  while (above(high) < 0 && high < 1) high *= 1.5;
  let low = 0;
  for (let i = 0; i < 60; i++) {
    const middle = 0.5 * (low + high);
    if (above(middle) < 0) low = middle;
    else high = middle;
  }
  return knee + high * dt;
}
