/** Initial-value problems of ordinary differential equations, stiff or not, with events and known breaks. */
import { dormandPrince } from './dormand-prince';
import { beginEvents, type EventWatch, makeEventWatch, type OdeEventRecord, scanEvents } from './ode-events';
import { checkOdeOptions, type OdeOptions, type OdeSettings } from './ode-options';
import { appendStep, denseLookup, makeStepRecord, type StepRecord, stepSeries } from './ode-solution';
import { denseState, makeWorkspace, type OdeCounts, type OdeMethod, type StepWorkspace } from './ode-step';
import { rodas5p } from './rodas5p';
import { errorNorm, sizeAfterAccepted, sizeAfterRejected, startControl, startingStep } from './step-control';

/** The solution of an initial-value problem, up to the end or to the point of failure. */
export interface OdeResult {
  /**
   * `finished`: the end was reached. `event`: a terminal event stopped the integration. Otherwise it failed, and
   * the solution up to the last accepted step is given: `step-limit`, `step-too-small` (a jump, a singularity),
   * `not-finite`.
   */
  readonly status: 'finished' | 'event' | 'step-limit' | 'step-too-small' | 'not-finite';
  readonly message: string;
  /** Start, end of every accepted step, and the time of the event that stopped it, if any. */
  readonly t: Float64Array;
  /** One series for each component of the state, as long as `t`. */
  readonly y: readonly Float64Array[];
  readonly events: readonly OdeEventRecord[];
  readonly counts: Readonly<OdeCounts>;
  /** Step size that the method would try next: a suitable `firstStep` to continue from here. */
  readonly nextStep: number;
  /** State at any time covered, from the continuous extension (order 4). Throws `out-of-range` elsewhere. */
  readonly at: (t: number, out?: Float64Array) => Float64Array;
}

/**
 * Integrates y' = f(t, y) with step sizes that keep the estimated error of every component of every step below
 * absoluteTolerance + relativeTolerance |y|. The default method suits stiff systems of few equations.
 *
 * - The same inputs give the same bits. Failure is returned as a status; misuse throws.
 * - At breakpoints the integration is restarted: the derivative is evaluated at a breakpoint only for the
 *   piece that starts there, so a jump written as `t < b ? ... : ...` is never straddled.
 * - Event times are roots of the dense output, to the last place; their accuracy is that of the solution. The
 *   derivative must stay smooth a little beyond an event, because the step that contains it extends beyond it.
 * - Events are missed when their function crosses zero twice within one part of a step (`eventChecks`).
 *   A function that only touches zero is detected when a checked point falls exactly on it. A function that is
 *   zero at the start has no event there.
 *
 * Source: methods and step-size control as stated in `rodas5p.ts`, `dormand-prince.ts` and `step-control.ts`.
 *
 * @example
 * integrateOde({ derivative: (t, y, out) => { out[0] = -y[0]; }, start: 0, end: 1, initial: [1] }).y[0].at(-1)?.toFixed(5) // => '0.36788'
 */
export function integrateOde(options: OdeOptions): OdeResult {
  const settings = checkOdeOptions(options);
  const { start, end } = options;
  const method = options.method === 'dormand-prince' ? dormandPrince : rodas5p;
  const ws = makeWorkspace(
    settings.n,
    method,
    options.derivative,
    options.jacobian,
    options.autonomous ?? false,
  );
  ws.y.set(options.initial);
  for (let i = 0; i < ws.n; i++) ws.floor[i] = settings.absoluteTolerance[i] / settings.relativeTolerance;
  const watch = makeEventWatch(options.events ?? [], settings.eventChecks, ws.n);
  beginEvents(watch, start, ws.y);
  const record = makeStepRecord(ws.n, options.keep ?? 'steps', start, ws.y);
  const least = 1e-22 * (end - start);
  const run: Run = {
    settings,
    method,
    ws,
    watch,
    record,
    least,
    events: [],
    t: start,
    h: settings.firstStep,
  };

  let status: OdeResult['status'] = 'finished';
  for (const pieceEnd of settings.pieceEnds) {
    status = integratePiece(run, pieceEnd);
    if (status !== 'finished') break;
    if (pieceEnd < end) run.h = 0;
  }
  const { t, y } = stepSeries(record, run.t, ws.y);
  return {
    status,
    message: describe(status, run),
    t,
    y,
    events: run.events,
    counts: ws.counts,
    nextStep: run.h,
    at: denseLookup(record),
  };
}

/** State of an integration that changes during its run. */
interface Run {
  readonly settings: OdeSettings;
  readonly method: OdeMethod;
  readonly ws: StepWorkspace;
  readonly watch: EventWatch;
  readonly record: StepRecord;
  readonly events: OdeEventRecord[];
  /** Steps no longer than this, or than the spacing of doubles around t, indicate failure. */
  readonly least: number;
  t: number;
  h: number;
}

/** Integrates from run.t to the end of a piece on which the derivative is smooth. */
function integratePiece(run: Run, pieceEnd: number): OdeResult['status'] {
  const { settings, method, ws, watch, record } = run;
  // Just before the end, so that no stage evaluates the derivative of the next piece.
  const latest = pieceEnd - 1.5 * 2 ** -53 * Math.abs(pieceEnd) - Number.MIN_VALUE;
  ws.slopeKnown = false;
  if (run.h === 0) run.h = startingStep(ws, method, settings, run.t, pieceEnd);
  const control = startControl(method.errorOrder);
  let prepared = false;
  while (run.t < pieceEnd) {
    const { t } = run;
    if (ws.counts.steps + ws.counts.rejected >= settings.maxSteps) return 'step-limit';
    let h = Math.min(run.h, settings.maxStep);
    // Avoids a very short last step: end exactly, or halve the remainder.
    const remaining = pieceEnd - t;
    const isLast = h >= remaining * (1 - 1e-10);
    if (isLast) h = remaining;
    else if (2 * h > remaining) h = 0.5 * remaining;
    if (!prepared && !method.prepare(ws, t, h)) return 'not-finite';
    prepared = true;

    const finite = method.attempt(ws, t, h, latest);
    const error = finite ? errorNorm(ws, settings) : Infinity;
    if (!(error <= 1)) {
      ws.counts.rejected++;
      run.h = sizeAfterRejected(control, h, error);
      if (run.h <= run.least + 4 * Number.EPSILON * Math.abs(t))
        return finite ? 'step-too-small' : 'not-finite';
      continue;
    }
    ws.counts.steps++;
    run.h = sizeAfterAccepted(control, h, error);
    const stepEnd = isLast ? pieceEnd : t + h;
    const stop = watch.events.length > 0 ? takeEvents(run, h, stepEnd) : undefined;
    appendStep(record, ws, t, h, stop?.t ?? stepEnd);
    if (stop !== undefined) {
      run.t = stop.t;
      ws.y.set(stop.y);
      return 'event';
    }
    run.t = stepEnd;
    ws.y.set(ws.next);
    ws.slopeKnown = method.carrySlope(ws);
    prepared = false;
  }
  return 'finished';
}

/** Records the events of the step just accepted; returns the one that ends the integration, if any. */
function takeEvents(run: Run, h: number, stepEnd: number): OdeEventRecord | undefined {
  const { ws, watch, t } = run;
  let last: OdeEventRecord | undefined;
  for (const { index, theta } of scanEvents(watch, ws, t, h, stepEnd)) {
    const y = new Float64Array(ws.n);
    if (theta === 1) y.set(ws.next);
    else denseState(watch.rows, 0, ws.n, theta, y);
    last = {
      index,
      name: watch.events[index].name,
      t: theta === 1 ? stepEnd : Math.min(stepEnd, t + theta * h),
      y,
    };
    run.events.push(last);
  }
  return last !== undefined && (watch.events[last.index].terminal ?? true) ? last : undefined;
}

function describe(status: OdeResult['status'], run: Run): string {
  const { t, ws, settings } = run;
  switch (status) {
    case 'finished':
      return `Reached t = ${t} in ${ws.counts.steps} steps.`;
    case 'event': {
      const last = run.events[run.events.length - 1];
      return `Stopped at t = ${t} by ${last.name ?? `events[${last.index}]`}.`;
    }
    case 'step-limit':
      return `Stopped at t = ${t}: the limit of ${settings.maxSteps} steps was reached. Raise maxSteps, loosen the tolerances, or split at jumps with breakpoints.`;
    case 'step-too-small':
      return `Stopped at t = ${t}: no step is small enough for the tolerances. The derivative jumps or grows without bound there; split at jumps with breakpoints or events.`;
    case 'not-finite':
      return `Stopped at t = ${t}: the derivative is not finite there or just after. The state is [${ws.y.join(', ')}].`;
  }
}
