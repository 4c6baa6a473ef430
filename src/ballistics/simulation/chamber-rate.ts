// The burning rate at a point of a run.
import type { ChamberWorkspace } from './chamber-workspace';
import type { LawKernel, MotorModel } from './motor-model';

// Half the width in ln p over which two bands of a law that jump are joined: a jump proper has no derivative, and
// 0.1 % of pressure is less than anyone knows a boundary.
const joinHalfWidth = 1e-3;

/** Burning rate [m/s] at ln p, and its derivative by ln p, into `out`; gives the band, or −1 where two are joined. */
export function rateOfLaw(law: LawKernel, lnP: number, out: Float64Array): number {
  const { lnBoundaries, lnCoefficients, exponents } = law;
  if (lnBoundaries.length === 0) {
    out[0] = Math.exp(lnCoefficients[0] + exponents[0] * lnP);
    out[1] = exponents[0] * out[0];
    return 0;
  }
  let band = 0;
  while (band < lnBoundaries.length && lnP >= lnBoundaries[band] + joinHalfWidth) band++;
  const r = Math.exp(lnCoefficients[band] + exponents[band] * lnP);
  out[0] = r;
  out[1] = exponents[band] * r;
  if (band === lnBoundaries.length) return band;
  const inside = lnP - (lnBoundaries[band] - joinHalfWidth);
  if (inside <= 0) return band;
  const share = inside / (2 * joinHalfWidth);
  const above = Math.exp(lnCoefficients[band + 1] + exponents[band + 1] * lnP);
  out[0] = r + share * (above - r);
  out[1] = (1 - share) * out[1] + share * exponents[band + 1] * above + (above - r) / (2 * joinHalfWidth);
  return -1;
}

/** Places in the anchor: one over its pressure, the pressures between which it serves, exponent, rate, the series. */
enum Anchor {
  perPressure,
  low,
  high,
  exponent,
  rate,
  series,
}
const seriesTerms = 8;

// |δ| below 1/64: the first term left out is below 1e-16 for every exponent from −1 to 1.
const anchorReach = 1 / 64;

/**
 * Burning rate at the point and its derivative by ln p, into `w.rate`. Stages of a step lie close together: near the
 * pressure of the last full evaluation the power is its binomial series in δ, r·(1 + δ)ⁿ, which costs a fraction of a
 * logarithm and an exponential and has their precision.
 */
export function rateAt(m: MotorModel, w: ChamberWorkspace): void {
  const { anchor: a, rate } = w;
  const p = w.point[1];
  if (p > a[Anchor.low] && p < a[Anchor.high]) {
    const d = p * a[Anchor.perPressure] - 1;
    // Estrin's order: the parts do not wait for each other.
    const d2 = d * d;
    const d4 = d2 * d2;
    const low = 1 + a[5] * d + (a[6] + a[7] * d) * d2;
    const high = a[8] + a[9] * d + (a[10] + a[11] * d) * d2 + a[12] * d4;
    const r = a[Anchor.rate] * (low + high * d4);
    rate[0] = r;
    rate[1] = a[Anchor.exponent] * r;
    return;
  }
  rateOfLaw(m.law, Math.log(p), rate);
}

/** As {@link rateAt}, at the start of a step: there the next evaluations will be near. */
export function anchorRate(m: MotorModel, w: ChamberWorkspace): void {
  const { anchor: a } = w;
  const p = w.point[1];
  // The middle of the reach serves the stages on either side.
  if (p > a[Anchor.low] && p < a[Anchor.high] && Math.abs(p * a[Anchor.perPressure] - 1) < 0.5 * anchorReach)
    return;
  const band = rateOfLaw(m.law, Math.log(p), w.rate);
  if (band >= 0) dropAnchor(m, w, band);
  else a[Anchor.high] = 0;
}

/** Makes the point, where `w.rate` has just been computed, the anchor. */
function dropAnchor(m: MotorModel, w: ChamberWorkspace, band: number): void {
  const { anchor: a } = w;
  const p = w.point[1];
  const { lnBoundaries, exponents } = m.law;
  a[Anchor.perPressure] = 1 / p;
  a[Anchor.low] = p * (1 - anchorReach);
  a[Anchor.high] = p * (1 + anchorReach);
  a[Anchor.rate] = w.rate[0];
  if (lnBoundaries.length > 0) {
    if (band > 0) a[Anchor.low] = Math.max(a[Anchor.low], Math.exp(lnBoundaries[band - 1] + joinHalfWidth));
    if (band < lnBoundaries.length)
      a[Anchor.high] = Math.min(a[Anchor.high], Math.exp(lnBoundaries[band] - joinHalfWidth));
  }
  const n = exponents[band];
  if (a[Anchor.exponent] === n && a[Anchor.series] === n) return;
  a[Anchor.exponent] = n;
  let coefficient = 1;
  for (let k = 0; k < seriesTerms; k++) {
    coefficient *= (n - k) / (k + 1);
    a[Anchor.series + k] = coefficient;
  }
}
