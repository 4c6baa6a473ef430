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
export { plotFiring } from './plot-firing';
export { plotFlawEnvelope } from './plot-flaw-envelope';
export type { PlotLevel } from './plot-inputs';
export { plotMargins } from './plot-margins';
export { plotRegression } from './plot-regression';
export type { JsonValue, PlotSpec } from './plot-spec';
export { type ReportFormat, report, reportDrawings, reportPage } from './report';
export type { Reportable, ReportInput } from './reportable';
