/** Options of an integration, and their checks. */
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

/** An initial-value problem and the options of its integration. */
export interface OdeOptions {
  readonly derivative: OdeDerivative;
  readonly start: number;
  /** End of the interval, above `start`. */
  readonly end: number;
  /** State at `start`; copied. */
  readonly initial: ArrayLike<number>;
  /** Relative tolerance of each step. Default 1e-6, at least 1e-13. */
  readonly relativeTolerance?: number;
  /** Absolute tolerance where a component is near zero; one number or one for each. Above zero. Default 1e-9. */
  readonly absoluteTolerance?: number | ArrayLike<number>;
  /** `rosenbrock` (default) for stiff systems, `dormand-prince` for systems that are not. */
  readonly method?: 'rosenbrock' | 'dormand-prince';
  /** Exact Jacobian for `rosenbrock`; default: by differences. */
  readonly jacobian?: OdeJacobian;
  /**
   * True if the derivative does not depend on t, which saves an evaluation per step. Default false. It may still
   * differ between breakpoints.
   */
  readonly autonomous?: boolean;
  readonly events?: readonly OdeEvent[];
  /** Number of parts of a step at whose ends the event functions are evaluated. Default 4. */
  readonly eventChecks?: number;
  /** Times where the derivative jumps or kinks. In any order; those outside the interval are ignored. */
  readonly breakpoints?: readonly number[];
  /** Size of the first step. Default: automatic. */
  readonly firstStep?: number;
  /** Maximum step size. Default: no limit. */
  readonly maxStep?: number;
  /** Maximum number of accepted and rejected steps together. Default 10000. */
  readonly maxSteps?: number;
  /**
   * `steps` (default) keeps every step and the solution between them; `end` keeps only the two ends and the
   * events.
   */
  readonly keep?: 'steps' | 'end';
}

export interface OdeSettings {
  readonly n: number;
  readonly relativeTolerance: number;
  readonly absoluteTolerance: Float64Array;
  /** Breakpoints inside the interval, in order, then the end. */
  readonly pieceEnds: readonly number[];
  /** Zero for automatic choice. */
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
  // Below this value rounding in the stages exceeds the error to be controlled.
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
