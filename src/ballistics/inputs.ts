/**
 * The inputs of ballistics that other modules and the motor document take: each is declared once and read from here.
 * Calculations and their types are in the index.
 */
export { erosiveBurning } from './erosive-inputs';
export {
  crackPlanes,
  flawDirection,
  isRegression,
  longitudinalSection,
  segmentGap,
} from './grain/inputs';
