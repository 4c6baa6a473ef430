/* The algorithm of src/thermo/mach-from-area-ratio.ts and of the thrust coefficient on top of it, step for step. */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <time.h>

static double mach_from_area_ratio(double area_ratio, double gamma, int supersonic) {
  if (area_ratio == 1) return 1;
  const double t = (gamma - 1) / 2, below = 1 + t, power = below / (2 * t), target = log(area_ratio);
  const int near = target < 0.1;
  const double s = sqrt(below * target), bend = (2.0 / 3) * ((1 - t) / below);
  double low, high, mach;
  if (supersonic) {
    low = 1;
    high = exp(t * (target + power * log(below / t))) * (1 + 1e-9);
    mach = 1 + s * (1 + 0.5 * (1 - bend) * s);
  } else {
    const double least = exp(-(target + power * log1p(t))), y = 0.5 * below * least * least;
    low = least * (1 - 1e-9);
    high = 1;
    mach = target < 0.25 ? 1 - s * (1 - 0.5 * (1 - bend) * s) : least * (1 + y * (1 + 0.5 * y));
  }
  if (!(mach > low && mach < high)) mach = 0.5 * (low + high);
  for (int count = 0; count < 200; count++) {
    const double square = mach * mach, above = (mach - 1) * (mach + 1), b = 1 + t * square;
    const double value =
        power * log1p((t * above) / below) - (near ? log(mach) + target : log(mach * area_ratio));
    if (value == 0) return mach;
    if ((value > 0) == supersonic) high = mach;
    else low = mach;
    const double first = above / b, second = (2 * square * below) / (b * b), newton = -value / first;
    const double a2 = second / (2 * first), a3 = (second * (1 - t * square)) / (3 * b * first);
    double step = newton * (1 - newton * (a2 - newton * (2 * a2 * a2 - a3)));
    if (!(step * newton > 0 && fabs(step) < 2 * fabs(newton))) step = newton;
    const double next =
        fabs(step) < 0.02 ? mach + mach * (step + 0.5 * step * step * (1 + step / 3)) : mach * exp(step);
    if (!(next > low && next < high)) {
      const double middle = 0.5 * (low + high);
      if (middle == low || middle == high || fabs(step) <= 0x1p-52) return mach;
      mach = middle;
      continue;
    }
    mach = next;
    if (fabs(step) <= 1e-4 * fmin(1, fabs(mach - 1))) return mach;
  }
  return NAN;
}

static double thrust_coefficient(double gamma, double epsilon, double ambient_over_chamber) {
  const double mach = mach_from_area_ratio(epsilon, gamma, 1), t = (gamma - 1) / 2;
  const double v = sqrt(gamma) * exp(-((1 + t) / (2 * t)) * log1p(t));
  const double b = 1 + t * mach * mach;
  return (v * (1 + gamma * mach * mach)) / (mach * sqrt(gamma * b)) - epsilon * ambient_over_chamber;
}

static double seconds(void) {
  struct timespec now;
  clock_gettime(CLOCK_MONOTONIC, &now);
  return now.tv_sec + 1e-9 * now.tv_nsec;
}

/* Prints, for each workload: its name, the best of the repeats in nanoseconds a point, the sum of the results. */
int main(int argc, char **argv) {
  const int n = atoi(argv[1]), repeats = atoi(argv[2]);
  double *area = malloc(n * sizeof *area), *gamma = malloc(n * sizeof *gamma);
  unsigned state = 12345;
  for (int i = 0; i < n; i++) {
    state = state * 1664525u + 1013904223u;
    area[i] = 1.01 + 48.99 * (state / 4294967296.0);
    state = state * 1664525u + 1013904223u;
    gamma[i] = 1.04 + 0.36 * (state / 4294967296.0);
  }
  const char *names[] = {"supersonic", "subsonic", "thrust"};
  for (int job = 0; job < 3; job++) {
    double best = 1e300, sum = 0;
    for (int r = 0; r < repeats; r++) {
      const double start = seconds();
      sum = 0;
      for (int i = 0; i < n; i++)
        sum += job == 2 ? thrust_coefficient(gamma[i], area[i], 0.02)
                        : mach_from_area_ratio(area[i], gamma[i], job == 0);
      const double took = seconds() - start;
      if (took < best) best = took;
    }
    printf("%s %.3f %.12g\n", names[job], 1e9 * best / n, sum);
  }
  return argc == 3 ? 0 : 1;
}
