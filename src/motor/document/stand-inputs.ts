import { restraint, standAnchors, standMembers } from '../../structures/inputs';
import {
  choice,
  force,
  frequency,
  gaugePressure,
  inputs,
  list,
  mass,
  optional,
  temperature,
  time,
  variants,
  words,
} from '../../units';

/** The test stand. */
export const standInputs = /* @__PURE__ */ optional(
  inputs(
    {
      axis: choice('direction of the thrust axis', ['horizontal', 'vertical']),
      movingMass: optional(
        mass('m', 'mass of the motor and the parts that move with it', {
          example: '3 kg',
          worse: 'neither',
        }),
      ),
      members: optional(standMembers),
      anchors: optional(standAnchors),
      restraint: optional(restraint),
    },
    { meaning: 'test stand' },
  ),
);

const channel = {
  name: words('name of the channel'),
  sampleRate: frequency('f_s', 'samples per second', { example: '1 kHz', worse: 'low' }),
  riseTime: optional(
    time('t_r', 'rise time of sensor and amplifier, 10 % to 90 %', { example: '1 ms', worse: 'high' }),
  ),
};

/** The sensors and the ranges that they measure. */
export const instrumentsInputs = /* @__PURE__ */ optional(
  list(
    'instruments',
    variants('measures', 'instrument', {
      pressure: inputs(
        {
          ...channel,
          range: gaugePressure('p_r', 'maximum pressure that it measures', {
            above: 0,
            example: '1000 psig',
            worse: 'low',
          }),
          proofPressure: optional(
            gaugePressure('p_p', 'maximum pressure without damage', {
              above: 0,
              example: '2000 psig',
              worse: 'low',
            }),
          ),
        },
        { meaning: 'pressure transducer' },
      ),
      thrust: inputs(
        {
          ...channel,
          range: force('F_r', 'maximum thrust that it measures', {
            above: 0,
            example: '2 kN',
            worse: 'low',
          }),
          safeOverload: optional(
            force('F_o', 'maximum force without damage', { above: 0, example: '3 kN', worse: 'low' }),
          ),
        },
        { meaning: 'load cell' },
      ),
      temperature: inputs(
        {
          ...channel,
          range: temperature('T_r', 'maximum temperature that it measures', {
            above: 0,
            example: '1000 degC',
            worse: 'low',
          }),
          expected: optional(
            temperature('T', 'maximum temperature expected at the sensor', {
              above: 0,
              example: '150 degC',
              worse: 'high',
            }),
          ),
        },
        { meaning: 'thermocouple' },
      ),
    }),
  ),
);
