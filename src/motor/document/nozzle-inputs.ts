import { materials } from '../../structures';
import {
  absolutePressure,
  angle,
  gaugePressure,
  inputs,
  length,
  mass,
  named,
  optional,
  ratio,
  speed,
  stress,
  time,
} from '../../units';

/** The nozzle and its throat insert. */
export const nozzleInputs = /* @__PURE__ */ inputs(
  {
    throatDiameter: length('d_t', 'diameter of the throat', {
      example: '12 mm',
      worse: 'high', // for the insert: the MEOP has its own worse end
    }),
    exitDiameter: length('d_e', 'diameter of the exit', { example: '28 mm', worse: 'neither' }),
    divergenceHalfAngle: optional(
      angle('α', 'half angle of the exit cone', {
        min: 0,
        below: Math.PI / 4,
        example: '12 deg',
        worse: 'firing low',
      }),
    ),
    efficiency: optional(
      ratio('η_n', 'efficiency of the nozzle, excluding divergence', {
        above: 0,
        max: 1,
        example: 0.95,
        worse: 'firing high',
      }),
    ),
    throatErosion: optional(
      speed('r_t', 'recession rate of the throat radius during burning', {
        min: 0,
        example: '0.02 mm/s',
        worse: 'firing low',
      }),
    ),
    insert: optional(
      inputs(
        {
          material: named('material of the throat insert', materials, { example: 'isomoulded graphite' }),
          outsideDiameter: length('D_i', 'outside diameter of the insert', {
            example: '32 mm',
            worse: 'low',
          }),
          length: length('L_i', 'length of the insert', { example: '25 mm', worse: 'neither' }),
          tensileStrength: optional(
            stress('S_t', 'tensile strength of this block, from its certificate', {
              above: 0,
              example: '30 MPa',
              worse: 'low',
            }),
          ),
        },
        { meaning: 'throat insert' },
      ),
    ),
  },
  { meaning: 'nozzle' },
);

/** The ignition, as far as the analysis requires it. */
export const ignitionInputs = /* @__PURE__ */ optional(
  inputs(
    {
      igniterMass: optional(
        mass('m_i', 'mass of gas from the igniter', { example: '0.5 g', worse: 'firing high' }),
      ),
      igniterDuration: optional(
        time('t_i', 'duration of igniter gas flow', { example: '0.1 s', worse: 'firing low' }),
      ),
      initialPressure: optional(
        absolutePressure('p_0', 'initial pressure of the analysis', {
          example: '0.3 MPaa',
          worse: 'firing high',
        }),
      ),
      flameSpreadTime: optional(
        time('t_f', 'time of flame spread over the surface', {
          min: 0,
          example: '0.05 s',
          worse: 'firing low',
        }),
      ),
      nozzleClosureBurstPressure: optional(
        gaugePressure('p_b', 'burst pressure of the nozzle closure', {
          above: 0,
          example: '1 MPag',
          worse: 'firing high',
        }),
      ),
    },
    { meaning: 'ignition' },
  ),
);
