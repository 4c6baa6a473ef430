/**
 * The inputs and tables of nozzle that other modules and the motor document take: each is declared once and read from here.
 * Calculations and their types are in the index.
 */
export { separationCriteria } from './separation';
