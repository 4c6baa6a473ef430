/** Ranks of the sorted samples between which a percentile lies, lowest sample 1; above the number of samples where they do not reach it. */
export interface PercentileRanks {
  readonly low: number;
  readonly high: number;
}

const confidence = 0.95;

/**
 * Ranks between which the percentile of the distribution lies with a confidence of 95 %, for any distribution: quantiles of the
 * binomial number of samples below it. Source: order statistics, e.g. Conover, Practical Nonparametric Statistics; quoted from
 * memory, not verified.
 */
export function percentileRanks(samples: number, share: number): PercentileRanks {
  const tail = (1 - confidence) / 2;
  return {
    low: Math.max(1, binomialQuantile(samples, share, tail)),
    high: binomialQuantile(samples, share, 1 - tail) + 1,
  };
}

/** Least number of successes in n trials of probability p whose cumulative probability reaches q. */
export function binomialQuantile(n: number, p: number, q: number): number {
  if (p <= 0) return 0;
  if (p >= 1) return n;
  const odds = Math.log(p) - Math.log1p(-p);
  let lnMass = n * Math.log1p(-p);
  let sum = Math.exp(lnMass);
  let k = 0;
  while (sum < q && k < n) {
    lnMass += Math.log((n - k) / (k + 1)) + odds;
    k++;
    sum += Math.exp(lnMass);
  }
  return k;
}
