// Generated from the tableau of src/numerics/rodas5p.ts: change scripts/chamber/step-source.ts, not this file, and run
// node scripts/run-ts.mjs scripts/write-chamber-step.ts
// One step of the stiff integrator (Rodas5P), written out for the three unknowns of the chamber.
import { chamberSlopes } from './chamber-slopes';
import type { ChamberWorkspace } from './chamber-workspace';
import type { MotorModel } from './motor-model';

// Unrolled because the matrix has a known shape: only the pressure couples to everything, so no elimination is needed. The
// coefficients stand inside the function: bundlers turn constants of a module into variables, which the engine must look
// up at each use, a sixth of the time of a run.

/**
 * Attempts the step in `start`, at whose beginning `jacobian` holds. Writes the new state, its error estimate and the
 * dense rows. False where something is not finite.
 */
export function attemptStep(m: MotorModel, w: ChamberWorkspace): boolean {
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
  const { start, point } = w;
  const t = start[0];
  const h = start[1];
  const p = start[2];
  const y = start[3];
  const throat = start[4];
  const sp = start[5];
  const sy = start[6];
  const st = start[7];
  // Without it the radius stands still: a third of the arithmetic is left out.
  const { slope: f, next, error, dense, eroding } = w;
  const j = w.jacobian;
  const j01 = j[1];
  const j02 = j[2];
  const j12 = j[5];
  const j20 = j[6];
  const tp = j[7];
  const ty = j[8];
  const q = 1 / h;
  const d = q / GAMMA;
  // (d − J)·k = b, solved for the radius and the depth in terms of the pressure first.
  const dy = 1 / (d - j[4]);
  const dt = 1 / d;
  const depthByP = (j[3] + j12 * j20 * dt) * dy;
  const pivot = 1 / (d - j[0] - j01 * depthByP - j02 * j20 * dt);

  const b1p = sp + h * D1 * tp;
  const b1y = sy + h * D1 * ty;
  const b1r = eroding ? st : 0;
  const z1 = (b1y + j12 * b1r * dt) * dy;
  const k1p = (b1p + j01 * z1 + j02 * b1r * dt) * pivot;
  const k1y = z1 + depthByP * k1p;
  const k1r = eroding ? (b1r + j20 * k1p) * dt : 0;
  let up = p + A21 * k1p;
  let uy = y + A21 * k1y;
  let ur = throat + A21 * k1r;
  point[0] = t + T2 * h;
  point[1] = up;
  point[2] = uy;
  point[3] = ur;
  chamberSlopes(m, w);
  const b2p = f[0] + h * D2 * tp + q * (C21 * k1p);
  const b2y = f[1] + h * D2 * ty + q * (C21 * k1y);
  const b2r = eroding ? f[2] + q * (C21 * k1r) : 0;
  const z2 = (b2y + j12 * b2r * dt) * dy;
  const k2p = (b2p + j01 * z2 + j02 * b2r * dt) * pivot;
  const k2y = z2 + depthByP * k2p;
  const k2r = eroding ? (b2r + j20 * k2p) * dt : 0;
  up = p + A31 * k1p + A32 * k2p;
  uy = y + A31 * k1y + A32 * k2y;
  ur = throat + A31 * k1r + A32 * k2r;
  point[0] = t + T3 * h;
  point[1] = up;
  point[2] = uy;
  point[3] = ur;
  chamberSlopes(m, w);
  const b3p = f[0] + h * D3 * tp + q * (C31 * k1p + C32 * k2p);
  const b3y = f[1] + h * D3 * ty + q * (C31 * k1y + C32 * k2y);
  const b3r = eroding ? f[2] + q * (C31 * k1r + C32 * k2r) : 0;
  const z3 = (b3y + j12 * b3r * dt) * dy;
  const k3p = (b3p + j01 * z3 + j02 * b3r * dt) * pivot;
  const k3y = z3 + depthByP * k3p;
  const k3r = eroding ? (b3r + j20 * k3p) * dt : 0;
  up = p + A41 * k1p + A42 * k2p + A43 * k3p;
  uy = y + A41 * k1y + A42 * k2y + A43 * k3y;
  ur = throat + A41 * k1r + A42 * k2r + A43 * k3r;
  point[0] = t + T4 * h;
  point[1] = up;
  point[2] = uy;
  point[3] = ur;
  chamberSlopes(m, w);
  const b4p = f[0] + h * D4 * tp + q * (C41 * k1p + C42 * k2p + C43 * k3p);
  const b4y = f[1] + h * D4 * ty + q * (C41 * k1y + C42 * k2y + C43 * k3y);
  const b4r = eroding ? f[2] + q * (C41 * k1r + C42 * k2r + C43 * k3r) : 0;
  const z4 = (b4y + j12 * b4r * dt) * dy;
  const k4p = (b4p + j01 * z4 + j02 * b4r * dt) * pivot;
  const k4y = z4 + depthByP * k4p;
  const k4r = eroding ? (b4r + j20 * k4p) * dt : 0;
  up = p + A51 * k1p + A52 * k2p + A53 * k3p + A54 * k4p;
  uy = y + A51 * k1y + A52 * k2y + A53 * k3y + A54 * k4y;
  ur = throat + A51 * k1r + A52 * k2r + A53 * k3r + A54 * k4r;
  point[0] = t + T5 * h;
  point[1] = up;
  point[2] = uy;
  point[3] = ur;
  chamberSlopes(m, w);
  const b5p = f[0] + h * D5 * tp + q * (C51 * k1p + C52 * k2p + C53 * k3p + C54 * k4p);
  const b5y = f[1] + h * D5 * ty + q * (C51 * k1y + C52 * k2y + C53 * k3y + C54 * k4y);
  const b5r = eroding ? f[2] + q * (C51 * k1r + C52 * k2r + C53 * k3r + C54 * k4r) : 0;
  const z5 = (b5y + j12 * b5r * dt) * dy;
  const k5p = (b5p + j01 * z5 + j02 * b5r * dt) * pivot;
  const k5y = z5 + depthByP * k5p;
  const k5r = eroding ? (b5r + j20 * k5p) * dt : 0;
  up = p + A61 * k1p + A62 * k2p + A63 * k3p + A64 * k4p + A65 * k5p;
  uy = y + A61 * k1y + A62 * k2y + A63 * k3y + A64 * k4y + A65 * k5y;
  ur = throat + A61 * k1r + A62 * k2r + A63 * k3r + A64 * k4r + A65 * k5r;
  point[0] = t + h;
  point[1] = up;
  point[2] = uy;
  point[3] = ur;
  chamberSlopes(m, w);
  const b6p = f[0] + q * (C61 * k1p + C62 * k2p + C63 * k3p + C64 * k4p + C65 * k5p);
  const b6y = f[1] + q * (C61 * k1y + C62 * k2y + C63 * k3y + C64 * k4y + C65 * k5y);
  const b6r = eroding ? f[2] + q * (C61 * k1r + C62 * k2r + C63 * k3r + C64 * k4r + C65 * k5r) : 0;
  const z6 = (b6y + j12 * b6r * dt) * dy;
  const k6p = (b6p + j01 * z6 + j02 * b6r * dt) * pivot;
  const k6y = z6 + depthByP * k6p;
  const k6r = eroding ? (b6r + j20 * k6p) * dt : 0;
  up += k6p;
  uy += k6y;
  ur += k6r;
  point[0] = t + h;
  point[1] = up;
  point[2] = uy;
  point[3] = ur;
  chamberSlopes(m, w);
  const b7p = f[0] + q * (C71 * k1p + C72 * k2p + C73 * k3p + C74 * k4p + C75 * k5p + C76 * k6p);
  const b7y = f[1] + q * (C71 * k1y + C72 * k2y + C73 * k3y + C74 * k4y + C75 * k5y + C76 * k6y);
  const b7r = eroding
    ? f[2] + q * (C71 * k1r + C72 * k2r + C73 * k3r + C74 * k4r + C75 * k5r + C76 * k6r)
    : 0;
  const z7 = (b7y + j12 * b7r * dt) * dy;
  const k7p = (b7p + j01 * z7 + j02 * b7r * dt) * pivot;
  const k7y = z7 + depthByP * k7p;
  const k7r = eroding ? (b7r + j20 * k7p) * dt : 0;
  up += k7p;
  uy += k7y;
  ur += k7r;
  point[0] = t + h;
  point[1] = up;
  point[2] = uy;
  point[3] = ur;
  chamberSlopes(m, w);
  const b8p = f[0] + q * (C81 * k1p + C82 * k2p + C83 * k3p + C84 * k4p + C85 * k5p + C86 * k6p + C87 * k7p);
  const b8y = f[1] + q * (C81 * k1y + C82 * k2y + C83 * k3y + C84 * k4y + C85 * k5y + C86 * k6y + C87 * k7y);
  const b8r = eroding
    ? f[2] + q * (C81 * k1r + C82 * k2r + C83 * k3r + C84 * k4r + C85 * k5r + C86 * k6r + C87 * k7r)
    : 0;
  const z8 = (b8y + j12 * b8r * dt) * dy;
  const k8p = (b8p + j01 * z8 + j02 * b8r * dt) * pivot;
  const k8y = z8 + depthByP * k8p;
  const k8r = eroding ? (b8r + j20 * k8p) * dt : 0;
  next[0] = up + k8p;
  error[0] = k8p;
  next[1] = uy + k8y;
  error[1] = k8y;
  next[2] = ur + k8r;
  error[2] = k8r;
  dense[0] = H11 * k1p + H12 * k2p + H13 * k3p + H14 * k4p + H15 * k5p + H16 * k6p + H17 * k7p + H18 * k8p;
  dense[1] = H11 * k1y + H12 * k2y + H13 * k3y + H14 * k4y + H15 * k5y + H16 * k6y + H17 * k7y + H18 * k8y;
  dense[2] = eroding
    ? H11 * k1r + H12 * k2r + H13 * k3r + H14 * k4r + H15 * k5r + H16 * k6r + H17 * k7r + H18 * k8r
    : 0;
  dense[3] = H21 * k1p + H22 * k2p + H23 * k3p + H24 * k4p + H25 * k5p + H26 * k6p + H27 * k7p + H28 * k8p;
  dense[4] = H21 * k1y + H22 * k2y + H23 * k3y + H24 * k4y + H25 * k5y + H26 * k6y + H27 * k7y + H28 * k8y;
  dense[5] = eroding
    ? H21 * k1r + H22 * k2r + H23 * k3r + H24 * k4r + H25 * k5r + H26 * k6r + H27 * k7r + H28 * k8r
    : 0;
  dense[6] = H31 * k1p + H32 * k2p + H33 * k3p + H34 * k4p + H35 * k5p + H36 * k6p + H37 * k7p + H38 * k8p;
  dense[7] = H31 * k1y + H32 * k2y + H33 * k3y + H34 * k4y + H35 * k5y + H36 * k6y + H37 * k7y + H38 * k8y;
  dense[8] = eroding
    ? H31 * k1r + H32 * k2r + H33 * k3r + H34 * k4r + H35 * k5r + H36 * k6r + H37 * k7r + H38 * k8r
    : 0;
  return next[0] > 0 && next[0] < Infinity && next[1] < Infinity && next[2] > 0;
}
