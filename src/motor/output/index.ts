/**
 * Reports, plots as Vega-Lite specifications, and output for notebooks. Imports the results of the motor module
 * and lower layers.
 *
 * @example plotMargins([margin({ mode: 'burst', applied: q('7 MPa'), allowable: q('21 MPa'), factor: 2, source: 'a test' })]).layer.length // => 4
 * @module
 */
export type { Verdict } from './content';
export { type Displayed, type DisplayRows, display } from './display';
export { drawPlot, type PlotEngine } from './draw-plot';
export type { Drawings } from './drawings';
export { type ReportJson, reportSchema } from './json-report';
export { type PlotFiringOptions, plotFiring } from './plot-firing';
export { type PlotFlawEnvelopeOptions, plotFlawEnvelope } from './plot-flaw-envelope';
export { type PlotMarginsOptions, plotMargins } from './plot-margins';
export { type PlotRegressionOptions, plotRegression } from './plot-regression';
export type { JsonValue, PlotLevel, PlotSpec } from './plot-spec';
export {
  type Reportable,
  type ReportFormat,
  type ReportInput,
  type ReportOptions,
  report,
  reportDrawings,
  reportPage,
} from './report';
