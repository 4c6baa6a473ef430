/** Gauss-Legendre quadrature: the rule of any order, and integration by it over equal panels. */
import { requireFinite, requireInteger } from './checks';

/** A quadrature rule on [-1, 1]: the integral of f is close to the sum of weight times f(node). */
export interface QuadratureRule {
  /** In ascending order. */
  readonly nodes: Float64Array;
  readonly weights: Float64Array;
}

/**
 * The Gauss-Legendre rule with `order` nodes, exact for polynomials up to degree 2 order - 1.
 *
 * Nodes are the roots of the Legendre polynomial, by Newton's method on its three-term recurrence;
 * weights are 2 / ((1 - x^2) P'(x)^2).
 * Source: Abramowitz and Stegun, Handbook of Mathematical Functions, 25.4.29 and 22.16.6 (starting values).
 *
 * @example
 * Array.from(gaussLegendre(2).weights) // => [1, 1]
 */
export function gaussLegendre(order: number): QuadratureRule {
  requireInteger('order', order, 1);
  const nodes = new Float64Array(order);
  const weights = new Float64Array(order);
  const half = (order + 1) >> 1;
  for (let i = 0; i < half; i++) {
    let x = Math.cos((Math.PI * (i + 0.75)) / (order + 0.5));
    if (2 * i + 1 === order) x = 0;
    let slope = legendreSlope(order, x);
    for (let pass = 0; pass < 20; pass++) {
      const step = slope.value / slope.derivative;
      x -= step;
      slope = legendreSlope(order, x);
      if (Math.abs(step) < 1e-15) break;
    }
    const weight = 2 / ((1 - x) * (1 + x) * slope.derivative * slope.derivative);
    nodes[i] = -x;
    nodes[order - 1 - i] = x;
    weights[i] = weight;
    weights[order - 1 - i] = weight;
  }
  if (order % 2 === 1) nodes[half - 1] = 0;
  return { nodes, weights };
}

/** P_n(x) and its derivative by Bonnet's recurrence. */
function legendreSlope(order: number, x: number): { value: number; derivative: number } {
  let before = 1;
  let value = x;
  // P'_k = P'_(k-2) + (2k - 1) P_(k-1): no division by 1 - x^2, so it keeps its accuracy next to the ends.
  let derivativeBefore = 0;
  let derivative = 1;
  for (let k = 2; k <= order; k++) {
    const next = ((2 * k - 1) * x * value - (k - 1) * before) / k;
    const nextDerivative = derivativeBefore + (2 * k - 1) * value;
    before = value;
    value = next;
    derivativeBefore = derivative;
    derivative = nextDerivative;
  }
  return { value, derivative };
}

/** An interval, the rule to use on it, and the number of panels. */
export interface PanelOptions {
  readonly lower: number;
  readonly upper: number;
  /** The rule to use on each panel; make it once with `gaussLegendre` and reuse it. */
  readonly rule: QuadratureRule;
  /** Number of equal panels. Default 1. */
  readonly panels?: number;
}

/**
 * Integrates `f` with a fixed rule over equal panels: no error estimate, no allocation, a known cost.
 *
 * @example
 * integratePanels((x) => x ** 3, { lower: 0, upper: 2, rule: gaussLegendre(2) }).toFixed(9) // => '4.000000000'
 */
export function integratePanels(f: (x: number) => number, options: PanelOptions): number {
  const { lower, upper, rule, panels = 1 } = options;
  requireFinite('lower', lower);
  requireFinite('upper', upper);
  requireInteger('panels', panels, 1);
  const { nodes, weights } = rule;
  const half = (0.5 * (upper - lower)) / panels;
  let sum = 0;
  for (let panel = 0; panel < panels; panel++) {
    const middle = lower + (2 * panel + 1) * half;
    for (let i = 0; i < nodes.length; i++) sum += weights[i] * f(middle + half * nodes[i]);
  }
  const integral = half * sum;
  requireFinite('The integral', integral);
  return integral;
}
