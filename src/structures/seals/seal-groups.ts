import { count, gaugePressure, inputs, length, named, optional, ratio, temperature } from '../../units';
import { materials } from '../materials/material-table';
import { oRings } from './o-ring-sizes';

const rubber = {
  ring: named('size of the O-ring, by its AS568 dash number', oRings, { example: '029' }),
  hardness: optional(ratio('H', 'hardness, Shore A', { min: 70, max: 90, example: 70, worse: 'low' }), 70),
  compound: optional(named('rubber of the O-ring; FKM where omitted', materials, { example: 'FKM' })),
};

/** A radial seal: an O-ring in a groove around the closure, sealing in the bore of the case. */
export const boreGland = /* @__PURE__ */ inputs(
  {
    ring: rubber.ring,
    grooveDiameter: length('D', 'diameter of the bottom of the groove', { example: '44 mm', worse: 'both' }),
    grooveWidth: length('w', 'width of the groove', { example: '2.7 mm', worse: 'both' }),
    closureDiameter: length('D_c', 'diameter of the closure next to the groove', {
      example: '47.9 mm',
      worse: 'both',
    }),
    hardness: rubber.hardness,
    compound: rubber.compound,
    backupRings: optional(
      count('n_b', 'number of backup rings; none where omitted', {
        min: 0,
        max: 2,
        whole: true,
        example: 1,
      }),
    ),
    backupThickness: optional(
      length('t_b', 'thickness of a backup ring', { example: '1.3 mm', worse: 'high' }),
    ),
  },
  { meaning: 'O-ring in a groove around the closure, sealing in the bore of the case' },
);

/** A face seal: an O-ring in a groove of a flat face, which another face closes. */
export const faceGland = /* @__PURE__ */ inputs(
  {
    ring: rubber.ring,
    grooveOutsideDiameter: length(
      'D_o',
      'outside diameter of the groove; pressure inside pushes the ring against it',
      { example: '44 mm', worse: 'both' },
    ),
    grooveInsideDiameter: length('D_i', 'inside diameter of the groove', {
      example: '36.5 mm',
      worse: 'both',
    }),
    grooveDepth: length('h', 'depth of the groove, axial', { example: '2 mm', worse: 'both' }),
    faceGap: optional(
      length(
        'g',
        'gap between the faces under pressure, from play of the retention, bolt stretch and bending; 0 (metal to metal) where omitted',
        { min: 0, example: '0.05 mm', worse: 'high' },
      ),
    ),
    hardness: rubber.hardness,
    compound: rubber.compound,
  },
  { meaning: 'O-ring in a groove of a flat face, which another face closes' },
);

/** The pressure and the temperatures at which a seal works. */
export const sealConditions = {
  pressure: optional(
    gaugePressure('p', 'maximum pressure across the seal; without it the extrusion gap is not evaluated', {
      min: 0,
      example: '5 MPa',
    }),
  ),
  coldest: optional(temperature('T_min', 'minimum temperature of the seal', { example: '-10 degC' })),
  hottest: optional(temperature('T_max', 'maximum temperature of the seal', { example: '80 degC' })),
};
