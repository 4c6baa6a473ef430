import { gaugePressure, inputs, optional, temperature } from '../../units';

/** The proof test, where it differs from the proof factor at room temperature. */
export const proofInputs = /* @__PURE__ */ optional(
  inputs(
    {
      pressure: optional(
        gaugePressure('p_p', 'pressure of the test; MEOP times the proof factor where omitted', {
          above: 0,
          example: '7.5 MPag',
          worse: 'high',
        }),
      ),
      temperature: optional(
        temperature('T_p', 'temperature of the hardware in the test; room temperature where omitted', {
          min: 243.15,
          max: 573.15,
          example: '20 degC',
          worse: 'high',
        }),
      ),
    },
    { meaning: 'proof test of the hardware' },
  ),
);
