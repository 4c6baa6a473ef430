import { gamma } from '../../thermo/gas-inputs';
import { formula, massFlux, optional, procedure, ratio } from '../../units';
import { portStagnationPressureRatio } from '../port-flow';
import { portEndMach } from '../port-mach';
import { momentumFactor, portToThroat } from './port-inputs';

/** Port-to-throat ratio above which one pressure serves for the whole chamber: within 2.3 % at γ = 1.14. */
export const lumpedPortToThroat = 3;

/** @example headPressureEstimate({ portToThroat: 2, gamma: 1.14 }) // => 1.05065973 */
export const headPressureEstimate = /* @__PURE__ */ formula({
  name: 'headPressureEstimate',
  title: 'Head-end pressure of a port with an open aft end, estimate',
  equation: 'p_h/p_0 = 1 + γ / 2·(2 / (γ + 1))^((γ + 1) / (γ − 1)) / J²',
  source: 'small Mach numbers in the momentum balance of a port and the area relation to the throat; derived',
  inputs: { portToThroat, gamma },
  output: ratio('p_h/p_0', 'static pressure at the head end/stagnation pressure at the nozzle'),
  example: { portToThroat: 2, gamma: 1.2 },
  valid: [({ portToThroat: J }) => J >= 1.5 || 'a port-to-throat ratio below 1.5: use portEnd'],
  si: ({ portToThroat: J, gamma: g }) => 1 + ((g / 2) * (2 / (g + 1)) ** ((g + 1) / (g - 1))) / J ** 2,
});

/** Whether one pressure serves for a chamber with a port. */
export interface LumpedCriterion {
  readonly headToNozzleStagnation: number;
  readonly estimate: number;
  /** Whether one pressure and one burning rate serve for the whole chamber. */
  readonly lumped: boolean;
  /** Why not, or why. */
  readonly reasons: readonly string[];
}

/**
 * Whether one pressure serves for the whole chamber: the port-to-throat ratio must be above 3 at every station, and the mass flux
 * at the aft end below that at which erosive burning begins. The ratio alone does not decide: the flux grows with pressure, and a narrow
 * port of great length erodes at a ratio of 3.
 *
 * @example lumpedCriterion({ portToThroat: 2, gamma: 1.14 }).headToNozzleStagnation.toFixed(8) // => '1.05188223'
 */
export const lumpedCriterion = /* @__PURE__ */ procedure({
  name: 'lumpedCriterion',
  title: 'Criterion for one pressure in the whole chamber',
  source:
    'head-end pressure by the momentum balance, as portEnd; limits by engineering practice, no published source',
  inputs: {
    portToThroat: { ...portToThroat, meaning: 'minimum of port area/throat area along the port' },
    gamma,
    momentumFactor,
    massFlux: optional(massFlux('G', 'mass flux at the aft end')),
    thresholdFlux: optional(massFlux('G_th', 'mass flux at which erosive burning begins')),
  },
  gives: 'head-end pressure/nozzle stagnation pressure, its estimate, and whether one pressure is enough',
  example: { portToThroat: 2, gamma: 1.2 },
  run: ({ portToThroat: J, gamma: g, momentumFactor: b, massFlux: flux, thresholdFlux }): LumpedCriterion => {
    const mach = portEndMach(J, g, b);
    const head = 1 / portStagnationPressureRatio.si({ mach, gamma: g, momentumFactor: b });
    const tight = J <= lumpedPortToThroat;
    const erodes = flux !== undefined && thresholdFlux !== undefined && flux.si >= thresholdFlux.si;
    const reasons = [
      `the port-to-throat ratio ${J.toPrecision(3)} is ${tight ? 'at or below' : 'above'} ${lumpedPortToThroat}: the head end is ${(100 * (head - 1)).toPrecision(2)} % above the nozzle stagnation pressure`,
      flux === undefined || thresholdFlux === undefined
        ? 'mass flux and threshold were not given: erosive burning was not checked'
        : `the mass flux ${flux} is ${erodes ? 'at or above' : 'below'} the threshold of erosive burning, ${thresholdFlux}`,
    ];
    return {
      headToNozzleStagnation: head,
      estimate: headPressureEstimate.si({ portToThroat: J, gamma: g }),
      lumped: !tight && !erodes,
      reasons,
    };
  },
});
