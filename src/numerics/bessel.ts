/** Bessel functions of the first kind of orders 0 and 1. */
import { chebyshevSum } from './chebyshev';
import { requireFinite } from './checks';

// Chebyshev coefficients, computed with mpmath 1.3.0 to 50 digits.
/** J0(x) for |x| <= 8, in t = x^2/32 - 1. */
const J0_NEAR = [
  0.15772797147489012, -0.008723442352852221, 0.2651786132033368, -0.37009499387264977, 0.15806710233209725,
  -0.034893769411408884, 0.004819180069467605, -0.00046062616620627504, 3.246032882100508e-5,
  -1.7619469077621507e-6, 7.608163592418782e-8, -2.679253530557673e-9, 7.848696314479465e-11,
  -1.9438346867370164e-12, 4.125320595634374e-14, -7.588508125447546e-16, 1.2218515873961411e-17,
];
/** J1(x)/x for |x| <= 8, in t = x^2/32 - 1. */
const J1_NEAR = [
  0.08104484632565812, -0.1489751450676521, 0.1609992623572097, -0.08268049176681791, 0.022213639654966037,
  -0.003646940600769276, 0.0004050337728354822, -3.255554866857259e-5, 1.9858774049915165e-6,
  -9.521984756750436e-8, 3.687133759097148e-9, -1.178026622695885e-10, 3.160154580348003e-12,
  -7.221755239651773e-14, 1.4232144003513942e-15, -2.4441972916190464e-17,
];
/** P and x Q of Hankel's form for x >= 8, in t = 2 (8/x)^2 - 1, order 0. */
const P0 = [
  0.9994603493475187, -0.0005365220468132117, 3.0751847875194745e-6, -5.1705945376060975e-8,
  1.6306464635151382e-9, -7.86409137723707e-11, 5.168262387349193e-12, -4.3045788699253914e-13,
  4.3265957431549404e-14, -5.069034095935236e-15, 6.748072215733873e-16, -1.0011513723467786e-16,
  1.6305919233744186e-17, -2.880866169482871e-18,
];
const Q0 = [
  -0.12444683684269607, 0.0005470815954089319, -5.9315987288485175e-6, 1.4377965798375193e-7,
  -5.817532749493056e-9, 3.376097523734991e-10, -2.565397936797308e-11, 2.404916100281365e-12,
  -2.6690625482579414e-13, 3.4041800321963686e-14, -4.87994410531204e-15, 7.729703176242605e-16,
  -1.3348852171502517e-16, 2.4865952389390515e-17, -4.952892629886516e-18, 1.0473158973776097e-18,
];
/** The same, order 1. */
const P1 = [
  1.0009030408600137, 0.0008989898330859408, -3.987284300488908e-6, 6.177633960644299e-8,
  -1.8718907491063067e-9, 8.816898659582339e-11, -5.704863640395645e-12, 4.699195515230542e-13,
  -4.6842237839904895e-14, 5.452674896044717e-15, -7.221180842274018e-16, 1.0667689114335412e-16,
  -1.7312313216116335e-17, 3.0492991197665872e-18,
];
const Q1 = [
  0.3742222965562826, -0.0007702178839325664, 7.3108922063643636e-6, -1.676782510726674e-7,
  6.583354662120443e-9, -3.749090950541556e-10, 2.8121750359748866e-11, -2.61145253946232e-12,
  2.8774212663332235e-13, -3.649001916061838e-14, 5.206626366226707e-15, -8.215318025458595e-16,
  1.4141084390211833e-16, -2.626761589838529e-17, 5.2192649196714085e-18, -1.101261718787959e-18,
];

/**
 * Bessel function J0(x). Error below 5e-16 for |x| <= 8 and below 5e-16 of the envelope sqrt(2 / (pi |x|)) beyond:
 * relative accuracy is lost next to the zeros only.
 * Source: Abramowitz and Stegun, Handbook of Mathematical Functions, 9.1.10 and 9.2.5 (Hankel's form for large x).
 *
 * @example
 * besselJ0(0) // => 1
 */
export function besselJ0(x: number): number {
  requireFinite('x', x);
  const size = Math.abs(x);
  if (size < 1) return series(size, 1);
  if (size <= 8) return chebyshevSum(J0_NEAR, (size * size) / 32 - 1);
  const ratio = 8 / size;
  const t = 2 * ratio * ratio - 1;
  const p = chebyshevSum(P0, t);
  const q = chebyshevSum(Q0, t) / size;
  // cos(x - pi/4) and sin(x - pi/4) by the addition theorem: the difference itself would lose digits.
  const cosine = Math.cos(size);
  const sine = Math.sin(size);
  return (p * (cosine + sine) - q * (sine - cosine)) / Math.sqrt(Math.PI * size);
}

/**
 * Bessel function J1(x), minus the derivative of J0. Odd. Accuracy as for `besselJ0`; near zero also relative.
 * Source: Abramowitz and Stegun, Handbook of Mathematical Functions, 9.1.10 and 9.2.5.
 *
 * @example
 * besselJ1(0) // => 0
 */
export function besselJ1(x: number): number {
  requireFinite('x', x);
  const size = Math.abs(x);
  if (size < 1) return 0.5 * x * series(size, 2);
  if (size <= 8) return x * chebyshevSum(J1_NEAR, (size * size) / 32 - 1);
  const ratio = 8 / size;
  const t = 2 * ratio * ratio - 1;
  const p = chebyshevSum(P1, t);
  const q = chebyshevSum(Q1, t) / size;
  const cosine = Math.cos(size);
  const sine = Math.sin(size);
  const value = (p * (sine - cosine) + q * (sine + cosine)) / Math.sqrt(Math.PI * size);
  return x < 0 ? -value : value;
}

/** Sum of (-x^2/4)^k / (k! (first)(first + 1)...): J0 for first = 1, 2 J1(x)/x for first = 2. Quick for |x| < 1. */
function series(x: number, first: number): number {
  const factor = -0.25 * x * x;
  let term = 1;
  let sum = 1;
  for (let k = 1; Math.abs(term) > 1e-17; k++) {
    term *= factor / (k * (k - 1 + first));
    sum += term;
  }
  return sum;
}
