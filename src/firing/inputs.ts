/**
 * The inputs and tables of firing that other modules and the motor document take: each is declared once and read from here.
 * Calculations and their types are in the index.
 */
export { firingInput } from './firing';
