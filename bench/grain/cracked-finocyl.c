/* The regression of bench/grain/grains.ts, the finocyl with two cracks, by the same algorithm: exact distances, rays shrunk
   to the largest empty ball, cells quartered at creases, areas and volumes tallied at 200 depths. Two spacings, as there.
   usage: cracked-finocyl cells-per-radius repeats; prints JSON */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

#define R 0.038
#define L 0.18
#define BORE 0.01
#define HALF 0.002
#define TIP 0.022
#define ROOT (HALF * sqrt(3)) /* HALF / tan(pi / 6) */
#define FROM 0.1
#define STEPS 200
typedef double v3[3];
typedef struct { double o[3], a[3], b[3], c[3], ha, hb; } crack_t;
static crack_t cracks[2];
static int source;

static double box(double x, double y, double x0, double x1, double y0, double y1, double *f) {
  double fx = x < x0 ? x0 : x > x1 ? x1 : x, fy = y < y0 ? y0 : y > y1 ? y1 : y;
  if (fx != x || fy != y) { f[0] = fx; f[1] = fy; return sqrt((x - fx) * (x - fx) + (y - fy) * (y - fy)); }
  double tx = fmin(x - x0, x1 - x), ty = fmin(y - y0, y1 - y);
  f[0] = tx <= ty ? (x - x0 < x1 - x ? x0 : x1) : x;
  f[1] = tx <= ty ? y : (y - y0 < y1 - y ? y0 : y1);
  return -fmin(tx, ty);
}
/* A fin in its own sector: its sides begin where they meet the neighbours'. */
static double fin(double x, double y, double *f) {
  double side = y < 0 ? -HALF : HALF, aside = fabs(y) - HALF;
  if (aside > 0 || x > TIP) {
    f[0] = fmin(x, TIP); f[1] = aside > 0 ? side : y;
    return sqrt((x - f[0]) * (x - f[0]) + (y - f[1]) * (y - f[1]));
  }
  double fx = fmax(x, ROOT), d = sqrt((fx - x) * (fx - x) + aside * aside);
  if (d <= TIP - x) { f[0] = fx; f[1] = side; return -d; }
  f[0] = TIP; f[1] = y;
  return x - TIP;
}
static double fins(double x, double y, double z, double *f) {
  double step = M_PI / 3;
  double k = round(atan2(y, x) / step), c = cos(k * step), s = sin(k * step), g[2];
  double a = fin(c * x + s * y, c * y - s * x, g);
  double fx = c * g[0] - s * g[1], fy = s * g[0] + c * g[1];
  if (z < FROM) {
    f[2] = FROM;
    if (a <= 0) { f[0] = x; f[1] = y; return FROM - z; }
    f[0] = fx; f[1] = fy;
    return sqrt(a * a + (FROM - z) * (FROM - z));
  }
  if (a > FROM - z) { f[0] = fx; f[1] = fy; f[2] = z; return a; }
  f[0] = x; f[1] = y; f[2] = FROM;
  return FROM - z;
}
static double sheet(const crack_t *k, double x, double y, double z, double *f) {
  double dx = x - k->o[0], dy = y - k->o[1], dz = z - k->o[2];
  double u = dx * k->a[0] + dy * k->a[1] + dz * k->a[2], v = dx * k->b[0] + dy * k->b[1] + dz * k->b[2];
  double w = dx * k->c[0] + dy * k->c[1] + dz * k->c[2];
  double g[2], a = box(u, v, -k->ha, k->ha, -k->hb, k->hb, g);
  if (a <= 0) { g[0] = u; g[1] = v; a = 0; }
  for (int i = 0; i < 3; i++) f[i] = k->o[i] + g[0] * k->a[i] + g[1] * k->b[i];
  return sqrt(a * a + w * w);
}
static double depth(double x, double y, double z, double *foot) {
  double t[3], best, tie = 1e-10 * R, r = sqrt(x * x + y * y), k = r > 0 ? BORE / r : 0;
  foot[0] = x * k; foot[1] = y * k; foot[2] = z;
  best = r - BORE; source = 0;
  double d = fins(x, y, z, t);
  if (d < best - tie) { best = d; source = 1; memcpy(foot, t, sizeof t); }
  for (int i = 0; i < 2; i++) {
    double bound = hypot(cracks[i].ha, cracks[i].hb), room = best + bound;
    double dx = x - cracks[i].o[0], dy = y - cracks[i].o[1], dz = z - cracks[i].o[2];
    if (room <= 0 || dx * dx + dy * dy + dz * dz > room * room) continue;
    d = sheet(&cracks[i], x, y, z, t);
    if (d < best - tie) { best = d; source = 2 + i; memcpy(foot, t, sizeof t); }
  }
  return best;
}
static double leaves(const double *s) {
  double slack = 1e-9 * R, c = s[0] * s[0] + s[1] * s[1] - R * R, t = INFINITY;
  if (s[2] < -slack || s[2] > L + slack || c > 2 * slack * R) return 0;
  double a = s[3] * s[3] + s[4] * s[4];
  if (a > 1e-24) { double b = s[0] * s[3] + s[1] * s[4], q = b * b - a * c; t = q > 0 ? (-b + sqrt(q)) / a : 0; }
  if (s[5] > 1e-12) t = fmin(t, (L - s[2]) / s[5]);
  else if (s[5] < -1e-12) t = fmin(t, -s[2] / s[5]);
  return fmax(t, 0);
}
static double guess;
static double cut(const double *s, int owner) {
  double tol = 1e-9 * R, exit = leaves(s), f[3];
  if (exit <= tol) return 0;
  double start = depth(s[0], s[1], s[2], f);
  if (start < -tol) return start;
  double t = guess > 0 && 1.1 * guess < exit ? 1.1 * guess : exit;
  int trial = t < exit;
  for (int n = 0; n < 100; n++) {
    double d = depth(s[0] + t * s[3], s[1] + t * s[4], s[2] + t * s[5], f);
    if (d >= t - tol) {
      if (trial) { trial = 0; t = exit; continue; }
      guess = t;
      if (source != owner) {
        depth(s[0] + 0.5 * t * s[3], s[1] + 0.5 * t * s[4], s[2] + 0.5 * t * s[5], f);
        if (source != owner) return 0;
      }
      return t;
    }
    trial = 0;
    double ex = f[0] - s[0], ey = f[1] - s[1], ez = f[2] - s[2], along = ex * s[3] + ey * s[4] + ez * s[5];
    double shorter = along > 0 ? (ex * ex + ey * ey + ez * ez) / (2 * along) : t / 2;
    t = shorter < t ? shorter : t / 2;
    if (t <= tol) return 0;
  }
  return t;
}

/* Patches: a plane element (line, or the bore's circle) as side, flat end, rim or corner, in a frame. */
enum { SIDE, CAP, RING, CORNER, POINT };
typedef struct { int kind, circle, owner, framed; double x0, y0, x1, y1, z0, z1, from, sweep, low, fan, up, su, sv; } patch_t;
static patch_t patches[512];
static int patch_count;
static void ray(const patch_t *p, double u, double v, double *o) {
  double x, y, a, len;
  if (p->circle) { a = u * 2 * M_PI; x = BORE * cos(a); y = BORE * sin(a); len = 2 * M_PI * BORE; }
  else {
    double dx = p->x1 - p->x0, dy = p->y1 - p->y0;
    x = p->x0 + u * dx; y = p->y0 + u * dy; len = hypot(dx, dy); a = atan2(-dx, dy);
  }
  o[6] = o[7] = o[8] = 0;
  switch (p->kind) {
    case SIDE:
      o[0] = x; o[1] = y; o[2] = p->z0 + v * (p->z1 - p->z0);
      o[3] = cos(a); o[4] = sin(a); o[5] = 0;
      o[6] = len * (p->z1 - p->z0); if (p->circle) o[7] = 2 * M_PI * (p->z1 - p->z0);
      break;
    case CAP:
      o[0] = v * x; o[1] = v * y; o[2] = p->z0; o[3] = o[4] = 0; o[5] = p->up;
      o[6] = v * len * (x * cos(a) + y * sin(a));
      break;
    case RING: {
      double q = p->low + v * p->fan, c = cos(q);
      o[0] = x; o[1] = y; o[2] = p->z0; o[3] = c * cos(a); o[4] = c * sin(a); o[5] = sin(q); o[7] = len * p->fan;
      break;
    }
    case CORNER:
      a = p->from + u * p->sweep;
      o[0] = p->x0; o[1] = p->y0; o[2] = p->z0 + v * (p->z1 - p->z0); o[3] = cos(a); o[4] = sin(a); o[5] = 0;
      o[7] = p->sweep * (p->z1 - p->z0);
      break;
    case POINT: {
      double q = p->low + v * p->fan, c = cos(q);
      a = p->from + u * p->sweep;
      o[0] = p->x0; o[1] = p->y0; o[2] = p->z0; o[3] = c * cos(a); o[4] = c * sin(a); o[5] = sin(q);
      o[8] = p->sweep * p->fan * c;
      break;
    }
  }
  if (p->framed) {
    const crack_t *k = &cracks[p->framed - 1];
    double s[6];
    memcpy(s, o, sizeof s);
    for (int i = 0; i < 3; i++) {
      o[i] = k->o[i] + s[0] * k->a[i] + s[1] * k->b[i] + s[2] * k->c[i];
      o[3 + i] = s[3] * k->a[i] + s[4] * k->b[i] + s[5] * k->c[i];
    }
  }
}
static void add(patch_t p) { patches[patch_count++] = p; }
/* A rectangle turned by an angle: sides z0..z1 when it has height, flat ends, rims and corners. */
static void rectangle(double ax, double bx, double hb, double turn, double z0, double z1, int owner, int framed) {
  double px[4] = {ax, bx, bx, ax}, py[4] = {-hb, -hb, hb, hb}, c = cos(turn), s = sin(turn), reach = 0.5 * R, q = M_PI / 2;
  int open = z1 > z0; /* a fin: no face at its root, no corners there */
  for (int i = 0; i < (open ? 3 : 4); i++) {
    int j = (i + 1) % 4;
    patch_t p = {.owner = owner, .framed = framed, .x0 = c * px[i] - s * py[i], .y0 = s * px[i] + c * py[i],
                 .x1 = c * px[j] - s * py[j], .y1 = s * px[j] + c * py[j], .z0 = z0, .z1 = z1};
    double len = hypot(p.x1 - p.x0, p.y1 - p.y0), normal = atan2(-(p.x1 - p.x0), p.y1 - p.y0);
    double far = fmax(hypot(p.x0, p.y0), hypot(p.x1, p.y1));
    patch_t t = p;
    t.su = len; t.sv = z1 - z0; t.kind = SIDE;
    if (z1 > z0) add(t);
    t.kind = CAP; t.sv = far; t.up = -1; add(t);
    if (z1 == z0) { t.up = 1; add(t); }
    t.kind = RING; t.sv = q * reach; t.fan = q; t.low = -q; add(t);
    if (z1 == z0) { t.low = 0; add(t); }
    if (open && i == 0) continue;
    t.from = normal - q; t.sweep = q; t.su = q * reach;
    t.kind = CORNER; t.sv = z1 - z0;
    if (z1 > z0) add(t);
    t.kind = POINT; t.sv = q * reach; t.fan = q; t.low = -q; add(t);
    if (z1 == z0) { t.low = 0; add(t); }
  }
}

/* Cells: five depths and three weights. */
static double *cells;
static long count, room;
static double tolerance;
static const patch_t *at;
static double depth_at(double u, double v) { double o[9]; ray(at, u, v, o); return cut(o, at->owner); }
static void leaf(double u, double v, double du, double dv, double a, double b, double c, double d, double m) {
  if (count == room) { room *= 2; cells = realloc(cells, room * 14 * sizeof(double)); }
  double *k = cells + 14 * count++, o[9];
  k[5] = k[6] = k[7] = 0;
  for (int i = 0; i < 5; i++) {
    if (i < 4) ray(at, u + (i == 1 || i == 2 ? du : 0), v + (i > 1 ? dv : 0), o);
    else ray(at, u + du / 2, v + dv / 2, o);
    double share = du * dv * (i < 4 ? 0.25 : 2) / 3;
    for (int j = 0; j < 3; j++) k[5 + j] += share * o[6 + j];
  }
  memcpy(k + 8, o, 6 * sizeof(double));
  k[0] = a; k[1] = b; k[2] = c; k[3] = d; k[4] = m;
}
static void divide(double u, double v, double du, double dv, double a, double b, double c, double d, int level) {
  double m = depth_at(u + du / 2, v + dv / 2);
  if (m <= 0 && a <= 0 && b <= 0 && c <= 0 && d <= 0) return;
  if (level == 7 || fabs(m - (a + b + c + d) / 4) * exp2(-level / 2.0) <= tolerance) { leaf(u, v, du, dv, a, b, c, d, m); return; }
  double hu = du / 2, hv = dv / 2;
  double s = depth_at(u + hu, v), e = depth_at(u + du, v + hv), n = depth_at(u + hu, v + dv), w = depth_at(u, v + hv);
  divide(u, v, hu, hv, a, s, m, w, level + 1);
  divide(u + hu, v, hu, hv, s, b, e, m, level + 1);
  divide(u + hu, v + hv, hu, hv, m, e, c, n, level + 1);
  divide(u, v + hv, hu, hv, w, m, n, d, level + 1);
}
static void sample(double spacing) {
  tolerance = 0.05 * spacing * spacing / R; count = 0; guess = 0;
  for (int i = 0; i < patch_count; i++) {
    at = &patches[i];
    int nu = fmax(4, ceil(at->su / spacing)), nv = fmax(4, ceil(at->sv / spacing));
    double last[nv + 1], next[nv + 1];
    for (int k = 0; k <= nv; k++) last[k] = depth_at(0, (double)k / nv);
    for (int j = 0; j < nu; j++) {
      for (int k = 0; k <= nv; k++) next[k] = depth_at((j + 1.0) / nu, (double)k / nv);
      for (int k = 0; k < nv; k++)
        divide((double)j / nu, (double)k / nv, 1.0 / nu, 1.0 / nv, last[k], next[k], next[k + 1], last[k + 1], 0);
      memcpy(last, next, sizeof next);
    }
  }
}
static double levels[STEPS + 2], alive[3][STEPS + 3], part[3][STEPS + 2], gone[STEPS + 3], area[STEPS + 2], volume[STEPS + 2];
static double share_of(double a, double b, double c, double w) {
  if (w < b) return w <= a ? 1 : 1 - (w - a) * (w - a) / ((b - a) * (c - a));
  return w >= c ? 0 : (c - w) * (c - w) / ((c - a) * (c - b));
}
static double span_of(double a, double b, double c, double w) {
  double p = w - a, rise = b - a, fall = c - b, left = c - w;
  if (w <= b) return p > 0 ? p - p * p * p / (3 * rise * (c - a)) : p;
  return rise - rise * rise / (3 * (c - a)) + (fall * fall * fall - left * left * left) / (3 * (c - a) * fall);
}
static void piece(double a, double b, double c, const double *w, int n) {
  if (c <= 0) return;
  int lo = 0, hi = n;
  double first = fmax(a, 0), share = 1, from = a, span = 0;
  while (lo < hi) { int m = (lo + hi) >> 1; if (levels[m] < first) lo = m + 1; else hi = m; }
  int k = lo;
  if (a < 0) { share = share_of(a, b, c, 0); from = 0; span = span_of(a, b, c, 0); }
  for (int j = 0; j < 3; j++) alive[j][k] += share * w[j] / 4;
  for (; k < n; k++) {
    double to = fmin(levels[k], c), left = to >= c ? 0 : share_of(a, b, c, to), t = (from + to) / 2;
    if (c > a) {
      double next = span_of(a, b, c, to);
      if (share - left > 1e-9) t = fmin(to, fmax(from, (from * share - to * left + next - span) / (share - left)));
      span = next;
    }
    gone[k] += (share - left) * t * (w[0] + t * (w[1] / 2 + t * w[2] / 3)) / 4;
    if (levels[k] >= c) break;
    for (int j = 0; j < 3; j++) part[j][k] += left * w[j] / 4;
    share = left; from = to;
  }
}
static void tally(double burnout) {
  int n = STEPS + 2;
  for (int k = 0; k <= STEPS; k++) levels[k] = k == STEPS ? burnout * (1 - 2e-7) : burnout * k / STEPS;
  levels[STEPS + 1] = burnout * (1 + 2e-7);
  memset(alive, 0, sizeof alive); memset(part, 0, sizeof part); memset(gone, 0, sizeof gone);
  for (long i = 0; i < count; i++) {
    const double *d = cells + 14 * i, m = d[4];
    for (int k = 0; k < 4; k++) {
      double p = d[k], q = d[(k + 1) & 3], low = fmin(p, q), high = fmax(p, q);
      piece(fmin(m, low), m < low ? low : fmin(m, high), fmax(m, high), d + 5, n);
    }
  }
  double dead = 0, a[3] = {0, 0, 0}, total = 0;
  for (int j = 0; j < 3; j++) for (int k = n - 1; k >= 0; k--) alive[j][k] += alive[j][k + 1];
  for (int k = 0; k < n; k++) total += gone[k];
  for (int k = 0; k < n; k++) {
    dead += gone[k];
    double t = levels[k];
    for (int j = 0; j < 3; j++) a[j] = alive[j][k + 1] + part[j][k];
    area[k] = a[0] + t * (a[1] + t * a[2]);
    volume[k] = total - dead - t * (a[0] + t * (a[1] / 2 + t * a[2] / 3));
  }
}
int main(int argc, char **argv) {
  double per = argc > 1 ? atof(argv[1]) : 6, spacing = R / per, best = 1e9;
  int repeats = argc > 2 ? atoi(argv[2]) : 3;
  double angle[2] = {20, 126}, out[2] = {0.025, 0.02}, z0[2] = {0.03, 0.05}, z1[2] = {0.06, 0.07};
  for (int i = 0; i < 2; i++) {
    double t = angle[i] * M_PI / 180, mid = (BORE + out[i]) / 2;
    cracks[i] = (crack_t){{mid * cos(t), mid * sin(t), (z0[i] + z1[i]) / 2}, {cos(t), sin(t), 0}, {0, 0, 1},
                          {-sin(t), cos(t), 0}, (out[i] - BORE) / 2, (z1[i] - z0[i]) / 2};
    /* right-handed: b = c x a */
    double *a = cracks[i].a, *b = cracks[i].b, *c = cracks[i].c;
    b[0] = c[1] * a[2] - c[2] * a[1]; b[1] = c[2] * a[0] - c[0] * a[2]; b[2] = c[0] * a[1] - c[1] * a[0];
  }
  add((patch_t){.kind = SIDE, .circle = 1, .owner = 0, .z0 = 0, .z1 = L, .su = 2 * M_PI * BORE, .sv = L});
  for (int k = 0; k < 6; k++) rectangle(ROOT, TIP, HALF, k * M_PI / 3, FROM, L, 1, 0);
  for (int i = 0; i < 2; i++) rectangle(-cracks[i].ha, cracks[i].ha, cracks[i].hb, 0, 0, 0, 2 + i, 1 + i);
  room = 1 << 16;
  cells = malloc(room * 14 * sizeof(double));
  for (int r = 0; r < repeats; r++) {
    struct timespec a, b;
    clock_gettime(CLOCK_MONOTONIC, &a);
    double burnout = 0;
    for (int pass = 0; pass < 2; pass++) {
      sample(pass == 0 ? 2 * spacing : spacing);
      burnout = 0;
      for (long i = 0; i < count; i++) for (int k = 0; k < 5; k++) burnout = fmax(burnout, cells[14 * i + k]);
      tally(burnout);
    }
    clock_gettime(CLOCK_MONOTONIC, &b);
    best = fmin(best, (b.tv_sec - a.tv_sec) * 1e3 + (b.tv_nsec - a.tv_nsec) / 1e6);
  }
  printf("{\"ms\": %.3f, \"cells\": %ld, \"volume\": %.6f}\n", best, count, volume[0] * 1e9);
  return 0;
}
