import { angle, length, optional, ratio, type Values, variants } from '../units';
import { convergentHalfAngle, exitDiameter, halfAngle, inletDiameter, throatDiameter } from './nozzle-inputs';

const shapes = {
  cone: { halfAngle },
  bell: {
    initialAngle: /* @__PURE__ */ angle(
      'θ_i',
      'wall angle downstream of the throat, where the parabola begins',
      {
        above: 0,
        below: Math.PI / 2,
        example: '24 deg',
      },
    ),
    exitAngle: /* @__PURE__ */ angle('θ_e', 'wall angle at the exit lip', {
      min: 0,
      below: Math.PI / 2,
      example: '9 deg',
    }),
    lengthShare: /* @__PURE__ */ optional(
      /* @__PURE__ */ ratio('K', 'length/length of a 15° cone of the same diameters', { above: 0 }),
      0.8,
    ),
  },
};

/** The dimensions of the inner profile of a nozzle. */
export const contourInputs = {
  throatDiameter,
  exitDiameter,
  inletDiameter,
  convergentHalfAngle,
  entranceRadius: /* @__PURE__ */ optional(
    /* @__PURE__ */ length('r_i', 'radius that rounds the inlet into the convergent cone', { min: 0 }),
    0,
  ),
  throatRadius: /* @__PURE__ */ optional(
    /* @__PURE__ */ length(
      'r_u',
      'radius of the wall upstream of the throat; the throat diameter if omitted',
      { min: 0 },
    ),
  ),
  downstreamRadius: /* @__PURE__ */ optional(
    /* @__PURE__ */ length(
      'r_d',
      'radius of the wall downstream of the throat; 0.4 times the throat radius if omitted',
      { min: 0 },
    ),
  ),
  throatLength: /* @__PURE__ */ optional(
    /* @__PURE__ */ length(
      'L_t',
      'length of the cylindrical throat; a long one wears evenly but costs friction',
      { min: 0 },
    ),
    0,
  ),
  divergent: /* @__PURE__ */ variants('shape', 'shape of the divergent section', shapes, {
    example: { shape: 'cone', halfAngle: '12 deg' },
  }),
  tolerance: /* @__PURE__ */ optional(
    /* @__PURE__ */ length('δ', 'maximum distance of the points from the true curve'),
    1e-6,
  ),
};

/** The dimensions as they are given. */
export type ContourDimensions = Values<typeof contourInputs>;
