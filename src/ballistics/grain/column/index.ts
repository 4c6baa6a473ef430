/**
 * Grains stacked in one case: the column, and its regression as the sum of the regressions of its segments.
 *
 * Imports `shapes` and `front`.
 *
 * @module
 */
export { columnRegression } from './column-regression';
export { type ColumnRegression, type GrainColumn, grainColumn, regressColumn } from './grain-column';
