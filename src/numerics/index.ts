/**
 * Numerics: roots, minima, quadrature, interpolation, differential equations, fits and signal processing on plain
 * numbers.
 *
 * This module contains no physics and no units. It imports only the error type of `units`. Kernels work on
 * `Float64Array` and do not allocate in their loops; arguments are checked once on entry.
 *
 * ```ts
 * import { findRoot } from 'meop/numerics'; findRoot((x) => x * x - 2, { lower: 0, upper: 2 }).root; //
 * 1.4142135623730951
 * ```
 */
export { type IntegrateOptions, type IntegrateResult, integrate } from './adaptive-quadrature';
export { besselJ0, besselJ1 } from './bessel';
export { erf, erfc, erfcx } from './error-function';
export {
  butterworthLowPass,
  type FilterSection,
  filterCausal,
  filterGain,
  filterZeroPhase,
  type LowPassOptions,
} from './filter';
export {
  amplitudeSpectrum,
  type CrossCorrelation,
  crossCorrelation,
  fourierTransform,
  type Spectrum,
} from './fourier';
export { gaussLegendre, integratePanels, type PanelOptions, type QuadratureRule } from './gauss-legendre';
export {
  hermiteInterpolant,
  type InterpolationOptions,
  linearInterpolant,
  monotoneInterpolant,
} from './interpolation';
export { type LinearFit, type LinearFitOptions, linearFit } from './least-squares';
export { fitNonlinear, type NonlinearFit, type NonlinearFitOptions } from './levenberg-marquardt';
export { luFactor, luSolve, solveLinear } from './linear-solve';
export { findMinimum, type MinimumOptions, type MinimumResult } from './minimum';
export { integrateOde, type OdeResult } from './ode';
export type { OdeEvent, OdeEventRecord } from './ode-events';
export type { OdeOptions } from './ode-options';
export type { OdeCounts, OdeDerivative, OdeJacobian } from './ode-step';
export type { Interpolant, InterpolatedValue, OutOfRange } from './piecewise-cubic';
export { type RandomStream, randomStream } from './random';
export {
  findRoot,
  type NewtonOptions,
  newtonBracketed,
  type RootOptions,
  type RootResult,
  type ValueAndDerivative,
} from './root';
export { cumulativeSimpson, cumulativeTrapezoid, simpson, trapezoid } from './sampled-integral';
export { findInterval } from './sorted-search';
export {
  compensatedSum,
  mean,
  median,
  medianAbsoluteDeviation,
  quantile,
  standardDeviation,
  variance,
} from './statistics';
