import { ignition } from '../../ballistics/motor-inputs';
import { assumedBlockage } from '../../ballistics/transient-inputs';
import { insertSeat, materials, retainerPlate } from '../../structures/inputs';
import { angle, inputs, length, named, optional, ratio, speed, stress } from '../../units';
import type { ReadAs } from './document-types';

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
    assumedBlockage: optional(assumedBlockage),
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
          compressiveStrength: optional(
            stress('S_c', 'compressive strength of this block, from its certificate', {
              above: 0,
              example: '100 MPa',
              worse: 'low',
            }),
          ),
          seat: optional(insertSeat),
        },
        { meaning: 'throat insert' },
      ),
    ),
    retainer: optional(retainerPlate),
  },
  { meaning: 'nozzle' },
);

/** A throat insert as parsed. */
export type Insert = NonNullable<ReadAs<typeof nozzleInputs>['insert']>;

/** The ignition, as far as the analysis requires it. */
export const ignitionInputs = /* @__PURE__ */ optional(ignition);
