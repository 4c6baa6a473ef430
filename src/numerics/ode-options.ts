/** What an integration is asked to do, and the checks of it at the door. */
import {
  invalidArgument,
  requireFinite,
  requireFiniteArray,
  requireInteger,
  requireNonNegative,
  requirePositive,
} from './checks';
import type { OdeEvent } from './ode-events';
import type { OdeDerivative, OdeJacobian } from './ode-step';

/** An initial-value problem and how to integrate it. */
export interface OdeOptions {
  readonly derivative: OdeDerivative;
  readonly start: number;
  /** Above `start`. */
  readonly end: number;
  /** State at `start`; copied. */
  readonly initial: ArrayLike<number>;
  /** Error allowed at each step for each unit of size of a component. Default 1e-6, at least 1e-13. */
  readonly relativeTolerance?: number;
  /** Error allowed where a component is near zero; one number or one for each. Above zero. Default 1e-9. */
  readonly absoluteTolerance?: number | ArrayLike<number>;
  /** `rosenbrock` (default) for stiff systems, `dormand-prince` for systems that are not. */
  readonly method?: 'rosenbrock' | 'dormand-prince';
  /** Exact Jacobian for `rosenbrock`; by differences when left out. */
  readonly jacobian?: OdeJacobian;
  /** The derivative does not depend on t, which saves an evaluation a step. Default false. Still may differ between breakpoints. */
  readonly autonomous?: boolean;
  readonly events?: readonly OdeEvent[];
  /** Parts of a step at whose ends the event functions are looked at. Default 4. */
  readonly eventChecks?: number;
  /** Times where the derivative jumps or kinks. Any order; those outside the interval are ignored. */
  readonly breakpoints?: readonly number[];
  /** Size of the first step. Chosen automatically when left out. */
  readonly firstStep?: number;
  /** Default: no limit. */
  readonly maxStep?: number;
  /** Limit of accepted and rejected steps together. Default 10000. */
  readonly maxSteps?: number;
  /** `steps` (default) keeps every step and the solution between; `end` keeps the two ends and the events only. */
  readonly keep?: 'steps' | 'end';
}

export interface OdeSettings {
  readonly n: number;
  readonly relativeTolerance: number;
  readonly absoluteTolerance: Float64Array;
  /** Breakpoints inside, in order, then the end. */
  readonly pieceEnds: readonly number[];
  /** Zero: to be chosen. */
  readonly firstStep: number;
  readonly maxStep: number;
  readonly maxSteps: number;
  readonly eventChecks: number;
}

export function checkOdeOptions(options: OdeOptions): OdeSettings {
  const {
    start,
    end,
    initial,
    relativeTolerance = 1e-6,
    absoluteTolerance = 1e-9,
    breakpoints = [],
  } = options;
  const { firstStep = 0, maxStep = Infinity, maxSteps = 10000, eventChecks = 4 } = options;
  requireFinite('start', start);
  requireFinite('end', end);
  if (!(end > start)) throw invalidArgument('end', end, `above start (${start})`);
  requireFiniteArray('initial', initial);
  requireNonNegative('relativeTolerance', relativeTolerance);
  // Below this rounding in the stages is larger than the error to be controlled.
  if (relativeTolerance < 1e-13)
    throw invalidArgument('relativeTolerance', relativeTolerance, 'at least 1e-13');
  const n = initial.length;
  const absolute = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    const value = typeof absoluteTolerance === 'number' ? absoluteTolerance : absoluteTolerance[i];
    requirePositive(
      typeof absoluteTolerance === 'number' ? 'absoluteTolerance' : `absoluteTolerance[${i}]`,
      value,
    );
    absolute[i] = value;
  }
  requireNonNegative('firstStep', firstStep);
  if (!(maxStep > 0)) throw invalidArgument('maxStep', maxStep, 'above zero');
  requireInteger('maxSteps', maxSteps, 1);
  requireInteger('eventChecks', eventChecks, 1);
  requireFiniteArray('breakpoints', breakpoints, 0);
  const inside = breakpoints.filter((t) => t > start && t < end).sort((a, b) => a - b);
  return {
    n,
    relativeTolerance,
    absoluteTolerance: absolute,
    pieceEnds: [...new Set([...inside, end])],
    firstStep,
    maxStep,
    maxSteps,
    eventChecks,
  };
}
