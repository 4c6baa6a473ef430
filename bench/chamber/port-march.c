/* The march along a port in C, step for step the algorithm of src/ballistics/port/port-march.ts, with the search of
   the head pressure left out. Built by port.mjs. usage: port-march INPUT REPEATS; INPUT is doubles: count, marches, law (0
   none, 1 Mukunda-Paul), gamma, gas energy, density, momentum factor, entrance loss, ln of the rate coefficient, exponent, settled within, gain,
   threshold, viscosity, factor, then kind, length, area, burning, diameter, volume of the cells, then head pressure and slope of each march.
   Prints nanoseconds of one pass, best of the repeats, then sums of exit flow, stagnation pressure and rate of the last bore cell. */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <time.h>

enum { BORE, GAP };
typedef struct { int count; const double *kind, *length, *area, *burning, *diameter, *volume; } Cells;
typedef struct { int law; double gamma, energy, density, beta, loss, lnA, n, settled, gain, threshold, viscosity, factor; } Gas;
typedef struct { double *flow, *pressure, *mach, *flux, *rate, burned, exitFlow, exitPressure, exitMach, exitStagnation; int choked; } March;

static double machSquared(double flow, double impulse, double energy, double g, double beta) {
  double s = (flow * flow * energy) / (impulse * impulse), bg = beta * g;
  double a = s * bg * bg - (g * (g - 1)) / 2, b = g - 2 * s * bg, d = b * b - 4 * a * s;
  if (!(d >= 0) || !(b > 0)) return NAN;
  return (2 * s) / (b + sqrt(d));
}

static double stagnationRatio(double square, double g) { return pow(1 + ((g - 1) / 2) * square, g / (g - 1)); }

static double erosiveRate(const Gas *m, double base, double flux, double diameter) {
  if (m->law == 0 || !(flux > 0)) return base;
  static double known = NAN, thresholdEighth, thresholdPower;
  double solid = m->density * base, relative = flux / solid, squared = relative * relative, fourth = squared * squared;
  double eighth = (fourth * fourth * 1000 * m->viscosity) / (solid * diameter);
  if (m->threshold != known) {
    known = m->threshold;
    thresholdEighth = pow(known, 8);
    thresholdPower = pow(known, 0.8);
  }
  if (eighth <= thresholdEighth) return base;
  return base * (1 + m->factor * m->gain * (exp(0.1 * log(eighth)) - thresholdPower));
}

static double endArea(const Cells *c, int i, int side) {
  int j = i + side;
  if (j < 0 || j >= c->count || c->kind[j] != BORE) return c->area[i];
  double between = 0.5 * (c->length[i] + c->length[j]);
  double face = c->area[i] + ((c->area[i] - c->area[j]) * 0.5 * c->length[i]) / between;
  return fmax(0.5 * c->area[i], face);
}

static double stepPressure(double from, double to, double ratio) {
  double mean = 0.5 * (from + to);
  if (ratio <= 1.05) return mean;
  if (ratio >= 1.3) return from;
  return mean + ((ratio - 1.05) / (1.3 - 1.05)) * (from - mean);
}

static double machFromAreaRatio(double ratio, double g) {
  if (ratio == 1) return 1;
  double t = (g - 1) / 2, below = 1 + t, power = below / (2 * t), target = log(ratio);
  double s = sqrt(below * target), bend = (2.0 / 3) * ((1 - t) / below);
  double outer = -(target + power * log1p(t)), least = exp(outer), y = 0.5 * below * least * least;
  double low = least * (1 - 1e-9), high = 1;
  double mach = target < 0.25 ? 1 - s * (1 - 0.5 * (1 - bend) * s) : least * (1 + y * (1 + 0.5 * y));
  if (!(mach > low && mach < high)) mach = 0.5 * (low + high);
  for (int k = 0; k < 200; k++) {
    double square = mach * mach, above = (mach - 1) * (mach + 1), b = 1 + t * square;
    double value = power * log1p((t * above) / below) - (target < 0.1 ? log(mach) + target : log(mach * ratio));
    if (value == 0) return mach;
    if (value > 0) low = mach; else high = mach;
    double first = above / b, second = (2 * square * below) / (b * b), newton = -value / first;
    double a2 = second / (2 * first), a3 = (second * (1 - t * square)) / (3 * b * first);
    double step = newton * (1 - newton * (a2 - newton * (2 * a2 * a2 - a3)));
    if (!(step * newton > 0 && fabs(step) < 2 * fabs(newton))) step = newton;
    double next = fabs(step) < 0.02 ? mach + mach * (step + 0.5 * step * step * (1 + step / 3)) : mach * exp(step);
    if (!(next > low && next < high)) {
      double middle = 0.5 * (low + high);
      if (middle == low || middle == high) return mach;
      mach = middle;
      continue;
    }
    mach = next;
    if (fabs(step) <= 1e-4 * fmin(1, fabs(mach - 1))) return mach;
  }
  return NAN;
}

static double entranceMach(const Gas *m, double flow, double gapSquare, double gapPressure, double open) {
  if (flow == 0) return 0;
  double g = m->gamma, stagnation = gapPressure * stagnationRatio(gapSquare, g);
  double sonic = (fabs(flow) * sqrt(m->energy)) / (sqrt(g) * pow(2 / (g + 1), (g + 1) / (2 * (g - 1))));
  double supply = stagnation;
  for (int k = 0; k < 60; k++) {
    double ratio = (open * supply) / sonic;
    if (!(ratio >= 1)) return NAN;
    double mach = machFromAreaRatio(ratio, g);
    if (!(m->loss > 0)) return mach;
    double square = mach * mach;
    double next = stagnation - (m->loss * 0.5 * g * square * supply) / stagnationRatio(square, g);
    if (fabs(next - supply) <= 1e-13 * supply) return mach;
    supply = next;
  }
  return NAN;
}

static int march(const Cells *c, const Gas *m, double head, double slope, March *out) {
  double g = m->gamma, bg = m->beta * g, storage = slope / m->energy;
  double flow = 0, pressure = head, open = c->area[0], impulse = open * pressure, square = 0, rest = 0;
  double knownPressure = 0, knownRate = 0, exponent = 0, before = 0, burned = 0;
  out->choked = -1;
  for (int i = 0; i < c->count; i++) {
    double to = c->area[i];
    int isGap = c->kind[i] == GAP, wasGap = i > 0 && c->kind[i - 1] == GAP;
    if (i > 0 && (isGap || wasGap)) {
      flow += rest;
      rest = 0;
      if (!wasGap) {
        double face = endArea(c, i - 1, -1);
        impulse += pressure * (face - open);
        open = face;
      }
      square = machSquared(flow, impulse, m->energy, g, m->beta);
      if (!(square >= 0)) { out->choked = i - 1; return 0; }
      pressure = impulse / (open * (1 + bg * square));
      if (isGap) {
        impulse += pressure * (to - open);
        open = to;
      } else {
        double face = endArea(c, i, 1);
        double mach = entranceMach(m, flow, square, pressure, face);
        if (!(mach >= 0)) { out->choked = i; return 0; }
        if (flow == 0) pressure *= stagnationRatio(square, g);
        else pressure = (fabs(flow) * sqrt(m->energy / (g * mach * mach * (1 + ((g - 1) / 2) * mach * mach)))) / face;
        square = mach * mach;
        open = face;
        impulse = open * pressure * (1 + bg * square);
      }
    }
    int bears = c->burning[i] > 0;
    double own = before * (bears ? c->length[i] : 0), start = flow + rest, mid = start, p = pressure;
    for (int round = 0; round < 4; round++) {
      mid = start + 0.5 * own;
      double f = impulse + stepPressure(pressure, p, to / open) * (to - open);
      square = machSquared(mid, f, m->energy, g, m->beta);
      if (!(square >= 0)) { out->choked = i; return 0; }
      double next = f / (to * (1 + bg * square));
      int settled = fabs(next - p) <= m->settled * p;
      p = next;
      if (bears) {
        if (fabs(p - knownPressure) > 2e-3 * knownPressure) {
          knownPressure = p;
          knownRate = exp(m->lnA + m->n * log(p));
          exponent = knownRate > 0 ? m->n : 0;
        }
        double d = p / knownPressure - 1;
        double base = knownRate * (1 + exponent * d * (1 + 0.5 * (exponent - 1) * d));
        double rate = isGap || m->law == 0 ? base : erosiveRate(m, base, fabs(mid) / to, c->diameter[i]);
        out->rate[i] = rate;
        double made = (m->density - head / m->energy) * rate * c->burning[i] - c->volume[i] * storage;
        if (round > 0 && settled && fabs(made - own) <= m->settled * fabs(made)) { own = made; break; }
        own = made;
      } else {
        out->rate[i] = 0;
        if (round > 0 && settled) break;
        own = -c->volume[i] * storage;
      }
    }
    impulse = p * to * (1 + bg * square);
    pressure = p;
    open = to;
    flow = start + 0.5 * own;
    rest = 0.5 * own;
    before = bears && !isGap ? own / c->length[i] : 0;
    burned += m->density * out->rate[i] * c->burning[i];
    out->flow[i] = mid;
    out->pressure[i] = p;
    out->flux[i] = fabs(mid) / to;
    out->mach[i] = sqrt(square);
  }
  flow += rest;
  if (c->kind[c->count - 1] == BORE) {
    double face = endArea(c, c->count - 1, -1);
    impulse += pressure * (face - open);
    open = face;
  }
  square = machSquared(flow, impulse, m->energy, g, m->beta);
  if (!(square >= 0)) { out->choked = c->count - 1; return 0; }
  out->burned = burned;
  out->exitFlow = flow;
  out->exitPressure = impulse / (open * (1 + bg * square));
  out->exitMach = sqrt(square);
  out->exitStagnation = out->exitPressure * stagnationRatio(square, g);
  return 1;
}

int main(int argc, char **argv) {
  if (argc < 3) return 1;
  FILE *file = fopen(argv[1], "rb");
  if (!file) return 1;
  fseek(file, 0, SEEK_END);
  long size = ftell(file);
  rewind(file);
  double *v = malloc(size);
  if (fread(v, 1, size, file) != (size_t)size) return 1;
  fclose(file);
  int count = (int)v[0], marches = (int)v[1];
  Gas gas = { (int)v[2], v[3], v[4], v[5], v[6], v[7], v[8], v[9], v[10], v[11], v[12], v[13], v[14] };
  double *x = v + 15;
  Cells cells = { count, x, x + count, x + 2 * count, x + 3 * count, x + 4 * count, x + 5 * count };
  double *drives = x + 6 * count, *room = malloc(5 * count * sizeof(double));
  March out = { room, room + count, room + 2 * count, room + 3 * count, room + 4 * count, 0, 0, 0, 0, 0, 0 };
  double best = INFINITY, sums[3];
  for (int k = 0; k < atoi(argv[2]); k++) {
    struct timespec from, to;
    sums[0] = sums[1] = sums[2] = 0;
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &from);
    for (int j = 0; j < marches; j++) {
      if (!march(&cells, &gas, drives[2 * j], drives[2 * j + 1], &out)) continue;
      sums[0] += out.exitFlow;
      sums[1] += out.exitStagnation;
      sums[2] += out.rate[count - 2];
    }
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &to);
    best = fmin(best, (to.tv_sec - from.tv_sec) * 1e9 + (to.tv_nsec - from.tv_nsec));
  }
  printf("%.0f %.17g %.17g %.17g\n", best, sums[0], sums[1], sums[2]);
  return 0;
}
