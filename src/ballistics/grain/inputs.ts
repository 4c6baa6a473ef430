/** The inputs of grains that the motor document takes. Calculations and their types are in the index. */
export { crackPlanes } from './flaws';
export { isRegression } from './front';
export { segmentGap } from './grain-inputs';
