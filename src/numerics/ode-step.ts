/** Workspace of a one-step method: the system, the current point, and arrays that every step reuses. */

/** Writes the derivatives of the state into `dydt`. Must not keep or change `y`. */
export type OdeDerivative = (t: number, y: Float64Array, dydt: Float64Array) => void;

/** Writes the Jacobian d(dydt)/dy row by row into `jacobian`, and the partial derivative by time into `dfdt`. */
export type OdeJacobian = (t: number, y: Float64Array, jacobian: Float64Array, dfdt: Float64Array) => void;

/** Cost of an integration. */
export interface OdeCounts {
  /** Accepted steps. */
  steps: number;
  rejected: number;
  /** Calls of the derivative, including those for a numerical Jacobian. */
  evaluations: number;
  jacobians: number;
  factorizations: number;
}

export interface StepWorkspace {
  readonly n: number;
  readonly derivative: OdeDerivative;
  readonly jacobian: OdeJacobian | undefined;
  /** True if the derivative does not depend on time. */
  readonly autonomous: boolean;
  /** Size below which a component of the state counts as zero when it is varied for the Jacobian. */
  readonly floor: Float64Array;
  readonly counts: OdeCounts;
  /** State at the start of the step, and its slope. */
  readonly y: Float64Array;
  readonly slope: Float64Array;
  /** State at the end of the attempted step, and its estimated error. */
  readonly next: Float64Array;
  readonly error: Float64Array;
  /** Dense output of the attempted step, three rows of n: see `denseState`. */
  readonly dense: Float64Array;
  /** Stage vectors, one after another. */
  readonly stages: readonly Float64Array[];
  readonly work: Float64Array;
  readonly trial: Float64Array;
  readonly matrix: Float64Array;
  readonly factors: Float64Array;
  readonly pivots: Int32Array;
  readonly dfdt: Float64Array;
  /** `slope` contains the derivative at the start of the step. */
  slopeKnown: boolean;
}

/** A one-step method with an embedded error estimate. */
export interface OdeMethod {
  /** Exponent of the step size in the error estimate. */
  readonly errorOrder: number;
  readonly stageCount: number;
  /** Evaluates slope and Jacobian once at each new point. Returns false when the derivative is not finite. */
  readonly prepare: (ws: StepWorkspace, t: number, h: number) => boolean;
  /**
   * Attempts one step of size h; no stage is evaluated later than `latest`. Returns false when the result is not
   * finite.
   */
  readonly attempt: (ws: StepWorkspace, t: number, h: number, latest: number) => boolean;
  /** After an accepted step: returns true when the slope at its end was available and is in `slope`. */
  readonly carrySlope: (ws: StepWorkspace) => boolean;
}

export function makeWorkspace(
  n: number,
  method: OdeMethod,
  derivative: OdeDerivative,
  jacobian: OdeJacobian | undefined,
  autonomous: boolean,
): StepWorkspace {
  return {
    n,
    derivative,
    jacobian,
    autonomous,
    floor: new Float64Array(n),
    counts: { steps: 0, rejected: 0, evaluations: 0, jacobians: 0, factorizations: 0 },
    y: new Float64Array(n),
    slope: new Float64Array(n),
    next: new Float64Array(n),
    error: new Float64Array(n),
    dense: new Float64Array(3 * n),
    stages: Array.from({ length: method.stageCount }, () => new Float64Array(n)),
    work: new Float64Array(n),
    trial: new Float64Array(n),
    matrix: new Float64Array(n * n),
    factors: new Float64Array(n * n),
    pivots: new Int32Array(n),
    dfdt: new Float64Array(n),
    slopeKnown: false,
  };
}

/** Slope at the current point; false when it is not finite. */
export function evaluateSlope(ws: StepWorkspace, t: number): boolean {
  if (!ws.slopeKnown) {
    ws.derivative(t, ws.y, ws.slope);
    ws.counts.evaluations++;
    ws.slopeKnown = true;
  }
  return allFinite(ws.slope);
}

export function allFinite(values: Float64Array): boolean {
  for (let i = 0; i < values.length; i++) {
    if (!Number.isFinite(values[i])) return false;
  }
  return true;
}

/**
 * State inside a step at the fraction `theta`, from its two end states and the three dense rows c: y0 + theta ((y1
 * - y0) + (1 - theta) (c1 + theta (c2 + theta c3))). All rows are read from `rows` at `base`.
 */
export function denseState(
  rows: Float64Array,
  base: number,
  n: number,
  theta: number,
  out: Float64Array,
): void {
  for (let i = 0; i < n; i++) {
    const y0 = rows[base + i];
    const y1 = rows[base + n + i];
    const c1 = rows[base + 2 * n + i];
    const c2 = rows[base + 3 * n + i];
    const c3 = rows[base + 4 * n + i];
    out[i] = y0 + theta * (y1 - y0 + (1 - theta) * (c1 + theta * (c2 + theta * c3)));
  }
}
