/**
 * The section of a motor to scale, drawn from its layout. Imports the layout and the grain.
 *
 * @module
 */

export { drawMotor } from './draw-motor';
