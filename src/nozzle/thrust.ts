import {
  absolutePressure,
  force,
  formula,
  massFlow,
  specificImpulse as specificImpulseGiven,
  speed,
} from '../units';
import {
  ambientPressure,
  chamberPressure,
  characteristicVelocity,
  exitArea,
  nozzleFlow,
  throatArea,
  thrustCoefficientInput as thrustCoefficient,
} from './nozzle-inputs';

const thrustOutput = /* @__PURE__ */ force('F', 'thrust', { example: '750 N' });
const impulseOutput = /* @__PURE__ */ specificImpulseGiven('I_sp', 'specific impulse');
const sutton = 'Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001)';

/**
 * Solved for `throatArea` it sizes the throat, for `thrustCoefficient` it evaluates a firing.
 *
 * @example thrust({ thrustCoefficient: 1.5, chamberPressure: '5 MPa', throatArea: '100 mm^2' }).in('N') // => 750
 */
export const thrust = /* @__PURE__ */ formula({
  name: 'thrust',
  title: 'Thrust from the thrust coefficient',
  equation: 'F = C_F·p_c·A_t',
  source: `${sutton}, ch. 3 (quoted from memory, not verified)`,
  inputs: { thrustCoefficient, chamberPressure, throatArea },
  output: thrustOutput,
  si: ({ thrustCoefficient, chamberPressure, throatArea }) =>
    thrustCoefficient * chamberPressure * throatArea,
});

/**
 * Thrust as the momentum of the exhaust plus the pressure on the exit.
 *
 * @example momentumThrust({ massFlow: '12 kg/s', exhaustVelocity: '2000 m/s', exitPressure: '1 bar', ambientPressure: '0.25 bar', exitArea: '335 cm^2' }).in('kN') // => 26.5125
 */
export const momentumThrust = /* @__PURE__ */ formula({
  name: 'momentumThrust',
  title: 'Thrust from momentum and exit pressure',
  equation: 'F = ṁ·u_e + (p_e − p_a)·A_e',
  source: `${sutton}, eq. 2-14`,
  inputs: {
    massFlow: massFlow('ṁ', 'mass flow', { min: 0 }),
    exhaustVelocity: speed('u_e', 'exhaust velocity'),
    exitPressure: absolutePressure('p_e', 'exit pressure', { min: 0 }),
    ambientPressure,
    exitArea,
  },
  output: thrustOutput,
  example: {
    massFlow: '12 kg/s',
    exhaustVelocity: '2000 m/s',
    exitPressure: '1 bar',
    ambientPressure: '0.25 bar',
    exitArea: '335 cm^2',
  },
  si: ({ massFlow, exhaustVelocity, exitPressure, ambientPressure, exitArea }) =>
    massFlow * exhaustVelocity + (exitPressure - ambientPressure) * exitArea,
});

/**
 * Thrust at one ambient pressure from the thrust in a vacuum. Solved for `exitArea` it finds the exit of an engine
 * from two thrusts.
 *
 * @example ambientThrust({ vacuumThrust: '1000 N', ambientPressure: '100 kPa', exitArea: '10 cm^2' }).in('N') // => 900
 */
export const ambientThrust = /* @__PURE__ */ formula({
  name: 'ambientThrust',
  title: 'Thrust at an ambient pressure',
  equation: 'F = F_vac − p_a·A_e',
  source: `${sutton}, eq. 2-14, the term of p_a separated`,
  inputs: { vacuumThrust: force('F_vac', 'thrust in a vacuum'), ambientPressure, exitArea },
  output: thrustOutput,
  example: { vacuumThrust: '1000 N', ambientPressure: '100 kPa', exitArea: '10 cm^2' },
  si: ({ vacuumThrust, ambientPressure, exitArea }) => vacuumThrust - ambientPressure * exitArea,
});

/**
 * Specific impulse: thrust/mass flow. In seconds it is divided by the standard gravity 9.80665 m/s²; in m/s it is the effective
 * exhaust velocity.
 *
 * @example specificImpulse({ thrust: '750 N', massFlow: '0.5 kg/s' }).in('m/s') // => 1500
 */
export const specificImpulse = /* @__PURE__ */ formula({
  name: 'specificImpulse',
  title: 'Specific impulse',
  equation: 'I_sp = F / ṁ',
  source: `${sutton}, eq. 2-5; in seconds divided by standard gravity`,
  inputs: { thrust: thrustOutput, massFlow: nozzleFlow },
  output: impulseOutput,
  example: { thrust: '750 N', massFlow: '0.5 kg/s' },
  si: ({ thrust, massFlow }) => thrust / massFlow,
});

/**
 * Specific impulse from the contributions of chamber and nozzle.
 *
 * @example specificImpulseFromCoefficients({ characteristicVelocity: '900 m/s', thrustCoefficient: 1.5 }).in('m/s') // => 1350
 */
export const specificImpulseFromCoefficients = /* @__PURE__ */ formula({
  name: 'specificImpulseFromCoefficients',
  title: 'Specific impulse from c* and thrust coefficient',
  equation: 'I_sp = c*·C_F',
  source: `${sutton}, ch. 3 (quoted from memory, not verified)`,
  inputs: { characteristicVelocity, thrustCoefficient },
  output: impulseOutput,
  si: ({ characteristicVelocity, thrustCoefficient }) => characteristicVelocity * thrustCoefficient,
});

/**
 * Mass flow through the nozzle from chamber pressure, throat and characteristic velocity.
 *
 * @example nozzleMassFlow({ chamberPressure: '5 MPa', throatArea: '100 mm^2', characteristicVelocity: '900 m/s' }).in('kg/s') // => 0.555555556
 */
export const nozzleMassFlow = /* @__PURE__ */ formula({
  name: 'nozzleMassFlow',
  title: 'Mass flow from characteristic velocity',
  equation: 'ṁ = p_c·A_t / c*',
  source: `${sutton}, ch. 3 (quoted from memory, not verified), definition of c*`,
  inputs: { chamberPressure, throatArea, characteristicVelocity },
  output: nozzleFlow,
  si: ({ chamberPressure, throatArea, characteristicVelocity }) =>
    (chamberPressure * throatArea) / characteristicVelocity,
});
