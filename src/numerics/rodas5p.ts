/** The stiff one-step method: Rodas5P, a Rosenbrock method of order 5 with an embedded error estimate of order 4. */
import { luFactor, luSolve } from './linear-solve';
import { allFinite, evaluateSlope, type OdeMethod, type StepWorkspace } from './ode-step';

const GAMMA = 0.21193756319429014;
const A21 = 3;
const A31 = 2.849394379747939;
const A32 = 0.45842242204463923;
const A41 = -6.954028509809101;
const A42 = 2.489845061869568;
const A43 = -10.358996098473584;
const A51 = 2.8029986275628964;
const A52 = 0.5072464736228206;
const A53 = -0.3988312541770524;
const A54 = -0.04721187230404641;
const A61 = -7.502846399306121;
const A62 = 2.561846144803919;
const A63 = -11.627539656261098;
const A64 = -0.18268767659942256;
const A65 = 0.030198172008377946;
const C21 = -14.155112264123755;
const C31 = -17.97296035885952;
const C32 = -2.859693295451294;
const C41 = 147.12150275711716;
const C42 = -1.41221402718213;
const C43 = 71.68940251302358;
const C51 = 165.43517024871676;
const C52 = -0.4592823456491126;
const C53 = 42.90938336958603;
const C54 = -5.961986721573306;
const C61 = 24.854864614690072;
const C62 = -3.0009227002832186;
const C63 = 47.4931110020768;
const C64 = 5.5814197821558125;
const C65 = -0.6610691825249471;
const C71 = 30.91273214028599;
const C72 = -3.1208243349937974;
const C73 = 77.79954646070892;
const C74 = 34.28646028294783;
const C75 = -19.097331116725623;
const C76 = -28.087943162872662;
const C81 = 37.80277123390563;
const C82 = -3.2571969029072276;
const C83 = 112.26918849496327;
const C84 = 66.9347231244047;
const C85 = -40.06618937091002;
const C86 = -54.66780262877968;
const C87 = -9.48861652309627;
const T2 = 0.6358126895828704;
const T3 = 0.4095798393397535;
const T4 = 0.9769306725060716;
const T5 = 0.4288403609558664;
const D1 = 0.21193756319429014;
const D2 = -0.42387512638858027;
const D3 = -0.3384627126235924;
const D4 = 1.8046452872882734;
const D5 = 2.325825639765069;
const H11 = 25.948786856663858;
const H12 = -2.5579724845846235;
const H13 = 10.433815404888879;
const H14 = -2.3679251022685204;
const H15 = 0.524948541321073;
const H16 = 1.1241088310450404;
const H17 = 0.4272876194431874;
const H18 = -0.17202221070155493;
const H21 = -9.91568850695171;
const H22 = -0.9689944594115154;
const H23 = 3.0438037242978453;
const H24 = -24.495224566215796;
const H25 = 20.176138334709044;
const H26 = 15.98066361424651;
const H27 = -6.789040303419874;
const H28 = -6.710236069923372;
const H31 = 11.419903575922262;
const H32 = 2.8879645146136994;
const H33 = 72.92137995996029;
const H34 = 80.12511834622643;
const H35 = -52.072871366152654;
const H36 = -59.78993625266729;
const H37 = -0.15582684282751913;
const H38 = 4.883087185713722;

/**
 * Coefficients in the form of Hairer and Wanner, Solving Ordinary Differential Equations II (2nd ed. 1996), IV.7:
 * stages u_i, stage arguments y + sum a_ij u_j, right-hand sides with c_ij u_j / h. Rows 7 and 8 of a are row 6
 * with ones added, and the error estimate is the last stage: the method is stiffly accurate, hence L-stable.
 *
 * Source: G. Steinebach, "Construction of Rosenbrock-Wanner method Rodas5P and numerical benchmarks within the Julia
 * Differential Equations package", BIT Numerical Mathematics 63:27 (2023), coefficients as carried by that package.
 */
export const RODAS5P_TABLEAU = {
  gamma: GAMMA,
  a: [[], [A21], [A31, A32], [A41, A42, A43], [A51, A52, A53, A54], [A61, A62, A63, A64, A65]],
  c: [
    [],
    [C21],
    [C31, C32],
    [C41, C42, C43],
    [C51, C52, C53, C54],
    [C61, C62, C63, C64, C65],
    [C71, C72, C73, C74, C75, C76],
    [C81, C82, C83, C84, C85, C86, C87],
  ],
  /** Times of the stages, as shares of the step. */
  times: [0, T2, T3, T4, T5, 1, 1, 1],
  /** Weights of the time derivative. */
  timeWeights: [D1, D2, D3, D4, D5, 0, 0, 0],
  /** Dense output of order 4: row r gives coefficient r of `denseState` from the stages. */
  dense: [
    [H11, H12, H13, H14, H15, H16, H17, H18],
    [H21, H22, H23, H24, H25, H26, H27, H28],
    [H31, H32, H33, H34, H35, H36, H37, H38],
  ],
} as const;

export const rodas5p: OdeMethod = { errorOrder: 5, stageCount: 8, prepare, attempt, carrySlope: () => false };

const ROOT_EPSILON = 2 ** -26;

function prepare(ws: StepWorkspace, t: number, h: number): boolean {
  if (!evaluateSlope(ws, t)) return false;
  ws.counts.jacobians++;
  if (ws.jacobian !== undefined) {
    ws.jacobian(t, ws.y, ws.matrix, ws.dfdt);
    return allFinite(ws.matrix) && allFinite(ws.dfdt);
  }
  const { n, y, slope, matrix, work, floor, dfdt } = ws;
  for (let j = 0; j < n; j++) {
    const held = y[j];
    const size = Math.max(Math.abs(held), floor[j]);
    // Vary in the direction of the solution, where the equations are more likely to be valid.
    y[j] = slope[j] < 0 ? held - ROOT_EPSILON * size : held + ROOT_EPSILON * size;
    const change = y[j] - held;
    ws.derivative(t, y, work);
    y[j] = held;
    for (let i = 0; i < n; i++) {
      const entry = (work[i] - slope[i]) / change;
      if (!Number.isFinite(entry)) return false;
      matrix[i * n + j] = entry;
    }
  }
  ws.counts.evaluations += n;
  if (ws.autonomous) return true;
  // Small against the step; otherwise the method would lose its order.
  const change = t + Math.max(1e-7 * h, 2 ** -46 * Math.abs(t)) - t;
  ws.derivative(t + change, y, work);
  ws.counts.evaluations++;
  for (let i = 0; i < n; i++) dfdt[i] = (work[i] - slope[i]) / change;
  return allFinite(dfdt);
}

function attempt(ws: StepWorkspace, t: number, h: number, latest: number): boolean {
  const { n, y, slope, next, error, dense, work, trial, matrix, factors, pivots, dfdt, derivative } = ws;
  const [k1, k2, k3, k4, k5, k6, k7, k8] = ws.stages;
  const end = Math.min(t + h, latest);
  const r = 1 / h;
  for (let i = 0; i < n * n; i++) factors[i] = -matrix[i];
  for (let i = 0; i < n; i++) factors[i * n + i] += r / GAMMA;
  ws.counts.factorizations++;
  if (!luFactor(factors, n, pivots)) return false;

  // The stage sums are written out to avoid table look-ups and inner loops in the step.
  for (let i = 0; i < n; i++) k1[i] = slope[i] + h * D1 * dfdt[i];
  luSolve(factors, n, pivots, k1);
  for (let i = 0; i < n; i++) trial[i] = y[i] + A21 * k1[i];
  derivative(Math.min(t + T2 * h, latest), trial, work);
  for (let i = 0; i < n; i++) k2[i] = work[i] + h * D2 * dfdt[i] + r * (C21 * k1[i]);
  luSolve(factors, n, pivots, k2);
  for (let i = 0; i < n; i++) trial[i] = y[i] + A31 * k1[i] + A32 * k2[i];
  derivative(Math.min(t + T3 * h, latest), trial, work);
  for (let i = 0; i < n; i++) k3[i] = work[i] + h * D3 * dfdt[i] + r * (C31 * k1[i] + C32 * k2[i]);
  luSolve(factors, n, pivots, k3);
  for (let i = 0; i < n; i++) trial[i] = y[i] + A41 * k1[i] + A42 * k2[i] + A43 * k3[i];
  derivative(Math.min(t + T4 * h, latest), trial, work);
  for (let i = 0; i < n; i++)
    k4[i] = work[i] + h * D4 * dfdt[i] + r * (C41 * k1[i] + C42 * k2[i] + C43 * k3[i]);
  luSolve(factors, n, pivots, k4);
  for (let i = 0; i < n; i++) trial[i] = y[i] + A51 * k1[i] + A52 * k2[i] + A53 * k3[i] + A54 * k4[i];
  derivative(Math.min(t + T5 * h, latest), trial, work);
  for (let i = 0; i < n; i++)
    k5[i] = work[i] + h * D5 * dfdt[i] + r * (C51 * k1[i] + C52 * k2[i] + C53 * k3[i] + C54 * k4[i]);
  luSolve(factors, n, pivots, k5);
  for (let i = 0; i < n; i++)
    trial[i] = y[i] + A61 * k1[i] + A62 * k2[i] + A63 * k3[i] + A64 * k4[i] + A65 * k5[i];
  derivative(end, trial, work);
  for (let i = 0; i < n; i++)
    k6[i] = work[i] + r * (C61 * k1[i] + C62 * k2[i] + C63 * k3[i] + C64 * k4[i] + C65 * k5[i]);
  luSolve(factors, n, pivots, k6);
  for (let i = 0; i < n; i++) trial[i] += k6[i];
  derivative(end, trial, work);
  for (let i = 0; i < n; i++)
    k7[i] = work[i] + r * (C71 * k1[i] + C72 * k2[i] + C73 * k3[i] + C74 * k4[i] + C75 * k5[i] + C76 * k6[i]);
  luSolve(factors, n, pivots, k7);
  for (let i = 0; i < n; i++) trial[i] += k7[i];
  derivative(end, trial, work);
  for (let i = 0; i < n; i++)
    k8[i] =
      work[i] +
      r * (C81 * k1[i] + C82 * k2[i] + C83 * k3[i] + C84 * k4[i] + C85 * k5[i] + C86 * k6[i] + C87 * k7[i]);
  luSolve(factors, n, pivots, k8);
  ws.counts.evaluations += 7;
  for (let i = 0; i < n; i++) {
    next[i] = trial[i] + k8[i];
    error[i] = k8[i];
    dense[i] =
      H11 * k1[i] +
      H12 * k2[i] +
      H13 * k3[i] +
      H14 * k4[i] +
      H15 * k5[i] +
      H16 * k6[i] +
      H17 * k7[i] +
      H18 * k8[i];
    dense[n + i] =
      H21 * k1[i] +
      H22 * k2[i] +
      H23 * k3[i] +
      H24 * k4[i] +
      H25 * k5[i] +
      H26 * k6[i] +
      H27 * k7[i] +
      H28 * k8[i];
    dense[2 * n + i] =
      H31 * k1[i] +
      H32 * k2[i] +
      H33 * k3[i] +
      H34 * k4[i] +
      H35 * k5[i] +
      H36 * k6[i] +
      H37 * k7[i] +
      H38 * k8[i];
  }
  return allFinite(next);
}
