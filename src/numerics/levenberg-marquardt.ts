/** Nonlinear least squares by the method of Levenberg and Marquardt. */
import { MeopError } from '../units/errors';
import { invalidArgument, requireFiniteArray, requireInteger, requirePositive } from './checks';
import { backSubstitute, inverseNormal, triangularize } from './householder';

/** Residuals to minimise, and the starting point. */
export interface NonlinearFitOptions {
  /** Writes the residuals, including any weights, for these parameters. Must not keep or change `parameters`. */
  readonly residuals: (parameters: Float64Array, out: Float64Array) => void;
  /** Number of residuals, at least that of the parameters. */
  readonly count: number;
  /** Starting values; copied. */
  readonly initial: ArrayLike<number>;
  /** Typical magnitude of each parameter, for the differences near zero. Default 1 each. */
  readonly typical?: ArrayLike<number>;
  /** Relative change of the parameters, and cosine between residuals and columns, at which to stop. Default 1e-10. */
  readonly tolerance?: number;
  /** Maximum number of iterations. Default 200. */
  readonly maxIterations?: number;
}

/** A nonlinear fit: parameters, their uncertainty, and the residuals. */
export interface NonlinearFit {
  /**
   * `converged`: at a minimum. `iteration-limit`: not yet. `no-progress`: no step reduces the residuals although
   * the gradient has not vanished, for example where the model is not smooth.
   */
  readonly status: 'converged' | 'iteration-limit' | 'no-progress';
  readonly message: string;
  readonly parameters: Float64Array;
  readonly residuals: Float64Array;
  readonly sumOfSquares: number;
  /**
   * Covariance of the parameters, row by row, with the variance estimated from the residuals (one when there are
   * as many parameters as residuals).
   */
  readonly covariance: Float64Array;
  readonly standardErrors: Float64Array;
  readonly degreesOfFreedom: number;
  readonly iterations: number;
  readonly evaluations: number;
}

const CUBE_ROOT_EPSILON = 2 ** (-52 / 3);
const MOST_DAMPING = 1e20;

/**
 * Finds the parameters with the minimum sum of squared residuals near the starting values. Jacobian by central
 * differences; each damped step by Householder QR, so the normal equations are not formed. A local method: the
 * result depends on the start. Failure is returned as a status. Throws `not-finite` when the residuals are not
 * finite at the start, `singular-matrix` when the residuals do not determine the parameters at the result.
 *
 * Source: D. W. Marquardt, J. SIAM 11 (1963), 431-441, with damping after H. B. Nielsen, "Damping parameter in
 * Marquardt's method", report IMM-REP-1999-05, Technical University of Denmark.
 *
 * @example
 * fitNonlinear({ residuals: (p, out) => { out[0] = 10 * (p[1] - p[0] ** 2); out[1] = 1 - p[0]; }, count: 2, initial: [-1.2, 1] }).parameters[1].toFixed(6) // => '1.000000'
 */
export function fitNonlinear(options: NonlinearFitOptions): NonlinearFit {
  const { residuals: evaluate, count: m, initial, typical, tolerance = 1e-10, maxIterations = 200 } = options;
  const n = initial.length;
  requireFiniteArray('initial', initial);
  requireInteger('count', m, n);
  requirePositive('tolerance', tolerance);
  requireInteger('maxIterations', maxIterations, 1);
  if (typical !== undefined) {
    if (typical.length !== n)
      throw invalidArgument('typical.length', typical.length, `${n}, one for each parameter`);
    for (let j = 0; j < n; j++) requirePositive(`typical[${j}]`, typical[j]);
  }

  const p = Float64Array.from(initial);
  const trial = new Float64Array(n);
  const step = new Float64Array(n);
  const r = new Float64Array(m);
  const trialResiduals = new Float64Array(m);
  const low = new Float64Array(m);
  const jacobian = new Float64Array(m * n);
  // Additional rows for the damping below the Jacobian.
  const augmented = new Float64Array((m + n) * n);
  const rhs = new Float64Array(m + n);
  const scaling = new Float64Array(n);

  evaluate(p, r);
  let evaluations = 1;
  let cost = sumOfSquares(r);
  if (!Number.isFinite(cost)) {
    throw new MeopError({
      code: 'not-finite',
      path: 'initial',
      given: [...p],
      expected: 'where the residuals are finite',
      remedy: 'Start where the model is defined',
    });
  }
  const differentiate = (): void => {
    for (let j = 0; j < n; j++) {
      const held = p[j];
      const change = CUBE_ROOT_EPSILON * Math.max(Math.abs(held), typical?.[j] ?? 1);
      p[j] = held - change;
      evaluate(p, low);
      const from = p[j];
      p[j] = held + change;
      evaluate(p, trialResiduals);
      const width = p[j] - from;
      p[j] = held;
      for (let i = 0; i < m; i++) jacobian[i * n + j] = (trialResiduals[i] - low[i]) / width;
    }
    evaluations += 2 * n;
    for (let k = 0; k < m * n; k++) {
      if (Number.isFinite(jacobian[k])) continue;
      throw new MeopError({
        code: 'not-finite',
        problem: `the residuals are not finite close to the parameters [${p.join(', ')}]`,
        remedy: 'Rescale or transform the parameters so that the model is defined there',
      });
    }
  };

  let damping = 1e-3;
  let growth = 2;
  let status: NonlinearFit['status'] = 'iteration-limit';
  let iterations = 0;
  search: for (; iterations < maxIterations; iterations++) {
    differentiate();
    const norm = Math.sqrt(cost);
    let cosine = 0;
    for (let j = 0; j < n; j++) {
      let dot = 0;
      let square = 0;
      for (let i = 0; i < m; i++) {
        dot += jacobian[i * n + j] * r[i];
        square += jacobian[i * n + j] ** 2;
      }
      scaling[j] = Math.max(scaling[j], Math.sqrt(square));
      if (square > 0 && norm > 0) cosine = Math.max(cosine, Math.abs(dot) / (Math.sqrt(square) * norm));
    }
    if (cosine <= tolerance) {
      status = 'converged';
      break;
    }
    for (;;) {
      augmented.fill(0);
      augmented.set(jacobian);
      rhs.fill(0);
      for (let i = 0; i < m; i++) rhs[i] = -r[i];
      for (let j = 0; j < n; j++)
        augmented[(m + j) * n + j] = Math.sqrt(damping) * (scaling[j] > 0 ? scaling[j] : 1);
      triangularize(augmented, m + n, n, rhs, 0);
      backSubstitute(augmented, n, rhs, step);
      let relative = 0;
      for (let j = 0; j < n; j++) {
        trial[j] = p[j] + step[j];
        relative = Math.max(relative, Math.abs(step[j]) / Math.max(Math.abs(p[j]), typical?.[j] ?? 1));
      }
      evaluate(trial, trialResiduals);
      evaluations++;
      const trialCost = sumOfSquares(trialResiduals);
      // Reduction predicted by the linear model: |J s|^2 + 2 damping |D s|^2.
      let promised = 0;
      for (let i = 0; i < m; i++) {
        let along = 0;
        for (let j = 0; j < n; j++) along += jacobian[i * n + j] * step[j];
        promised += along * along;
      }
      for (let j = 0; j < n; j++) promised += 2 * damping * (scaling[j] * step[j]) ** 2;
      const gain = (cost - trialCost) / promised;
      if (trialCost <= cost && gain > 0) {
        const reduction = cost - trialCost;
        p.set(trial);
        r.set(trialResiduals);
        cost = trialCost;
        damping = Math.max(1e-15, damping * Math.max(1 / 3, 1 - (2 * gain - 1) ** 3));
        growth = 2;
        if (relative <= tolerance || reduction <= 1e-15 * cost) {
          status = 'converged';
          iterations++;
          break search;
        }
        break;
      }
      // At the minimum rounding hides any reduction; a step that small ends the search.
      if (relative <= tolerance || promised <= 1e-15 * cost) {
        status = 'converged';
        break search;
      }
      damping *= growth;
      growth *= 2;
      if (damping > MOST_DAMPING) {
        status = 'no-progress';
        break search;
      }
    }
  }

  differentiate();
  const dependent = triangularize(jacobian, m, n, Float64Array.from(r), 1e-11);
  if (dependent >= 0) {
    throw new MeopError({
      code: 'singular-matrix',
      path: `initial[${dependent}]`,
      problem:
        'is not determined by the residuals: it acts like a combination of the parameters before it, or not at all',
      remedy: 'Fix it, or give more varied data',
    });
  }
  const covariance = inverseNormal(jacobian, n);
  const variance = m > n ? cost / (m - n) : 1;
  for (let k = 0; k < n * n; k++) covariance[k] *= variance;
  return {
    status,
    message: describe(status, cost, iterations),
    parameters: p,
    residuals: r,
    sumOfSquares: cost,
    covariance,
    standardErrors: Float64Array.from({ length: n }, (_, j) => Math.sqrt(covariance[j * n + j])),
    degreesOfFreedom: m - n,
    iterations,
    evaluations,
  };
}

function sumOfSquares(values: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < values.length; i++) sum += values[i] * values[i];
  return sum;
}

function describe(status: NonlinearFit['status'], cost: number, iterations: number): string {
  const state = `the sum of squares is ${cost} after ${iterations} iterations`;
  if (status === 'converged') return `Converged: ${state}.`;
  if (status === 'iteration-limit') return `Not converged: ${state}. Raise maxIterations or start closer.`;
  return `No step lowers the residuals: ${state}. The model may not be smooth there, or its residuals are noisy.`;
}
