import { gamma } from '../thermo/gas-inputs';
import { isentropicPressureRatioSi, vandenkerckhoveSi } from '../thermo/isentropic-kernels';
import { formula, procedure, ratio } from '../units';
import { requireChoked, separatesCaution, shockCaution } from './full-flow';
import {
  idealNozzleSi,
  type ThrustCoefficientParts,
  thrustCoefficientPartsSi,
  thrustCoefficientSi,
} from './ideal-nozzle-kernels';
import {
  ambientAboveZero,
  ambientPressure,
  chamberPressure,
  expansionRatio,
  thrustCoefficientInput,
} from './nozzle-inputs';

const sutton =
  'Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), ch. 3 (quoted from memory, not verified)';

/**
 * Thrust coefficient of an ideal nozzle that flows full and is choked. A caution is attached where the flow will separate
 * or a shock is in the divergent section: then use {@link nozzleRegime}.
 *
 * @example thrustCoefficient({ gamma: 1.13, expansionRatio: 7, chamberPressure: '5 MPa', ambientPressure: '1 atm' }) // => 1.588973
 */
export const thrustCoefficient = /* @__PURE__ */ formula({
  name: 'thrustCoefficient',
  title: 'Thrust coefficient',
  equation:
    'C_F = √(2·γ² / (γ − 1)·(2 / (γ + 1))^((γ + 1) / (γ − 1))·(1 − π_e^((γ − 1) / γ))) + ε·(π_e − p_a / p_c), π_e = p_e/p_c from A/A* = ε',
  source: sutton,
  inputs: { gamma, expansionRatio, chamberPressure, ambientPressure },
  output: thrustCoefficientInput,
  requires: [
    ({ gamma, expansionRatio, chamberPressure, ambientPressure }) => {
      const limit = idealNozzleSi(gamma, expansionRatio).maxChokedBackPressureRatio;
      return (
        ambientPressure / chamberPressure < limit ||
        `the throat is not choked: the ambient pressure must be below ${(limit * chamberPressure).toPrecision(6)} Pa; nozzleRegime covers unchoked flow`
      );
    },
  ],
  valid: [
    ({ gamma, expansionRatio, chamberPressure, ambientPressure }) =>
      idealNozzleSi(gamma, expansionRatio).exitPressureRatio * chamberPressure >= 0.4 * ambientPressure ||
      separatesCaution,
    ({ gamma, expansionRatio, chamberPressure, ambientPressure }) =>
      idealNozzleSi(gamma, expansionRatio).shockAtExit * chamberPressure >= ambientPressure || shockCaution,
  ],
  si: ({ gamma, expansionRatio, chamberPressure, ambientPressure }) =>
    thrustCoefficientSi(gamma, expansionRatio, ambientPressure / chamberPressure),
});

/**
 * Thrust coefficient of an ideal nozzle in a vacuum.
 *
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
 * Thrust coefficient of an ideally expanded nozzle: the maximum at a pressure ratio.
 *
 * @example optimumThrustCoefficient({ gamma: 1.2, chamberPressure: '70 atm', ambientPressure: '1 atm' }) // => 1.600302
 */
export const optimumThrustCoefficient = /* @__PURE__ */ formula({
  name: 'optimumThrustCoefficient',
  title: 'Optimum thrust coefficient',
  equation: 'C_F,opt = √(2·γ² / (γ − 1)·(2 / (γ + 1))^((γ + 1) / (γ − 1))·(1 − (p_a / p_c)^((γ − 1) / γ)))',
  source: `${sutton}, exit pressure equal to ambient`,
  inputs: { gamma, chamberPressure, ambientPressure: ambientAboveZero },
  output: ratio('C_F,opt', 'optimum thrust coefficient'),
  example: { gamma: 1.2, chamberPressure: '70 atm', ambientPressure: '1 atm' },
  requires: [
    ({ gamma, chamberPressure, ambientPressure }) =>
      ambientPressure / chamberPressure <= isentropicPressureRatioSi(1, gamma) ||
      'the ambient pressure is above the critical pressure, so that ideal expansion is impossible',
  ],
  si: ({ gamma, chamberPressure, ambientPressure }) =>
    vandenkerckhoveSi(gamma) *
    Math.sqrt(
      ((-2 * gamma) / (gamma - 1)) *
        Math.expm1(((gamma - 1) / gamma) * Math.log(ambientPressure / chamberPressure)),
    ),
});

/**
 * Maximum thrust coefficient at a γ: infinite expansion into a vacuum.
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
  si: ({ gamma }) => vandenkerckhoveSi(gamma) * Math.sqrt((2 * gamma) / (gamma - 1)),
});

/**
 * Momentum and pressure terms of the thrust coefficient of a full-flowing nozzle, as {@link deliveredThrustCoefficient}
 * takes them: the divergence factor applies to the momentum term only.
 *
 * @example thrustCoefficientParts({ gamma: 1.2, expansionRatio: 10, chamberPressure: '5 MPa', ambientPressure: '0 Pa' }).pressure // => 0.1253727
 */
export const thrustCoefficientParts = /* @__PURE__ */ procedure({
  name: 'thrustCoefficientParts',
  title: 'Momentum and pressure terms of the thrust coefficient',
  source: sutton,
  inputs: { gamma, expansionRatio, chamberPressure, ambientPressure },
  gives: 'momentum term, pressure term and their sum',
  example: { gamma: 1.2, expansionRatio: 6, chamberPressure: '5 MPa', ambientPressure: '101325 Pa' },
  run: ({ gamma, expansionRatio, chamberPressure, ambientPressure }): ThrustCoefficientParts => {
    const nozzle = idealNozzleSi(gamma, expansionRatio);
    requireChoked('thrustCoefficientParts', nozzle, chamberPressure, ambientPressure);
    return thrustCoefficientPartsSi(gamma, expansionRatio, ambientPressure.si / chamberPressure.si);
  },
});
