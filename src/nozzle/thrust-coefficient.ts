import { isentropicPressureRatioSi, vandenkerckhoveSi } from '../thermo/isentropic-kernels';
import { machFromAreaRatioSi } from '../thermo/mach-from-area-ratio';
import { absolutePressure, formula, ratio } from '../units';
import { idealNozzle, thrustCoefficientSi, vacuumThrustCoefficientAt } from './ideal-nozzle';

const gamma = /* @__PURE__ */ ratio('γ', 'ratio of specific heats', { above: 1 });
const expansionRatio = /* @__PURE__ */ ratio('ε', 'exit/throat area ratio', { min: 1 });
const sutton =
  'Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), ch. 3 (quoted from memory, not verified)';

/**
 * Thrust coefficient of an ideal nozzle that flows full and is choked.
 *
 * A caution is attached where the flow would separate or a shock would be inside; then use {@link nozzleRegime}.
 *
 * @throws MeopError `out-of-domain` for γ not above 1, an expansion ratio below 1, or an ambient pressure at which
 * the throat is not choked
 * @example thrustCoefficient({ gamma: 1.13, expansionRatio: 7, chamberPressure: '5 MPa', ambientPressure: '1 atm' }) // => 1.588973
 */
export const thrustCoefficient = /* @__PURE__ */ formula({
  name: 'thrustCoefficient',
  title: 'Thrust coefficient',
  equation:
    'C_F = √(2·γ² / (γ − 1)·(2 / (γ + 1))^((γ + 1) / (γ − 1))·(1 − π_e^((γ − 1) / γ))) + ε·(π_e − p_a / p_c), π_e = p_e/p_c from A/A* = ε',
  source: sutton,
  inputs: {
    gamma,
    expansionRatio,
    chamberPressure: absolutePressure('p_c', 'chamber stagnation pressure'),
    ambientPressure: absolutePressure('p_a', 'ambient pressure', { min: 0 }),
  },
  output: ratio('C_F', 'thrust coefficient'),
  example: { gamma: 1.2, expansionRatio: 6, chamberPressure: '5 MPa', ambientPressure: '101325 Pa' },
  requires: [
    ({ gamma, expansionRatio, chamberPressure, ambientPressure }) =>
      ambientPressure / chamberPressure < idealNozzle(gamma, expansionRatio).maxChokedBackPressureRatio ||
      `the throat is not choked: ambient pressure must be below ${(idealNozzle(gamma, expansionRatio).maxChokedBackPressureRatio * chamberPressure).toPrecision(6)} Pa; use nozzleRegime for unchoked flow`,
  ],
  valid: [
    ({ gamma, expansionRatio, chamberPressure, ambientPressure }) =>
      idealNozzle(gamma, expansionRatio).exitPressureRatio * chamberPressure >= 0.4 * ambientPressure ||
      'exit pressure is below 0.4 of ambient, so the flow separates and the thrust differs; see nozzleRegime',
    ({ gamma, expansionRatio, chamberPressure, ambientPressure }) =>
      idealNozzle(gamma, expansionRatio).shockAtExit * chamberPressure >= ambientPressure ||
      'at this ambient pressure a shock occurs in the divergent section and the thrust differs; see nozzleRegime',
  ],
  si: ({ gamma, expansionRatio, chamberPressure, ambientPressure }) =>
    thrustCoefficientSi(gamma, expansionRatio, ambientPressure / chamberPressure),
  solve: {
    ambientPressure: (value, { gamma, expansionRatio, chamberPressure }) =>
      ((thrustCoefficientSi(gamma, expansionRatio, 0) - value) * chamberPressure) / expansionRatio,
    chamberPressure: (value, { gamma, expansionRatio, ambientPressure }) =>
      (expansionRatio * ambientPressure) / (thrustCoefficientSi(gamma, expansionRatio, 0) - value),
  },
});

/**
 * Thrust coefficient of an ideal nozzle in a vacuum.
 *
 * @throws MeopError `out-of-domain` for γ not above 1 or an expansion ratio below 1
 * @example vacuumThrustCoefficient({ gamma: 1.2, expansionRatio: 10 }) // => 1.742307
 */
export const vacuumThrustCoefficient = /* @__PURE__ */ formula({
  name: 'vacuumThrustCoefficient',
  title: 'Vacuum thrust coefficient',
  equation:
    'C_F,vac = √(2·γ² / (γ − 1)·(2 / (γ + 1))^((γ + 1) / (γ − 1))·(1 − π_e^((γ − 1) / γ))) + ε·π_e, π_e = p_e/p_c from A/A* = ε',
  source: `${sutton}, ambient pressure zero`,
  inputs: { gamma, expansionRatio },
  output: ratio('C_F,vac', 'vacuum thrust coefficient'),
  example: { gamma: 1.2, expansionRatio: 10 },
  si: ({ gamma, expansionRatio }) => thrustCoefficientSi(gamma, expansionRatio, 0),
});

/**
 * Thrust coefficient of an ideal nozzle with exit pressure equal to ambient pressure: the maximum for the pressure
 * ratio.
 *
 * @throws MeopError `out-of-domain` for a pressure ratio that does not choke the throat
 * @example optimumThrustCoefficient({ gamma: 1.2, chamberPressure: '70 atm', ambientPressure: '1 atm' }) // => 1.600302
 */
export const optimumThrustCoefficient = /* @__PURE__ */ formula({
  name: 'optimumThrustCoefficient',
  title: 'Optimum thrust coefficient',
  equation: 'C_F,opt = √(2·γ² / (γ − 1)·(2 / (γ + 1))^((γ + 1) / (γ − 1))·(1 − (p_a / p_c)^((γ − 1) / γ)))',
  source: `${sutton}, exit pressure equal to ambient`,
  inputs: {
    gamma,
    chamberPressure: absolutePressure('p_c', 'chamber stagnation pressure'),
    ambientPressure: absolutePressure('p_a', 'ambient pressure'),
  },
  output: ratio('C_F,opt', 'optimum thrust coefficient'),
  example: { gamma: 1.2, chamberPressure: '70 atm', ambientPressure: '1 atm' },
  requires: [
    ({ gamma, chamberPressure, ambientPressure }) =>
      ambientPressure / chamberPressure <= isentropicPressureRatioSi(1, gamma) ||
      'the ambient pressure is above the critical pressure, so ideal expansion is impossible',
  ],
  si: ({ gamma, chamberPressure, ambientPressure }) =>
    vandenkerckhoveSi(gamma) *
    Math.sqrt(
      ((-2 * gamma) / (gamma - 1)) *
        Math.expm1(((gamma - 1) / gamma) * Math.log(ambientPressure / chamberPressure)),
    ),
});

/**
 * Maximum thrust coefficient at a given γ: infinite expansion into a vacuum.
 *
 * @example maximumThrustCoefficient({ gamma: 1.2 }) // => 2.246578
 */
export const maximumThrustCoefficient = /* @__PURE__ */ formula({
  name: 'maximumThrustCoefficient',
  title: 'Maximum thrust coefficient',
  equation: 'C_F,max = √(2·γ² / (γ − 1)·(2 / (γ + 1))^((γ + 1) / (γ − 1)))',
  source: `${sutton}, limit of infinite expansion`,
  inputs: { gamma },
  output: ratio('C_F,max', 'maximum thrust coefficient'),
  example: { gamma: 1.2 },
  si: ({ gamma }) => vandenkerckhoveSi(gamma) * Math.sqrt((2 * gamma) / (gamma - 1)),
});

/** The two terms of a thrust coefficient. */
export interface ThrustCoefficientParts {
  /** Contribution of the exit momentum. */
  readonly momentum: number;
  /** Contribution of the difference of exit and ambient pressure; negative when over-expanded. */
  readonly pressure: number;
  /** Their sum. */
  readonly total: number;
}

/**
 * Momentum and pressure terms of the thrust coefficient of a full-flowing nozzle; plain numbers, unchecked. The
 * divergence factor applies to the momentum term only.
 *
 * @example thrustCoefficientPartsSi(1.2, 10, 0).pressure // => 0.1253727
 */
export function thrustCoefficientPartsSi(
  gamma: number,
  expansionRatio: number,
  ambientOverChamber: number,
): ThrustCoefficientParts {
  const mach = machFromAreaRatioSi(expansionRatio, gamma, true);
  const vandenkerckhove = vandenkerckhoveSi(gamma);
  const b = 1 + ((gamma - 1) / 2) * mach * mach;
  const momentum = (vandenkerckhove * Math.sqrt(gamma) * mach) / Math.sqrt(b);
  const vacuum = vacuumThrustCoefficientAt(mach, gamma, vandenkerckhove);
  const pressure = vacuum - momentum - expansionRatio * ambientOverChamber;
  return { momentum, pressure, total: vacuum - expansionRatio * ambientOverChamber };
}
