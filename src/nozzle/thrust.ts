import {
  absolutePressure,
  area,
  force,
  formula,
  massFlow,
  ratio,
  specificImpulse as specificImpulseGiven,
  speed,
} from '../units';

const sutton = 'Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001)';

/**
 * Thrust from the thrust coefficient. Solved for `throatArea` it sizes the throat, for `thrustCoefficient` it
 * evaluates a firing.
 *
 * @example thrust({ thrustCoefficient: 1.5, chamberPressure: '5 MPa', throatArea: '100 mm^2' }).in('N') // => 750
 */
export const thrust = /* @__PURE__ */ formula({
  name: 'thrust',
  title: 'Thrust from the thrust coefficient',
  equation: 'F = C_F·p_c·A_t',
  source: `${sutton}, ch. 3 (quoted from memory, not verified)`,
  inputs: {
    thrustCoefficient: ratio('C_F', 'thrust coefficient'),
    chamberPressure: absolutePressure('p_c', 'chamber stagnation pressure'),
    throatArea: area('A_t', 'throat area'),
  },
  output: force('F', 'thrust'),
  example: { thrustCoefficient: 1.5, chamberPressure: '5 MPa', throatArea: '100 mm^2' },
  si: ({ thrustCoefficient, chamberPressure, throatArea }) =>
    thrustCoefficient * chamberPressure * throatArea,
  solve: {
    thrustCoefficient: (f, { chamberPressure, throatArea }) => f / (chamberPressure * throatArea),
    chamberPressure: (f, { thrustCoefficient, throatArea }) => f / (thrustCoefficient * throatArea),
    throatArea: (f, { thrustCoefficient, chamberPressure }) => f / (thrustCoefficient * chamberPressure),
  },
});

/**
 * Thrust as momentum flux plus pressure force at the exit.
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
    exhaustVelocity: speed('u_e', 'velocity at the exit'),
    exitPressure: absolutePressure('p_e', 'pressure at the exit', { min: 0 }),
    ambientPressure: absolutePressure('p_a', 'ambient pressure', { min: 0 }),
    exitArea: area('A_e', 'exit area'),
  },
  output: force('F', 'thrust'),
  example: {
    massFlow: '12 kg/s',
    exhaustVelocity: '2000 m/s',
    exitPressure: '1 bar',
    ambientPressure: '0.25 bar',
    exitArea: '335 cm^2',
  },
  si: ({ massFlow, exhaustVelocity, exitPressure, ambientPressure, exitArea }) =>
    massFlow * exhaustVelocity + (exitPressure - ambientPressure) * exitArea,
  solve: {
    massFlow: (f, { exhaustVelocity, exitPressure, ambientPressure, exitArea }) =>
      (f - (exitPressure - ambientPressure) * exitArea) / exhaustVelocity,
    exhaustVelocity: (f, { massFlow, exitPressure, ambientPressure, exitArea }) =>
      (f - (exitPressure - ambientPressure) * exitArea) / massFlow,
  },
});

/**
 * Thrust at one ambient pressure from the thrust in a vacuum. Solved for `exitArea` it gives the exit area of an
 * engine from two thrusts.
 *
 * @example ambientThrust({ vacuumThrust: '1000 N', ambientPressure: '100 kPa', exitArea: '10 cm^2' }).in('N') // => 900
 */
export const ambientThrust = /* @__PURE__ */ formula({
  name: 'ambientThrust',
  title: 'Thrust at an ambient pressure',
  equation: 'F = F_vac − p_a·A_e',
  source: `${sutton}, eq. 2-14 with p_a as a separate term`,
  inputs: {
    vacuumThrust: force('F_vac', 'thrust in a vacuum'),
    ambientPressure: absolutePressure('p_a', 'ambient pressure', { min: 0 }),
    exitArea: area('A_e', 'exit area'),
  },
  output: force('F', 'thrust'),
  example: { vacuumThrust: '1000 N', ambientPressure: '100 kPa', exitArea: '10 cm^2' },
  si: ({ vacuumThrust, ambientPressure, exitArea }) => vacuumThrust - ambientPressure * exitArea,
  solve: {
    vacuumThrust: (f, { ambientPressure, exitArea }) => f + ambientPressure * exitArea,
    exitArea: (f, { vacuumThrust, ambientPressure }) => (vacuumThrust - f) / ambientPressure,
  },
});

/**
 * Specific impulse: thrust divided by mass flow. In seconds it is divided by the standard gravity 9.80665 m/s²,
 * regardless of the rounding of g in a textbook; in m/s it is the effective exhaust velocity.
 *
 * @example specificImpulse({ thrust: '750 N', massFlow: '0.5 kg/s' }).in('m/s') // => 1500
 */
export const specificImpulse = /* @__PURE__ */ formula({
  name: 'specificImpulse',
  title: 'Specific impulse',
  equation: 'I_sp = F / ṁ',
  source: `${sutton}, eq. 2-5; in seconds divided by standard gravity`,
  inputs: {
    thrust: force('F', 'thrust'),
    massFlow: massFlow('ṁ', 'mass flow', { above: 0 }),
  },
  output: specificImpulseGiven('I_sp', 'specific impulse', {}),
  example: { thrust: '750 N', massFlow: '0.5 kg/s' },
  si: ({ thrust, massFlow }) => thrust / massFlow,
  solve: {
    thrust: (isp, { massFlow }) => isp * massFlow,
    massFlow: (isp, { thrust }) => thrust / isp,
  },
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
  inputs: {
    characteristicVelocity: speed('c*', 'characteristic velocity', { above: 0 }),
    thrustCoefficient: ratio('C_F', 'thrust coefficient'),
  },
  output: specificImpulseGiven('I_sp', 'specific impulse', {}),
  example: { characteristicVelocity: '900 m/s', thrustCoefficient: 1.5 },
  si: ({ characteristicVelocity, thrustCoefficient }) => characteristicVelocity * thrustCoefficient,
  solve: {
    characteristicVelocity: (isp, { thrustCoefficient }) => isp / thrustCoefficient,
    thrustCoefficient: (isp, { characteristicVelocity }) => isp / characteristicVelocity,
  },
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
  inputs: {
    chamberPressure: absolutePressure('p_c', 'chamber stagnation pressure'),
    throatArea: area('A_t', 'throat area'),
    characteristicVelocity: speed('c*', 'characteristic velocity', { above: 0 }),
  },
  output: massFlow('ṁ', 'mass flow'),
  example: { chamberPressure: '5 MPa', throatArea: '100 mm^2', characteristicVelocity: '900 m/s' },
  si: ({ chamberPressure, throatArea, characteristicVelocity }) =>
    (chamberPressure * throatArea) / characteristicVelocity,
  solve: {
    chamberPressure: (flow, { throatArea, characteristicVelocity }) =>
      (flow * characteristicVelocity) / throatArea,
    throatArea: (flow, { chamberPressure, characteristicVelocity }) =>
      (flow * characteristicVelocity) / chamberPressure,
    characteristicVelocity: (flow, { chamberPressure, throatArea }) => (chamberPressure * throatArea) / flow,
  },
});
