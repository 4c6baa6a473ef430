/**
 * Stress concentration of grooves, shoulders and threads, for the life of parts that are used again.
 *
 * @example grooveConcentration({ grooveDepth: '1.25 mm', rootRadius: '0.1 mm', wall: '6 mm' }).factor // => 5.638403524
 * @module
 */
export * from './bar-groove';
export * from './bar-shoulder';
export { barGrooveConcentration, grooveConcentration, shoulderConcentration } from './groove-concentration';
export * from './internal-groove';
export type { StressConcentration } from './stress-concentration';
export { threadConcentration } from './thread-concentration';
