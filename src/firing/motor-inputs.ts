// What a log does not contain and the steps of a reduction need: facts of the motor, the stand and the sensors.
import {
  absolutePressure,
  any,
  choice,
  force,
  inputs,
  length,
  list,
  mass,
  optional,
  parameterOf,
  ratio,
} from '../units';

/** Pressure around the motor. */
export const ambientPressure = /* @__PURE__ */ absolutePressure('p_a', 'pressure around the motor', {
  min: 0,
  example: '101.3 kPa',
});

/** Throat diameter before firing. */
export const throatDiameter = /* @__PURE__ */ length('d_t', 'throat diameter before firing', {
  example: '13.5 mm',
  worse: 'high',
  synonyms: ['nozzle throat'],
});

/** Mass of propellant burned. */
export const propellantMass = /* @__PURE__ */ mass('m_p', 'mass of propellant burned', {
  example: '1.2 kg',
});

/** Nozzle exit area/throat area. */
export const expansionRatio = /* @__PURE__ */ ratio('ε', 'nozzle exit area/throat area', {
  min: 1,
  example: 6,
});

/** Upper limits of the ranges of the channels. */
export const ranges = /* @__PURE__ */ optional(
  inputs(
    {
      pressure: optional(
        parameterOf('absolute pressure', any)('p_max', 'upper limit of the range of pressure, absolute'),
      ),
      thrust: optional(force('F_max', 'upper limit of the range of thrust')),
    },
    { meaning: 'upper limits of the ranges of the channels, where no calibration states them' },
  ),
);

/** One of the channels that are analysed and cleaned. */
export const channel = /* @__PURE__ */ choice('channel', ['pressure', 'thrust']);

/** The channels that a step changes. */
export const channels = /* @__PURE__ */ optional(
  list('channels that are changed; pressure and thrust, where the record has them', channel, { min: 0 }),
);
