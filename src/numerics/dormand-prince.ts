/** The explicit one-step method: Dormand-Prince of order 5 with an embedded error estimate of order 4. */
import { allFinite, evaluateSlope, type OdeMethod, type StepWorkspace } from './ode-step';

/**
 * Source: J. R. Dormand and P. J. Prince, "A family of embedded Runge-Kutta formulae", J. Comp. Appl. Math. 6 (1980),
 * 19-26, as tabulated in Hairer, Norsett and Wanner, Solving Ordinary Differential Equations I (2nd ed. 1993),
 * table II.5.2; dense output of order 4 of the same book, II.6 (L. F. Shampine 1986).
 */
export const DORMAND_PRINCE_TABLEAU = {
  a: [
    [],
    [1 / 5],
    [3 / 40, 9 / 40],
    [44 / 45, -56 / 15, 32 / 9],
    [19372 / 6561, -25360 / 2187, 64448 / 6561, -212 / 729],
    [9017 / 3168, -355 / 33, 46732 / 5247, 49 / 176, -5103 / 18656],
    [35 / 384, 0, 500 / 1113, 125 / 192, -2187 / 6784, 11 / 84],
  ],
  times: [0, 1 / 5, 3 / 10, 4 / 5, 8 / 9, 1, 1],
  /** Weights of the result of order 5, the last row of a, less those of order 4. */
  error: [71 / 57600, 0, -71 / 16695, 71 / 1920, -17253 / 339200, 22 / 525, -1 / 40],
  dense: [
    -12715105075 / 11282082432,
    0,
    87487479700 / 32700410799,
    -10690763975 / 1880347072,
    701980252875 / 199316789632,
    -1453857185 / 822651844,
    69997945 / 29380423,
  ],
} as const;

export const dormandPrince: OdeMethod = {
  errorOrder: 5,
  stageCount: 7,
  prepare: evaluateSlope,
  attempt,
  carrySlope,
};

function attempt(ws: StepWorkspace, t: number, h: number, latest: number): boolean {
  const { n, y, slope, next, error, dense, stages, trial, derivative } = ws;
  const { a, times, error: errorWeights, dense: denseWeights } = DORMAND_PRINCE_TABLEAU;
  stages[0].set(slope);
  for (let stage = 1; stage < 7; stage++) {
    const row = a[stage];
    const out = stage === 6 ? next : trial;
    for (let i = 0; i < n; i++) {
      let sum = 0;
      for (let j = 0; j < stage; j++) sum += row[j] * stages[j][i];
      out[i] = y[i] + h * sum;
    }
    derivative(Math.min(t + times[stage] * h, latest), out, stages[stage]);
  }
  ws.counts.evaluations += 6;
  const first = stages[0];
  const last = stages[6];
  for (let i = 0; i < n; i++) {
    let difference = 0;
    let bend = 0;
    for (let j = 0; j < 7; j++) {
      difference += errorWeights[j] * stages[j][i];
      bend += denseWeights[j] * stages[j][i];
    }
    error[i] = h * difference;
    const rise = next[i] - y[i];
    dense[i] = h * first[i] - rise;
    dense[n + i] = 2 * rise - h * (first[i] + last[i]) + h * bend;
    dense[2 * n + i] = -h * bend;
  }
  return allFinite(next) && allFinite(last);
}

/** The last stage is the slope at the end of the step: the next step starts with it. */
function carrySlope(ws: StepWorkspace): boolean {
  ws.slope.set(ws.stages[6]);
  return true;
}
