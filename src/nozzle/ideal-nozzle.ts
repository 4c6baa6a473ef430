import { gamma } from '../thermo/gas-inputs';
import { procedure } from '../units';
import { type IdealNozzle, idealNozzleSi } from './ideal-nozzle-kernels';
import { expansionRatio } from './nozzle-inputs';

/**
 * Exit state and pressure limits of an ideal nozzle, as ratios to the chamber pressure.
 *
 * @example idealNozzle({ gamma: 1.2, expansionRatio: 10 }).vacuumThrustCoefficient // => 1.742307
 */
export const idealNozzle = /* @__PURE__ */ procedure({
  name: 'idealNozzle',
  title: 'Exit state and pressure limits of an ideal nozzle',
  source: 'NACA Report 1135 (1953), isentropic flow and normal shock',
  inputs: { gamma, expansionRatio },
  gives: 'exit Mach number, vacuum thrust coefficient, and the pressure ratios at which the regime changes',
  example: { gamma: 1.2, expansionRatio: 10 },
  run: ({ gamma, expansionRatio }): IdealNozzle => idealNozzleSi(gamma, expansionRatio),
});
