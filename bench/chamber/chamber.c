/* The chamber kernel in C, step for step the algorithm of src/ballistics/simulation: table look-up, slopes, Jacobian,
   Rosenbrock step, step control, landing on events, quadrature. Built by run.mjs with cc -O2 -march=native.
   usage: chamber INPUT REPEATS; INPUT is doubles: see main. Prints nanoseconds for one pass over the rows, best of the
   repeats, then the sums of peak pressure, impulse and burn time. */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <time.h>

typedef struct {
  int n, pieces;
  const double *depth, *area, *volume, *bow, *ends, *first, *last;
  double burnout, lnA, exponent, density, energy, cstar, gamma, chamber, throat, exitArea, ambient, p0, stop, limit, timeLimit, tol, thrustEff;
} Model;
typedef struct { double ratio, gamma, vandenkerckhove, exitPressure, unchoked, vacuum; } Nozzle;
typedef struct {
  double slope[3], jacobian[9], surface[11], rate[2], anchor[13], next[3], error[3], dense[9];
  Nozzle nozzle;
  double perEnergy, flowFactor, chokedAbove, thrustFactor, ambientLoss;
  int piece, interval, burning, eroding;
} Work;
typedef struct { double peak, peakTime, thrust, impulse, integral, force, mass, least, most, burnout, end; int steps, rejected; } Result;

#define GAMMA 0.21193756319429014
#define A21 3
#define A31 2.849394379747939
#define A32 0.45842242204463923
#define A41 -6.954028509809101
#define A42 2.489845061869568
#define A43 -10.358996098473584
#define A51 2.8029986275628964
#define A52 0.5072464736228206
#define A53 -0.3988312541770524
#define A54 -0.04721187230404641
#define A61 -7.502846399306121
#define A62 2.561846144803919
#define A63 -11.627539656261098
#define A64 -0.18268767659942256
#define A65 0.030198172008377946
#define C21 -14.155112264123755
#define C31 -17.97296035885952
#define C32 -2.859693295451294
#define C41 147.12150275711716
#define C42 -1.41221402718213
#define C43 71.68940251302358
#define C51 165.43517024871676
#define C52 -0.4592823456491126
#define C53 42.90938336958603
#define C54 -5.961986721573306
#define C61 24.854864614690072
#define C62 -3.0009227002832186
#define C63 47.4931110020768
#define C64 5.5814197821558125
#define C65 -0.6610691825249471
#define C71 30.91273214028599
#define C72 -3.1208243349937974
#define C73 77.79954646070892
#define C74 34.28646028294783
#define C75 -19.097331116725623
#define C76 -28.087943162872662
#define C81 37.80277123390563
#define C82 -3.2571969029072276
#define C83 112.26918849496327
#define C84 66.9347231244047
#define C85 -40.06618937091002
#define C86 -54.66780262877968
#define C87 -9.48861652309627
#define T2 0.6358126895828704
#define T3 0.4095798393397535
#define T4 0.9769306725060716
#define T5 0.4288403609558664
#define D1 0.21193756319429014
#define D2 -0.42387512638858027
#define D3 -0.3384627126235924
#define D4 1.8046452872882734
#define D5 2.325825639765069
#define H11 25.948786856663858
#define H12 -2.5579724845846235
#define H13 10.433815404888879
#define H14 -2.3679251022685204
#define H15 0.524948541321073
#define H16 1.1241088310450404
#define H17 0.4272876194431874
#define H18 -0.17202221070155493
#define H21 -9.91568850695171
#define H22 -0.9689944594115154
#define H23 3.0438037242978453
#define H24 -24.495224566215796
#define H25 20.176138334709044
#define H26 15.98066361424651
#define H27 -6.789040303419874
#define H28 -6.710236069923372
#define H31 11.419903575922262
#define H32 2.8879645146136994
#define H33 72.92137995996029
#define H34 80.12511834622643
#define H35 -52.072871366152654
#define H36 -59.78993625266729
#define H37 -0.15582684282751913
#define H38 4.883087185713722

static void lookUp(const Model *m, Work *w, double y) {
  double *o = w->surface;
  if (!(y >= o[3] && y < o[4])) {
    int first = (int)m->first[w->piece], last = (int)m->last[w->piece], k = w->interval;
    if (k < first) k = first;
    if (k > last) k = last;
    while (k < last && y >= m->depth[k + 1]) k++;
    while (k > first && y < m->depth[k]) k--;
    double h = m->depth[k + 1] - m->depth[k];
    o[3] = m->depth[k]; o[4] = m->depth[k + 1]; o[10] = h; o[5] = 1 / h;
    o[6] = m->area[k]; o[7] = m->area[k + 1] - m->area[k]; o[8] = m->bow[k]; o[9] = m->volume[k];
    w->interval = k;
  }
  double u = (y - o[3]) * o[5], a0 = o[6], rise = o[7], b = o[8];
  o[0] = a0 + u * (rise + 6 * b * (1 - u));
  o[1] = (rise + 6 * b * (1 - 2 * u)) * o[5];
  o[2] = o[9] - o[10] * u * (a0 + u * (0.5 * rise + b * (3 - 2 * u)));
}
static double machOfPressure(double ratio, double g) { return sqrt(2 * expm1(-(g - 1) / g * log(ratio)) / (g - 1)); }
static double massParameter(double M, double g) { double B = 1 + (g - 1) / 2 * M * M; return sqrt(g) * M * pow(B, -(g + 1) / (2 * (g - 1))); }
/* Newton in ln M, where ln(A/A*) is convex: a handful of steps. */
static double machOfArea(double eps, double g, int super) {
  double t = (g - 1) / 2, power = (1 + t) / (2 * t), M = super ? 1 + sqrt((1 + t) * log(eps)) : exp(-(log(eps) + power * log1p(t)));
  if (!super && M > 0.9) M = 0.5;
  for (int i = 0; i < 60; i++) {
    double B = 1 + t * M * M, f = power * log(B / (1 + t)) - log(M * eps), step = -f * B / (M * M - 1);
    if (step > 1) step = 1;
    if (step < -1) step = -1;
    M *= exp(step);
    if (fabs(step) < 1e-15) break;
  }
  return M;
}
static double pressureOf(double M, double g) { return pow(1 + (g - 1) / 2 * M * M, -g / (g - 1)); }
static Nozzle nozzleOf(double g, double eps) {
  Nozzle z;
  double M = machOfArea(eps, g, 1), B = 1 + (g - 1) / 2 * M * M;
  z.ratio = eps; z.gamma = g;
  z.vandenkerckhove = massParameter(1, g);
  z.exitPressure = pressureOf(M, g);
  z.unchoked = pressureOf(machOfArea(eps, g, 0), g);
  z.vacuum = z.vandenkerckhove * (1 + g * M * M) / (M * sqrt(g * B));
  return z;
}
static double share(const Nozzle *z, double ambient, double p) {
  double ratio = ambient / p;
  if (ratio < z->unchoked) return 1;
  if (ratio >= 1) return 0;
  double s = massParameter(machOfPressure(ratio, z->gamma), z->gamma) * z->ratio / z->vandenkerckhove;
  return s < 1 ? s : 1;
}
static double flowOf(const Model *m, const Work *w, double p, double r) { double f = w->flowFactor * p * r * r; return p > w->chokedAbove ? f : f * share(&w->nozzle, m->ambient, p); }
static double thrustOf(const Model *m, const Work *w, double p, double r) {
  if (p <= m->ambient) return 0;
  double f = w->thrustFactor * r * r * (w->nozzle.vacuum * p - w->ambientLoss);
  return f > 0 ? f : 0;
}
static double rateAt(const Model *m, Work *w, double p) {
  double *a = w->anchor, n = m->exponent, r;
  if (p > a[1] && p < a[2]) {
    double d = p * a[0] - 1, d2 = d * d, d4 = d2 * d2;
    double low = 1 + a[5] * d + (a[6] + a[7] * d) * d2, high = a[8] + a[9] * d + (a[10] + a[11] * d) * d2 + a[12] * d4;
    r = a[4] * (low + high * d4);
  } else {
    r = exp(m->lnA + n * log(p));
  }
  w->rate[0] = r; w->rate[1] = n * r;
  return r;
}
static void anchorRate(const Model *m, Work *w, double p) {
  double *a = w->anchor, n = m->exponent;
  if (!(p > a[1] && p < a[2] && fabs(p * a[0] - 1) < 0.5 / 64)) {
    double r = exp(m->lnA + n * log(p));
    a[0] = 1 / p; a[1] = p * (1 - 1. / 64); a[2] = p * (1 + 1. / 64); a[4] = r;
    if (a[3] != n || a[5] != n) {
      double c = 1;
      for (int k = 0; k < 8; k++) { c *= (n - k) / (k + 1); a[5 + k] = c; }
    }
    a[3] = n;
  }
}
static void slopes(const Model *m, Work *w, double t, double p, double y, double throat) {
  (void)t;
  lookUp(m, w, y);
  double made = -flowOf(m, w, p, throat), rate = 0;
  if (w->burning) {
    rate = rateAt(m, w, p);
    made += (m->density - p * w->perEnergy) * w->surface[0] * rate;
  }
  w->slope[0] = m->energy * made / (m->chamber - w->surface[2]);
  w->slope[1] = rate;
  w->slope[2] = 0;
}
static void jacobian(const Model *m, Work *w, double p, double throat) {
  double *j = w->jacobian, area = w->surface[0], vol = m->chamber - w->surface[2], scale = m->energy / vol;
  double flow = flowOf(m, w, p, throat), byP = flow / p, burns = w->burning ? area : 0, rateByP = w->burning ? w->rate[1] / p : 0;
  if (p <= w->chokedAbove && p > m->ambient && share(&w->nozzle, m->ambient, p) < 1) { double M = machOfPressure(m->ambient / p, m->gamma); byP *= 1 + (1 - M * M) / (m->gamma * M * M); }
  double solid = m->density - p / m->energy, rate = w->slope[1];
  j[0] = scale * (solid * burns * rateByP - burns * rate / m->energy - byP);
  j[1] = scale * solid * w->surface[1] * rate - w->slope[0] * area / vol;
  j[2] = -scale * 2 * flow / throat;
  j[3] = rateByP; j[4] = 0; j[5] = 0; j[6] = 0; j[7] = 0; j[8] = 0;
}
static int attempt(const Model *m, Work *w, double t, double h, double p, double y, double throat, double sp, double sy, double st) {
  const double *j = w->jacobian, *f = w->slope; int eroding = w->eroding; double *next = w->next, *error = w->error, *dense = w->dense;
  double j01 = j[1];
  double j02 = j[2];
  double j12 = j[5];
  double j20 = j[6];
  double tp = j[7];
  double ty = j[8];
  double q = 1 / h;
  double d = q / GAMMA;
  // (d − J)·k = b, solved for the radius and the depth in terms of the pressure first.
  double dy = 1 / (d - j[4]);
  double dt = 1 / d;
  double depthByP = (j[3] + j12 * j20 * dt) * dy;
  double pivot = 1 / (d - j[0] - j01 * depthByP - j02 * j20 * dt);

  double b1p = sp + h * D1 * tp;
  double b1y = sy + h * D1 * ty;
  double b1r = eroding ? st : 0;
  double z1 = (b1y + j12 * b1r * dt) * dy;
  double k1p = (b1p + j01 * z1 + j02 * b1r * dt) * pivot;
  double k1y = z1 + depthByP * k1p;
  double k1r = eroding ? (b1r + j20 * k1p) * dt : 0;
  double up = p + A21 * k1p;
  double uy = y + A21 * k1y;
  double ur = throat + A21 * k1r;
  slopes(m, w, t + T2 * h, up, uy, ur);
  double b2p = f[0] + h * D2 * tp + q * (C21 * k1p);
  double b2y = f[1] + h * D2 * ty + q * (C21 * k1y);
  double b2r = eroding ? f[2] + q * (C21 * k1r) : 0;
  double z2 = (b2y + j12 * b2r * dt) * dy;
  double k2p = (b2p + j01 * z2 + j02 * b2r * dt) * pivot;
  double k2y = z2 + depthByP * k2p;
  double k2r = eroding ? (b2r + j20 * k2p) * dt : 0;
  up = p + A31 * k1p + A32 * k2p;
  uy = y + A31 * k1y + A32 * k2y;
  ur = throat + A31 * k1r + A32 * k2r;
  slopes(m, w, t + T3 * h, up, uy, ur);
  double b3p = f[0] + h * D3 * tp + q * (C31 * k1p + C32 * k2p);
  double b3y = f[1] + h * D3 * ty + q * (C31 * k1y + C32 * k2y);
  double b3r = eroding ? f[2] + q * (C31 * k1r + C32 * k2r) : 0;
  double z3 = (b3y + j12 * b3r * dt) * dy;
  double k3p = (b3p + j01 * z3 + j02 * b3r * dt) * pivot;
  double k3y = z3 + depthByP * k3p;
  double k3r = eroding ? (b3r + j20 * k3p) * dt : 0;
  up = p + A41 * k1p + A42 * k2p + A43 * k3p;
  uy = y + A41 * k1y + A42 * k2y + A43 * k3y;
  ur = throat + A41 * k1r + A42 * k2r + A43 * k3r;
  slopes(m, w, t + T4 * h, up, uy, ur);
  double b4p = f[0] + h * D4 * tp + q * (C41 * k1p + C42 * k2p + C43 * k3p);
  double b4y = f[1] + h * D4 * ty + q * (C41 * k1y + C42 * k2y + C43 * k3y);
  double b4r = eroding ? f[2] + q * (C41 * k1r + C42 * k2r + C43 * k3r) : 0;
  double z4 = (b4y + j12 * b4r * dt) * dy;
  double k4p = (b4p + j01 * z4 + j02 * b4r * dt) * pivot;
  double k4y = z4 + depthByP * k4p;
  double k4r = eroding ? (b4r + j20 * k4p) * dt : 0;
  up = p + A51 * k1p + A52 * k2p + A53 * k3p + A54 * k4p;
  uy = y + A51 * k1y + A52 * k2y + A53 * k3y + A54 * k4y;
  ur = throat + A51 * k1r + A52 * k2r + A53 * k3r + A54 * k4r;
  slopes(m, w, t + T5 * h, up, uy, ur);
  double b5p = f[0] + h * D5 * tp + q * (C51 * k1p + C52 * k2p + C53 * k3p + C54 * k4p);
  double b5y = f[1] + h * D5 * ty + q * (C51 * k1y + C52 * k2y + C53 * k3y + C54 * k4y);
  double b5r = eroding ? f[2] + q * (C51 * k1r + C52 * k2r + C53 * k3r + C54 * k4r) : 0;
  double z5 = (b5y + j12 * b5r * dt) * dy;
  double k5p = (b5p + j01 * z5 + j02 * b5r * dt) * pivot;
  double k5y = z5 + depthByP * k5p;
  double k5r = eroding ? (b5r + j20 * k5p) * dt : 0;
  up = p + A61 * k1p + A62 * k2p + A63 * k3p + A64 * k4p + A65 * k5p;
  uy = y + A61 * k1y + A62 * k2y + A63 * k3y + A64 * k4y + A65 * k5y;
  ur = throat + A61 * k1r + A62 * k2r + A63 * k3r + A64 * k4r + A65 * k5r;
  slopes(m, w, t + h, up, uy, ur);
  double b6p = f[0] + q * (C61 * k1p + C62 * k2p + C63 * k3p + C64 * k4p + C65 * k5p);
  double b6y = f[1] + q * (C61 * k1y + C62 * k2y + C63 * k3y + C64 * k4y + C65 * k5y);
  double b6r = eroding ? f[2] + q * (C61 * k1r + C62 * k2r + C63 * k3r + C64 * k4r + C65 * k5r) : 0;
  double z6 = (b6y + j12 * b6r * dt) * dy;
  double k6p = (b6p + j01 * z6 + j02 * b6r * dt) * pivot;
  double k6y = z6 + depthByP * k6p;
  double k6r = eroding ? (b6r + j20 * k6p) * dt : 0;
  up += k6p;
  uy += k6y;
  ur += k6r;
  slopes(m, w, t + h, up, uy, ur);
  double b7p = f[0] + q * (C71 * k1p + C72 * k2p + C73 * k3p + C74 * k4p + C75 * k5p + C76 * k6p);
  double b7y = f[1] + q * (C71 * k1y + C72 * k2y + C73 * k3y + C74 * k4y + C75 * k5y + C76 * k6y);
  double b7r = eroding ? f[2] + q * (C71 * k1r + C72 * k2r + C73 * k3r + C74 * k4r + C75 * k5r + C76 * k6r) : 0;
  double z7 = (b7y + j12 * b7r * dt) * dy;
  double k7p = (b7p + j01 * z7 + j02 * b7r * dt) * pivot;
  double k7y = z7 + depthByP * k7p;
  double k7r = eroding ? (b7r + j20 * k7p) * dt : 0;
  up += k7p;
  uy += k7y;
  ur += k7r;
  slopes(m, w, t + h, up, uy, ur);
  double b8p = f[0] + q * (C81 * k1p + C82 * k2p + C83 * k3p + C84 * k4p + C85 * k5p + C86 * k6p + C87 * k7p);
  double b8y = f[1] + q * (C81 * k1y + C82 * k2y + C83 * k3y + C84 * k4y + C85 * k5y + C86 * k6y + C87 * k7y);
  double b8r = eroding ? f[2] + q * (C81 * k1r + C82 * k2r + C83 * k3r + C84 * k4r + C85 * k5r + C86 * k6r + C87 * k7r) : 0;
  double z8 = (b8y + j12 * b8r * dt) * dy;
  double k8p = (b8p + j01 * z8 + j02 * b8r * dt) * pivot;
  double k8y = z8 + depthByP * k8p;
  double k8r = eroding ? (b8r + j20 * k8p) * dt : 0;
  next[0] = up + k8p;
  error[0] = k8p;
  next[1] = uy + k8y;
  error[1] = k8y;
  next[2] = ur + k8r;
  error[2] = k8r;
  dense[0] = H11 * k1p + H12 * k2p + H13 * k3p + H14 * k4p + H15 * k5p + H16 * k6p + H17 * k7p + H18 * k8p;
  dense[1] = H11 * k1y + H12 * k2y + H13 * k3y + H14 * k4y + H15 * k5y + H16 * k6y + H17 * k7y + H18 * k8y;
  dense[2] = eroding ? H11 * k1r + H12 * k2r + H13 * k3r + H14 * k4r + H15 * k5r + H16 * k6r + H17 * k7r + H18 * k8r : 0;
  dense[3] = H21 * k1p + H22 * k2p + H23 * k3p + H24 * k4p + H25 * k5p + H26 * k6p + H27 * k7p + H28 * k8p;
  dense[4] = H21 * k1y + H22 * k2y + H23 * k3y + H24 * k4y + H25 * k5y + H26 * k6y + H27 * k7y + H28 * k8y;
  dense[5] = eroding ? H21 * k1r + H22 * k2r + H23 * k3r + H24 * k4r + H25 * k5r + H26 * k6r + H27 * k7r + H28 * k8r : 0;
  dense[6] = H31 * k1p + H32 * k2p + H33 * k3p + H34 * k4p + H35 * k5p + H36 * k6p + H37 * k7p + H38 * k8p;
  dense[7] = H31 * k1y + H32 * k2y + H33 * k3y + H34 * k4y + H35 * k5y + H36 * k6y + H37 * k7y + H38 * k8y;
  dense[8] = eroding ? H31 * k1r + H32 * k2r + H33 * k3r + H34 * k4r + H35 * k5r + H36 * k6r + H37 * k7r + H38 * k8r : 0;

  return next[0] > 0 && next[0] < INFINITY && next[1] < INFINITY && next[2] > 0;
}
static double inside(const Work *w, int c, double from, double s) {
  return from + s * (w->next[c] - from + (1 - s) * (w->dense[c] + s * (w->dense[3 + c] + s * w->dense[6 + c])));
}
static int crossed(const Model *m, const Work *w, double p) {
  if (w->burning && w->next[1] >= m->ends[w->piece]) return 1;
  if (w->next[0] >= m->limit && p < m->limit) return 2;
  if (!w->burning && w->next[0] <= m->stop) return 3;
  return 0;
}
static double targetOf(const Model *m, const Work *w, int c) { return c == 1 ? m->ends[w->piece] : c == 2 ? m->limit : m->stop; }
static double land(const Model *m, Work *w, int *crossing, double t, double step, double p, double y, double throat, double sp, double sy, double st) {
  for (int round = 0; round < 12; round++) {
    int c = *crossing == 1 ? 1 : 0;
    double target = targetOf(m, w, *crossing), from = c ? y : p, accuracy = c ? 1e-13 * m->burnout : 1e-11 * target;
    if (fabs(w->next[c] - target) <= accuracy) { w->next[c] = target; return step; }
    double over = w->next[c] - target;
    if (fabs(over) <= 1e-4 * fabs(target - from)) step *= 1 - over / (w->next[c] - from);
    else {
      int rising = target > from; double lo = 0, hi = 1;
      for (int i = 0; i < 40; i++) { double s = 0.5 * (lo + hi); if ((inside(w, c, from, s) >= target) == rising) hi = s; else lo = s; }
      step *= hi;
    }
    attempt(m, w, t, step, p, y, throat, sp, sy, st);
    int other = crossed(m, w, p);
    if (other && other != *crossing) *crossing = other;
  }
  w->next[*crossing == 1 ? 1 : 0] = targetOf(m, w, *crossing);
  return step;
}
static double topInside(const Work *w, double p) {
  double g = (sqrt(5) - 1) / 2, a = 0, b = 1, c = b - g, d = a + g, fc = inside(w, 0, p, c), fd = inside(w, 0, p, d);
  for (int i = 0; i < 40; i++) {
    if (fc > fd) { b = d; d = c; fd = fc; c = b - g * (b - a); fc = inside(w, 0, p, c); }
    else { a = c; c = d; fc = fd; d = a + g * (b - a); fd = inside(w, 0, p, d); }
  }
  return 0.5 * (a + b);
}
static void addStep(const Model *m, Work *w, Result *r, double t, double h, double p, double y, double throat, double slope) {
  double g = sqrt(15) / 10, nodes[3] = {0.5 - g, 0.5, 0.5 + g}, weights[3] = {5. / 18, 8. / 18, 5. / 18};
  for (int i = 0; i < 3; i++) {
    double wt = h * weights[i], pi = inside(w, 0, p, nodes[i]), f = thrustOf(m, w, pi, throat);
    r->impulse += wt * f; r->integral += wt * pi; r->mass += wt * flowOf(m, w, pi, throat);
    if (f > r->thrust) r->thrust = f;
  }
  double f = thrustOf(m, w, w->next[0], w->next[2]);
  if (f > r->thrust) r->thrust = f;
  if (w->burning && w->next[1] > 0.05 * m->burnout && y < 0.95 * m->burnout) {
    if (w->next[0] < r->least) r->least = w->next[0];
    if (w->next[0] > r->most) r->most = w->next[0];
  }
  if (slope > 0 && w->next[0] - inside(w, 0, p, 0.999) < 0) {
    double s = topInside(w, p), top = inside(w, 0, p, s);
    if (top > r->peak) { r->peak = top; r->peakTime = t + s * h; f = thrustOf(m, w, top, throat); if (f > r->thrust) r->thrust = f; }
  } else if (w->next[0] > r->peak) { r->peak = w->next[0]; r->peakTime = t + h; }
}
static double clampTo(double lo, double hi, double x) { return x < lo ? lo : x > hi ? hi : x; }
static void run(const Model *m, Work *w, Result *r) {
  *r = (Result){.peak = m->p0, .least = INFINITY};
  w->nozzle = nozzleOf(m->gamma, fmax(1, m->exitArea / (M_PI * m->throat * m->throat)));
  w->perEnergy = 1 / m->energy; w->flowFactor = M_PI / m->cstar; w->chokedAbove = m->ambient / w->nozzle.unchoked;
  w->thrustFactor = m->thrustEff * M_PI; w->ambientLoss = w->nozzle.ratio * m->ambient;
  w->piece = 0; w->interval = 0; w->burning = 1; w->eroding = m->throat < 0; w->anchor[1] = w->anchor[2] = 0; w->surface[3] = w->surface[4] = 0;
  double t = 0, p = m->p0, y = 0, throat = m->throat, h = 0, lastH = 0, lnLast = 0;
  int fresh = 1;
  for (;;) {
    double timeEnd = m->timeLimit;
    if (w->burning) anchorRate(m, w, p);
    slopes(m, w, t, p, y, throat);
    double sp = w->slope[0], sy = w->slope[1], st = w->slope[2];
    jacobian(m, w, p, throat);
    if (fresh) {
      double span = timeEnd - t, byP = sp == 0 ? span : 0.01 * p / fabs(sp);
      double byY = sy == 0 ? span : 0.01 * fmax(m->burnout - y, 0.01 * m->burnout) / sy;
      h = fmin(fmin(byP, byY), 0.1 * span); lastH = 0; fresh = 0;
    }
    if (w->jacobian[0] * h > 1) h = 1 / w->jacobian[0];
    for (int tries = 0;; tries++) {
      if (r->steps + r->rejected >= 50000 || tries > 60) return;
      int toTime = t + h >= timeEnd - 1e-12 * timeEnd;
      double step = toTime ? timeEnd - t : h;
      int finite = attempt(m, w, t, step, p, y, throat, sp, sy, st);
      double e = INFINITY;
      if (finite) {
        double top = fmax(p, w->next[0]), scale = top > w->chokedAbove ? top : fmax(top - m->ambient, 1e-5 * top);
        double ep = fabs(w->error[0]) / (m->tol * scale), ey = fabs(w->error[1]) / (m->tol * fmax(y, 0.1 * m->burnout));
        e = fmax(fmax(ep, ey), fabs(w->error[2]) / (m->tol * w->next[2]));
      }
      if (!(e <= 1)) { r->rejected++; h = step * fmin(0.9, fmax(0.2, 0.9 * exp(-0.2 * log(e)))); lastH = 0; continue; }
      double taken = step;
      int crossing = crossed(m, w, p);
      if (crossing) taken = land(m, w, &crossing, t, step, p, y, throat, sp, sy, st);
      r->steps++;
      addStep(m, w, r, t, taken, p, y, throat, sp);
      double lnE = log(e), factor = 0.9 * exp(-0.2 * lnE);
      if (lastH > 0) factor = fmin(factor, 0.9 * (step / lastH) * exp(0.2 * (lnLast - 2 * lnE)));
      h = step * clampTo(0.2, 6, factor);
      lastH = step; lnLast = fmax(log(1e-2), lnE);
      t = toTime && !crossing ? timeEnd : t + taken;
      p = w->next[0]; y = w->next[1]; throat = w->next[2];
      if (toTime || crossing) fresh = 1;
      if (crossing == 2 || crossing == 3) { r->end = t; return; }
      if (crossing == 1) {
        w->surface[3] = w->surface[4] = 0;
        if (w->piece < m->pieces - 1) w->piece++;
        else { w->burning = 0; r->burnout = t; if (p <= m->stop) { r->end = t; return; } }
      }
      if (t >= m->timeLimit) { r->end = t; return; }
      break;
    }
  }
}

/* INPUT: 21 numbers (depths, pieces, rows, burnout, ln a, n, density, R T, c*, gamma, chamber volume, throat radius, exit
   area, ambient, start, stop, limit, time limit, tolerance, thrust factor, 0), then depth, area, volume, bow (one less),
   piece ends, first, last, then the rows of six factors. */
int main(int argc, char **argv) {
  if (argc < 3) return 2;
  FILE *in = fopen(argv[1], "rb");
  if (!in) return 2;
  fseek(in, 0, SEEK_END);
  long size = ftell(in);
  rewind(in);
  double *d = malloc(size);
  if (fread(d, 1, size, in) != (size_t)size) return 2;
  int n = (int)d[0], pieces = (int)d[1], rows = (int)d[2];
  const double *q = d + 21;
  Model base = {.n = n, .pieces = pieces, .depth = q, .area = q + n, .volume = q + 2 * n, .bow = q + 3 * n, .ends = q + 4 * n - 1, .first = q + 4 * n - 1 + pieces, .last = q + 4 * n - 1 + 2 * pieces,
    .burnout = d[3], .lnA = d[4], .exponent = d[5], .density = d[6], .energy = d[7], .cstar = d[8], .gamma = d[9], .chamber = d[10], .throat = d[11], .exitArea = d[12],
    .ambient = d[13], .p0 = d[14], .stop = d[15], .limit = d[16], .timeLimit = d[17], .tol = d[18], .thrustEff = d[19]};
  const double *row = q + 4 * n - 1 + 3 * pieces;
  Work w;
  Result r;
  double best = INFINITY, peaks = 0, impulses = 0, times = 0;
  for (int k = 0; k < atoi(argv[2]); k++) {
    struct timespec a, b;
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &a);
    peaks = impulses = times = 0;
    for (int i = 0; i < rows; i++) {
      const double *f = row + 6 * i;
      Model m = base;
      m.lnA += log(f[0]); m.density *= f[1]; m.cstar *= f[2]; m.energy *= f[2] * f[2]; m.throat *= f[3]; m.thrustEff *= f[4]; m.chamber *= f[5];
      run(&m, &w, &r);
      peaks += r.peak; impulses += r.impulse; times += r.burnout;
    }
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &b);
    double ns = (b.tv_sec - a.tv_sec) * 1e9 + (b.tv_nsec - a.tv_nsec);
    if (ns < best) best = ns;
  }
  printf("%.0f %.17g %.17g %.17g\n", best, peaks, impulses, times);
  return 0;
}
