/** The inputs of grains that the motor document takes, and the section that its drawing takes. Calculations and their types are in the index. */
export { flawDirection, longitudinalSection } from './draw';
export { crackPlanes } from './flaws';
export { isRegression, type RegressionKernel, regressionKernel, type SegmentLayout } from './front';
export { segmentGap } from './grain-inputs';
