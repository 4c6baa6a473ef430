import * as z from 'zod/mini';
import { part } from './fields';
import { materialField } from './material-field';
import { measure } from './measure';

const share = { above: 0, max: 1, words: 'more than 0, at most 1' };

/** The nozzle and the material of its throat. */
export const nozzleSchema = () =>
  part(
    {
      throatDiameter: measure('length', 'diameter of the throat', '12 mm'),
      exitDiameter: measure('length', 'diameter of the exit', '28 mm'),
      divergenceHalfAngle: z.optional(
        measure('angle', 'half angle of the exit cone', '12 deg', {
          min: 0,
          below: Math.PI / 4,
          words: '0 deg to below 45 deg',
        }),
      ),
      efficiency: z.optional(
        measure('dimensionless', 'efficiency of the nozzle, excluding divergence', '0.95', share),
      ),
      throatErosion: z.optional(
        measure('speed', 'recession rate of the throat radius during burning', '0.02 mm/s', {
          min: 0,
          words: '0 or more',
        }),
      ),
      insert: z.optional(
        part(
          {
            material: materialField('material of the throat insert'),
            outsideDiameter: measure('length', 'outside diameter of the insert', '32 mm'),
            length: measure('length', 'length of the insert', '25 mm'),
            tensileStrength: z.optional(
              measure('stress', 'tensile strength of this block, from its certificate', '30 MPa'),
            ),
          },
          'throat insert',
        ),
      ),
    },
    'nozzle',
  );

/** Ignition, as far as the analysis requires it. */
export const ignitionSchema = () =>
  part(
    {
      igniterMass: z.optional(measure('mass', 'mass of gas from the igniter', '0.5 g')),
      igniterDuration: z.optional(measure('time', 'duration of igniter gas flow', '0.1 s')),
      initialPressure: z.optional(
        measure('absolute pressure', 'initial pressure of the analysis', '0.3 MPaa'),
      ),
      flameSpreadTime: z.optional(
        measure('time', 'time of flame spread over the surface', '0.05 s', { min: 0, words: '0 or more' }),
      ),
      nozzleClosureBurstPressure: z.optional(
        measure('gauge pressure', 'burst pressure of the nozzle closure', '1 MPag', {
          above: 0,
          words: 'more than 0',
        }),
      ),
    },
    'ignition',
  );
